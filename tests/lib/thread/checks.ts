/** What the thread room is held against. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import {
  blindHoleDepth,
  CLEARANCE_HOLES,
  type ClearanceScrew,
  coneDepth,
  coneSide,
  type CutMaterial,
  CUTTING_SPEEDS,
  DEEP_FROM_DIAMETERS,
  depthRatio,
  drillingTime,
  DRILLS,
  farWallClearance,
  feedBand,
  feedSpeed,
  firstOpening,
  fullThreadAboveGallery,
  fullThreadAboveSeat,
  G_THREADS,
  handTightTurns,
  heightShareIso,
  heightShareUs,
  inchDrillsWithin,
  lastOpening,
  minorDiameter,
  nearestDrill,
  nearestDrills,
  nearestInchDrill,
  NPT_THREADS,
  nptFace,
  nptHeight,
  nptSmallEnd,
  nptUsefulLength,
  PECK_FROM_DIAMETERS,
  PIPE_FAMILIES,
  pitchDiameter,
  pointLength,
  PORTS,
  preloadFromTorque,
  sealingDepth,
  SEALS,
  seatDepthByGallery,
  seatDepthByReach,
  seatGrowth,
  seatRing,
  seatToGallery,
  sharpHeight,
  shoulderGap,
  spindleSpeed,
  stressArea,
  stressAreaUnified,
  strippingFactor,
  taperInside,
  taperUsefulLength,
  tappedShearArea,
  tapRunOut,
  threadForFactor,
  threadOf,
  wallAroundPort,
  whitworthHeight,
} from "@/lib/thread/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import {
  type Answers,
  type Check,
  fromReference,
  type ReferenceCase,
} from "../../helpers/checks.ts";

const MM = 1e-3;
const INCH = 0.0254;
const DEGREE = Math.PI / 180;
const METRE_A_MINUTE = 1 / 60;

/** Designation of a case: `7/16-20 UN/UNF` is `7/16-20` in the tables. */
const find = (thread: string) => threadOf(thread.replace(" UN/UNF", ""));

const isoShare = (thread: string, drill: number): number => {
  const { nominal_m: nominal, pitch_m: pitch, flank_rad: flank } = find(thread);
  return heightShareIso({ nominal, drill, sharpHeight: sharpHeight({ pitch, flank }) });
};
const usShare = (thread: string, drill: number): number => {
  const { nominal_m: nominal, pitch_m: pitch, flank_rad: flank } = find(thread);
  return heightShareUs({ nominal, drill, sharpHeight: sharpHeight({ pitch, flank }) });
};

const basics = (thread: string) => {
  const { nominal_m: nominal, pitch_m: pitch } = find(thread);
  return {
    pitch_mm: pitch / MM,
    major_mm: nominal / MM,
    D2_mm: pitchDiameter({ nominal, pitch }) / MM,
    D1_mm: minorDiameter({ nominal, pitch }) / MM,
  };
};

const holeLimits = (unit: number, suffix: string) => ({ thread }: { readonly thread: string }) => {
  const { hole } = find(thread);
  return {
    [`minor_min_${suffix}`]: hole.minorMin_m / unit,
    [`minor_max_${suffix}`]: hole.minorMax_m / unit,
    [`pitch_min_${suffix}`]: hole.pitchMin_m / unit,
    [`pitch_max_${suffix}`]: hole.pitchMax_m / unit,
  };
};

const screwLimits = (unit: number, suffix: string) => ({ thread }: { readonly thread: string }) => {
  const { screw } = find(thread);
  return {
    [`major_max_${suffix}`]: screw.majorMax_m / unit,
    [`major_min_${suffix}`]: screw.majorMin_m / unit,
    [`pitch_max_${suffix}`]: screw.pitchMax_m / unit,
    [`pitch_min_${suffix}`]: screw.pitchMin_m / unit,
  };
};

