import { assert, assertAlmostEquals, assertThrows } from "@std/assert";
import { InputError, linearCurve, monotoneCurve, type Point } from "@/lib/basics/mod.ts";
import fc from "fast-check";

const rising = fc.array(
  fc.tuple(
    fc.double({ min: 0.1, max: 5, noNaN: true }),
    fc.double({ min: 0, max: 9, noNaN: true }),
  ),
  {
    minLength: 2,
    maxLength: 9,
  },
).map((steps): Point[] => {
  let x = 0;
  return steps.map(([dx, y]) => [x += dx, y] as const);
});

Deno.test("monotoneCurve() passes through every point", () => {
  fc.assert(fc.property(rising, (points) => {
    const curve = monotoneCurve(points);
    for (const [x, y] of points) assertAlmostEquals(curve(x), y, 1e-9);
  }));
});

Deno.test("monotoneCurve() never leaves the band between two neighbouring points", () => {
  fc.assert(fc.property(rising, fc.double({ min: 0, max: 1, noNaN: true }), (points, share) => {
    const curve = monotoneCurve(points);
    for (const [i, [x1, y1]] of points.entries()) {
      const [x0, y0] = points[i - 1] ?? [x1, y1];
      const y = curve(Math.min(x1, x0 + share * (x1 - x0)));
      assert(
        y >= Math.min(y0, y1) - 1e-9 && y <= Math.max(y0, y1) + 1e-9,
        `${y} beyond ${y0} and ${y1}`,
      );
    }
  }));
});

Deno.test("monotoneCurve() is exact for a straight line", () => {
  const curve = monotoneCurve([[0, 1], [1, 3], [4, 9]]);
  for (const x of [0, 0.3, 2.2, 4]) assertAlmostEquals(curve(x), 1 + 2 * x, 1e-12);
});

Deno.test("curves refuse too few points, points that do not rise, and places outside", () => {
  for (const make of [monotoneCurve, linearCurve]) {
    assertThrows(() => make([[0, 0]]), InputError, "at least two");
    assertThrows(() => make([[0, 0], [0, 1]]), InputError, "rise strictly");
    assertThrows(() => make([[0, 0], [1, 1]])(1.01), InputError, "must be >= 0 and <= 1");
    assertThrows(() => make([[0, 0], [1, 1]])(NaN), InputError);
  }
});
