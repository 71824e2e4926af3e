import {
  type DisplayUnit,
  displayUnit,
  formatIn,
  formatNumber,
  formatQuantity,
  inBoth,
  type Kind,
  KINDS,
  parseQuantity,
  type System,
  unitsReady,
} from "@/lib/units/mod.ts";
import { assert, assertEquals, assertThrows } from "@std/assert";
import fc from "fast-check";
import { assertClose } from "../../helpers/assert_close.ts";

await unitsReady();

const ALL = Object.keys(KINDS) as Kind[];
const SYSTEMS: System[] = ["metric", "inch"];

const SHOWN: [si: number, kind: Kind, metric: string, inch: string][] = [
  [0, "pressure", "0 bar", "0 psi"],
  [299922, "pressure", "3.00 bar", "43.5 psi"],
  [5000, "pressure", "0.050 bar", "0.725 psi"],
  [123, "pressure", "0.0012 bar", "0.0178 psi"],
  [24, "pressure", "24 Pa", "0.0035 psi"],
  [-30000, "pressure", "−0.300 bar", "−4.35 psi"],
  [999600, "pressure", "10.0 bar", "145 psi"],
  [313e3, "power", "313 kW", "420 hp"],
  [150, "power", "150 W", "150 W"],
  [1e-3 / 60, "flow", "1000 cc/min", "1000 cc/min"],
  [0.255 / 3600, "flow", "4250 cc/min", "4250 cc/min"],
  [0.255 / 3600, "pumpFlow", "255 L/h", "67.4 US gal/h"],
  [0.03 / 3600, "pumpFlow", "30.0 L/h", "7.93 US gal/h"],
  [0.012, "massFlow", "43.2 kg/h", "95.2 lb/h"],
  [0.365 / 3.6e6, "bsfc", "365 g/kWh", "0.600 lb/(hp h)"],
  [0.014, "length", "14.00 mm", "0.551 in"],
  [0.015875, "length", "15.88 mm", "0.625 in"],
  [3, "length", "3.000 m", "9.84 ft"],
  [600, "length", "600 m", "1969 ft"],
  [20e-6, "length", "20.0 µm", "0.79 thou"],
  [305.15, "temperature", "32.0 °C", "89.6 °F"],
  [15, "temperatureDifference", "15.0 K", "27.0 °F"],
  [7000 / 60, "rotation", "7000 rpm", "7000 rpm"],
  [12300 / 60, "rotation", "12\u202f300 rpm", "12\u202f300 rpm"],
  [13.5, "voltage", "13.5 V", "13.5 V"],
  [1.2e-3, "duration", "1.20 ms", "1.20 ms"],
  [600, "duration", "10 min", "10 min"],
  [60, "duration", "60 s", "60 s"],
  [605, "duration", "10.1 min", "10.1 min"],
  [2e-3, "duration", "2.00 ms", "2.00 ms"],
  [745, "density", "745.0 kg/m³", "6.217 lb/US gal"],
  [25, "torque", "25.0 N m", "18.4 lb ft"],
  [Math.PI / 2, "angle", "90.0°", "90.0°"],
  [0.853, "ratio", "85.3 %", "85.3 %"],
  [43e6, "heatingValue", "43.0 MJ/kg", "18\u202f487 Btu/lb"],
  [1.5e-7, "leakRate", "1.5×10⁻⁶ mbar L/s", "1.5×10⁻⁶ mbar L/s"],
];

for (const [si, kind, metric, inch] of SHOWN) {
  Deno.test(`formatQuantity() shows ${si} as ${metric} or ${inch}`, () => {
    assertEquals(formatQuantity(si, kind, "metric"), metric);
    assertEquals(formatQuantity(si, kind, "inch"), inch);
    assertEquals(inBoth(si, kind, "metric"), metric === inch ? metric : `${metric} (${inch})`);
  });
}

/** Each unit that is shown, with its kind. */
const UNITS: [kind: Kind, unit: DisplayUnit][] = ALL.flatMap((kind) =>
  SYSTEMS.flatMap((system) => KINDS[kind][system].map((unit): [Kind, DisplayUnit] => [kind, unit]))
);

Deno.test("each display unit has the scale and offset that mathjs gives it", () => {
  for (const [kind, { symbol, scale, offset = 0 }] of UNITS) {
    const options = { min: -Infinity, max: Infinity };
    const zero = parseQuantity(`0 ${symbol}`, kind, options);
    const one = parseQuantity(`1 ${symbol}`, kind, options);
    assert(zero.ok && one.ok, symbol);
    assertClose(one.value - zero.value, scale, 1e-12 + (offset === 0 ? 0 : 1e-10), symbol);
    assertClose(zero.value, offset, 1e-12, symbol);
  }
});

