/** What the seal room is held against. */
import { assert, assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  type Elastomer,
  fittedOutside,
  type FuelGroup,
  gapAllowed,
  GLAND_PRACTICE,
  glandDepth,
  glandDepthNarrow,
  glandDepthWide,
  glandFill,
  holeTolerance,
  inchRing,
  leadIn,
  leadInLength,
  leadInMouth,
  MATERIALS_AGAINST_FUEL,
  oringGland,
  oringSqueeze,
  oringStretch,
  RADIAL_GLANDS,
  type Ring,
  sectionByInside,
  type Size,
  sizeOf,
  widestGap,
} from "@/lib/seal/mod.ts";
import { type Answers, type Check, fromReference } from "../../helpers/checks.ts";
import { GLAND_CHECKS } from "./gland_checks.ts";
import { SECTION_CHECKS } from "./section_checks.ts";
import { TABLE_CHECKS } from "./table_checks.ts";

const MM = 1e-3;

/** A size in millimetres with deviations. */
const size = (nominal: number, lower: number, upper: number): Size =>
  sizeOf(nominal * MM, lower * MM, upper * MM);

/** A size without tolerance. */
const exact = (nominal: number): Size => size(nominal, 0, 0);

/** The gland of a case: what it leaves out has no tolerance, the part fills the bore. */
// deno-lint-ignore no-explicit-any
function glandOf(i: any) {
  const [boreLower, boreUpper] = i.bore_tol_mm ?? [0, 0];
  const [grooveLower, grooveUpper] = i.groove_tol_mm ?? [0, 0];
  const insideTolerance = i.oring_id_tol_mm ?? 0;
  const sectionTolerance = i.oring_cs_tol_mm ?? 0;
  return oringGland(new Working(), "gland", {
    bore: size(i.bore_mm, boreLower, boreUpper),
    groove: size(i.groove_dia_mm, grooveLower, grooveUpper),
    grooveWidth: exact(i.groove_width_mm ?? 4.8),
    land: exact(i.bore_mm + boreLower),
    insideDiameter: size(i.oring_id_mm, -insideTolerance, insideTolerance),
    section: size(i.oring_cs_mm, -sectionTolerance, sectionTolerance),
  });
}

function ring(name: string): Ring {
  const found = inchRing(name);
  assert(found, `no ring ${name}`);
  return found;
}

const tolerance_mm = ({ nominal_m, most_m }: Size): number => (most_m - nominal_m) / MM;

const middle = ({ min, max }: { readonly min: number; readonly max: number }): number =>
  (min + max) / 2;

const published = (section_mm: number) => {
  const gland = RADIAL_GLANDS.find((g) => Math.abs(g.section_m - section_mm * MM) < 0.02 * MM);
  assert(gland, `no gland for ${section_mm} mm`);
  return gland;
};

/** What the file calls a rubber, as ours. */
const RUBBERS: Readonly<Record<string, Elastomer>> = {
  "FKM (66 % F, general)": "FKM",
  NBR: "NBR",
  HNBR: "HNBR",
  "FVMQ (fluorosilicone)": "FVMQ",
  EPDM: "EPDM",
};

const FUELS: Readonly<Record<string, readonly FuelGroup[]>> = {
  petrol: ["petrol"],
  "E10-E85": ["E10", "E85"],
  "methanol M85-M100": ["methanol"],
};

