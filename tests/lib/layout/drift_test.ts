/** Walls and ligaments once the drill has wandered. */
import { assert, assertAlmostEquals } from "@std/assert";
import fc from "fast-check";
import {
  type Hole,
  type Layout,
  layRail,
  leastDistance,
  type Vec3,
  wallOf,
  withDrift,
} from "@/lib/layout/mod.ts";
import type { ReferenceCase } from "../../helpers/checks.ts";
import { arbitraryRail } from "./arbitrary_rail.ts";
import { barOf, galleryOf, MM } from "./holes.ts";

const REFERENCE = new URL("../../reference/inspection.json", import.meta.url);
const PUBLISHED: readonly ReferenceCase[] = JSON.parse(Deno.readTextFileSync(REFERENCE));

for (
  const { id, inputs, expected, source } of PUBLISHED.filter((c) => c.id.startsWith("K-wander"))
) {
  Deno.test(`${id}: ${source}`, () => {
    const { length_mm: length, drift_mm: drift, nominal_wall_mm: wall } = inputs;
    const layout = {
      bar: barOf(length, 12 + 2 * wall),
      holes: [galleryOf(length, 12, 6 + wall)],
    };
    const [gallery] = withDrift(layout, { drift_m: drift * MM, drilledFrom: "one" }).holes;
    assert(gallery !== undefined);
    const left_m = wallOf(gallery, layout.bar).distance_m;
    assertAlmostEquals(left_m / MM, (expected as { least_wall_mm: number }).least_wall_mm, 1e-9);
  });
}

const DRIFT_m = 1 * MM;

/** The gallery as really drilled, its far end moved aside in one direction. */
function wandered(gallery: Hole, turn: number): Hole {
  const length = gallery.profile.filter(({ cut }) => cut === "bore").at(-1)?.to_m ?? 0;
  const way = gallery.into[0];
  const into: Vec3 = [
    way * Math.sqrt(1 - (DRIFT_m / length) ** 2),
    Math.cos(turn) * DRIFT_m / length,
    Math.sin(turn) * DRIFT_m / length,
  ];
  return { ...gallery, into };
}

const galleryIn = (layout: Layout): Hole =>
  layout.holes.find(({ feature }) => feature === "gallery") as Hole;

Deno.test("drift from one end: the least over all directions of galleries really tilted", () => {
  const turns = Array.from({ length: 72 }, (_, i) => i * Math.PI / 36);
  let looked = 0;
  for (const spec of fc.sample(arbitraryRail, { numRuns: 70, seed: 61 })) {
    if (spec.gallery.drilledFrom === "both") continue;
    const layout = layRail(spec);
    const gallery = galleryIn(layout);
    const worst = galleryIn(withDrift(layout, { drift_m: DRIFT_m, drilledFrom: "one" }));
    const galleries = turns.map((turn) => wandered(gallery, turn));
    const wall_m = wallOf(worst, layout.bar).distance_m;
    const walls = galleries.map((one) => wallOf(one, layout.bar).distance_m);
    // Less, as the directions tried are 5 degrees apart and a hole that leans is shorter along
    // the bar; more by next to nothing, as a hole that leans is wider across it.
    const least_m = Math.min(...walls);
    assert(wall_m <= least_m + 2e-7 && wall_m > least_m - 5e-6, `${wall_m} against ${least_m}`);
    for (const screw of layout.holes.filter(({ feature }) => feature === "screw")) {
      const least_m = Math.min(...galleries.map((one) => leastDistance(one, screw)));
      if (least_m <= 0) continue;
      const found_m = leastDistance(worst, screw);
      assert(found_m <= least_m + 2e-7, `${found_m} against ${least_m}`);
      assert(found_m > least_m - 5e-6, `${found_m} against ${least_m}`);
      looked++;
    }
  }
  assert(looked > 10, `${looked} screws`);
});

Deno.test("drilled from both ends the gallery wanders most in the middle", () => {
  const layout = { bar: barOf(300, 30), holes: [galleryOf(300, 12, 15)] };
  const gallery = galleryIn(withDrift(layout, { drift_m: 0.5 * MM, drilledFrom: "both" }));
  assertAlmostEquals(wallOf(gallery, layout.bar).distance_m, 8.5 * MM, 1e-12);
  const ends = [gallery.profile.at(0)?.fromDiameter_m, gallery.profile.at(-1)?.toDiameter_m];
  for (const end of ends) assertAlmostEquals(end ?? NaN, 12 * MM, 1e-12);
});
