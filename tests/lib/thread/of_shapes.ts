/** Checks of cones, openings and threads against the shapes themselves. */
import { assertAlmostEquals, assertEquals } from "@std/assert";
import {
  blindHoleDepth,
  coneDepth,
  coneSide,
  farWallClearance,
  firstOpening,
  fullThreadAboveGallery,
  fullThreadAboveSeat,
  handTightTurns,
  heightShareIso,
  heightShareUs,
  lastOpening,
  minorDiameter,
  nptHeight,
  pitchDiameter,
  pointLength,
  sealingDepth,
  seatDepthByGallery,
  seatDepthByReach,
  seatGrowth,
  seatRing,
  seatToGallery,
  sharpHeight,
  shoulderGap,
  spottedAxisDepth,
  stressAreaUnified,
  taperInside,
  tapRunOut,
  wallAroundPort,
} from "@/lib/thread/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";
import { DEGREE, find, INCH, isoShare, MM, nptNumbers, STANDARD, usShare } from "./shorthand.ts";

/** A cone's profile sampled: the depth where it is as wide as asked, found by walking down. */
function walkCone(wide: number, included: number, to: number): { depth: number; side: number } {
  const step = 1e-7;
  let [radius, depth] = [wide / 2, 0];
  // Down the slope in steps of its own length.
  let side = 0;
  while (radius > to / 2) {
    radius -= step * Math.sin(included / 2);
    depth += step * Math.cos(included / 2);
    side += step;
  }
  return { depth, side };
}

/** A hole's wall followed down until it is inside the gallery, at an angle about the hole's axis. */
function walkDown(axis: number, gallery: number, drill: number, angle: number): number {
  const across = drill / 2 * Math.sin(angle);
  let z = 0;
  while ((z - axis) ** 2 + across ** 2 > (gallery / 2) ** 2) z += 1e-7;
  return z;
}

const SAMPLED = "the shape itself, walked in steps of 0.1 um";