const ORINGS: Answers = {
  "O-ring size": {
    methods: [],
    run: ({ as568 }) => {
      const { insideDiameter, section } = ring(as568);
      return {
        id_mm: insideDiameter.nominal_m / MM,
        cs_mm: section.nominal_m / MM,
        id_tol_mm: tolerance_mm(insideDiameter),
        cs_tol_mm: tolerance_mm(section),
        od_mm: (insideDiameter.nominal_m + 2 * section.nominal_m) / MM,
      };
    },
  },
  "cross-section tolerance by series": {
    methods: [],
    run: () => ({
      cs178_tol_mm: tolerance_mm(ring("-010").section),
      cs262_tol_mm: tolerance_mm(ring("-110").section),
      cs353_tol_mm: tolerance_mm(ring("-210").section),
    }),
  },
  "piston-type radial gland: stretch, squeeze, fill (nominal)": {
    methods: [oringStretch, sectionByInside, glandDepth, oringSqueeze, glandFill],
    run: (i) => {
      const gland = glandOf(i);
      return {
        stretch: gland.stretch,
        cs_eff_mm: gland.section_m / MM,
        gland_mm: gland.depth_m / MM,
        squeeze: gland.squeezeNominal,
        fill: gland.fillNominal,
      };
    },
  },
  "worst-case squeeze over all tolerance corners": {
    methods: [oringStretch, sectionByInside, glandDepth, oringSqueeze],
    // The file works with the nominal law and on one axis.
    run: (i) => {
      const { least, most } = glandOf(i).laws.inside;
      return { squeeze_min: least, squeeze_max: most };
    },
  },
  "eccentric part: least squeeze and extrusion gap": {
    methods: [glandDepth, glandDepthWide, glandDepthNarrow, oringSqueeze, widestGap],
    run: (i) => {
      const [bore, groove, land] = [i.bore_mm * MM, i.groove_dia_mm * MM, i.land_dia_mm * MM];
      const section = i.cs_eff_mm * MM;
      const gap = widestGap({ bore, land }) / MM;
      return {
        radial_gap_concentric_mm: gap / 2,
        gap_max_mm: gap,
        squeeze_concentric: oringSqueeze({ section, depth: glandDepth({ bore, groove }) }),
        squeeze_least: oringSqueeze({ section, depth: glandDepthWide({ bore, groove, land }) }),
        squeeze_most: oringSqueeze({ section, depth: glandDepthNarrow({ groove, land }) }),
      };
    },
  },
  "recommended squeeze, static radial seal, 3.53 mm section": {
    methods: [],
    run: ({ section_mm }) => ({ value: middle(published(section_mm).squeeze) }),
  },
  "recommended squeeze, face seal": {
    methods: [],
    run: () => ({ value: middle(GLAND_PRACTICE.faceSqueeze) }),
  },
  "published static radial gland for the 0.139 in section": {
    methods: [],
    run: ({ section_mm }) => ({
      depth: middle(published(section_mm).depth_m) / MM,
      width: GLAND_PRACTICE.widthPerSection * section_mm,
    }),
  },
  "recommended installed stretch of the inside diameter": {
    methods: [],
    run: () => ({ value: middle(GLAND_PRACTICE.stretch) }),
  },
  "recommended gland fill, static": {
    methods: [],
    run: () => ({ value: middle(GLAND_PRACTICE.fill) }),
  },
  "surface finish for static radial seals": {
    methods: [],
    run: () => ({
      seal_bore_Ra_um_max: GLAND_PRACTICE.finish.most_m * 1e6,
      preferred_um: GLAND_PRACTICE.finish.preferred_m * 1e6,
    }),
  },
  "lead-in chamfer angle": {
    methods: [],
    run: () => ({ angle: middle(GLAND_PRACTICE.leadInAngle) * 180 / Math.PI }),
  },
  "lead-in mouth diameter and length so that the ring enters without cutting": {
    methods: [oringStretch, sectionByInside, fittedOutside, leadInMouth, leadInLength],
    run: (i) => {
      const groove = i.groove_dia_mm * MM;
      const { section_m } = glandOf(i);
      const fittedOutside_m = fittedOutside({ groove, section: section_m });
      const { mouth_m, length_m } = leadIn(new Working(), "leadIn", {
        bore_m: i.bore_mm * MM,
        fittedOutside_m,
        angle_rad: i.angle_from_axis_deg * Math.PI / 180,
        clearance_m: i.clearance_mm * MM,
      });
      return {
        fitted_od_mm: fittedOutside_m / MM,
        mouth_dia_min_mm: mouth_m / MM,
        length_min_mm: length_m / MM,
      };
    },
  },
  "extrusion gap is not critical at rail pressure": {
    methods: [],
    run: ({ p_MPa, hardness_shoreA, radial_gap_mm }) => {
      const allowed = gapAllowed(hardness_shoreA, p_MPa * 1e6) ?? 0;
      return { gap_acceptable: radial_gap_mm * MM <= allowed };
    },
  },
  "elastomer with a fuel": {
    methods: [],
    run: (i) => {
      const rubber = RUBBERS[i.elastomer];
      const fuels = FUELS[i.fuel];
      assert(rubber && fuels, `${i.elastomer} with ${i.fuel}`);
      const cells = MATERIALS_AGAINST_FUEL.elastomers[rubber].fuels;
      return { fit: fuels.every((fuel) => cells[fuel].verdict === "meets") };
    },
  },
};

const HOLES: Answers = {
  "hole tolerance*": {
    methods: [],
    run: ({ diameter_mm, grade }) => {
      const { least_m, most_m } = holeTolerance(grade, diameter_mm * MM);
      return {
        upper_um: (most_m - diameter_mm * MM) * 1e6,
        lower_um: (least_m - diameter_mm * MM) * 1e6,
        max_mm: most_m / MM,
      };
    },
  },
  "*": { later: "The rest of the file is the walk-round's and the drilled rail's" },
};

/** Bands that the reference's ranges see only in their middle: both ends, as public notes have them. */
const BANDS: Check = {
  name: "the recommended bands, end by end",
  methods: [],
  source: "Public gland tables and design notes, as the reference file quotes them",
  provenance: "read-from-source",
  run: () => {
    const { squeeze, depth_m } = published(3.53);
    assertEquals([squeeze.min, squeeze.max], [0.14, 0.23]);
    assert(Math.abs(depth_m.min / MM - 2.79) < 0.01 && Math.abs(depth_m.max / MM - 2.95) < 0.01);
    assertEquals(GLAND_PRACTICE.faceSqueeze, { min: 0.2, max: 0.3 });
    assertEquals(GLAND_PRACTICE.stretch, { min: 0, max: 0.05 });
    assertEquals(GLAND_PRACTICE.fill, { min: 0.65, max: 0.85 });
    const { min, max } = GLAND_PRACTICE.leadInAngle;
    assertEquals([min, max].map((a) => Math.round(a * 180 / Math.PI)), [15, 20]);
  },
};

/** Every check of this room. */
export const checks: readonly Check[] = [
  ...fromReference("oring-gland.json", ORINGS),
  ...fromReference("inspection.json", HOLES),
  BANDS,
  ...GLAND_CHECKS,
  ...SECTION_CHECKS,
  ...TABLE_CHECKS,
];
