/** Checks of thread loads, speeds and feeds. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import {
  CUTTING_SPEEDS,
  depthRatio,
  drillingTime,
  DRILLS,
  feedBand,
  feedSpeed,
  G_THREADS,
  nearestDrills,
  pitchDiameter,
  preloadFromTorque,
  spindleSpeed,
  strippingFactor,
  tappedShearArea,
  threadForFactor,
} from "@/lib/thread/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";
import { INCH, MM, STANDARD } from "./shorthand.ts";

/** Metal of a tapped thread cut by a cylinder, by counting points along one pitch. */
function sampledShearShare(cylinder: number, pitchDia: number, pitch: number, flank: number) {
  const points = 200_000;
  let metal = 0;
  for (let i = 0; i < points; i++) {
    const z = (i + 0.5) / points * pitch;
    // The flank of the tapped thread rises from the middle of its groove; on the pitch
    // cylinder groove and metal are half a pitch each.
    const fromGroove = Math.abs(z - pitch / 2);
    const wall = pitchDia / 2 + (pitch / 4 - fromGroove) / Math.tan(flank);
    if (cylinder / 2 > wall) metal++;
  }
  return metal / points;
}

export const loads: Check[] = [
  {
    name: "shear area of the tapped thread: metal counted on the screw's cylinder",
    methods: [tappedShearArea],
    source: "the thread's profile, sampled",
    provenance: "exact-solution",
    run: () => {
      for (const { screw, hole, pitch_m, flank_rad } of [...STANDARD, G_THREADS["1/8"]]) {
        const share = sampledShearShare(screw.majorMin_m, hole.pitchMax_m, pitch_m, flank_rad);
        assertClose(
          tappedShearArea({
            screwMajorMin: screw.majorMin_m,
            holePitchMax: hole.pitchMax_m,
            pitch: pitch_m,
            flank: flank_rad,
          }),
          Math.PI * screw.majorMin_m * share,
          1e-4,
        );
      }
    },
  },
  {
    name: "shear area of the tapped thread: about three quarters of the pitch cylinder",
    methods: [tappedShearArea],
    source: "FED-STD-H28/2B, simplified formula 3/4 pi E L for internal threads",
    provenance: "second-correlation",
    run: () => {
      for (const { screw, hole, pitch_m, flank_rad, nominal_m } of STANDARD) {
        const area = tappedShearArea({
          screwMajorMin: screw.majorMin_m,
          holePitchMax: hole.pitchMax_m,
          pitch: pitch_m,
          flank: flank_rad,
        });
        const simple = 0.75 * Math.PI * pitchDiameter({ nominal: nominal_m, pitch: pitch_m });
        assertClose(area, simple, 0.1);
      }
    },
  },
  {
    name: "tightening: 1800 lbf in on a 5/8 in bolt at K 0.2 pulls 14.4 kip",
    methods: [preloadFromTorque],
    source: "J. E. Shigley, Mechanical Engineering Design, worked example of bolt torque",
    provenance: "from-memory",
    run: () => {
      const torque = 1800 * 4.4482216 * INCH;
      const pull = preloadFromTorque({ torque, nutFactor: 0.2, nominal: 5 / 8 * INCH });
      assertClose(pull / 4.4482216, 14_400, 1e-6);
    },
  },
  {
    name:
      "tightening: at K 0.15 an M10x1 pulls as by the split of VDI 2230 at friction 0.10 to 0.16",
    methods: [preloadFromTorque],
    source: "VDI 2230-1: M = F (0.16 P + 0.58 d2 mu + r mu), r of a 7 mm nose on a 45 degree cone",
    provenance: "second-correlation",
    run: () => {
      const pull = preloadFromTorque({ torque: 18, nutFactor: 0.15, nominal: 0.01 });
      const split = (mu: number): number =>
        18 / (0.16 * 1e-3 + 0.58 * 9.35e-3 * mu + 3.5e-3 / Math.SQRT1_2 * mu);
      assert(split(0.16) < pull && pull < split(0.10), `${split(0.16)} ${pull} ${split(0.10)}`);
    },
  },
  {
    name:
      "stripping: a pull of shear area times strength strips at factor 1, and needs that thread",
    methods: [strippingFactor, threadForFactor],
    source: "definition: the load spread over a sheared cylinder of the screw's diameter",
    provenance: "exact-solution",
    run: () => {
      // Half the cylinder of 10 mm, 6 mm long, at 200 MPa.
      const preload = Math.PI * 0.01 * 0.006 / 2 * 200e6;
      const bar = { areaPerLength: Math.PI * 0.01 / 2, shearStrength: 200e6, preload };
      assertClose(strippingFactor({ ...bar, fullThread: 0.006 }), 1, 1e-12);
      assertClose(threadForFactor({ ...bar, factor: 3 }), 0.018, 1e-12);
    },
  },
  {
    name: "spindle speed: 3.82 times surface feet over inches",
    methods: [spindleSpeed],
    source: "shop rule of the trade",
    provenance: "second-correlation",
    run: () => {
      const speed = spindleSpeed({ cuttingSpeed: 200 * 0.3048 / 60, drill: INCH / 2 });
      assertClose(speed * 60, 3.82 * 200 / 0.5, 1e-3);
    },
  },
  {
    name: "feed, time and depth: a drill stepped turn by turn",
    methods: [feedSpeed, drillingTime, depthRatio],
    source: "each turn goes one feed deeper",
    provenance: "exact-solution",
    run: () => {
      const [speed, feed, depth] = [20, 1.5e-4, 0.045];
      let [z, turns] = [0, 0];
      while (z < depth - 1e-9) {
        z += feed;
        turns++;
      }
      const going = feedSpeed({ speed, feed });
      assertClose(drillingTime({ depth, feedSpeed: going }), turns / speed, 1e-9);
      assertClose(going * turns / speed, depth, 1e-9);
      assertClose(depthRatio({ depth, drill: 0.009 }), 5, 1e-9);
    },
  },
  {
    name: "speeds and feeds: both ends lie inside the published ranges",
    methods: [],
    source: "published tables of high-speed steel drills, as in drilling.json",
    provenance: "read-from-source",
    run: () => {
      for (
        const [material, min, max] of [
          ["aluminium", 45, 110],
          ["brass", 45, 92],
          ["mild steel", 20, 34],
          ["stainless steel", 9, 16],
        ] as const
      ) {
        const { from, to, deep } = CUTTING_SPEEDS[material];
        for (const speed of [from, to, deep]) {
          const perMinute = speed * 60;
          assert(perMinute >= min - 1e-9 && perMinute <= max + 1e-9, `${material} ${perMinute}`);
        }
        assert(deep <= from && from < to);
      }
      for (
        const [drill, min, max] of [[3, 0.025, 0.08], [5, 0.05, 0.15], [9, 0.1, 0.25]] as const
      ) {
        const { from, to } = feedBand(drill * MM) ?? { from: NaN, to: NaN };
        assert(from >= (min - 1e-9) * MM && to <= (max + 1e-9) * MM && from < to, `${drill} mm`);
      }
      assertEquals(feedBand(0.03), undefined);
    },
  },
  {
    name: "nearest of each set: no drill of the set is nearer",
    methods: [],
    source: "the whole set searched",
    provenance: "exact-solution",
    run: () => {
      for (const wanted of [0.0011, 0.00533, 0.0088, 0.01051, 0.0199]) {
        for (const [set, near] of Object.entries(nearestDrills(wanted))) {
          const all = DRILLS[set as keyof typeof DRILLS];
          const least = Math.min(...all.map(({ diameter_m }) => Math.abs(diameter_m - wanted)));
          assertAlmostEquals(Math.abs(near.error_m), least, 1e-12);
          assertAlmostEquals(near.diameter_m - near.error_m, wanted, 1e-12);
        }
      }
    },
  },
];