const threads: Answers = {
  "basic pitch and internal minor diameter": {
    methods: [pitchDiameter, minorDiameter],
    run: ({ thread }: { readonly thread: string }) => basics(thread),
  },
  "basic dimensions in mm": {
    methods: [pitchDiameter, minorDiameter],
    run: ({ thread }: { readonly thread: string }) => basics(thread),
  },
  "internal thread 6H limits": { methods: [], run: holeLimits(MM, "mm") },
  "Unified internal thread 2B limits": { methods: [], run: holeLimits(INCH, "in") },
  "external thread 6g limits (needed for stripping)": { methods: [], run: screwLimits(MM, "mm") },
  "Unified external thread 2A limits (needed for stripping)": {
    methods: [],
    run: screwLimits(INCH, "in"),
  },
  "tapping drill for a cut thread": {
    methods: [],
    run: ({ thread }: { readonly thread: string }) => ({
      drill_mm: find(thread).tappingDrill_m / MM,
    }),
  },
  "tapping drill": {
    methods: [heightShareUs],
    run: ({ thread }: { readonly thread: string }) => {
      const { tappingDrill_m, tappingDrillName } = find(thread);
      return {
        drill: tappingDrillName.replace(" in", ""),
        drill_in: tappingDrill_m / INCH,
        drill_mm: tappingDrill_m / MM,
        percent_us: 100 * usShare(thread, tappingDrill_m),
      };
    },
  },
  "thread height of the tapped hole as percent of the ISO 68-1 internal height 5H/8": {
    methods: [heightShareIso, sharpHeight],
    run: ({ thread, drill_mm }: { readonly thread: string; readonly drill_mm: number }) =>
      100 * isoShare(thread, drill_mm * MM),
  },
  "US percent full thread for a drill": {
    methods: [heightShareUs, sharpHeight],
    run: ({ thread, drill_mm }: { readonly thread: string; readonly drill_mm: number }) =>
      100 * usShare(thread, drill_mm * MM),
  },
  "percent thread for an off-table drill, and whether the hole is inside the 6H minor limits": {
    methods: [heightShareIso, heightShareUs, sharpHeight],
    run: ({ thread, drill_mm }: { readonly thread: string; readonly drill_mm: number }) => {
      const drill = drill_mm * MM;
      const { minorMin_m, minorMax_m } = find(thread).hole;
      return {
        percent_iso: 100 * isoShare(thread, drill),
        percent_us: 100 * usShare(thread, drill),
        within_6H_minor: drill >= minorMin_m && drill <= minorMax_m,
      };
    },
  },
  "nominal tensile stress area": {
    methods: [stressArea],
    run: ({ thread }: { readonly thread: string }) => {
      const { nominal_m: nominal, pitch_m: pitch } = find(thread);
      return { As_mm2: stressArea({ nominal, pitch }) / MM ** 2 };
    },
  },
  "tensile stress area": {
    methods: [stressAreaUnified],
    run: ({ thread }: { readonly thread: string }) => {
      const { nominal_m: nominal, pitch_m: pitch } = find(thread);
      const area = stressAreaUnified({ nominal, pitch });
      return { At_in2: area / INCH ** 2, At_mm2: area / MM ** 2 };
    },
  },
  "clearance hole (fine/medium/coarse)": {
    methods: [],
    run: ({ screw }: { readonly screw: ClearanceScrew }) => {
      const { close_m, medium_m, coarse_m } = CLEARANCE_HOLES[screw];
      return { close_mm: close_m / MM, medium_mm: medium_m / MM, coarse_mm: coarse_m / MM };
    },
  },
};

interface Pipe {
  readonly nps: keyof typeof NPT_THREADS;
}

const gOf = (thread: string) => G_THREADS[thread.slice(2) as keyof typeof G_THREADS];

const nptNumbers = (nps: Pipe["nps"]) => {
  const { outside_m: outside, pitch_m: pitch, handTight_m: handTight } = NPT_THREADS[nps];
  const smallEnd = nptSmallEnd({ outside, pitch });
  const atFace = nptFace({ smallEnd, handTight });
  return { outside, pitch, handTight, smallEnd, atFace };
};

/** Both units of a range carry one name there, so these are checked by hand below. */
const BY_HAND = "answered by hand below: inches and millimetres share one name in the case";

