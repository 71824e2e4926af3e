import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import {
  DRILLS,
  G_THREADS,
  nearestDrills,
  STRAIGHT_THREADS,
  type StraightThread,
  whitworthHeight,
} from "@/lib/thread/mod.ts";
import { isoLimits, type Limits, unifiedLimits } from "./tolerance_formulas.ts";

for (const thread of STRAIGHT_THREADS) {
  const metric = thread.family === "metric";
  const unit = metric ? 1e-3 : 0.0254;
  const { hole, screw } = thread;
  const nominal = thread.nominal_m / unit;
  const pitch = thread.pitch_m / unit;
  // 1 1/16-12 is of the constant-pitch series, whose engagement is nine pitches.
  const engagement = thread.designation === "1 1/16-12" ? 9 * pitch : nominal;
  const by: Limits = metric ? isoLimits(nominal, pitch) : unifiedLimits(nominal, pitch, engagement);
  Deno.test(`${thread.designation}: typed limits are the standard's formulas, but for its rounding`, () => {
    // Rounding of the tables: 6 % of a tolerance (ISO), one unit of the last place (inch).
    const slack = (tolerance: number): number => metric ? 0.06 * tolerance + 0.0015 : 0.00025;
    // The rounding of the allowance es on top.
    const allowance = metric ? 0.0015 : 0;
    const pitchHole = by.pitchMax - by.pitchMin;
    const screwMajor = by.screwMajorMax - by.screwMajorMin;
    const screwPitch = by.screwPitchMax - by.screwPitchMin;
    const minor = metric ? slack(by.minorMax - by.minorMin) : 0.0012;
    for (
      const [name, typed_m, formula, allowed] of [
        ["minor min", hole.minorMin_m, by.minorMin, metric ? 0.001 : 0.0008],
        ["minor max", hole.minorMax_m, by.minorMax, minor],
        ["pitch min", hole.pitchMin_m, by.pitchMin, metric ? 0.001 : 0.0001],
        ["pitch max", hole.pitchMax_m, by.pitchMax, slack(pitchHole)],
        ["screw major max", screw.majorMax_m, by.screwMajorMax, metric ? 0.0025 : 0.00015],
        ["screw major min", screw.majorMin_m, by.screwMajorMin, slack(screwMajor) + allowance],
        ["screw pitch max", screw.pitchMax_m, by.screwPitchMax, metric ? 0.0025 : 0.00015],
        ["screw pitch min", screw.pitchMin_m, by.screwPitchMin, slack(screwPitch) + allowance],
      ] as const
    ) {
      const off = Math.abs(typed_m / unit - formula);
      assert(off <= allowed, `${name}: ${typed_m / unit}, formula ${formula}`);
    }
  });
}

Deno.test("every tapping drill lies inside the limits of its thread", () => {
  const all: StraightThread[] = [...STRAIGHT_THREADS, ...Object.values(G_THREADS)];
  for (const { designation, tappingDrill_m, hole } of all) {
    // Charts give 33/64 in for 9/16-18, 0.6 thousandths of an inch over the limit.
    assert(
      tappingDrill_m >= hole.minorMin_m && tappingDrill_m <= hole.minorMax_m + 0.0007 * 0.0254,
      designation,
    );
  }
});

Deno.test("the name of every tapping drill says its size", () => {
  for (const { designation, tappingDrill_m, tappingDrillName } of STRAIGHT_THREADS) {
    const drill = Object.values(DRILLS).flat().find(({ name }) => name === tappingDrillName);
    assertAlmostEquals(drill?.diameter_m ?? NaN, tappingDrill_m, 1e-9, designation);
  }
});

Deno.test("G threads: pitch and minor diameters follow from the 55 degree height", () => {
  for (const { designation, nominal_m, pitch_m, hole } of Object.values(G_THREADS)) {
    const height = whitworthHeight({ pitch: pitch_m });
    assertAlmostEquals(hole.pitchMin_m, nominal_m - height, 2e-6, designation);
    assertAlmostEquals(hole.minorMin_m, nominal_m - 2 * height, 2e-6, designation);
  }
});

Deno.test("drill sets: number of drills, and each larger than the one before", () => {
  const counts = Object.entries(DRILLS).map(([set, drills]) => [set, drills.length]);
  assertEquals(counts, [["metric", 246], ["fractional", 64], ["number", 80], ["letter", 26]]);
  for (const drills of Object.values(DRILLS)) {
    drills.slice(1).forEach((drill, i) => {
      assert(drill.diameter_m > (drills[i]?.diameter_m ?? Infinity), drill.name);
    });
  }
});

Deno.test("number and letter drills follow one another without a slip of the pen", () => {
  // Number drills step by 0.2 to 5.5 %, letters by at most 4 %: a typing error stands out.
  for (const [set, most] of [["number", 0.13], ["letter", 0.05]] as const) {
    DRILLS[set].slice(1).forEach((drill, i) => {
      const step = drill.diameter_m / (DRILLS[set][i]?.diameter_m ?? 0) - 1;
      assert(step < most, `${drill.name}: ${step}`);
    });
  }
});

Deno.test("nearest drills of each set to 9 mm, with signed errors", () => {
  const { metric, fractional, number, letter } = nearestDrills(0.009);
  assertEquals([metric.name, fractional.name, number.name, letter.name], [
    "9.0 mm",
    "23/64 in",
    "#1",
    "T",
  ]);
  assertAlmostEquals(fractional.error_m, 0.128125e-3, 1e-9);
  assertAlmostEquals(number.error_m, -3.2088e-3, 1e-9);
});
