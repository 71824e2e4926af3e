import { type Kind, KINDS, type ParseOptions, parseQuantity, unitsReady } from "@/lib/units/mod.ts";
import { assert, assertEquals, assertMatch, assertStringIncludes, assertThrows } from "@std/assert";
import fc from "fast-check";
import { assertClose } from "../../helpers/assert_close.ts";

await unitsReady();

const LB = 0.45359237;
const HP = 745.69987158227;
const GAL = 3.785411784e-3;

/** Typed, kind, SI by the definition of the unit. */
const READ: [text: string, kind: Kind, si: number][] = [
  ["420 hp", "power", 420 * HP],
  ["420 HP", "power", 420 * HP],
  ["420 bhp", "power", 420 * HP],
  ["425 PS", "power", 425 * 735.49875],
  ["425 ps", "power", 425 * 735.49875],
  ["313kW", "power", 313e3],
  ["313 KW", "power", 313e3],
  ["5 mW", "power", 5e-3],
  ["1 MW", "power", 1e6],
  ["43.5 psi", "pressure", 43.5 * 6894.757293168],
  ["43.5 PSI", "pressure", 43.5 * 6894.757293168],
  ["43.5 psig", "pressure", 43.5 * 6894.757293168],
  ["43.5 lb/in2", "pressure", 43.5 * 6894.757293168],
  ["43.5 lbf/sq in", "pressure", 43.5 * 6894.757293168],
  ["3 bar", "pressure", 3e5],
  ["3 Bar", "pressure", 3e5],
  ["3 bar(g)", "pressure", 3e5],
  ["3bar.", "pressure", 3e5],
  ["1,5 bar", "pressure", 1.5e5],
  ["1.5\u00a0bar", "pressure", 1.5e5],
  ["\u22120.5 bar", "pressure", -0.5e5],
  ["300 kpa", "pressure", 3e5],
  ["0.3 MPa", "pressure", 3e5],
  ["20 in Hg", "pressure", 20 * 3386.389],
  ["100 mmHg", "pressure", 13332.2387415],
  ["10 inH2O", "pressure", 2490.8891],
  ["4 kgf/cm2", "pressure", 392266],
  ["4 kg/cm²", "pressure", 392266],
  ["1000 cc/min", "flow", 1e-3 / 60],
  ["1000cc/min", "flow", 1e-3 / 60],
  ["1 000 cc/min", "flow", 1e-3 / 60],
  ["1\u2009000 cm³/min", "flow", 1e-3 / 60],
  ["1\u202f000 mL/min", "flow", 1e-3 / 60],
  ["1'000 ml/min", "flow", 1e-3 / 60],
  ["1,234,567 cc/min", "flow", 1.234567 / 60],
  ["1,234.5 cc/min", "flow", 1.2345e-3 / 60],
  ["1.234,5 cc/min", "flow", 1.2345e-3 / 60],
  ["255 l/h", "flow", 0.255 / 3600],
  ["255 lph", "flow", 0.255 / 3600],
  ["4.25 litres per minute", "flow", 4.25e-3 / 60],
  ["70 gph", "flow", 70 * GAL / 3600],
  ["70 US gal/h", "flow", 70 * GAL / 3600],
  ["70 U.S. gallons per hour", "flow", 70 * GAL / 3600],
  ["70 imp gal/h", "flow", 70 * 4.54609e-3 / 3600],
  ["95 lb/h", "massFlow", 95 * LB / 3600],
  ["95 lbs/hr", "massFlow", 95 * LB / 3600],
  ["95 pph", "massFlow", 95 * LB / 3600],
  ["43 kg/h", "massFlow", 43 / 3600],
  ["0.60 lb/(hp h)", "bsfc", 0.6 * LB / (HP * 3600)],
  ["0.60 lb/hp/h", "bsfc", 0.6 * LB / (HP * 3600)],
  ["0.60 lb/hp h", "bsfc", 0.6 * LB / (HP * 3600)],
  ["0.60 lb/hph", "bsfc", 0.6 * LB / (HP * 3600)],
  ["0.60 lbs/hp-hr", "bsfc", 0.6 * LB / (HP * 3600)],
  ["365 g/kWh", "bsfc", 0.365 / 3.6e6],
  ["365 g/kW h", "bsfc", 0.365 / 3.6e6],
  ["365 g/(kW·h)", "bsfc", 0.365 / 3.6e6],
  ["220 g/PSh", "bsfc", 0.22 / (735.49875 * 3600)],
  ["5/8 in", "length", 0.015875],
  ["1 1/2 in", "length", 0.0381],
  ["1-1/2 in", "length", 0.0381],
  ["1½ in", "length", 0.0381],
  ['5/8"', "length", 0.015875],
  ["5⁄8″", "length", 0.015875],
  [".5 in", "length", 0.0127],
  ["0,500 in", "length", 0.0127],
  ["14mm", "length", 0.014],
  ["14 MM", "length", 0.014],
  ["１４ mm", "length", 0.014],
  ["2 thou", "length", 50.8e-6],
  ["2 mil", "length", 50.8e-6],
  ["20 µm", "length", 20e-6],
  ["20 μm", "length", 20e-6],
  ["20 um", "length", 20e-6],
  ["6 ft", "length", 1.8288],
  ["6'", "length", 1.8288],
  ["600 m", "length", 600],
  ["-2 mm", "length", -0.002],
  ["0.24 in²", "area", 0.24 * 0.0254 ** 2],
  ["0.24 sq in", "area", 0.24 * 0.0254 ** 2],
  ["122 cu in", "volume", 122 * 0.0254 ** 3],
  ["2.0 L", "volume", 2e-3],
  ["350 cc", "volume", 350e-6],
  ["90 °F", "temperature", (90 + 459.67) / 1.8],
  ["90F", "temperature", (90 + 459.67) / 1.8],
  ["32 °C", "temperature", 305.15],
  ["32 deg C", "temperature", 305.15],
  ["32 degrees Celsius", "temperature", 305.15],
  ["32 ℃", "temperature", 305.15],
  ["32 c", "temperature", 305.15],
  ["-40 °F", "temperature", 233.15],
  ["305.15 K", "temperature", 305.15],
  ["15 °C", "temperatureDifference", 15],
  ["27 °F", "temperatureDifference", 15],
  ["15 K", "temperatureDifference", 15],
  ["7000 rpm", "rotation", 7000 / 60],
  ["7000 1/min", "rotation", 7000 / 60],
  ["7000 rev/min", "rotation", 7000 / 60],
  ["7000 min⁻¹", "rotation", 7000 / 60],
  ["7000/min", "rotation", 7000 / 60],
  ["7 000 RPM", "rotation", 7000 / 60],
  ["7000", "rotation", 7000 / 60],
  ["120 Hz", "rotation", 120],
  ["13,5 V", "voltage", 13.5],
  ["12 volts", "voltage", 12],
  ["13.5", "voltage", 13.5],
  ["255 L/h", "pumpFlow", 0.255 / 3600],
  ["500 cc/min", "pumpFlow", 5e-4 / 60],
  ["15 amps", "current", 15],
  ["12 ohms", "resistance", 12],
  ["2.4 Ω", "resistance", 2.4],
  ["2.4 \u2126", "resistance", 2.4],
  ["4.7 kohm", "resistance", 4700],
  ["1.2 ms", "duration", 1.2e-3],
  ["10 minutes", "duration", 600],
  ["745 kg/m³", "density", 745],
  ["0.745 g/cc", "density", 745],
  ["6.2 lb/gal", "density", 6.2 * LB / GAL],
  ["5 ft/s", "velocity", 1.524],
  ["55 lb", "force", 55 * 4.4482216152605],
  ["25 Nm", "torque", 25],
  ["18 lb-ft", "torque", 18 * 1.3558179483314],
  ["18 ft.lbs", "torque", 18 * 1.3558179483314],
  ["90°", "angle", Math.PI / 2],
  ["85 %", "ratio", 0.85],
  ["85%", "ratio", 0.85],
  ["0.85", "ratio", 0.85],
  ["0,85", "ratio", 0.85],
  ["10.5:1", "ratio", 10.5],
  ["1/3", "ratio", 1 / 3],
  ["5 kWh", "energy", 18e6],
  ["43 MJ/kg", "heatingValue", 43e6],
  ["18500 BTU/lb", "heatingValue", 18500 * 2326],
  ["1e-3 mbar L/s", "leakRate", 1e-4],
  ["1·10⁻³ mbar·l/s", "leakRate", 1e-4],
  ["1 x 10^-3 mbar l/s", "leakRate", 1e-4],
  ["2.1 kJ/(kg K)", "specificHeat", 2100],
  ["2.1 kJ/kg °C", "specificHeat", 2100],
  ["0.5 Btu/(lb °F)", "specificHeat", 2093.4],
  ["0.5 cP", "dynamicViscosity", 5e-4],
  ["0.5 mPa·s", "dynamicViscosity", 5e-4],
];