const pipeThreads: Answers = {
  "NPT basic dimensions": {
    methods: [nptSmallEnd, nptFace, nptUsefulLength],
    run: ({ nps }: Pipe) => {
      const { outside, pitch, handTight, smallEnd, atFace } = nptNumbers(nps);
      const useful = nptUsefulLength({ outside, pitch });
      return {
        od_in: outside / INCH,
        tpi: INCH / pitch,
        E0_in: smallEnd / INCH,
        E1_in: atFace / INCH,
        L1_in: handTight / INCH,
        L2_in: useful / INCH,
        E0_mm: smallEnd / MM,
        E1_mm: atFace / MM,
        L1_mm: handTight / MM,
        L2_mm: useful / MM,
      };
    },
  },
  "NPT thread form": {
    methods: [nptHeight, sharpHeight],
    run: ({ nps }: Pipe) => {
      const { pitch } = nptNumbers(nps);
      const { taper, flanks_rad } = PIPE_FAMILIES.NPT;
      return {
        pitch_in: pitch / INCH,
        height_max_in: nptHeight({ pitch }) / INCH,
        sharp_V_height_in: sharpHeight({ pitch, flank: flanks_rad / 2 }) / INCH,
        taper_per_ft_in: 12 * taper,
        half_taper_deg: Math.atan(taper / 2) / DEGREE,
        included_flank_deg: flanks_rad / DEGREE,
      };
    },
  },
  "pitch diameter of the internal thread one L1 inside the face": {
    methods: [taperInside],
    run: ({ nps, depth_in }: Pipe & { readonly depth_in: number }) => ({
      pitch_dia_in: taperInside({ atFace: nptNumbers(nps).atFace, depth: depth_in * INCH }) / INCH,
    }),
  },
  "hand-tight engagement in turns": {
    methods: [handTightTurns],
    run: ({ nps }: Pipe) => {
      const { handTight, pitch } = nptNumbers(nps);
      return { turns: handTightTurns({ handTight, pitch }) };
    },
  },
  "NPT tap drill without reamer": { later: BY_HAND },
  "NPT tap drill when the hole is then taper-reamed": {
    methods: [],
    run: ({ nps }: Pipe) => {
      const { name, diameter_m } = NPT_THREADS[nps].reamedDrill;
      return {
        drill_text: name.replace(" in", ""),
        drill_in: diameter_m / INCH,
        drill_mm: diameter_m / MM,
      };
    },
  },
  "nominal pipe size is not the thread diameter": {
    methods: [],
    run: ({ nps }: Pipe) => ({ od_mm: NPT_THREADS[nps].outside_m / MM }),
  },
  "NPT needs sealant": {
    methods: [],
    run: () => ({
      needs_sealant: PIPE_FAMILIES.NPT.sealant,
      made_up: PIPE_FAMILIES.NPT.madeUp,
    }),
  },
  "NPTF (dryseal) differs from NPT": {
    methods: [],
    run: () => {
      const { sealsOn, standard, remarks } = PIPE_FAMILIES.NPTF;
      return {
        dryseal: sealsOn === "thread alone",
        standard,
        basic_sizes_same_as_NPT: remarks.some((text) => text.includes("Basic sizes of NPT")),
        crest_root_contact_first: remarks.some((text) => text.includes("crest and root first")),
        gauging_differs: remarks.some((text) => text.includes("gauges")),
      };
    },
  },
  "ISO 228-1 parallel pipe thread basic dimensions": {
    methods: [whitworthHeight],
    run: ({ thread }: { readonly thread: string }) => {
      const { pitch_m: pitch, nominal_m } = gOf(thread);
      const height = whitworthHeight({ pitch });
      return {
        tpi: INCH / pitch,
        pitch_mm: pitch / MM,
        major_mm: nominal_m / MM,
        pitch_dia_mm: (nominal_m - height) / MM,
        minor_mm: (nominal_m - 2 * height) / MM,
      };
    },
  },
  "ISO 228-1 internal thread tolerances (pitch dia +, minor dia +)": {
    methods: [],
    run: ({ thread }: { readonly thread: string }) => {
      const { minorMin_m, minorMax_m, pitchMin_m, pitchMax_m } = gOf(thread).hole;
      return {
        pitch_tol_mm: (pitchMax_m - pitchMin_m) / MM,
        minor_tol_mm: (minorMax_m - minorMin_m) / MM,
        minor_max_mm: minorMax_m / MM,
      };
    },
  },
  "tapping drill for G thread": {
    methods: [],
    run: ({ thread }: { readonly thread: string }) => ({
      drill_mm: gOf(thread).tappingDrill_m / MM,
    }),
  },
  "ISO 7-1 gauge length and useful thread length (basic)": {
    methods: [taperUsefulLength],
    run: ({ thread }: { readonly thread: string }) => {
      const { gaugeLength_m: gauge, pitch_m: pitch } = gOf(thread);
      return {
        gauge_mm: gauge / MM,
        useful_mm: taperUsefulLength({ gauge, pitch }) / MM,
        taper: PIPE_FAMILIES.R.taper,
      };
    },
  },
  "G and NPT do not interchange": {
    methods: [],
    run: () => {
      const flanks = [PIPE_FAMILIES.G, PIPE_FAMILIES.NPT].map(({ flanks_rad }) =>
        Math.round(flanks_rad / DEGREE)
      );
      const perInch = [G_THREADS["1/8"], NPT_THREADS["1/8"]].map(({ pitch_m }) =>
        Math.round(INCH / pitch_m)
      );
      return {
        flank_deg_a: flanks[0],
        flank_deg_b: flanks[1],
        tpi_a: perInch[0],
        tpi_b: perInch[1],
        interchangeable: flanks[0] === flanks[1] && perInch[0] === perInch[1],
      };
    },
  },
};

