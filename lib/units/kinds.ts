/** The kinds of quantity as a table. */
import type { DisplayUnit, Kind, KindInfo } from "./kind.ts";

// Exact by the international yard and pound agreement and the standard acceleration.
const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const POUND_FORCE = POUND * 9.80665;
const PSI = POUND_FORCE / INCH ** 2;
const HORSEPOWER = 550 * FOOT * POUND_FORCE;
const US_GALLON = 231 * INCH ** 3;
const BTU_PER_POUND = 2326;
const HOUR = 3600;

const NOT_NEGATIVE = "it cannot be negative";
const BEYOND_ENGINES = "that is beyond any engine this is for";

/** A unit shown with some significant digits and at most so many decimals. */
function shown(
  symbol: string,
  scale: number,
  digits: number,
  decimals: number,
  from?: number,
): DisplayUnit {
  return { symbol, scale, digits, decimals, ...(from === undefined ? {} : { from }) };
}

/** A unit shown with always the same decimals. */
function fixed(symbol: string, scale: number, decimals: number, from?: number): DisplayUnit {
  return { ...shown(symbol, scale, 4, decimals, from), fixed: true };
}

const WATT = shown("W", 1, 3, 3);
const CC_PER_MIN = shown("cc/min", 1e-6 / 60, 3, 3);
const LITRE_PER_HOUR = shown("L/h", 1e-3 / HOUR, 3, 1);
const GALLON_PER_HOUR = shown("US gal/h", US_GALLON / HOUR, 3, 2);
const VOLT = [shown("V", 1, 3, 2, 0.1), shown("mV", 1e-3, 3, 2)];
const AMPERE = [shown("A", 1, 3, 2, 0.1), shown("mA", 1e-3, 3, 2)];
const OHM = [
  shown("Ω", 1, 3, 2, 0.1),
  shown("kΩ", 1e3, 3, 2, 1e3),
  shown("mΩ", 1e-3, 3, 2),
];
const DURATION = [
  shown("ms", 1e-3, 3, 3, 1e-4),
  { ...shown("h", HOUR, 3, 2, 2 * HOUR), bareWhole: true },
  { ...shown("min", 60, 3, 1, 120), bareWhole: true },
  { ...shown("s", 1, 3, 2, 1), bareWhole: true },
  shown("µs", 1e-6, 3, 2),
];
const ROTATION = [shown("rpm", 1 / 60, 3, 1)];
const ANGLE = [fixed("°", Math.PI / 180, 1)];
const RATIO = [shown("%", 0.01, 3, 2)];
const ENERGY = [shown("J", 1, 3, 2), shown("kJ", 1e3, 3, 2, 1e4)];
const LEAK = [shown("mbar L/s", 0.1, 2, 3)];
const VISCOSITY = [shown("mPa s", 1e-3, 3, 3)];

/**
 * Every kind of quantity: noun, SI unit, examples, bounds and display units.
 *
 * The scales are typed from the exact definitions; a test holds each against
 * mathjs through {@linkcode parseQuantity}.
 *
 * Injector flows are in cc/min on both sheets, as the trade does; pumps and hoses in L/h or
 * US gallons an hour.
 */
