/** What the inspection room is held against. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import {
  angleTolerance,
  bladeFor,
  chainError,
  FEELER_BLADES,
  FLATNESS_PER_CYLINDER_m,
  flatnessLimit,
  generalTolerance,
  INSPECTION_POINTS,
  type InspectionPointId,
  lastPlaceError,
  PARTICLE_m,
  POCKET_ROUGHNESS_m,
  readFeeler,
  torqueWindow,
  truePosition,
} from "@/lib/inspect/mod.ts";
import { DRIFT_PER_LENGTH, drillDrift, wallLeft } from "@/lib/strength/mod.ts";
import { type Answer, type Answers, type Check, fromReference } from "../../helpers/checks.ts";

const MM = 1e-3;
const DEGREE = Math.PI / 180;

/** Where a case's point is said: the point's id, and words that it must hold. */
type Said = readonly [id: InspectionPointId, ...words: string[]];

function said(points: readonly Said[]): Answer {
  return {
    methods: [],
    leaves: { must: "each point is looked up by id and held against its words inside run" },
    run: (_, c) => {
      const { must } = c.expected as { must: readonly string[] };
      assertEquals(points.length, must.length, "points that the case asks for");
      for (const [id, ...words] of points) {
        const { says, with: by } = INSPECTION_POINTS[id];
        for (const word of words) assert(`${says} With ${by}`.includes(word), `${id}: ${word}`);
      }
      return {};
    },
  };
}

const INSPECTION: Answers = {
  "general tolerance of an untoleranced length, class m": {
    methods: [],
    run: ({ length_mm }) => ({ plus_minus_mm: generalTolerance(length_mm * MM) / MM }),
  },
  "general tolerance of angles, class m": {
    methods: [],
    run: ({ short_side_mm }) => ({
      // The case is exact, radians are not.
      plus_minus_deg: Math.round(angleTolerance(short_side_mm * MM) / DEGREE * 1e9) / 1e9,
    }),
  },
  "hole tolerance*": { later: "lib/seal" },
  "feeler gauge in mm": {
    methods: [],
    run: ({ gauge_in }) => {
      const blade = FEELER_BLADES.inch.find(({ name }) => name === `${gauge_in} in`);
      return { gauge_mm: (blade?.thickness_m ?? NaN) / MM };
    },
  },
  "rule of thumb: head-gasket face flatness by straightedge": {
    methods: [flatnessLimit],
    run: ({ cylinders_covered }) => ({
      limit_mm: flatnessLimit({
        cylinders: cylinders_covered,
        perCylinder: FLATNESS_PER_CYLINDER_m,
      }) / MM,
    }),
  },
  "verdict of a feeler that does or does not enter under the straightedge": {
    methods: [],
    run: ({ feeler_mm, enters, limit_mm }) => {
      // In millimetres throughout: the reading only compares.
      const { least_m, below_m, verdict } = readFeeler(feeler_mm, enters, limit_mm);
      const words = { meets: "pass", fails: "fail", open: "undecided" } as const;
      return {
        gap_at_least_mm: least_m,
        gap_less_than_mm: below_m ?? null,
        verdict: words[verdict],
      };
    },
  },
  "true position (diametral) from coordinate errors": {
    methods: [truePosition],
    run: ({ dx_mm, dy_mm }) => ({
      position_mm: truePosition({ along: dx_mm * MM, across: dy_mm * MM }) / MM,
    }),
  },
  "error of the last injector: chain against datum dimensioning with ISO 2768-m": {
    methods: [chainError],
    run: ({ scheme, injectors, pitch_mm }) => ({
      max_error_mm: lastPlaceError(scheme, injectors, pitch_mm * MM) / MM,
    }),
  },
  "long-hole drift: wall left after wander": {
    methods: [drillDrift, wallLeft],
    run: ({ length_mm, nominal_wall_mm }) => {
      const length = length_mm * MM;
      const drift = drillDrift({ length, driftPerLength: DRIFT_PER_LENGTH, ends: 1 });
      return { least_wall_mm: wallLeft({ wall: nominal_wall_mm * MM, drift }) / MM };
    },
  },
  "particle size that matters": {
    methods: [],
    run: () => {
      assert(INSPECTION_POINTS.flush.says.includes(`over ${PARTICLE_m * 1e6} µm`));
      return { reject_particles_over_um: PARTICLE_m * 1e6 };
    },
  },
  "burrs at intersecting holes": said([
    ["deburr", "Deburr every intersection"],
    ["flush", "Brush or hone", "flush both ways"],
    ["look-through", "Look through", "light or a borescope"],
  ]),
  "torque check record": said([
    ["wrench", "torque wrench", "calibration is in date"],
    ["two-steps", "in two steps", "from the centre outwards"],
    ["paint-mark", "paint mark", "every screw"],
    ["check-again", "again after the first heat cycle"],
  ]),
  "torque window of a calibrated wrench": {
    methods: [],
    run: ({ torque_Nm, tool_error }) => {
      const { least_Nm, most_Nm } = torqueWindow(torque_Nm, tool_error);
      return { min_Nm: least_Nm, max_Nm: most_Nm };
    },
  },
};