export const byGeometry: Check[] = [
  {
    name: "cones: depth, side, point, growth and ring of a sampled profile",
    methods: [coneDepth, coneSide, pointLength, seatGrowth, seatRing],
    source: SAMPLED,
    provenance: "exact-solution",
    run: () => {
      for (const [wide, narrow, degrees] of [[9, 4, 90], [12, 7, 118], [11, 9, 60]] as const) {
        const included = degrees * DEGREE;
        const cone = { wide: wide * MM, narrow: narrow * MM, included };
        const { depth, side } = walkCone(cone.wide, included, cone.narrow);
        assertAlmostEquals(coneDepth(cone), depth, 2e-7);
        assertAlmostEquals(coneSide(cone), side, 2e-7);
        assertAlmostEquals(
          pointLength({ drill: cone.wide, included }),
          walkCone(cone.wide, included, 0).depth,
          2e-7,
        );
        assertAlmostEquals(seatGrowth({ deeper: depth, included }), cone.wide - cone.narrow, 5e-7);
        const ring = Math.sqrt(side ** 2 - depth ** 2);
        assertAlmostEquals(seatRing({ drill: cone.wide, pilot: cone.narrow }), ring, 5e-7);
      }
    },
  },
  {
    name: "a flat on a round bar: right triangles of 3, 4, 5 and of 5, 12, 13",
    methods: [spottedAxisDepth],
    source: "Pythagorean triples",
    provenance: "exact-solution",
    run: () => {
      for (const [half, depth, radius] of [[3, 4, 5], [4, 3, 5], [5, 12, 13]] as const) {
        const found = spottedAxisDepth({ radius: radius * MM, flat: 2 * half * MM });
        assertAlmostEquals(found, depth * MM, 1e-12);
      }
    },
  },
  {
    name: "drill points: 0.300 d at 118 degrees, 0.207 d at 135, 0.182 d at 140",
    methods: [pointLength],
    source: "Machinery's Handbook, lengths of drill points",
    provenance: "from-memory",
    run: () => {
      for (const [degrees, share] of [[118, 0.300], [135, 0.207], [140, 0.182]] as const) {
        const point = pointLength({ drill: 0.01, included: degrees * DEGREE });
        assertAlmostEquals(point / 0.01, share, 0.0006);
      }
    },
  },
  {
    name: "gallery: first and last opening found by following the wall of the hole",
    methods: [firstOpening, lastOpening, farWallClearance],
    source: SAMPLED,
    provenance: "exact-solution",
    run: () => {
      for (const [c, g, d] of [[12.5, 12.7, 9], [20, 16, 9], [15, 10, 4]] as const) {
        const at = { axisDepth: c * MM, gallery: g * MM };
        const depths = Array.from(
          { length: 25 },
          (_, i) => walkDown(c * MM, g * MM, d * MM, i / 24 * Math.PI / 2),
        );
        const opened = lastOpening({ ...at, drill: d * MM });
        assertAlmostEquals(firstOpening(at), Math.min(...depths), 3e-7);
        assertAlmostEquals(opened, Math.max(...depths), 3e-7);
        const far = firstOpening(at) + at.gallery;
        assertAlmostEquals(
          farWallClearance({ ...at, opened, point: 0.001 }) + opened,
          far - 0.001,
          1e-12,
        );
      }
    },
  },
  {
    name:
      "sealing circle: walked down a port cut to the depths given, the nose meets the seat there",
    methods: [
      seatDepthByReach,
      seatDepthByGallery,
      seatToGallery,
      sealingDepth,
      shoulderGap,
      fullThreadAboveSeat,
      fullThreadAboveGallery,
      tapRunOut,
      blindHoleDepth,
    ],
    source: SAMPLED,
    provenance: "exact-solution",
    run: () => {
      const [drill, pilot, nose, reach, opening] = [0.009, 0.004, 0.0065, 0.0105, 0.0145];
      const included = Math.PI / 2;
      const toCircle = coneDepth({ wide: drill, narrow: nose, included });
      const seatDepth = seatDepthByReach({ reach, gap: 0.0005, toCircle });
      // The sensor goes in until its nose touches: the hole's radius there is the nose's.
      const radiusAt = (z: number): number =>
        z < seatDepth ? drill / 2 : Math.max(pilot / 2, drill / 2 - (z - seatDepth));
      let z = 0;
      while (radiusAt(z) > nose / 2) z += 1e-7;
      assertAlmostEquals(sealingDepth({ seatDepth, toCircle }), z, 2e-7);
      assertAlmostEquals(reach - z, 0.0005, 2e-7);
      assertAlmostEquals(
        shoulderGap({ reach, sealingDepth: sealingDepth({ seatDepth, toCircle }) }),
        reach - z,
        2e-7,
      );
      while (radiusAt(z) > pilot / 2) z += 1e-7;
      const depth = coneDepth({ wide: drill, narrow: pilot, included });
      assertAlmostEquals(
        seatToGallery({ opening, seatDepth, coneDepth: depth }),
        opening - z,
        3e-7,
      );
      // The deepest seat leaves just what was asked for.
      const deepest = seatDepthByGallery({ opening, left: 0.002, coneDepth: depth });
      assertAlmostEquals(
        seatToGallery({ opening, seatDepth: deepest, coneDepth: depth }),
        0.002,
        1e-12,
      );
      // A blind hole of the seat's depth has this thread in it, and no more.
      const lead = { pitch: 0.001, leadThreads: 2, clearThreads: 1 };
      const fullThread = fullThreadAboveSeat({ seatDepth, runOut: tapRunOut(lead), opening });
      assertAlmostEquals(blindHoleDepth({ fullThread, ...lead }), seatDepth, 1e-12);
      assertEquals(fullThreadAboveSeat({ seatDepth: 0.02, runOut: 0.003, opening }), opening);
      assertAlmostEquals(
        fullThreadAboveGallery({ opening, mouth: 0.001 }) + 0.001,
        opening,
        1e-12,
      );
    },
  },
  {
    name: "wall around a port: thread and two walls make up the face",
    methods: [wallAroundPort],
    source: "the face is filled",
    provenance: "exact-solution",
    run: () =>
      assertAlmostEquals(
        2 * wallAroundPort({ faceWidth: 0.025, nominal: 0.01 }) + 0.01,
        0.025,
        1e-12,
      ),
  },
  {
    name: "sharp height: 0.866025 P at 60 degrees, 0.960491 P at 55",
    methods: [sharpHeight],
    source: "ISO 68-1 and ISO 228-1, printed factors",
    provenance: "from-memory",
    run: () => {
      for (const [degrees, factor] of [[30, 0.866025], [27.5, 0.960491]] as const) {
        assertClose(sharpHeight({ pitch: 1e-3, flank: degrees * DEGREE }), factor * 1e-3, 1e-6);
      }
    },
  },
  {
    name: "diameters: the standards' printed minor and pitch diameters",
    methods: [pitchDiameter, minorDiameter],
    source: "ISO 724 basic dimensions, held in the tables of limits",
    provenance: "read-from-source",
    run: () => {
      for (const { nominal_m: nominal, pitch_m: pitch, hole, family } of STANDARD) {
        const slack = family === "metric" ? 1e-6 : 0.0008 * INCH;
        assertAlmostEquals(pitchDiameter({ nominal, pitch }), hole.pitchMin_m, slack);
        assertAlmostEquals(minorDiameter({ nominal, pitch }), hole.minorMin_m, slack);
      }
    },
  },
  {
    name: "thread height: published charts give 75 % to no. 7 in 1/4-20, 77 % to 5 mm in M6",
    methods: [heightShareUs],
    source: "tap-drill charts of the trade",
    provenance: "from-memory",
    run: () => {
      assertAlmostEquals(usShare("1/4-20", 0.201 * INCH), 0.75, 0.006);
      assertAlmostEquals(usShare("M6x1", 0.005), 0.77, 0.006);
      assertAlmostEquals(usShare("5/16-18", 0.257 * INCH), 0.77, 0.006);
    },
  },
  {
    name: "thread height, ISO base: all of it at the least hole, none at the nominal size",
    methods: [heightShareIso],
    source: "ISO 965-2 least minor diameters: the basic profile",
    provenance: "read-from-source",
    run: () => {
      for (const { designation, nominal_m, hole } of STANDARD) {
        assertAlmostEquals(isoShare(designation, hole.minorMin_m), 1, 0.02);
        assertAlmostEquals(isoShare(designation, nominal_m), 0, 1e-12);
      }
      assertAlmostEquals(isoShare("M10x1", 0.008917), 1, 0.0006);
    },
  },
  {
    name: "NPT: tabulated thread heights and hand-tight engagement in threads",
    methods: [nptHeight, handTightTurns, taperInside],
    source: "ASME B1.20.1 table 2: h 0.02963, 0.04444, 0.05714 in; L1 4.36, 4.10, 4.48 threads",
    provenance: "from-memory",
    run: () => {
      for (
        const [nps, height, turns] of [["1/8", 0.02963, 4.36], ["1/4", 0.04444, 4.10], [
          "1/2",
          0.05714,
          4.48,
        ]] as const
      ) {
        const { pitch, handTight, atFace, smallEnd } = nptNumbers(nps);
        assertAlmostEquals(nptHeight({ pitch }) / INCH, height, 1e-5);
        assertAlmostEquals(handTightTurns({ handTight, pitch }), turns, 0.005);
        // The tapped thread one L1 inside is the small end of the pipe's.
        assertAlmostEquals(taperInside({ atFace, depth: handTight }), smallEnd, 1e-9);
      }
      // Tabulated E0 of 1/8, so that the taper is held too.
      const { atFace, handTight } = nptNumbers("1/8");
      assertAlmostEquals(taperInside({ atFace, depth: handTight }) / INCH, 0.36351, 1e-5);
    },
  },
  {
    name: "stress area: the inch standard's table to four places",
    methods: [stressAreaUnified],
    source: "ASME B1.1 table of tensile stress areas",
    provenance: "from-memory",
    run: () => {
      for (
        const [thread, area_in2] of [
          ["1/4-20", 0.0318],
          ["5/16-18", 0.0524],
          ["3/8-24", 0.0878],
          ["7/16-20", 0.1187],
        ] as const
      ) {
        const { nominal_m: nominal, pitch_m: pitch } = find(thread);
        const area = stressAreaUnified({ nominal, pitch });
        assertAlmostEquals(area / INCH ** 2, area_in2, 6e-5, thread);
      }
    },
  },
];
