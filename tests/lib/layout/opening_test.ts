/** Where holes open into the gallery. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { type Hole, openingOf, type Vec3, worstOpening } from "@/lib/layout/mod.ts";
import type { ReferenceCase } from "../../helpers/checks.ts";
import { Seeded } from "../../helpers/seeded.ts";
import { cut, galleryOf, holeAt, MM } from "./holes.ts";
import { fromSolid, solidsOf } from "./sampled.ts";

const REFERENCE = new URL("../../reference/sensor-port.json", import.meta.url);
const PUBLISHED: readonly ReferenceCase[] = JSON.parse(Deno.readTextFileSync(REFERENCE));

for (
  const { id, inputs, expected, source } of PUBLISHED.filter((c) => c.id.startsWith("D-break"))
) {
  Deno.test(`${id}: ${source}`, () => {
    const { gallery_axis_depth_mm: depth, gallery_dia_mm: bore, port_dia_mm: d } = inputs;
    const gallery = galleryOf(200, bore, 50 - depth);
    const port = holeAt("port", [100, 0, 50], [0, 0, -1], [
      cut("bore", 0, depth, d),
      cut("tip", depth, depth + d * 0.3, d, 0),
    ]);
    const want = expected as { first_open_mm: number; last_open_mm: number };
    const { first_m = NaN, last_m = NaN } = openingOf(port, gallery) ?? {};
    assertAlmostEquals(first_m / MM, want.first_open_mm, 1e-5);
    assertAlmostEquals(last_m / MM, want.last_open_mm, 1e-5);
  });
}

const gallery = galleryOf(200, 12, 20);

const piloted = (aside: number, tilt: number, pilot: number): Hole =>
  holeAt("pocket", [100, aside, 0], [Math.sin(tilt), 0, Math.cos(tilt)], [
    cut("bore", 0, 9, 14),
    cut("pilot", 9, 20, pilot),
    cut("tip", 20, 20 + 0.3 * pilot, pilot, 0),
  ], { feature: "pocket", face: "injectors", opensInto: ["gallery"] });

Deno.test("an off-line pilot, square or tilted, opens where sampled points of its side and bottom say", () => {
  const random = new Seeded(5);
  const [hollow] = solidsOf(gallery);
  assert(hollow !== undefined);
  for (let i = 0; i < 40; i++) {
    const [aside, tilt, pilot] = [
      random.between(-2, 2),
      i % 3 === 0 ? 0 : random.between(-0.3, 0.3),
      random.between(2, 6),
    ];
    const hole = piloted(aside, tilt, pilot);
    const { first_m = NaN, last_m = NaN, margin_m = NaN } = openingOf(hole, gallery) ?? {};
    // Down the axis in steps: the disc of the pilot, ring by ring.
    const step_m = 2e-6;
    let first: number | undefined;
    let last = 0;
    for (let depth_m = first_m - 1e-4; depth_m < last_m + 1e-4; depth_m += step_m) {
      const inside = discAt(hole, depth_m, pilot * MM / 2).map((p) => fromSolid(p, hollow) === 0);
      if (first === undefined && inside.some(Boolean)) first = depth_m;
      if (inside.some((one) => !one)) last = depth_m;
    }
    assertAlmostEquals(first ?? NaN, first_m, 3e-5);
    assertAlmostEquals(last, last_m, 3e-5);
    assertAlmostEquals(margin_m, (6 - Math.abs(aside) - pilot / 2) * MM, 1e-12);
  }
});

function discAt(hole: Hole, depth_m: number, radius_m: number): Vec3[] {
  const [ux, , uz] = hole.into;
  const middle = hole.entry.map((at, i) => at + depth_m * (hole.into[i] as number));
  const [x = 0, y = 0, z = 0] = middle;
  return Array.from({ length: 360 }, (_, i) => {
    const [c, s] = [radius_m * Math.cos(i * Math.PI / 180), radius_m * Math.sin(i * Math.PI / 180)];
    return [x + c * uz, y + s, z - c * ux];
  });
}

Deno.test("what a pilot leaves around it, by hand", () => {
  const opening = openingOf(piloted(0, 0, 6), gallery);
  // Gallery from 14 to 26 mm up; bore to 9 mm; point to 21.8 mm, its side leaves at 26 mm.
  assertAlmostEquals(opening?.above_m ?? NaN, 5 * MM, 1e-9);
  assertAlmostEquals(opening?.beyond_m ?? NaN, Math.sqrt(36 - 9) * MM, 1e-8);
  assertAlmostEquals(opening?.toFarWall_m ?? NaN, 4.2 * MM, 1e-8);
});

Deno.test("a pilot wider than the gallery never opens all round, and says by how much", () => {
  const opening = openingOf(piloted(1, 0, 12), gallery);
  assertAlmostEquals(opening?.margin_m ?? NaN, -1 * MM, 1e-12);
  assertEquals(opening?.last_m, undefined);
  assertAlmostEquals(opening?.first_m ?? NaN, 14 * MM, 1e-8);
});

Deno.test("a pocket whose bore meets the gallery has no metal left above it", () => {
  const deep = holeAt("pocket", [100, 0, 0], [0, 0, 1], [cut("bore", 0, 21, 14)], {
    feature: "pocket",
    opensInto: ["gallery"],
  });
  assert((openingOf(deep, gallery)?.above_m ?? 0) < 0);
});

Deno.test("past the gallery's end nothing opens, nor along it", () => {
  const past = { ...piloted(0, 0, 6), entry: [0.21, 0, 0] as Vec3 };
  assertEquals(openingOf(past, gallery), undefined);
  const alongIt = holeAt("port", [0, 0, 20], [1, 0, 0], [cut("bore", 0, 10, 14)]);
  assertEquals(openingOf(alongIt, gallery), undefined);
});

Deno.test("drift takes from the margin what it shifts the gallery by, half-way to the far end", () => {
  const worst = worstOpening(piloted(0, 0, 6), gallery, { drift_m: 1 * MM, drilledFrom: "one" });
  assertAlmostEquals(worst?.margin_m ?? NaN, (6 - 3 - 0.5) * MM, 1e-9);
  assertAlmostEquals(worst?.first_m ?? NaN, 13.5 * MM, 1e-8);
  assertAlmostEquals(worst?.above_m ?? NaN, (5 - 0.5 - 7 / 200) * MM, 1e-6);
  const both = worstOpening(piloted(0, 0, 6), gallery, { drift_m: 1 * MM, drilledFrom: "both" });
  assertAlmostEquals(both?.margin_m ?? NaN, (6 - 3 - 1) * MM, 1e-9);
});
