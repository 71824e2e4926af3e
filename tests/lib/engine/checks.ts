/** What the engine room is held against. */
import { assert } from "@std/assert";
import {
  AIR_GAS_CONSTANT_J_kg_K,
  airDensity,
  airFlow,
  airPerWork,
  ambientPressure,
  bmep,
  BSFC_BANDS,
  bsfcAtEfficiency,
  bsfcAtEqualEfficiency,
  bsfcFloor,
  crankPower,
  type Cycle,
  EFFICIENCY_BANDS,
  engineDemand,
  fourStrokeEquivalent,
  fuelByAir,
  fuelByPower,
  idealFilling,
  impliedBsfc,
  injectionInterval,
  moistAirDensity,
  ottoEfficiency,
  overallEfficiency,
  rotarySweptVolume,
  routeDifference,
  TEXTBOOK_BEST_BSFC_kg_J,
  torque,
  TURNS_PER_FILLING,
  waterVapourPressure,
} from "@/lib/engine/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Answer, type Answers, type Check, fromReference } from "../../helpers/checks.ts";

/** g/kWh in a kg/J. */
const G_KWH = 3.6e9;

/** Air and fuel of a case; the file's two kinds of engine differ by cycle and displacement only. */
// deno-lint-ignore no-explicit-any
function breathe(cycle: Cycle, displacement: number, rpm: number, i: any) {
  const density = airDensity({
    pressure: i.manifold_abs_pressure_Pa,
    temperature: i.charge_temperature_K,
    gasConstant: i.gas_constant_J_per_kg_K,
  });
  const air = airFlow({
    filling: i.volumetric_efficiency,
    density,
    displacement,
    speed: rpm / 60,
    turns: TURNS_PER_FILLING[cycle],
  });
  const fuel = fuelByAir({
    airFlow: air,
    lambda: i.lambda,
    stoichiometricRatio: i.afr_stoichiometric,
  });
  return { density, air, fuel };
}

const BREATHING = [airDensity, airFlow, fuelByAir];

const powerRoute: Answer = {
  methods: [fuelByPower],
  run: (i) => {
    const fuel = fuelByPower({ power: i.power_W, bsfc: i.bsfc_kg_per_J });
    return {
      fuel_mass_flow_kg_per_s: fuel,
      fuel_volume_flow_m3_per_s: fuel / i.density_kg_per_m3,
      fuel_volume_flow_L_per_h: fuel / i.density_kg_per_m3 * 3.6e6,
    };
  },
};

