import { assertAlmostEquals, assertThrows } from "@std/assert";
import { findRoot, InputError } from "@/lib/basics/mod.ts";

const SOURCE = "exact roots, by algebra";

const CASES: [name: string, f: (x: number) => number, from: number, to: number, root: number][] = [
  ["a straight line", (x) => 3 * x - 1, -5, 5, 1 / 3],
  ["a cubic with a flat inflexion", (x) => (x - 1) ** 3, 0, 3, 1],
  ["a steep exponential", (x) => Math.exp(20 * x) - 2, -1, 1, Math.LN2 / 20],
  ["a root at one end", (x) => x, 0, 1, 0],
  ["a bracket given backwards", (x) => x * x - 2, 2, 0, Math.SQRT2],
  ["a logarithm", (x) => Math.log(x), 1e-6, 10, 1],
];

for (const [name, f, from, to, root] of CASES) {
  Deno.test(`findRoot() finds the root of ${name} (${SOURCE})`, () => {
    assertAlmostEquals(findRoot(f, { from, to, tolerance: 1e-12 }), root, 1e-5);
    if (name.includes("flat")) return; // a triple root can't be placed closer in doubles
    assertAlmostEquals(findRoot(f, { from, to, tolerance: 1e-12 }), root, 1e-11);
  });
}

Deno.test("findRoot() needs few evaluations on a smooth function", () => {
  let calls = 0;
  findRoot((x) => (calls++, x ** 3 - x - 2), { from: 1, to: 2, tolerance: 1e-12 });
  if (calls > 12) throw new Error(`${calls} evaluations; bisection alone would take 40`);
});

Deno.test("findRoot() refuses a bracket without a sign change", () => {
  assertThrows(() => findRoot((x) => x * x + 1, { from: -1, to: 1, tolerance: 1e-9 }), InputError);
  assertThrows(() => findRoot(() => NaN, { from: -1, to: 1, tolerance: 1e-9 }), InputError);
});