for (const [text, kind, si] of READ) {
  Deno.test(`parseQuantity() reads ${JSON.stringify(text)} as ${KINDS[kind].noun}`, () => {
    const parsed = parseQuantity(text, kind);
    assert(parsed.ok, parsed.ok ? "" : parsed.message);
    assertClose(parsed.value, si, 1e-11);
    assertEquals(parsed.note, undefined);
  });
}

const RAIL = { field: "Rail pressure", max: 1e6, because: "port injection works up to 10 bar" };
const LENGTH = "Enter a length with its unit, like 14 mm, 5/8 in or 0.55 in.";

/** Typed, kind, options and the whole message. */
const REFUSED: [text: string, kind: Kind, options: ParseOptions, message: string][] = [
  ["12 pis", "length", { field: "Rail bore" }, `Rail bore: "12 pis" is not a length. ${LENGTH}`],
  ["12", "length", { field: "Rail bore" }, `Rail bore: "12" has no unit. ${LENGTH}`],
  ["  ", "length", { field: "Rail bore" }, `Rail bore: nothing was entered. ${LENGTH}`],
  ["3 bar", "length", {}, `"3 bar" is a pressure, not a length. ${LENGTH}`],
  ["3 lb", "length", {}, `"3 lb" is a mass, not a length. ${LENGTH}`],
  ["9".repeat(50) + " mn", "length", {}, `"${"9".repeat(39)}…" is not a length. ${LENGTH}`],
  [
    "1,500 cc/min",
    "flow",
    { field: "Injector flow" },
    'Injector flow: "1,500 cc/min" can be read as 1500 or as 1.5, as the comma may part ' +
    "thousands or decimals. Enter 1500 or 1.5, without the comma, and the unit.",
  ],
  [
    "95 lb/h",
    "flow",
    {},
    '"95 lb/h" is a mass flow, not a volume flow. Enter a volume flow with its unit, ' +
    "like 1000 cc/min, 255 L/h or 70 US gal/h.",
  ],
  [
    "0.3 mpa",
    "pressure",
    {},
    '"0.3 mpa" needs its capital letters right. Write MPa or mPa, whichever is meant.',
  ],
  [
    "5 mw",
    "power",
    {},
    '"5 mw" needs its capital letters right. Write MW or mW, whichever is meant.',
  ],
  [
    "200 psi",
    "pressure",
    RAIL,
    'Rail pressure: "200 psi" is above the highest allowed, 145 psi (10.0 bar): ' +
    "port injection works up to 10 bar.",
  ],
  [
    "14 bar",
    "pressure",
    RAIL,
    'Rail pressure: "14 bar" is above the highest allowed, 10 bar (145 psi): ' +
    "port injection works up to 10 bar.",
  ],
  [
    "1400 kPa",
    "pressure",
    RAIL,
    'Rail pressure: "1400 kPa" is above the highest allowed, 1000 kPa (145 psi): ' +
    "port injection works up to 10 bar.",
  ],
  [
    "3 thou",
    "length",
    { min: 1e-3 },
    '"3 thou" is below the lowest allowed, 39.38 thou (1.00 mm).',
  ],
  [
    "110 deg C",
    "temperature",
    { max: 373.15, because: "fuel boils" },
    '"110 deg C" is above the highest allowed, 100 °C (212.0 °F): fuel boils.',
  ],
  [
    "40",
    "ratio",
    { max: 0.5, because: "no more fits" },
    '"40" is above the highest allowed, 0.5 (50 %): no more fits. Did you mean 40 %?',
  ],
  [
    "60",
    "ratio",
    { max: 0.5 },
    '"60" is above the highest allowed, 0.5 (50 %).',
  ],
  [
    "40:1",
    "ratio",
    { max: 0.5 },
    '"40:1" is above the highest allowed, 0.5.',
  ],
  [
    "16 V",
    "voltage",
    { max: 15 },
    '"16 V" is above the highest allowed, 15 V.',
  ],
  [
    "-300 °C",
    "temperature",
    {},
    '"-300 °C" is below the lowest allowed, −273.1 °C (−459.7 °F): ' +
    "that is below absolute zero.",
  ],
  [
    "58 psia",
    "pressure",
    { field: "Boost" },
    'Boost: "58 psia" is an absolute pressure. Enter a gauge pressure, ' +
    "measured from the air around.",
  ],
  [
    "58 psig",
    "pressure",
    { reference: "absolute" },
    '"58 psig" is a gauge pressure. Enter an absolute pressure, measured from a vacuum.',
  ],
  [
    "12 W",
    "leakRate",
    {},
    '"12 W" is a power, not a leak rate. Enter a leak rate with its unit, ' +
    "like 1e-3 mbar L/s, 0.1 Pa L/s or 0.06 atm cc/min.",
  ],
  [
    "25 J",
    "torque",
    {},
    '"25 J" is an energy, not a torque. Enter a torque with its unit, ' +
    "like 25 N m, 18 lb ft or 90 lb in.",
  ],
  ["1e400 mm", "length", {}, `"1e400 mm" is too large a number. ${LENGTH}`],
];