Deno.test("each list of display units begins with the main one and reaches down to nothing", () => {
  for (const kind of ALL) {
    for (const system of SYSTEMS) {
      const units = KINDS[kind][system];
      assertEquals(units[0], displayUnit(kind, system));
      assertEquals(units.filter((unit) => unit.from === undefined).length, 1, `${kind} ${system}`);
    }
  }
});

Deno.test("what formatQuantity() shows is read back as the same, to the last digit shown", () => {
  const size = fc.double({ min: -9, max: 9, noNaN: true }).map((power) => 10 ** power);
  fc.assert(
    fc.property(
      fc.constantFrom(...ALL),
      fc.constantFrom(...SYSTEMS),
      size,
      fc.boolean(),
      (kind, system, positive, negative) => {
        const value = negative ? -positive : positive;
        const text = formatQuantity(value, kind, system);
        const back = parseQuantity(text, kind, { min: -Infinity, max: Infinity });
        assert(back.ok, back.ok ? "" : back.message);
        const shown = text.replace(/^[−\d\u202f.×⁻⁰-⁹¹²³]+ ?/, "");
        const unit = KINDS[kind][system].find(({ symbol }) => symbol === shown);
        assert(unit, text);
        const allowed = 0.5 * lastDigit(text) * unit.scale * (1 + 1e-6) + 1e-12 * positive;
        assert(Math.abs(back.value - value) <= allowed, `${value} shown as ${text}`);
      },
    ),
    { numRuns: 5000, seed: 7 },
  );
});

/** What one of the last figure shown is worth. */
function lastDigit(text: string): number {
  const [, decimals = "", power = "0"] =
    text.match(/^−?[\d\u202f]+(?:\.(\d+))?(?:×10([⁻⁰-⁹¹²³]+))?/) ??
      [];
  const plain = [...power].map((sign) => sign === "⁻" ? "-" : sign.normalize("NFKC")).join("");
  return 10 ** (Number(plain) - decimals.length);
}

Deno.test("formatIn() gives two good figures or more in units that are shown by their digits", () => {
  for (const [kind, { symbol, scale, offset, fixed }] of UNITS) {
    if (fixed || offset !== undefined) continue;
    for (const number of [0.0999, 0.999, 9.96, 54.4, 999.6]) {
      const text = formatIn(number * scale, kind, symbol);
      const back = parseQuantity(text, kind, { min: -Infinity, max: Infinity });
      assert(back.ok);
      assertClose(back.value / scale, number, 0.05, `${kind} ${text}`);
    }
  }
});

Deno.test("no way of showing takes what is not finite", () => {
  for (const value of [NaN, Infinity, -Infinity]) {
    for (const kind of ALL) {
      assertThrows(() => formatQuantity(value, kind, "metric"), RangeError, "must be finite");
      assertThrows(() => inBoth(value, kind, "inch"), RangeError, "must be finite");
    }
    assertThrows(() => formatIn(value, "length", "mm"), RangeError, "must be finite");
    assertThrows(() => formatNumber(value), RangeError, "must be finite");
  }
});

Deno.test("formatIn() keeps to the unit and the decimals asked for", () => {
  assertEquals(formatIn(3, "length", "mm", 0), "3000 mm");
  assertEquals(formatIn(1e-6, "length", "mm", 3), "0.001 mm");
  assertEquals(formatIn(-1e-9, "length", "mm", 2), "0.00 mm");
  assertEquals(formatIn(305.15, "temperature", "°F", 0), "90 °F");
  assertEquals(formatIn(98.06, "pressure", "bar"), "9.81×10⁻⁴ bar");
  assertThrows(() => formatIn(1, "length", "furlong"), RangeError, "furlong");
});

const NUMBERS: [value: number, digits: number, text: string][] = [
  [0, 3, "0"],
  [-0, 3, "0"],
  [4, 3, "4"],
  [100, 3, "100"],
  [0.85, 3, "0.85"],
  [0.018512, 3, "0.0185"],
  [0.018512, 4, "0.01851"],
  [0.99996, 3, "1"],
  [9.996, 3, "10"],
  [-2.5, 3, "−2.5"],
  [9999, 3, "9999"],
  [9999.9, 3, "10\u202f000"],
  [123456, 3, "123\u202f456"],
  [1.23e8, 3, "1.23×10⁸"],
  [-2.5e-9, 3, "−2.5×10⁻⁹"],
];

for (const [value, digits, text] of NUMBERS) {
  Deno.test(`formatNumber() shows ${value} with ${digits} digits as ${text}`, () => {
    assertEquals(formatNumber(value, digits), text);
  });
}
