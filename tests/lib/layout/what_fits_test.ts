/** The biggest gallery and the nearest place. */
import { assert, assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import fc from "fast-check";
import {
  biggestGallery,
  clashes,
  type GalleryLimits,
  type Hole,
  type Layout,
  layRail,
  nearestThatFits,
  openingOf,
  type RailLayoutSpec,
  wallOf,
  withDrift,
} from "@/lib/layout/mod.ts";
import { arbitraryRail } from "./arbitrary_rail.ts";
import { barOf, cut, galleryOf, holeAt, MM, RAIL, stationAt } from "./holes.ts";

const LIMITS: GalleryLimits = {
  wall_m: 2 * MM,
  ligament_m: 2 * MM,
  shareOfSmaller: 0.25,
  above_m: 1 * MM,
  drift: { drift_m: 0.5 * MM, drilledFrom: "one" },
};

/** Whether a gallery of a bore leaves all that is wanted, read off the layout. */
function fits(spec: RailLayoutSpec, bore_m: number): boolean {
  const layout = withDrift(
    layRail({ ...spec, gallery: { ...spec.gallery, bore_m } }),
    LIMITS.drift,
  );
  const gallery = layout.holes[0] as Hole;
  const opens = layout.holes.filter(({ feature }) => feature === "pocket" || feature === "port");
  return wallOf(gallery, layout.bar).distance_m >= LIMITS.wall_m &&
    !clashes(layout, LIMITS).some(({ a }) => a === "gallery") &&
    opens.every((hole) => (openingOf(hole, gallery)?.above_m ?? Infinity) >= LIMITS.above_m);
}

Deno.test("the biggest gallery is held by the pocket's bottom, by hand", () => {
  // Axis at 19 mm, pockets to 8 mm, 1 mm between: 10 mm of radius, less the wander at the farther
  // pocket's far rim, 147 of 200 mm.
  const found = biggestGallery({ ...RAIL, bar: barOf(200, 60) }, LIMITS);
  assertEquals(found.heldBy, "pocket-2");
  assertAlmostEquals(found.bore_m ?? NaN, 2 * (10 - 0.5 * 147 / 200) * MM, 1e-6);
});

Deno.test("the biggest gallery is held by the nearer face, by hand", () => {
  const found = biggestGallery(RAIL, { ...LIMITS, above_m: 0 });
  assertEquals(found.heldBy, "opposite");
  assertAlmostEquals(found.bore_m ?? NaN, 2 * (30 - 19 - 2 - 0.5) * MM, 2e-7);
});

Deno.test("a plug's tapping drill holds the gallery", () => {
  const plug = {
    kind: "ring",
    bore_m: 9 * MM,
    depth_m: 8 * MM,
    leadMouth_m: 0,
    leadAngle_rad: 0.3,
  };
  const gallery = { ...RAIL.gallery, ends: { far: { ...plug, kind: "ring" as const } } };
  const found = biggestGallery({ ...RAIL, gallery }, LIMITS);
  assertEquals(found.heldBy, "plug-far");
  assertAlmostEquals(found.bore_m ?? NaN, 9 * MM, 2e-7);
});

Deno.test("where nothing fits the bore is left out and what stops it is named", () => {
  const found = biggestGallery({ ...RAIL, stations: [stationAt(60)] }, {
    ...LIMITS,
    wall_m: 0.012,
  });
  assertEquals(found, { heldBy: "opposite" });
});

Deno.test("the biggest gallery of 60 rails by chance fits, and a micrometre more doesn't", () => {
  let found = 0;
  for (const spec of fc.sample(arbitraryRail, { numRuns: 60, seed: 71 })) {
    const plain = { ...spec, gallery: { ...spec.gallery, ends: {} } };
    const { bore_m } = biggestGallery(plain, LIMITS);
    if (bore_m === undefined) {
      assert(!fits(plain, 1e-3), JSON.stringify(plain));
      continue;
    }
    assert(fits(plain, bore_m), `${bore_m}: ${JSON.stringify(plain)}`);
    assert(!fits(plain, bore_m + 1e-6), `${bore_m}: ${JSON.stringify(plain)}`);
    found++;
  }
  assert(found > 20, `${found} galleries`);
});

const BAR = barOf(200, 30);

const screw = (id: string, x: number, y = 0): Hole =>
  holeAt(id, [x, y, 30], [0, 0, -1], [cut("bore", 0, 30, 6)], { exit: "injectors" });

Deno.test("a hole that clashes moves to the nearer side, no farther than it must", () => {
  const layout = { bar: BAR, holes: [screw("a", 100), screw("b", 98)] };
  assertAlmostEquals(nearestThatFits(layout, "b", LIMITS) ?? NaN, 92 * MM, 1e-9);
});

Deno.test("a hole that fits stays, to the last bit", () => {
  const layout = { bar: BAR, holes: [screw("a", 100), screw("b", 60.12345)] };
  assertEquals(nearestThatFits(layout, "b", LIMITS), layout.holes[1]?.entry[0]);
});

Deno.test("a hole with too thin a side wall fits nowhere", () => {
  const layout = { bar: BAR, holes: [screw("a", 100, 11)] };
  assertEquals(nearestThatFits(layout, "a", LIMITS), undefined);
});

Deno.test("a port stays over the gallery's bore", () => {
  const blind: Hole = { ...galleryOf(120, 10, 15), exit: "datum-end" };
  const port = holeAt("port", [130, 0, 30], [0, 0, -1], [cut("bore", 0, 15, 6)], {
    feature: "port",
    opensInto: ["gallery"],
  });
  const at_m = nearestThatFits({ bar: BAR, holes: [blind, port] }, "port", LIMITS);
  assertAlmostEquals(at_m ?? NaN, 117 * MM, 1e-9);
});

Deno.test("a hole from an end, or none at all, can't be moved along the bar", () => {
  const layout = { bar: BAR, holes: [galleryOf(200, 10, 15)] };
  assertThrows(() => nearestThatFits(layout, "gallery", LIMITS), RangeError, "drilled from an end");
  assertThrows(() => nearestThatFits(layout, "no-such", LIMITS), RangeError, "no-such");
});

Deno.test("the nearest place in rails by chance fits, and none that is nearer does", () => {
  let moved = 0;
  for (const spec of fc.sample(arbitraryRail, { numRuns: 60, seed: 72 })) {
    const layout = layRail(spec);
    const clashing = new Set(clashes(layout, LIMITS).map(({ b }) => b));
    const hole = layout.holes.find(({ feature, id }) =>
      (feature === "port" || feature === "screw") && clashing.has(id)
    );
    if (hole === undefined) continue;
    const at_m = nearestThatFits(layout, hole.id, LIMITS);
    const from_m = hole.entry[0];
    const what = `${hole.id} from ${from_m} to ${at_m}: ${JSON.stringify(spec)}`;
    if (at_m !== undefined) {
      assert(free(layout, hole, at_m, 1e-8), what);
      moved++;
    }
    // Places at a whole tenth that lie nearer, spread over both ways.
    const reach = Math.floor(Math.abs((at_m ?? from_m + 0.05) - from_m) / 1e-4);
    for (let off = 1; off < reach; off += Math.max(1, Math.floor(reach / 12))) {
      for (const tenth of [Math.ceil(from_m / 1e-4) + off, Math.floor(from_m / 1e-4) - off]) {
        const near_m = tenth * 1e-4;
        if (near_m <= 0 || near_m >= layout.bar.length_m) continue;
        if (at_m !== undefined && Math.abs(near_m - from_m) > Math.abs(at_m - from_m) - 1e-8) {
          continue;
        }
        assert(!free(layout, hole, near_m, -1e-8), `${near_m} is nearer, ${what}`);
      }
    }
  }
  assert(moved > 15, `${moved} moves`);
});

/** Whether a hole is free of clashes and walls at a place, with a slack for rounding. */
function free(layout: Layout, hole: Hole, at_m: number, slack_m: number): boolean {
  const [, y, z] = hole.entry;
  const moved: Hole = { ...hole, entry: [at_m, y, z] };
  if (wallOf(moved, layout.bar).distance_m < LIMITS.wall_m - slack_m) return false;
  const gallery = layout.holes[0] as Hole;
  if (hole.opensInto.includes("gallery")) {
    const bore = gallery.profile.find((s) => s.cut === "bore");
    const ends = [0, bore?.to_m ?? 0].map((t) => gallery.entry[0] + t * gallery.into[0]);
    const half = (hole.profile.filter((s) => s.cut !== "tip").at(-1)?.toDiameter_m ?? 0) / 2;
    if (at_m - half < Math.min(...ends) - slack_m) return false;
    if (at_m + half > Math.max(...ends) + slack_m) return false;
  }
  return layout.holes.filter((other) => other.id !== hole.id).every((other) => {
    const holes = other.id === "gallery" ? [gallery, moved] : [gallery, other, moved];
    return clashes({ ...layout, holes }, LIMITS).every(({ a, b, distance_m, wanted_m }) =>
      b !== hole.id || (a === "gallery" && other.id !== "gallery") ||
      distance_m >= wanted_m - slack_m
    );
  });
}