for (const [text, kind, options, message] of REFUSED) {
  Deno.test(`parseQuantity() refuses ${JSON.stringify(text)}, saying why`, () => {
    assertEquals(parseQuantity(text, kind, options), { ok: false, message });
  });
}

Deno.test("parseQuantity() refuses what only looks like a quantity", () => {
  const texts = [
    "mm",
    "- mm",
    "14 mm mm",
    "14 mm +",
    "1/0 in",
    "3 7/4 in",
    "1,2,3 mm",
    "1.2.3 mm",
    "12,5,00 mm",
    "2 x 10 mm",
    "14 mm^99",
    "14 (mm",
    "14 mm)",
    "14 % mm",
    "NaN mm",
    "Infinity mm",
    "0x10 mm",
    "14 constructor",
    "14 __proto__",
    "14 toString",
    "14 mm/0",
    "14 sq",
    "14 m/s",
    "1 mm=2 mm",
    "14 m m",
    "--14 mm",
    "1e mm",
    "<14 mm",
    "14 mm; DROP",
    "𝟙𝟜 m²",
    "()",
    "14 per",
    "1 /",
  ];
  for (const text of texts) {
    const parsed = parseQuantity(text, "length");
    assert(!parsed.ok, `${text} was read as ${JSON.stringify(parsed)}`);
  }
});

