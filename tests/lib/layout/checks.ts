/** What the layout room's methods are held against. */
import { assertAlmostEquals } from "@std/assert";
import {
  boreByEdges,
  centreByEdges,
  centreByPin,
  floatLeft,
  floatPlay,
  floatTilt,
  ringPastLeadIn,
  roomAboveInjector,
  shiftAtWorst,
  shiftByChance,
  spacerForPlane,
} from "@/lib/layout/mod.ts";
import type { Check } from "../../helpers/checks.ts";

const MM = 1e-3;
const INCH = 0.0254;

/** A gap of a published stack: a bore of 40 mm less 25, 2 and 10 mm leaves 3 mm. */
const STACK = "Worked example of a tolerance stack: a spacer and a ring in a bore of 40 mm, " +
  "metricmech.com, tolerance-stackup-worked-example";

/** Parts of 2.000, 1.500 and 0.500 in in a housing of 4.020 in. */
const PARTS = "Worked example of three parts in a housing, in inches, worst case and root sum " +
  "square: ficientdesign.com, tolerance-stack-up-analysis";

const PARTS_TOLERANCES = {
  seat: 0.005 * INCH,
  injector: 0.003 * INCH,
  spacer: 0.002 * INCH,
  rail: 0.005 * INCH,
  pocket: 0,
};

const FASTENER = "Floating fastener, ASME Y14.5 appendix B: each part's positional tolerance " +
  "T = H - F, across the diameter";

const CALIPER =
  "Common practice, no source: between equal bores, the same edge of each is as far " +
  "apart as their centres";

/** All checks of the room. */
export const checks: readonly Check[] = [
  {
    name: "a dimension loop that leaves 3.00 mm, as a ring past its lead-in",
    methods: [ringPastLeadIn],
    source: STACK,
    provenance: "read-from-source",
    run: () => {
      const past_m = ringPastLeadIn({
        seat: 0,
        injector: 40 * MM,
        spacer: 0,
        rail: 25 * MM,
        ring: 2 * 2 * MM,
        leadIn: 10 * MM,
      });
      assertAlmostEquals(past_m, 3 * MM, 1e-12);
    },
  },
  {
    name: "the same loop as room above an injector",
    methods: [roomAboveInjector],
    source: STACK,
    provenance: "read-from-source",
    run: () => {
      const room_m = roomAboveInjector({
        seat: 0,
        injector: 25 * MM,
        spacer: 2 * MM,
        rail: 0,
        beyond: 10 * MM,
        depth: 40 * MM,
      });
      assertAlmostEquals(room_m, 3 * MM, 1e-12);
    },
  },
  {
    name: "the same loop as a spacer that closes it",
    methods: [spacerForPlane],
    source: STACK,
    provenance: "read-from-source",
    run: () => {
      const spacer_m = spacerForPlane({ plane: 40 * MM, seat: 25 * MM, injector: 12 * MM });
      assertAlmostEquals(spacer_m, 3 * MM, 1e-12);
    },
  },
  {
    name: "four parts at their worst: 0.015 in",
    methods: [shiftAtWorst],
    source: PARTS,
    provenance: "read-from-source",
    run: () => assertAlmostEquals(shiftAtWorst(PARTS_TOLERANCES) / INCH, 0.015, 5e-7),
  },
  {
    name: "four parts by chance: 0.00794 in",
    methods: [shiftByChance],
    source: PARTS,
    provenance: "read-from-source",
    run: () => assertAlmostEquals(shiftByChance(PARTS_TOLERANCES) / INCH, 0.00794, 5e-6),
  },
  {
    name: "ten parts of 0.1 mm by chance: 0.316 mm, as five of root two of that",
    methods: [shiftByChance],
    source: "Published example of ten equal tolerances: worst 1.0 mm, root sum square 0.316 mm",
    provenance: "read-from-source",
    run: () => {
      const two = 0.1 * Math.SQRT2 * MM;
      const shift_m = shiftByChance({
        seat: two,
        injector: two,
        spacer: two,
        rail: two,
        pocket: two,
      });
      assertAlmostEquals(shift_m / MM, 0.316, 5e-4);
    },
  },
  {
    name: "a bore zeroed on a caliper, then the same edge of the next, reads their pitch",
    methods: [centreByEdges, boreByEdges],
    source: CALIPER,
    provenance: "exact-solution",
    run: () => {
      // One bore of 13.5 mm; zeroed there, the caliper reads from edge to same edge.
      const first = { near: 20 * MM, far: 33.5 * MM };
      const pitch = 92.37 * MM;
      const next = { near: first.near + pitch, far: first.far + pitch };
      assertAlmostEquals(centreByEdges(next) - centreByEdges(first), pitch, 1e-12);
      // A plug gauge of the bore's size just goes in.
      assertAlmostEquals(boreByEdges(next), 13.5 * MM, 1e-12);
    },
  },
  {
    name: "over two equal pins less one pin is the pitch",
    methods: [centreByPin],
    source:
      "Common practice, no source: the distance over two equal pins is their pitch and one pin",
    provenance: "exact-solution",
    run: () => {
      // The datum is the outside of a first pin of 6 mm; over both, 96 mm are read: 90 mm of pitch.
      const first = centreByPin({ over: 6 * MM, pin: 6 * MM });
      const next = centreByPin({ over: 96 * MM, pin: 6 * MM });
      assertAlmostEquals(next - first, 90 * MM, 1e-12);
    },
  },
  {
    name: "a fastener of 6.0 mm in two holes of 6.4 mm floats by what their tolerances allow",
    methods: [floatPlay, floatLeft],
    source: FASTENER,
    provenance: "from-memory",
    run: () => {
      const [hole, fastener] = [6.4 * MM, 6 * MM];
      const eachTolerance = hole - fastener;
      const radial = (hole - fastener) / 2;
      // Both holes off by half their tolerance in opposite directions: it still goes in, just.
      const apart = eachTolerance / 2 + eachTolerance / 2;
      const play = floatPlay({ atRail: radial, atManifold: radial });
      assertAlmostEquals(play, apart, 1e-12);
      assertAlmostEquals(floatLeft({ play, apart: 0, trueTo: apart }), 0, 1e-12);
      assertAlmostEquals(floatLeft({ play, apart, trueTo: 0 }), 0, 1e-12);
    },
  },
  {
    name: "the triangle of 3, 4 and 5",
    methods: [floatTilt],
    source: "Euclid: a right triangle of sides 3, 4 and 5",
    provenance: "exact-solution",
    run: () => {
      const tilt = floatTilt({ atRail: 2 * MM, atManifold: 1.75 * MM, between: 5 * MM });
      assertAlmostEquals(Math.cos(tilt), 4 / 5, 1e-12);
    },
  },
];