const sized = ({ name, diameter_m }: { readonly name: string; readonly diameter_m: number }) => ({
  size: name,
  dia_in: diameter_m / INCH,
  dia_mm: diameter_m / MM,
});

const byName = (set: keyof typeof DRILLS) => ({ size }: { readonly size: string }) => {
  const drill = DRILLS[set].find(({ name }) => name === size);
  assert(drill, `no drill ${size}`);
  return sized(drill);
};

const MATERIAL_OF: Readonly<Record<string, CutMaterial>> = {
  "aluminium alloy (6061/6082)": "aluminium",
  "free-cutting brass": "brass",
  "mild steel": "mild steel",
  "austenitic stainless": "stainless steel",
};

const speedOf = (material: string) => {
  const name = MATERIAL_OF[material];
  assert(name, material);
  return CUTTING_SPEEDS[name];
};

const drilling: Answers = {
  "letter drill": { methods: [], run: byName("letter") },
  "number drill": { methods: [], run: byName("number") },
  "fractional drill": { methods: [], run: byName("fractional") },
  "nearest inch drill (fraction, letter or number) to a metric size": {
    methods: [],
    run: ({ target_mm }: { readonly target_mm: number }) => {
      const drill = nearestInchDrill(target_mm * MM);
      return { ...sized(drill), error_mm: drill.error_m / MM };
    },
  },
  "nearest 0.1 mm metric drill": {
    methods: [],
    run: ({ target_mm }: { readonly target_mm: number }) => {
      const drill = nearestDrill(DRILLS.metric, target_mm * MM);
      return { ...sized(drill), error_mm: drill.error_m / MM };
    },
  },
  "inch drills that may replace a metric tapping drill (inside the 6H minor limits)": {
    methods: [],
    run: (
      { minor_min_mm, minor_max_mm }: {
        readonly minor_min_mm: number;
        readonly minor_max_mm: number;
      },
    ) => {
      const drills = inchDrillsWithin(minor_min_mm * MM, minor_max_mm * MM);
      return {
        sizes: drills.map(({ name }) => name),
        dia_mm: drills.map(({ diameter_m }) => diameter_m / MM),
      };
    },
  },
  "HSS drill cutting-speed range": {
    methods: [],
    run: ({ material }: { readonly material: string }) => ({
      value: speedOf(material).from / METRE_A_MINUTE,
    }),
  },
  "spindle speed": {
    methods: [spindleSpeed],
    run: (
      { cutting_speed_m_min, dia_mm }: {
        readonly cutting_speed_m_min: number;
        readonly dia_mm: number;
      },
    ) => ({
      rpm: 60 *
        spindleSpeed({ cuttingSpeed: cutting_speed_m_min * METRE_A_MINUTE, drill: dia_mm * MM }),
    }),
  },
  "spindle speed (inch worked example)": {
    methods: [spindleSpeed],
    run: ({ sfm, dia_in }: { readonly sfm: number; readonly dia_in: number }) => ({
      rpm: 60 * spindleSpeed({ cuttingSpeed: sfm * 0.3048 / 60, drill: dia_in * INCH }),
    }),
  },
  "HSS drill feed per revolution": {
    methods: [],
    run: ({ dia_mm }: { readonly dia_mm: number }) => {
      const { from, to } = feedBand(dia_mm * MM) ?? { from: NaN, to: NaN };
      return { value: (from + to) / 2 / MM };
    },
  },
  "drilling time without pecking": {
    methods: [feedSpeed, drillingTime],
    run: (
      { rpm, feed_mm_rev, depth_mm }: {
        readonly rpm: number;
        readonly feed_mm_rev: number;
        readonly depth_mm: number;
      },
    ) => {
      const speed = feedSpeed({ speed: rpm / 60, feed: feed_mm_rev * MM });
      return {
        feed_mm_min: speed / MM * 60,
        minutes: drillingTime({ depth: depth_mm * MM, feedSpeed: speed }) / 60,
      };
    },
  },
  "depth ratio and pecking": {
    methods: [depthRatio],
    run: ({ depth_mm, dia_mm }: { readonly depth_mm: number; readonly dia_mm: number }) => {
      const ratio = depthRatio({ depth: depth_mm * MM, drill: dia_mm * MM });
      return {
        ratio,
        peck_needed: ratio > PECK_FROM_DIAMETERS,
        deep_hole: ratio > DEEP_FROM_DIAMETERS,
      };
    },
  },
};

