/** Sections and views against the solid itself, by a sampler of its own. */
import { assert, assertEquals } from "@std/assert";
import { type Area, drawingSheets, hatchLines, marksOf } from "@/lib/drawing/mod.ts";
import type { Hole, Layout } from "@/lib/layout/mod.ts";
import { assertNear } from "./near.ts";
import { METRIC } from "./options.ts";
import { fourInjectors, roundBar } from "./sample_layouts.ts";

/** Whether a place [m] is metal, told from the profile's definition alone. */
function isMetal({ bar, holes }: Layout, [x, y, z]: [number, number, number]): boolean {
  const half = bar.height_m / 2;
  const inBar = bar.shape === "round"
    ? Math.hypot(y, z - half) <= half
    : Math.abs(y) <= bar.width_m / 2 && z >= 0 && z <= bar.height_m;
  return inBar && !holes.some((hole) => isIn(hole, [x, y, z]));
}

function isIn({ entry, into, profile }: Hole, place: readonly number[]): boolean {
  const from = entry.map((each, i) => (place[i] ?? 0) - each);
  const depth = from.reduce((sum, each, i) => sum + each * (into[i] ?? 0), 0);
  const aside = Math.hypot(...from.map((each, i) => each - depth * (into[i] ?? 0)));
  return profile.some(({ from_m, to_m, fromDiameter_m, toDiameter_m }, i) => {
    const begin = i === 0 ? -1 : from_m;
    if (depth < begin || depth > to_m) return false;
    const share = Math.max(0, (depth - from_m) / (to_m - from_m));
    return aside < (fromDiameter_m + share * (toDiameter_m - fromDiameter_m)) / 2;
  });
}

/** The metal cut across the bar at a place along it, by counting squares [mm²]. */
function cutArea(layout: Layout, x_m: number): number {
  const { width_m, height_m } = layout.bar;
  const count = 700;
  let metal = 0;
  for (let i = 0; i < count; i++) {
    for (let k = 0; k < count; k++) {
      const y = ((i + 0.5) / count - 0.5) * width_m;
      if (isMetal(layout, [x_m, y, (k + 0.5) / count * height_m])) metal++;
    }
  }
  return metal / count ** 2 * width_m * height_m * 1e6;
}

function areasOf(layout: Layout): Area[] {
  return drawingSheets(layout, METRIC).filter(({ kind }) => kind === "sections")
    .flatMap(({ shapes }) => marksOf(shapes)).filter((mark) => mark.kind === "area");
}

/** What fine hatching covers [mm² on paper]. */
function hatched(area: Area): number {
  const pitch = 0.02;
  return hatchLines({ ...area, pitch }).reduce((sum, { from, to }) => {
    return sum + Math.hypot(to[0] - from[0], to[1] - from[1]) * pitch;
  }, 0);
}

for (const [name, layout] of [["square", fourInjectors()], ["round", roundBar()]] as const) {
  Deno.test(`the hatched area of a ${name} bar's sections is the metal that a plane cuts`, () => {
    const across = layout.holes.filter(({ into }) => into[0] === 0);
    const kinds = new Map(across.map((hole) => [hole.feature, hole]));
    const areas = areasOf(layout).slice(0, kinds.size);
    assertEquals(areas.length, kinds.size);
    [...kinds.values()].forEach((hole, i) => {
      const scale = layout.bar.height_m > 0.032 ? 1 : 2;
      const drawn = hatched(areas[i] as Area) / scale ** 2;
      const metal = cutArea(layout, hole.entry[0]);
      assert(metal > 300, `${metal}`);
      // Counting squares is within half a square along each edge.
      assertNear(drawn, metal, 0.004 * metal);
    });
  });
}

Deno.test("internal threads are drawn by ISO 6410: drilled bore wide, major diameter narrow, hatched to the bore", () => {
  const sheets = drawingSheets(fourInjectors(), METRIC);
  const marks = sheets.flatMap(({ shapes }) => marksOf(shapes));
  const circles = marks.filter((mark) => mark.kind === "arc" && mark.layer === "threads");
  assert(circles.length > 0);
  for (const mark of circles) {
    assert(mark.kind === "arc");
    assertEquals(mark.type, "01.1");
    assertNear(mark.to_deg - mark.from_deg, 262.8, 1);
  }
  const wide = marks.filter((mark) =>
    mark.layer === "threads" && "type" in mark && mark.type === "01.2"
  );
  // The end of full thread, across both ports.
  assertEquals(wide.length, 2);
  for (const mark of wide) assert(mark.kind === "line");
});

Deno.test("hidden edges are dashed, centre lines long-dashed dotted, outlines wide", () => {
  const marks = drawingSheets(roundBar(), METRIC).flatMap(({ shapes }) => marksOf(shapes));
  for (const mark of marks) {
    if (!("type" in mark)) continue;
    if (mark.layer === "hidden") assertEquals(mark.type, "02.1");
    if (mark.layer === "centre" && mark.type !== "01.1") assertEquals(mark.type, "04.1");
  }
  assert(marks.some((mark) => mark.layer === "hidden"));
});