Deno.test("parseQuantity() takes the examples it gives, for each kind", () => {
  for (const kind of Object.keys(KINDS) as Kind[]) {
    for (const text of KINDS[kind].examples) {
      const parsed = parseQuantity(text, kind);
      assert(parsed.ok, parsed.ok ? "" : parsed.message);
    }
  }
});

Deno.test("parseQuantity() takes a bound itself, typed in any unit", () => {
  for (const [text, kind, bound] of READ) {
    const parsed = parseQuantity(text, kind, { min: bound, max: bound });
    assert(parsed.ok, parsed.ok ? "" : parsed.message);
  }
});

Deno.test("parseQuantity() refuses a number just past a bound, and shows a bound it takes", () => {
  const options = { min: 0.001, max: 0.3 };
  for (const [unit, si] of [["in", 0.0254], ["mm", 0.001], ["thou", 0.0254e-3]] as const) {
    for (const [bound, sign] of [[options.min, -1], [options.max, 1]] as const) {
      const refused = parseQuantity(
        `${bound / si * (1 + sign * 0.001)} ${unit}`,
        "length",
        options,
      );
      assert(!refused.ok, `${unit} ${bound}`);
      const [, shown = ""] = refused.message.match(/allowed, ([^ ]+ [a-z]+)/) ?? [];
      assert(parseQuantity(shown, "length", options).ok, refused.message);
    }
  }
});