interface Crossing {
  readonly gallery_axis_depth_mm: number;
  readonly gallery_dia_mm: number;
}
const crossing = ({ gallery_axis_depth_mm, gallery_dia_mm }: Crossing) => ({
  axisDepth: gallery_axis_depth_mm * MM,
  gallery: gallery_dia_mm * MM,
});

interface SeatCase {
  readonly seat_dia_mm: number;
  readonly hole_dia_mm: number;
  readonly included_deg: number;
}

const port: Answers = {
  "drill point length": {
    methods: [pointLength],
    run: ({ drill_mm, point_deg }: { readonly drill_mm: number; readonly point_deg: number }) => {
      const point = pointLength({ drill: drill_mm * MM, included: point_deg * DEGREE });
      return { tip_mm: point / MM, ratio: point / (drill_mm * MM) };
    },
  },
  "depth of a pointed spot drill for a given seat (mouth) diameter": {
    methods: [pointLength],
    run: ({ seat_dia_mm, included_deg }: SeatCase) => ({
      depth_mm: pointLength({ drill: seat_dia_mm * MM, included: included_deg * DEGREE }) / MM,
    }),
  },
  "axial depth of the conical seat between mouth and tapping hole": {
    methods: [coneDepth, coneSide],
    run: ({ seat_dia_mm, hole_dia_mm, included_deg }: SeatCase) => {
      const cone = {
        wide: seat_dia_mm * MM,
        narrow: hole_dia_mm * MM,
        included: included_deg * DEGREE,
      };
      return { cone_depth_mm: coneDepth(cone) / MM, slant_mm: coneSide(cone) / MM };
    },
  },
  "how much a depth error changes the seat diameter": {
    methods: [seatGrowth],
    run: (
      { included_deg, depth_error_mm }: {
        readonly included_deg: number;
        readonly depth_error_mm: number;
      },
    ) => ({
      dia_change_mm: seatGrowth({
        deeper: depth_error_mm * MM,
        included: included_deg * DEGREE,
      }) / MM,
    }),
  },
  "blind tapped hole: depth of drilled hole to the full diameter for a required full thread": {
    methods: [blindHoleDepth, pointLength],
    run: (
      { thread, full_thread_mm, tap_lead_threads, clearance_pitches }: {
        readonly thread: string;
        readonly full_thread_mm: number;
        readonly tap_lead_threads: number;
        readonly clearance_pitches: number;
      },
    ) => {
      const { pitch_m, tappingDrill_m } = find(thread);
      const depth = blindHoleDepth({
        fullThread: full_thread_mm * MM,
        pitch: pitch_m,
        leadThreads: tap_lead_threads,
        clearThreads: clearance_pitches,
      });
      const point = pointLength({ drill: tappingDrill_m, included: 118 * DEGREE });
      return {
        full_dia_depth_mm: depth / MM,
        point_118_mm: point / MM,
        total_depth_mm: (depth + point) / MM,
      };
    },
  },
  "radial port meeting a round gallery: depth at which the wall of the port first and last opens into the gallery":
    {
      methods: [firstOpening, lastOpening],
      run: (c: Crossing & { readonly port_dia_mm: number }) => {
        const first = firstOpening(crossing(c)) / MM;
        const last = lastOpening({ ...crossing(c), drill: c.port_dia_mm * MM }) / MM;
        return {
          first_open_mm: first,
          last_open_mm: last,
          tip118_first_touch_mm: first,
          full_dia_clear_depth_to_drill_mm: last,
        };
      },
    },
  "thread length available above the gallery": {
    methods: [fullThreadAboveGallery, firstOpening],
    run: (c: Crossing & { readonly seat_depth_mm: number; readonly needed_mm: number }) => {
      const available = fullThreadAboveGallery({
        opening: firstOpening(crossing(c)),
        mouth: c.seat_depth_mm * MM,
      });
      return { available_mm: available / MM, ok: available >= c.needed_mm * MM };
    },
  },
  "drill tip clearance to the far wall of the gallery when the full diameter has just broken through":
    {
      methods: [farWallClearance, lastOpening, pointLength],
      run: (c: Crossing & { readonly drill_mm: number; readonly point_deg: number }) => {
        const at = crossing(c);
        const drill = c.drill_mm * MM;
        const opened = lastOpening({ ...at, drill });
        const point = pointLength({ drill, included: c.point_deg * DEGREE });
        return {
          tip_depth_mm: (opened + point) / MM,
          far_wall_mm: (at.axisDepth + at.gallery / 2) / MM,
          clearance_mm: farWallClearance({ ...at, opened, point }) / MM,
        };
      },
    },
  "a 9 mm drill serves an M10x1 tap": {
    methods: [],
    run: () => {
      const { tappingDrill_m, minorMin_m = NaN, minorMax_m = NaN } = PORTS["M10x1-cone"];
      return {
        drill_mm: tappingDrill_m / MM,
        inside_6H_minor: tappingDrill_m >= minorMin_m && tappingDrill_m <= minorMax_m,
        minor_min_mm: minorMin_m / MM,
        minor_max_mm: minorMax_m / MM,
      };
    },
  },
  "sealing on a 45-degree cone is metal to metal": {
    methods: [],
    run: () => {
      const { contact, threadSealant, oRing, concentric } = SEALS.cone;
      return {
        seal: contact,
        sealant_on_thread: threadSealant,
        o_ring: oRing,
        concentricity_matters: concentric,
      };
    },
  },
};