const NO_SOURCE = "common practice, no source";

/** All checks of the room. */
export const checks: Check[] = [
  ...fromReference("inspection.json", INSPECTION),
  {
    name: "ISO 2768-m: every step of the table, at its end and just beyond",
    methods: [],
    source: "DIN ISO 2768-1 table 1, class m, as a published extract prints it",
    provenance: "read-from-source",
    run: () => {
      const steps = [3, 6, 30, 120, 400, 1000, 2000, 4000] as const;
      const limits = [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2] as const;
      steps.forEach((upTo, i) => {
        assertAlmostEquals(generalTolerance(upTo * MM) / MM, limits[i] ?? NaN, 1e-12, `${upTo}`);
        const beyond = limits[i + 1];
        if (beyond === undefined) return;
        assertAlmostEquals(generalTolerance((upTo + 0.01) * MM) / MM, beyond, 1e-12, `> ${upTo}`);
      });
    },
  },
  {
    name: "ISO 2768-m: angles by the shorter side",
    methods: [],
    source: "ISO 2768-1 table 3, class m, as a published extract prints it",
    provenance: "read-from-source",
    run: () => {
      const rows = [[10, 60], [50, 30], [120, 20], [400, 10]] as const;
      for (const [upTo, minutes] of rows) {
        assertAlmostEquals(angleTolerance(upTo * MM) / DEGREE * 60, minutes, 1e-9, `${upTo}`);
      }
      assertAlmostEquals(angleTolerance(0.0101) / DEGREE * 60, 30, 1e-9);
      assertAlmostEquals(angleTolerance(0.5) / DEGREE * 60, 5, 1e-9);
    },
  },
  {
    name: "true position: 3, 4, 5 and the conversion tables' 0.0141 at 0.005 and 0.005",
    methods: [truePosition],
    source: "Pythagorean triple; table of coordinate against position tolerance, 0.001 in steps",
    provenance: "from-memory",
    run: () => {
      assertAlmostEquals(truePosition({ along: 0.3 * MM, across: -0.4 * MM }) / MM, 1, 1e-12);
      const printed = truePosition({ along: 0.005 * 0.0254, across: 0.005 * 0.0254 }) / 0.0254;
      assertAlmostEquals(printed, 0.0141, 6e-5);
    },
  },
  {
    name: "a chain's last hole: every way that its dimensions can be off, tried",
    methods: [chainError],
    source: "all combinations of plus and minus",
    provenance: "exact-solution",
    run: () => {
      for (const [links, tolerance] of [[3, 0.3 * MM], [5, 0.3 * MM], [7, 0.2 * MM]] as const) {
        let most = 0;
        for (let signs = 0; signs < 2 ** links; signs++) {
          let off = 0;
          for (let i = 0; i < links; i++) off += signs & 1 << i ? tolerance : -tolerance;
          most = Math.max(most, Math.abs(off));
        }
        assertAlmostEquals(chainError({ links, tolerance }), most, 1e-12);
      }
    },
  },
  {
    name: "a face of two chambers may gape less than 0.05 mm, 0.025 mm for each",
    methods: [flatnessLimit],
    source: NO_SOURCE,
    provenance: "from-memory",
    run: () => {
      const limit = flatnessLimit({ cylinders: 2, perCylinder: FLATNESS_PER_CYLINDER_m });
      assertAlmostEquals(limit / MM, 0.05, 1e-9);
      assertEquals(bladeFor(FEELER_BLADES.metric, limit)?.name, "0.05 mm");
      assertEquals(flatnessLimit.source, "Common practice, no source");
    },
  },
  {
    name: "a 0.002 in feeler is 0.051 mm",
    methods: [],
    source: NO_SOURCE,
    provenance: "from-memory",
    run: () => {
      const blade = FEELER_BLADES.inch.find(({ name }) => name === "0.002 in");
      assertEquals(Math.round((blade?.thickness_m ?? NaN) / MM * 1000) / 1000, 0.051);
    },
  },
  {
    name: "walls of pockets: Ra 0.8 um wanted, 1.6 um at most",
    methods: [],
    source: "handbooks of O-ring makers, static radial seals",
    provenance: "from-memory",
    run: () => {
      assertEquals(POCKET_ROUGHNESS_m, { aim: 0.8e-6, limit: 1.6e-6 });
      const { says } = INSPECTION_POINTS["pocket-finish"];
      assert(says.includes("Ra 0.8 µm") && says.includes("at most 1.6 µm"), says);
    },
  },
];