const ANSWERS: Answers = {
  "four-stroke piston engine: air and fuel mass flow*": {
    methods: BREATHING,
    run: (i) => {
      const { density, air, fuel } = breathe(
        "four-stroke",
        i.displacement_m3,
        i.speed_rev_per_min,
        i,
      );
      return {
        air_density_kg_per_m3: density,
        air_mass_flow_kg_per_s: air,
        fuel_mass_flow_kg_per_s: fuel,
      };
    },
  },
  "rotary (trochoid) engine: air and fuel mass flow": {
    methods: [...BREATHING, fourStrokeEquivalent],
    run: (i) => {
      const { chamber_swept_volume_m3: chamber, rotors } = i;
      const rpm = i.eccentric_shaft_speed_rev_per_min;
      const { air, fuel } = breathe("rotary", chamber * rotors, rpm, i);
      return {
        air_mass_flow_kg_per_s: air,
        fuel_mass_flow_kg_per_s: fuel,
        equivalent_four_stroke_displacement_m3: fourStrokeEquivalent({ chamber, rotors }),
      };
    },
  },
  "swept volume of one chamber of a trochoid rotary engine": {
    methods: [rotarySweptVolume],
    run: (i) => ({
      chamber_swept_volume_m3: rotarySweptVolume({
        eccentricity: i.eccentricity_m,
        radius: i.generating_radius_m,
        width: i.rotor_width_m,
      }),
    }),
  },
  "fuel flow from power and BSFC*": powerRoute,
  "BSFC from brake efficiency and heating value: petrol, 100 % (absolute floor)": {
    methods: [bsfcFloor],
    run: (i) => {
      const bsfc = bsfcFloor({ lowerHeatingValue: i.lower_heating_value_J_per_kg });
      return { bsfc_kg_per_J: bsfc, bsfc_g_per_kWh: bsfc * G_KWH };
    },
  },
  "BSFC from brake efficiency and heating value*": {
    methods: [bsfcAtEfficiency],
    run: (i) => {
      const bsfc = bsfcAtEfficiency({
        efficiency: i.brake_efficiency,
        lowerHeatingValue: i.lower_heating_value_J_per_kg,
      });
      return { bsfc_kg_per_J: bsfc, bsfc_g_per_kWh: bsfc * G_KWH };
    },
  },
  "ideal Otto efficiency and the matching BSFC floor on petrol": {
    methods: [ottoEfficiency, bsfcAtEfficiency],
    run: (i) => {
      const efficiency = ottoEfficiency({
        compressionRatio: i.compression_ratio,
        heatRatio: i.heat_capacity_ratio,
      });
      const bsfc = bsfcAtEfficiency({
        efficiency,
        lowerHeatingValue: i.lower_heating_value_J_per_kg,
      });
      return { efficiency, bsfc_g_per_kWh: bsfc * G_KWH };
    },
  },
  "best BSFC of spark-ignition engines, textbook": {
    methods: [],
    run: () => ({ bsfc_g_per_kWh: TEXTBOOK_BEST_BSFC_kg_J * G_KWH }),
  },
  "planning ranges of full-load BSFC (g/kWh), lower and upper": {
    methods: [],
    run: () => {
      const band = (name: keyof typeof BSFC_BANDS) => [
        BSFC_BANDS[name].min * G_KWH,
        BSFC_BANDS[name].max * G_KWH,
      ];
      return {
        petrol_naturally_aspirated: band("petrol natural"),
        petrol_boosted_rich: band("petrol boosted"),
        ethanol_E85_boosted: band("E85 boosted"),
        methanol_boosted: band("methanol boosted"),
      };
    },
  },
  "BSFC on another fuel at equal efficiency": {
    methods: [bsfcAtEqualEfficiency],
    run: (i) => ({
      bsfc_g_per_kWh: bsfcAtEqualEfficiency({
        bsfc: i.bsfc_g_per_kWh / G_KWH,
        lowerHeatingValue: i.lhv_from_J_per_kg,
        newLowerHeatingValue: i.lhv_to_J_per_kg,
      }) * G_KWH,
    }),
  },
  "consistency check of the air route against stated power": {
    methods: [...BREATHING, impliedBsfc, overallEfficiency, airPerWork],
    run: (i) => {
      const { air, fuel } = breathe("four-stroke", i.displacement_m3, i.speed_rev_per_min, i);
      const power = i.power_W;
      return {
        fuel_mass_flow_kg_per_s: fuel,
        implied_bsfc_g_per_kWh: impliedBsfc({ fuelFlow: fuel, power }) * G_KWH,
        implied_efficiency: overallEfficiency({
          power,
          fuelFlow: fuel,
          lowerHeatingValue: i.lower_heating_value_J_per_kg,
        }),
        air_per_power_kg_per_kWh: airPerWork({ airFlow: air, power }) * 3.6e6,
      };
    },
  },
  "brake mean effective pressure of a four-stroke": {
    methods: [bmep, torque],
    run: (i) => {
      const { power_W: power, displacement_m3: displacement } = i;
      const speed = i.speed_rev_per_min / 60;
      return {
        bmep_Pa: bmep({ power, turns: TURNS_PER_FILLING["four-stroke"], displacement, speed }),
        torque_N_m: torque({ power, speed }),
      };
    },
  },
  "density of (humid) air": {
    methods: [airDensity, moistAirDensity, waterVapourPressure],
    run: (i) => {
      const { pressure_Pa: pressure, temperature_K: temperature } = i;
      const vapourPressure = i.relative_humidity * waterVapourPressure({ temperature });
      const air = { temperature, gasConstant: AIR_GAS_CONSTANT_J_kg_K };
      return {
        density_kg_per_m3: moistAirDensity({ pressure, vapourPressure, ...air }),
        dry_air_density_kg_per_m3: airDensity({ pressure, ...air }),
        dry_air_partial_density_kg_per_m3: airDensity({
          pressure: pressure - vapourPressure,
          ...air,
        }),
      };
    },
  },
};

/** Pressure over geopotential altitude as the standard prints it [m, Pa]. */
const STANDARD_ATMOSPHERE = [
  [-500, 107_478],
  [0, 101_325],
  [1000, 89_874.6],
  [2000, 79_495.2],
  [3000, 70_108.5],
  [5000, 54_019.9],
] as const;

/** Pressure of saturated steam over temperature as steam tables print it [°C, Pa]. */
const STEAM = [[10, 1228], [20, 2339], [30, 4247], [40, 7385], [50, 12_352]] as const;