const CASES: ReferenceCase[] = JSON.parse(
  Deno.readTextFileSync(new URL("../../reference/pipe-threads.json", import.meta.url)),
);

/** NPT drills where the two charts of the trade differ. */
const nptDrills: Check[] = CASES.filter((c) => c.quantity === "NPT tap drill without reamer")
  .map((c) => ({
    name: `pipe-threads.json ${c.id}: ${c.quantity}`,
    methods: [],
    source: c.source,
    provenance: c.provenance,
    run: () => {
      const { min_in, max_in, min_mm, max_mm } = c.expected as Record<string, number>;
      const drills = NPT_THREADS[c.inputs.nps as Pipe["nps"]].straightDrills;
      const sizes = drills.map(({ diameter_m }) => diameter_m);
      assertAlmostEquals(Math.min(...sizes) / INCH, min_in ?? NaN, 1e-4);
      assertAlmostEquals(Math.max(...sizes) / INCH, max_in ?? NaN, 1e-4);
      assertAlmostEquals(Math.min(...sizes) / MM, min_mm ?? NaN, 0.002);
      assertAlmostEquals(Math.max(...sizes) / MM, max_mm ?? NaN, 0.002);
    },
  }));

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

const byGeometry: Check[] = [
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
];

const STANDARD = ["M6x1", "M8x1.25", "M10x1", "M12x1.5", "M14x1.5", "7/16-20", "9/16-18"].map(find);

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

const loads: Check[] = [
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

/** All checks of the room. */
export const checks: Check[] = [
  ...fromReference("threads.json", threads),
  ...fromReference("pipe-threads.json", pipeThreads),
  ...fromReference("drilling.json", drilling),
  ...fromReference("sensor-port.json", port),
  ...nptDrills,
  ...byGeometry,
  ...loads,
];
