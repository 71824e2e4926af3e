import { evaluateFormula, formulaNames, formulaToTex, unitsReady } from "@/lib/units/mod.ts";
import { assert, assertEquals, assertStringIncludes, assertThrows } from "@std/assert";
import temml from "temml";
import { assertClose } from "../../helpers/assert_close.ts";

await unitsReady();

const INPUTS = {
  drop: { value: 3e5, unit: "Pa" },
  density: { value: 745, unit: "kg/m^3" },
  bore: { value: 0.012, unit: "m" },
  speed: { value: 100, unit: "1/s" },
  bsfc: { value: 1e-7, unit: "kg/J" },
  power: { value: 3e5, unit: "W" },
  share: { value: 0.85, unit: "-" },
  angle: { value: Math.PI / 6, unit: "rad" },
  hot: { value: 350, unit: "K" },
  cold: { value: 280, unit: "K" },
  viscosity: { value: 5e-4, unit: "Pa s" },
};

const WITH_UNITS: [formula: string, unit: string, value: number][] = [
  ["sqrt(2 * drop / density)", "m/s", Math.sqrt(2 * 3e5 / 745)],
  ["bsfc * power", "kg/s", 0.03],
  ["pi / 4 * bore^2", "m^2", Math.PI / 4 * 0.012 ** 2],
  ["bore * speed", "m/s", 1.2],
  ["1 / speed", "s", 0.01],
  ["speed / 2", "1/s", 50],
  ["bsfc * power / speed", "kg", 3e-4],
  ["density * bore^2 * speed / viscosity", "-", 745 * 0.012 ** 2 * 100 / 5e-4],
  ["sin(angle) * bore", "m", 0.006],
  ["2 * angle", "rad", Math.PI / 3],
  ["(hot - cold) / hot", "-", 0.2],
  ["max(hot, cold)", "K", 350],
  ["min(hot, cold)", "K", 280],
  ["abs(cold - hot)", "K", 70],
  ["log(hot / cold)", "-", Math.log(350 / 280)],
  ["log10(hot / cold)", "-", Math.log10(350 / 280)],
  ["exp(-share)", "-", Math.exp(-0.85)],
  ["hot > cold ? bore : 2 * bore", "m", 0.012],
  ["share < 0.5 ? bore : 2 * bore", "m", 0.024],
  ["(bore^4)^0.25", "m", 0.012],
];

for (const [formula, unit, value] of WITH_UNITS) {
  Deno.test(`evaluateFormula() gives ${formula} in ${unit}`, () => {
    assertClose(evaluateFormula(formula, INPUTS, { unit }), value, 1e-12);
  });
}

const WRONG: [formula: string, unit: string, why: string][] = [
  ["drop / density", "m/s", "is not a number in m/s"],
  ["drop + density", "Pa", ""],
  ["share", "m", "is not a number in m"],
  ["bore", "-", "is not a finite number"],
  ["bore * speed", "m^2", "is not a number in m^2"],
  ["sqrt(-share)", "-", "is not a finite number"],
  ["1 / (share - share)", "-", "is not a finite number"],
  ["bore * nothing", "m", "nothing is no input"],
  // "m" would be a metre to mathjs.
  ["share * m", "m", "m is no input"],
  ["bore *", "m", ""],
];

for (const [formula, unit, why] of WRONG) {
  Deno.test(`evaluateFormula() refuses ${formula} in ${unit}`, () => {
    assertThrows(() => evaluateFormula(formula, INPUTS, { unit }), Error, why);
  });
}

Deno.test("evaluateFormula() puts bare numbers into a fit", () => {
  const inputs = { celsius: { value: 20, unit: "K" }, bore: { value: 2, unit: "m" } };
  assertEquals(evaluateFormula("celsius + bore^2", inputs, { unit: "Pa" }, true), 24);
  assertThrows(() => evaluateFormula("log(0 * bore)", inputs, { unit: "Pa" }, true), Error);
});

Deno.test("formulaNames() lists inputs, not functions or pi", () => {
  assertEquals(formulaNames("max(a, b) < pi ? sqrt(c) : log10(a / d_t) * e"), [
    "a",
    "b",
    "c",
    "d_t",
    "e",
  ]);
  assertEquals(formulaNames("2 * pi"), []);
});

const SYMBOLS = { a: "\\alpha", rho: "\\rho", d: "d_t" };

/** Formula and TeX that says the same, by the rules of the order of operations. */
const TEX: [formula: string, tex: string][] = [
  ["a / (b * rho)", "\\frac{\\alpha}{\\mathrm{b} \\, \\rho}"],
  ["2 * 3 * a", "2 \\cdot 3 \\, \\alpha"],
  ["a * 4", "\\alpha \\cdot 4"],
  ["a - (d - rho)", "\\alpha - \\left(d_t - \\rho\\right)"],
  ["a - d - rho", "\\alpha - d_t - \\rho"],
  ["(a - d) * rho", "\\left(\\alpha - d_t\\right) \\, \\rho"],
  ["a * (-d)", "\\alpha \\, \\left(-d_t\\right)"],
  ["-(a + d) * rho", "-\\left(\\alpha + d_t\\right) \\, \\rho"],
  ["-a^2", "-{\\alpha}^{2}"],
  ["(-a)^2", "{\\left(-\\alpha\\right)}^{2}"],
  ["(a * d)^2", "{\\left(\\alpha \\, d_t\\right)}^{2}"],
  ["(a / d)^0.5", "{\\left(\\frac{\\alpha}{d_t}\\right)}^{0.5}"],
  ["(a^2)^3", "{\\left({\\alpha}^{2}\\right)}^{3}"],
  ["sqrt(a)^2", "{\\sqrt{\\alpha}}^{2}"],
  ["a + (-d)", "\\alpha + \\left(-d_t\\right)"],
  ["log(a) + log10(d)", "\\ln\\left(\\alpha\\right) + \\log_{10}\\left(d_t\\right)"],
  ["1.5e-7 * a", "1.5 \\times 10^{-7} \\, \\alpha"],
  ["pi * x_1", "\\pi \\, \\mathrm{x\\_1}"],
  ["max(a, d)", "\\max\\left(\\alpha, d_t\\right)"],
  ["abs(a)", "\\left|\\alpha\\right|"],
  [
    "a < 2300 ? 64 / a : a <= 4000 ? d : rho",
    "\\begin{cases} \\frac{64}{\\alpha} & \\text{if } \\alpha < 2300 \\\\ " +
    "d_t & \\text{if } \\alpha \\le 4000 \\\\ \\rho & \\text{otherwise} \\end{cases}",
  ],
];

for (const [formula, tex] of TEX) {
  Deno.test(`formulaToTex() writes ${formula}, and it renders`, () => {
    assertEquals(formulaToTex(formula, SYMBOLS), tex);
    const mathml = temml.renderToString(tex, { displayMode: true, throwOnError: true });
    assertStringIncludes(mathml, "<math");
    assert(!mathml.includes("temml-error"));
  });
}

Deno.test("formulaToTex() refuses what it cannot write", () => {
  assertThrows(() => formulaToTex("[1, 2]", {}), Error, "ArrayNode");
  assertThrows(() => formulaToTex("a = 2", {}), Error, "AssignmentNode");
});