Deno.test("parseQuantity() turns a mass flow into a volume flow by the density, and says so", () => {
  const parsed = parseQuantity("95 lb/h", "flow", { density_kg_m3: 684 });
  assert(parsed.ok);
  assertClose(parsed.value, 95 * LB / 3600 / 684, 1e-12);
  assertEquals(
    parsed.note,
    "95 lb/h is a mass flow; turned into a volume flow with a density of 684 kg/m³.",
  );
  const bounded = parseQuantity("95 lb/h", "flow", { density_kg_m3: 684, max: 1e-5 });
  assert(!bounded.ok);
  assertStringIncludes(bounded.message, "highest allowed, 54.28 lb/h (600 cc/min)");
});

Deno.test("parseQuantity() uses the density of the call, not of an earlier one", () => {
  const first = parseQuantity("90 lb/h", "flow", { density_kg_m3: 700 });
  const second = parseQuantity("90 lb/h", "flow", { density_kg_m3: 350 });
  assert(first.ok && second.ok);
  assertClose(second.value, 2 * first.value, 1e-14);
});

Deno.test("parseQuantity() throws at a density that is none", () => {
  for (const density_kg_m3 of [0, -1, NaN, Infinity]) {
    assertThrows(() => parseQuantity("95 lb/h", "flow", { density_kg_m3 }), RangeError, "density");
  }
});

/** Texts near to quantities, where the reader could trip. */
const nearly = fc.array(
  fc.constantFrom(
    "1",
    "0",
    "5",
    "1/2",
    ".",
    ",",
    " ",
    "-",
    "+",
    "e",
    "E3",
    "^",
    "²",
    "½",
    "(",
    ")",
    "/",
    "*",
    "·",
    "%",
    "°",
    "'",
    '"',
    "mm",
    "in",
    "bar",
    "psi",
    "lb",
    "hp",
    "h",
    "kWh",
    "K",
    "C",
    "degC",
    "per",
    "sq",
    "cu",
    "min",
    "rad",
    "Hg",
    "H2O",
    "gal",
    "US",
    "x10",
    "g",
    "a",
    "\u202f",
    "\u2212",
    "µ",
    "constructor",
    "deg",
    ":1",
    "℃",
    "\ud800",
  ),
  { maxLength: 8 },
).map((parts) => parts.join(""));

for (
  const [name, texts] of [["any text", fc.string({ unit: "binary", maxLength: 150 })], [
    "nearly a quantity",
    nearly,
  ]] as const
) {
  Deno.test(`parseQuantity() gives a value within bounds or a message: ${name}`, () => {
    const kinds = fc.constantFrom(...Object.keys(KINDS) as Kind[]);
    fc.assert(
      fc.property(texts, kinds, (text, kind) => {
        const parsed = parseQuantity(text, kind, { field: "Box", density_kg_m3: 700 });
        if (parsed.ok) {
          assert(parsed.value >= KINDS[kind].min * (1 + 1e-9) - 1e-9);
          assert(parsed.value <= KINDS[kind].max * (1 + 1e-9));
        } else {
          assertMatch(parsed.message, /^Box: .+\.$/);
          assert(parsed.message.length < 300, parsed.message);
          assert(!/NaN|Infinity|undefined/.test(parsed.message.replace(/".*"/, "")));
        }
        // The second reading comes from the cache.
        assertEquals(parseQuantity(text, kind, { field: "Box", density_kg_m3: 700 }), parsed);
      }),
      { numRuns: 3000, seed: 7 },
    );
  });
}