/**
 * The intake stroke of an ideal throttled engine in small steps: burnt gas of the clearance
 * meets the manifold, then the piston draws in at manifold pressure. Energy decides the mass.
 */
function fillByStroke(x: number, ratio: number, heatRatio: number): number {
  // Volumes in clearances, pressures in manifold pressures, masses so that R T_manifold = 1.
  const cp = heatRatio / (heatRatio - 1);
  let energy = x / (heatRatio - 1); // p V / (gamma - 1) of the burnt gas
  let taken = 0;
  // At constant volume: what flows (out, when x > 1, to come back first) carries manifold enthalpy.
  const levelled = 1 / (heatRatio - 1);
  taken += (levelled - energy) / cp;
  energy = levelled;
  const steps = 1000;
  for (let i = 0; i < steps; i++) {
    const grown = (ratio - 1) / steps;
    const wanted = energy + grown / (heatRatio - 1); // pressure stays 1
    taken += (wanted - energy + grown) / cp;
    energy = wanted;
  }
  return taken / (ratio - 1);
}

/** Two engines as a round trip: what power burns is what the air for that power burns. */
function twoRoutes(cycle: Cycle): void {
  const power_W = 200_000;
  const bsfc_kg_J = 0.3 / G_KWH * 1000;
  const lambda = 0.85;
  const stoichiometricRatio = 14.6;
  const speed = 100;
  const density = 1e5 / (287.055 * 300);
  const air = power_W * bsfc_kg_J * lambda * stoichiometricRatio;
  // One filling in how many turns, said here by what every turn of the shaft does.
  const fillingsPerTurn = { "four-stroke": 1 / 2, rotary: 3 / 3, "two-stroke": 1 }[cycle];
  const demand = engineDemand(new Working(), {
    cycle,
    cylinders: 2,
    displacement_m3: air / (density * speed * fillingsPerTurn),
    power_W,
    powerSpeed_rev_s: speed,
    maximumSpeed_rev_s: 110,
    idleSpeed_rev_s: 15,
    bsfc_kg_J,
    fuel: { lowerHeatingValue_J_kg: 43e6, stoichiometricRatio },
    fillingRatio: 1,
    manifoldPressure_Pa: 1e5,
    chargeTemperature_K: 300,
    lambda,
    idleManifoldPressure_Pa: 35_000,
    idleLambda: 1,
  });
  assertClose(1 + (demand.routeDifference ?? NaN), 1, 1e-12);
  // A mean pressure on the swept volume does the work of a filling, in each filling.
  const perFilling_J = power_W / (speed * fillingsPerTurn);
  const swept = air / (density * speed * fillingsPerTurn);
  assertClose((demand.bmep_Pa ?? NaN) * swept, perFilling_J, 1e-12);
  assertClose(demand.intervalPeak_s, 1 / (speed * fillingsPerTurn), 1e-12);
}