export const KINDS: Readonly<Record<Kind, KindInfo>> = {
  power: {
    noun: "a power",
    si: "W",
    examples: ["420 hp", "313 kW", "425 PS"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e7,
    maxBecause: BEYOND_ENGINES,
    metric: [shown("kW", 1e3, 3, 2, 1e3), WATT],
    inch: [shown("hp", HORSEPOWER, 3, 2, 1e3), WATT],
  },
  pressure: {
    noun: "a pressure",
    si: "Pa",
    examples: ["3 bar", "43.5 psi", "300 kPa"],
    min: -101325,
    minBecause: "there is no pressure below a full vacuum",
    max: 1e9,
    maxBecause: "no part of a fuel system sees that",
    metric: [
      shown("bar", 1e5, 3, 3, 1e4),
      shown("bar", 1e5, 2, 4, 100),
      shown("Pa", 1, 2, 2),
    ],
    inch: [shown("psi", PSI, 3, 4)],
    reads: { lb: "lbf", lbs: "lbf", kg: "kgf" },
  },
  flow: {
    noun: "a volume flow",
    si: "m^3/s",
    examples: ["1000 cc/min", "255 L/h", "70 US gal/h"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1,
    maxBecause: "that is beyond any fuel system this is for",
    metric: [CC_PER_MIN],
    inch: [CC_PER_MIN],
  },
  // Of a pump and its hoses: in one unit whatever its size, so that figures can be set beside each other.
  pumpFlow: {
    noun: "a volume flow",
    si: "m^3/s",
    examples: ["255 L/h", "70 US gal/h", "4 L/min"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1,
    maxBecause: "that is beyond any fuel system this is for",
    metric: [LITRE_PER_HOUR],
    inch: [GALLON_PER_HOUR],
    readAs: "flow",
  },
  massFlow: {
    noun: "a mass flow",
    si: "kg/s",
    examples: ["95 lb/h", "43 kg/h", "12 g/s"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 100,
    maxBecause: BEYOND_ENGINES,
    metric: [shown("kg/h", 1 / HOUR, 3, 2, 1e-4), shown("g/h", 1e-3 / HOUR, 3, 2)],
    inch: [shown("lb/h", POUND / HOUR, 3, 3)],
  },
  bsfc: {
    noun: "a brake specific fuel consumption",
    si: "kg/J",
    examples: ["0.60 lb/(hp h)", "365 g/kWh", "0.36 kg/kWh"],
    min: 1e-8,
    minBecause: "no fuel gives that much work",
    max: 1e-6,
    maxBecause: "an engine that thirsty would not run",
    metric: [shown("g/kWh", 1e-3 / (1e3 * HOUR), 3, 1)],
    inch: [shown("lb/(hp h)", POUND / (HORSEPOWER * HOUR), 3, 3)],
  },
  length: {
    noun: "a length",
    si: "m",
    examples: ["14 mm", "5/8 in", "0.55 in"],
    // Wide, as a height above sea level and an offset from a middle are lengths too.
    min: -1e5,
    minBecause: "that is no length on a vehicle or height on a road",
    max: 1e5,
    maxBecause: "that is no length on a vehicle or height on a road",
    metric: [
      fixed("mm", 1e-3, 2, 1e-4),
      fixed("m", 1, 3, 2),
      shown("m", 1, 3, 2, 100),
      fixed("µm", 1e-6, 1),
    ],
    inch: [
      fixed("in", INCH, 3, 2.54e-4),
      fixed("ft", FOOT, 2, 2),
      shown("ft", FOOT, 3, 2, 100),
      fixed("thou", INCH / 1e3, 2),
    ],
  },
  area: {
    noun: "an area",
    si: "m^2",
    examples: ["154 mm²", "0.24 in²", "1.5 cm²"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 100,
    maxBecause: "that does not fit in a vehicle",
    metric: [shown("mm²", 1e-6, 3, 4)],
    inch: [shown("in²", INCH ** 2, 3, 5)],
  },
  volume: {
    noun: "a volume",
    si: "m^3",
    examples: ["2.0 L", "350 cc", "12 US gal"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 10,
    maxBecause: "that does not fit in a vehicle",
    metric: [
      shown("cc", 1e-6, 3, 2, 1e-7),
      shown("L", 1e-3, 3, 2, 1e-3),
      shown("mm³", 1e-9, 3, 3),
    ],
    inch: [shown("in³", INCH ** 3, 3, 5), shown("US gal", US_GALLON, 3, 2, US_GALLON / 2)],
  },
  temperature: {
    noun: "a temperature",
    si: "K",
    examples: ["32 °C", "90 °F", "305 K"],
    min: 0,
    minBecause: "that is below absolute zero",
    max: 4000,
    maxBecause: "no flame under a bonnet is hotter",
    metric: [{ ...fixed("°C", 1, 1), offset: 273.15 }],
    inch: [{ ...fixed("°F", 5 / 9, 1), offset: 459.67 * 5 / 9 }],
    reads: { c: "degC", f: "degF", r: "degR" },
  },
  temperatureDifference: {
    noun: "a temperature difference",
    si: "K",
    examples: ["15 K", "15 °C", "27 °F"],
    min: -4000,
    minBecause: "no two things in an engine bay differ so much",
    max: 4000,
    maxBecause: "no two things in an engine bay differ so much",
    metric: [fixed("K", 1, 1)],
    inch: [fixed("°F", 5 / 9, 1)],
    reads: { c: "K", f: "degR", r: "degR" },
  },
  rotation: {
    noun: "a speed of rotation",
    si: "s^-1",
    examples: ["7000 rpm", "7000 1/min", "7000"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 5000,
    maxBecause: BEYOND_ENGINES,
    metric: ROTATION,
    inch: ROTATION,
    bare: "rpm",
    reads: { rev: "", revs: "", revolution: "", revolutions: "", r: "", u: "", turns: "" },
  },
  voltage: {
    noun: "a voltage",
    si: "V",
    examples: ["13.5 V", "500 mV", "13.5"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e5,
    maxBecause: "that is beyond a vehicle's wiring",
    metric: VOLT,
    inch: VOLT,
    bare: "V",
  },
  current: {
    noun: "a current",
    si: "A",
    examples: ["15 A", "15 amps", "900 mA"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e4,
    maxBecause: "that is beyond a vehicle's wiring",
    metric: AMPERE,
    inch: AMPERE,
  },
  resistance: {
    noun: "an electrical resistance",
    si: "ohm",
    examples: ["12 ohm", "2.4 Ω", "4.7 kohm"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e9,
    maxBecause: "that is an insulator",
    metric: OHM,
    inch: OHM,
  },
  duration: {
    noun: "a time",
    si: "s",
    examples: ["1.2 ms", "10 min", "30 s"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e9,
    maxBecause: "that is longer than an engine lives",
    metric: DURATION,
    inch: DURATION,
  },
  mass: {
    noun: "a mass",
    si: "kg",
    examples: ["1.5 kg", "3.3 lb", "28 g"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e5,
    maxBecause: "that is beyond a vehicle",
    metric: [shown("kg", 1, 3, 2, 1), shown("g", 1e-3, 3, 3)],
    inch: [shown("lb", POUND, 3, 2, POUND), shown("oz", POUND / 16, 3, 4)],
  },
  density: {
    noun: "a density",
    si: "kg/m^3",
    examples: ["745 kg/m³", "0.745 g/cc", "6.2 lb/US gal"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 25000,
    maxBecause: "no material is that heavy",
    metric: [shown("kg/m³", 1, 4, 3)],
    inch: [shown("lb/US gal", POUND / US_GALLON, 4, 5)],
  },
  velocity: {
    noun: "a velocity",
    si: "m/s",
    examples: ["1.5 m/s", "5 ft/s", "3 m/s"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 10000,
    maxBecause: "nothing in a fuel system moves so fast, not even sound",
    metric: [shown("m/s", 1, 3, 3)],
    inch: [shown("ft/s", FOOT, 3, 3)],
  },
  force: {
    noun: "a force",
    si: "N",
    examples: ["1.2 kN", "250 N", "55 lbf"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e8,
    maxBecause: "no screw in an engine bay holds that",
    metric: [shown("N", 1, 3, 2), shown("kN", 1e3, 3, 2, 1e4)],
    inch: [shown("lbf", POUND_FORCE, 3, 2)],
    reads: { lb: "lbf", lbs: "lbf", kg: "kgf" },
  },
  torque: {
    noun: "a torque",
    si: "N m",
    examples: ["25 N m", "18 lb ft", "90 lb in"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e5,
    maxBecause: BEYOND_ENGINES,
    metric: [shown("N m", 1, 3, 2)],
    inch: [
      shown("lb ft", POUND_FORCE * FOOT, 3, 2, 10 * POUND_FORCE * FOOT),
      shown("lb in", POUND_FORCE * INCH, 3, 2),
    ],
    reads: { lb: "lbf", lbs: "lbf", kg: "kgf" },
    part: "length",
  },
  angle: {
    noun: "an angle",
    si: "rad",
    examples: ["90°", "45 deg", "1.57 rad"],
    min: -1e4,
    minBecause: "that is more turns than make sense",
    max: 1e4,
    maxBecause: "that is more turns than make sense",
    metric: ANGLE,
    inch: ANGLE,
  },
  ratio: {
    noun: "a ratio",
    si: "-",
    examples: ["85 %", "0.85", "12.5 %"],
    min: -1e6,
    minBecause: "that is too large for a ratio",
    max: 1e6,
    maxBecause: "that is too large for a ratio",
    metric: RATIO,
    inch: RATIO,
    bare: "",
  },
  energy: {
    noun: "an energy",
    si: "J",
    examples: ["100 J", "1.5 kJ", "0.5 kWh"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e12,
    maxBecause: "that is more than a tank of fuel holds",
    metric: ENERGY,
    inch: ENERGY,
  },
  heatingValue: {
    noun: "a heating value",
    si: "J/kg",
    examples: ["43 MJ/kg", "43000 kJ/kg", "18500 Btu/lb"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1.5e8,
    maxBecause: "no fuel, not even hydrogen, gives more",
    metric: [shown("MJ/kg", 1e6, 3, 2)],
    inch: [shown("Btu/lb", BTU_PER_POUND, 4, 1)],
  },
  leakRate: {
    noun: "a leak rate",
    si: "Pa m^3/s",
    examples: ["1e-3 mbar L/s", "0.1 Pa L/s", "0.06 atm cc/min"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e6,
    maxBecause: "that is an open pipe",
    metric: LEAK,
    inch: LEAK,
    part: "pressure",
  },
  specificHeat: {
    noun: "a specific heat",
    si: "J/(kg K)",
    examples: ["2.1 kJ/(kg K)", "2100 J/(kg K)", "0.5 Btu/(lb °F)"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 20000,
    maxBecause: "no liquid takes up more",
    metric: [shown("kJ/(kg K)", 1e3, 3, 3)],
    // By the definition of the Btu (IT): 1 Btu/(lb °F) = 4186.8 J/(kg K).
    inch: [shown("Btu/(lb °F)", 4186.8, 3, 4)],
  },
  dynamicViscosity: {
    noun: "a dynamic viscosity",
    si: "Pa s",
    examples: ["0.5 mPa s", "0.5 cP", "5e-4 Pa s"],
    min: 0,
    minBecause: NOT_NEGATIVE,
    max: 1e4,
    maxBecause: "that does not flow",
    metric: VISCOSITY,
    inch: VISCOSITY,
  },
};
