/** Answers to the cases of pipe threads. */
import { assertAlmostEquals } from "@std/assert";
import {
  G_THREADS,
  handTightTurns,
  NPT_THREADS,
  nptFace,
  nptHeight,
  nptSmallEnd,
  nptUsefulLength,
  PIPE_FAMILIES,
  sharpHeight,
  taperInside,
  taperUsefulLength,
  whitworthHeight,
} from "@/lib/thread/mod.ts";
import type { Answers, Check, ReferenceCase } from "../../helpers/checks.ts";
import { DEGREE, gOf, INCH, MM, nptNumbers, type Pipe } from "./shorthand.ts";

/** Both units of a range carry one name there, so these are checked by hand below. */
const BY_HAND = "answered by hand below: inches and millimetres share one name in the case";

export const pipeThreads: Answers = {
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

const CASES: ReferenceCase[] = JSON.parse(
  Deno.readTextFileSync(new URL("../../reference/pipe-threads.json", import.meta.url)),
);

/** NPT drills where the two charts of the trade differ. */
export const nptDrills: Check[] = CASES.filter((c) => c.quantity === "NPT tap drill without reamer")
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