const BY_HAND: readonly Check[] = [
  {
    name: "pressure of the standard atmosphere, -500 to 5000 m",
    methods: [ambientPressure],
    source: "ISO 2533:1975, table over geopotential altitude",
    provenance: "from-memory",
    run: () => {
      for (const [altitude, printed] of STANDARD_ATMOSPHERE) {
        assertClose(ambientPressure({ altitude }), printed, 1e-5);
      }
    },
  },
  {
    name: "the atmosphere carries its own weight at every altitude",
    methods: [ambientPressure],
    source: "Hydrostatic equilibrium dp/dh = -g p / (R T), ISO 2533 g, R and lapse rate",
    provenance: "exact-solution",
    run: () => {
      for (const altitude of [-400, 0, 1500, 4500]) {
        const step = 1;
        const slope = (ambientPressure({ altitude: altitude + step }) -
          ambientPressure({ altitude: altitude - step })) / (2 * step);
        const weight = 9.80665 * ambientPressure({ altitude }) /
          (287.05287 * (288.15 - 0.0065 * altitude));
        assertClose(-slope, weight, 1e-5);
      }
    },
  },
  {
    name: "pressure of saturated water vapour, 10 to 40 °C",
    methods: [waterVapourPressure],
    source: "Steam tables (IAPWS-IF97) printed in textbooks",
    provenance: "from-memory",
    run: () => {
      for (const [celsius, printed] of STEAM) {
        assertClose(waterVapourPressure({ temperature: celsius + 273.15 }), printed, 3.5e-3);
      }
    },
  },
  {
    name: "moist air is dry air and vapour side by side",
    methods: [moistAirDensity, airDensity],
    source: "Dalton's law with the gas constant of water vapour, 461.526 J/(kg K) (IAPWS)",
    provenance: "exact-solution",
    run: () => {
      for (const [temperature, vapourPressure] of [[293.15, 2339], [333.15, 19_000]] as const) {
        const air = { temperature, gasConstant: AIR_GAS_CONSTANT_J_kg_K };
        const dry = airDensity({ pressure: 1e5 - vapourPressure, ...air });
        const vapour = vapourPressure / (461.526 * temperature);
        const moist = moistAirDensity({ pressure: 1e5, vapourPressure, ...air });
        assertClose(moist, dry + vapour, 1e-5);
      }
    },
  },
  {
    name: "efficiency of the air-standard Otto cycle at a ratio of 8",
    methods: [ottoEfficiency],
    source: "Y. A. Cengel and M. A. Boles, Thermodynamics, Otto cycle example: 56.5 % at k = 1.4",
    provenance: "from-memory",
    run: () => assertClose(ottoEfficiency({ compressionRatio: 8, heatRatio: 1.4 }), 0.565, 1e-3),
  },
  {
    name: "filling of a throttled engine, by the stroke in small steps",
    methods: [idealFilling],
    source: "Energy balance of an open system with an ideal gas, summed over the intake stroke",
    provenance: "exact-solution",
    run: () => {
      for (const [x, ratio, heatRatio] of [[2.895, 10, 1.35], [1, 8, 1.3], [2, 12, 1.4]] as const) {
        const filling = idealFilling({
          manifold: 50_000,
          exhaust: 50_000 * x,
          compressionRatio: ratio,
          heatRatio,
        });
        assertClose(filling, fillByStroke(x, ratio, heatRatio), 1e-9);
      }
    },
  },
  {
    name: "power at the wheels is what the losses leave",
    methods: [crankPower],
    source: "Balance of power: wheels and losses add up to the crankshaft",
    provenance: "exact-solution",
    run: () => {
      for (const lossShare of [0, 0.12, 0.3]) {
        const power = crankPower({ wheelPower: 150_000, lossShare });
        assertClose(150_000 + power * lossShare, power, 1e-12);
      }
    },
  },
  ...(["four-stroke", "rotary", "two-stroke"] as const).map((cycle): Check => ({
    name: `an engine made to burn the same by both routes, ${cycle}`,
    methods: [routeDifference, injectionInterval, bmep, airFlow, fuelByAir, fuelByPower],
    source: "Fillings counted over a turn of the shaft, work of a piston",
    provenance: "exact-solution",
    run: () => twoRoutes(cycle),
  })),
  {
    name: "power of an engine from torque and speed",
    methods: [torque],
    source: "The horsepower of 550 ft lbf/s: torque in lbf ft equals power in hp at 5252 rpm",
    provenance: "from-memory",
    run: () => {
      const lbf_ft = torque({ power: 300 * 745.69987, speed: 5252.113 / 60 }) / 1.3558179;
      assertClose(lbf_ft, 300, 1e-6);
    },
  },
  {
    name: "the textbook best lies in the band of efficiency, and every planning band in it too",
    methods: [overallEfficiency],
    source: "J. B. Heywood (1988), 2.10: 31 % at 43 MJ/kg",
    provenance: "from-memory",
    run: () => {
      const at = (bsfc: number, lowerHeatingValue: number) =>
        overallEfficiency({ power: 1e5, fuelFlow: 1e5 * bsfc, lowerHeatingValue });
      assertClose(at(TEXTBOOK_BEST_BSFC_kg_J, 43e6), 0.31, 0.016);
      // 75 ug/J are the 270 g/kWh that the book prints: so much for the unit of the bands.
      assertClose(BSFC_BANDS["petrol natural"].min / TEXTBOOK_BEST_BSFC_kg_J, 255 / 270, 1e-12);
      const { min, max } = EFFICIENCY_BANDS["four-stroke"];
      for (const name of ["petrol natural", "petrol boosted"] as const) {
        assert(at(BSFC_BANDS[name].max, 43e6) >= min, name);
        assert(at(BSFC_BANDS[name].min, 43e6) <= max, name);
      }
    },
  },
];

/** Every check of this room. */
export const checks: readonly Check[] = [
  ...fromReference("engine-demand.json", ANSWERS),
  ...BY_HAND,
];
