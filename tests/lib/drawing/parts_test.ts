/** The small parts of drawing: labels along a line, hatching, scales. */
import { assert, assertEquals } from "@std/assert";
import fc from "fast-check";
import {
  drawingSheets,
  hatchLines,
  largestScale,
  marksOf,
  type Point,
  SCALES,
} from "@/lib/drawing/mod.ts";
import { assertNear } from "./near.ts";
import { METRIC } from "./options.ts";
import { fourInjectors, profile } from "./sample_layouts.ts";

Deno.test("hatching covers an area less its holes, which may overlap and stick out", () => {
  const square = (x: number, y: number, side: number): Point[] => [
    [x, y],
    [x + side, y],
    [x + side, y + side],
    [x, y + side],
  ];
  const lines = hatchLines({
    kind: "area",
    layer: "hatching",
    outline: square(0, 0, 10),
    holes: [square(2, 2, 4), square(4, 4, 4), square(8, -2, 4)],
    pitch: 0.01,
  });
  const covered = lines.reduce(
    (sum, { from, to }) => sum + 0.01 * Math.hypot(to[0] - from[0], to[1] - from[1]),
    0,
  );
  // 100, less 16 + 16 - 4 of the two that overlap, less 2 x 2 of the one that sticks out.
  assertNear(covered, 100 - 28 - 4, 0.2);
});

Deno.test("the scale chosen fits, and the next larger one doesn't", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 2000, noNaN: true }), (length) => {
      const fits = (scale: number) => length * scale <= 259;
      const scale = largestScale(fits, 1);
      assert(SCALES.includes(scale));
      assert(fits(scale) || scale === SCALES.at(-1));
      const larger = SCALES[SCALES.indexOf(scale) - 1] ?? Infinity;
      assert(larger > 1 || !fits(larger));
    }),
    { seed: 7 },
  );
});

/** Where the words of the overview stand. */
function named(projection: "first-angle" | "third-angle", says: string): Point {
  const [overview] = drawingSheets(fourInjectors(), { ...METRIC, projection });
  const found = marksOf(overview?.shapes ?? []).find((mark) =>
    mark.kind === "text" && mark.says === says
  );
  assert(found?.kind === "text", says);
  return found.at;
}

Deno.test("first angle sets the view from below above the front and the datum end on the right, third angle otherwise", () => {
  const [, front] = named("first-angle", "Front");
  const [x] = named("first-angle", "Front");
  assert(named("first-angle", "Injector face")[1] > front);
  assert(named("first-angle", "Opposite face")[1] < front);
  assert(named("first-angle", "Datum end")[0] > x + 100);
  const [third] = [named("third-angle", "Front")];
  assert(named("third-angle", "Injector face")[1] < third[1]);
  assert(named("third-angle", "Opposite face")[1] > third[1]);
  assert(named("third-angle", "Datum end")[0] < third[0]);
});

Deno.test("the projection is first angle for millimetres and third for inches unless it is said", () => {
  const symbol = (system: "metric" | "inch") => {
    const [sheet] = drawingSheets(fourInjectors(), { ...METRIC, system });
    const small = marksOf(sheet?.shapes ?? []).filter((mark) =>
      mark.layer === "frame" && (mark.kind === "circle" || mark.kind === "polyline")
    );
    const circle = small.find((mark) => mark.kind === "circle");
    const cone = small.filter((mark) => mark.kind === "polyline").find(({ points }) =>
      Math.abs((points[1]?.[1] ?? 0) - (points[0]?.[1] ?? 0)) === 1.25
    );
    assert(circle?.kind === "circle" && cone?.kind === "polyline");
    return circle.centre[0] - (cone.points[0]?.[0] ?? 0);
  };
  assert(symbol("metric") > 0, "circles on the right of the cone");
  assert(symbol("inch") < 0, "circles on its left");
  assertEquals(symbol("metric"), 9 + 2.5);
});

Deno.test("a taper thread is called out once, with the drill below it", () => {
  const layout = fourInjectors();
  const holes = layout.holes.map((hole) =>
    hole.id !== "feed" ? hole : {
      ...hole,
      profile: profile(
        { cut: "thread", to: 4.87, d: 8.74, end: 8.43 },
        { cut: "thread", to: 6.92, d: 8.43 },
        { cut: "pilot", to: 11.51, d: 8.43 },
      ),
      thread: { name: "1/8-27 NPT", major_m: 0.0103, pitch_m: 0.00094, from_m: 0, to_m: 0.00692 },
    }
  );
  const calls = drawingSheets({ ...layout, holes }, METRIC).flatMap(({ shapes }) => shapes)
    .flatMap((shape) =>
      shape.kind === "dimension" && shape.measure === "call-out" && shape.holes.includes("feed")
        ? [shape.says]
        : []
    );
  assertEquals(calls, ["1/8-27 NPT x 6.92 / Ø8.43 x 11.51"]);
});
