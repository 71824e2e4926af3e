/** Walls and ligaments of rails by chance, against least distances sampled in space. */
import { assert, assertEquals } from "@std/assert";
import fc from "fast-check";
import {
  clashes,
  type Hole,
  holeTable,
  type Layout,
  layRail,
  leastDistance,
  neighbours,
  thinWalls,
  wallOf,
} from "@/lib/layout/mod.ts";
import { arbitraryRail } from "./arbitrary_rail.ts";
import { cloud, fromSolid, pointOf, sampledDistance, sampledWall, solidsOf } from "./sampled.ts";

/** What the issue asks for. */
const TOLERANCE_m = 1e-5;

/** The distance's own promise and the rounding of a sampled one [m]. */
const FINE_m = 2e-6;

const rails = (numRuns: number, seed: number): Layout[] =>
  fc.sample(arbitraryRail, { numRuns, seed }).map(layRail);

const pairs = (holes: readonly Hole[]): [Hole, Hole][] =>
  holes.flatMap((a, i) => holes.slice(i + 1).map((b): [Hole, Hole] => [a, b]));

Deno.test("ligaments of 40 rails by chance are the least distances sampled in space", () => {
  let apart = 0;
  let meeting = 0;
  let off_m = 0;
  for (const { holes } of rails(40, 41)) {
    for (const [a, b] of pairs(holes)) {
      const found_m = leastDistance(a, b);
      const sampled_m = sampledDistance(a, b);
      const what = `${a.id} and ${b.id}: ${JSON.stringify([a, b])}`;
      if (found_m > 0) {
        const difference = Math.abs(found_m - sampled_m);
        assert(difference < TOLERANCE_m, `${found_m} against ${sampled_m}, ${what}`);
        off_m = Math.max(off_m, difference);
        apart++;
      } else {
        assert(sampled_m < TOLERANCE_m, `${found_m} against ${sampled_m}, ${what}`);
        meeting++;
      }
    }
  }
  assert(apart > 500 && meeting > 100, `${apart} pairs apart, ${meeting} that meet`);
  assert(off_m < FINE_m, `the worst is ${off_m} m off`);
});

Deno.test("walls of 100 rails by chance are the least ways out sampled in space", () => {
  let round = 0;
  for (const { bar, holes } of rails(100, 42)) {
    for (const hole of holes) {
      const { distance_m } = wallOf(hole, bar);
      const sampled_m = sampledWall(hole, bar);
      assert(
        Math.abs(distance_m - sampled_m) < FINE_m,
        `${hole.id}: ${distance_m} against ${sampled_m}, ${JSON.stringify([bar, hole])}`,
      );
      if (bar.shape === "round") round++;
    }
  }
  assert(round > 200, `${round} holes in round bars`);
});

Deno.test("distances are the same either way round, to the last bit", () => {
  for (const { holes } of rails(20, 43)) {
    for (const [a, b] of pairs(holes)) assertEquals(leastDistance(a, b), leastDistance(b, a));
  }
});

Deno.test("moving two holes apart never brings them nearer, nor changes more than the move", () => {
  let moved = 0;
  for (const { holes } of rails(20, 44)) {
    for (const [a, b] of pairs(holes)) {
      if (a.feature === "gallery" || a.feature === "plug" || b.feature === "plug") continue;
      const way = a.entry[0] < b.entry[0] ? 1 : -1;
      let before_m = leastDistance(a, b);
      for (const step_m of [1e-4, 1e-3, 4e-3, 2e-2]) {
        const [x, y, z] = b.entry;
        const after_m = leastDistance(a, { ...b, entry: [x + way * step_m, y, z] });
        // Tilted holes may reach under each other, so only what stands square to the bar counts.
        if (a.into[0] === 0 && b.into[0] === 0) {
          assert(after_m >= before_m - FINE_m, `${a.id}, ${b.id}: ${before_m} to ${after_m}`);
          before_m = after_m;
          moved++;
        }
        const change_m = Math.abs(after_m - leastDistance(a, b));
        assert(change_m <= step_m + FINE_m, `${a.id}, ${b.id}: ${change_m} by ${step_m}`);
      }
    }
  }
  assert(moved > 200, `${moved} moves`);
});

Deno.test("no hole in the table of a rail with walls lies outside the bar", () => {
  let rows = 0;
  for (const layout of rails(150, 45)) {
    if (thinWalls(layout, 1e-3).length > 0) continue;
    const { length_m, height_m, width_m, shape } = layout.bar;
    holeTable(layout).forEach((row, i) => {
      const hole = layout.holes[i] as Hole;
      const along = (depth_m: number) =>
        [row.x_m, row.y_m, row.z_m].map((at, k) => at + depth_m * (hole.into[k] as number));
      for (const depth_m of [0, row.depth_m]) {
        const [x = NaN, y = NaN, z = NaN] = along(depth_m);
        const across = shape === "round"
          ? Math.hypot(y, z - height_m / 2) <= height_m / 2 + 1e-12
          : Math.abs(y) <= width_m / 2 + 1e-12 && z >= -1e-12 && z <= height_m + 1e-12;
        assert(
          across && x >= -1e-12 && x <= length_m + 1e-12,
          `${row.id} at ${depth_m}: ${x}, ${y}, ${z} in ${JSON.stringify(layout.bar)}`,
        );
      }
      rows++;
    });
  }
  assert(rows > 100, `${rows} rows`);
});

Deno.test("a clash is never farther apart than the metal between two holes outside the gallery", () => {
  let looked = 0;
  for (const layout of rails(60, 46)) {
    const gallery = layout.holes.find(({ feature }) => feature === "gallery") as Hole;
    const hollow = solidsOf(gallery);
    const inMetal = (hole: Hole) =>
      cloud(solidsOf(hole)).map(pointOf)
        .filter((p) => Math.min(...hollow.map((solid) => fromSolid(p, solid))) > 0);
    for (const { a, b, distance_m } of clashes(layout, { ligament_m: 4e-3, shareOfSmaller: 0 })) {
      const [first, second] = [a, b].map((id) => layout.holes.find((h) => h.id === id) as Hole);
      if (first === undefined || second === undefined || first.feature === "gallery") continue;
      const cloudOfSecond = inMetal(second);
      const nearest = Math.min(
        ...inMetal(first).map((p) =>
          Math.min(...cloudOfSecond.map((q) => Math.hypot(p[0] - q[0], p[1] - q[1], p[2] - q[2])))
        ),
      );
      assert(distance_m <= nearest + FINE_m, `${a} and ${b}: ${distance_m} against ${nearest}`);
      looked++;
    }
  }
  assert(looked > 20, `${looked} clashes`);
});

Deno.test("every hole's neighbour is the nearest of all", () => {
  for (const layout of rails(15, 47)) {
    const all = clashes(layout, { ligament_m: 10, shareOfSmaller: 0 });
    for (const { hole, distance_m } of neighbours(layout)) {
      const own = all.filter(({ a, b }) => a === hole || b === hole);
      assertEquals(distance_m, Math.min(...own.map((clash) => clash.distance_m)), hole);
    }
  }
});
