/** What the drawing room is held against. */
import { assert, assertEquals } from "@std/assert";
import {
  boxOf,
  drawingSheets,
  dxfOf,
  frameBox,
  largestScale,
  LETTERING,
  type LineType,
  marksOf,
  type Orientation,
  type Paper,
  SCALES,
  sizeOf,
  STROKES,
  TEXT_mm,
} from "@/lib/drawing/mod.ts";
import { type Answers, type Check, fromReference } from "../../helpers/checks.ts";
import { METRIC } from "./options.ts";
import { fourInjectors, sixInjectors } from "./sample_layouts.ts";

const SHEETS = drawingSheets(sixInjectors(), METRIC);
const MARKS = SHEETS.flatMap(({ shapes }) => marksOf(shapes));
const TEXTS = MARKS.flatMap((mark) => mark.kind === "text" ? [mark] : []);

function paperOf(sheet: string): [Paper, Orientation] {
  const [paper, orientation] = sheet.split(" ");
  return [paper as Paper, orientation as Orientation];
}

/** Says a thing if it is so in the drawings. */
function ifSo(says: string, isSo: boolean): string {
  return isSo ? says : `not: ${says}`;
}

/** Whether all strokes on some layers have a line type, and there are some. */
function drawnAs(type: LineType, ...layers: string[]): boolean {
  const strokes = MARKS.filter((mark) => layers.includes(mark.layer) && "type" in mark);
  return strokes.length > 0 && strokes.every((mark) => "type" in mark && mark.type === type);
}

/** What a rail is drawn with, the strips to glue on left out. */
const VIEWS = SHEETS.filter(({ kind }) => kind !== "strip").flatMap(({ shapes }) =>
  marksOf(shapes)
);

const viewOutlines = SHEETS.filter(({ kind }) => kind === "views")
  .flatMap(({ shapes }) => marksOf(shapes)).filter(({ layer }) => layer === "outline");

/** What each line type is used for, where the drawings do so. */
const USES: Readonly<Record<string, () => string>> = {
  "01.2": () => {
    const edges = viewOutlines.every((mark) => "type" in mark && mark.type === "01.2");
    const ends = MARKS.some((mark) =>
      mark.layer === "threads" && "type" in mark && mark.type === "01.2"
    );
    return ifSo("visible edges and outlines; crests/ends of thread", edges && ends);
  },
  "01.1": () => {
    const arcs = MARKS.filter((mark) => mark.layer === "threads" && mark.kind === "arc");
    const roots = arcs.length > 0 &&
      arcs.every((mark) => mark.kind === "arc" && mark.type === "01.1");
    const dims = SHEETS.flatMap(({ shapes }) => shapes).filter(({ kind }) => kind === "dimension")
      .flatMap((shape) => marksOf([shape])).filter((mark) => "type" in mark);
    const narrow = dims.every((mark) => "type" in mark && mark.type === "01.1");
    return ifSo("dimension, extension, leader lines, hatching, roots of thread", roots && narrow);
  },
  "02.1": () => ifSo("hidden edges", drawnAs("02.1", "hidden")),
  "04.1": () => {
    const lines = VIEWS.filter((mark) => mark.layer === "centre");
    const chain = lines.every((mark) => "type" in mark && mark.type === "04.1");
    return ifSo("centre lines, pitch circles", chain && lines.length > 0);
  },
};

/** The captions of the title block for the mandatory fields of ISO 7200. */
const FIELDS: readonly [field: string, caption: string][] = [
  ["legal owner", "Owner"],
  ["identification number", "Drawing number"],
  ["date of issue", "Date of issue"],
  ["segment/sheet number", "Sheet"],
  ["title", "Title"],
  ["approval person", "Approved by"],
  ["creator", "Drawn by"],
  ["document type", "Type"],
];

const DXF_LINES = (await dxfOf(fourInjectors(), METRIC)).trimEnd().split("\n").map((each) =>
  each.trim()
);

/** The group codes of the first entity of a kind, with their values. */
function groups(entity: string): [code: string, value: string][] {
  const pairs: [string, string][] = [];
  const start = DXF_LINES.indexOf("ENTITIES");
  let isIn = false;
  for (let i = start + 1; i + 1 < DXF_LINES.length; i += 2) {
    const [code = "", value = ""] = [DXF_LINES[i], DXF_LINES[i + 1]];
    if (code === "0" && isIn) break;
    if (code === "0") isIn = value === entity;
    else if (isIn) pairs.push([code, value]);
  }
  return pairs;
}

function present(entity: string, codes: readonly string[]): string[] {
  const own = groups(entity).map(([code]) => code);
  return codes.filter((code) => own.includes(code));
}

/** The line after a header variable and its group code. */
function headerVariable(name: string): { code: string; value: string } {
  const at = DXF_LINES.indexOf(name);
  return { code: DXF_LINES[at + 1] ?? "", value: DXF_LINES[at + 2] ?? "" };
}

const sheet = (inputs: { sheet: string }) => paperOf(inputs.sheet);

const answers: Answers = {
  "sheet size": {
    methods: [],
    run: (inputs) => {
      const [width_mm, height_mm] = sizeOf(...sheet(inputs));
      return { width_mm, height_mm };
    },
  },
  "drawing space inside the frame": {
    methods: [],
    run: (inputs) => {
      const { left, right, bottom, top } = frameBox(...sheet(inputs));
      return { width_mm: right - left, height_mm: top - bottom, left_mm: left, other_mm: bottom };
    },
  },
  "frame line width": {
    methods: [],
    leaves: {
      grid_border_mm: "sheets of this size need no grid reference border, so none is drawn",
    },
    run: () => ({ frame_mm: STROKES.frame.width }),
  },
  "title block width": {
    methods: [],
    run: () => {
      const widths = SHEETS[0]?.shapes.flatMap((mark) => {
        if (mark.kind !== "polyline" || mark.type !== "frame") return [];
        const { left, right } = boxOf(mark);
        return [right - left];
      }) ?? [];
      return { max_mm: Math.min(...widths) };
    },
  },
  "mandatory data fields": {
    methods: [],
    run: () => ({
      fields: FIELDS.filter(([, caption]) => TEXTS.some(({ says }) => says === caption))
        .map(([field]) => field),
    }),
  },
  "line width series": {
    methods: [],
    leaves: {
      series_mm: "three widths of the series are used, by the line group",
      ratio: "likewise",
    },
    run: () => ({}),
  },
  "line group 0.5": {
    methods: [],
    leaves: { symbols_mm: "no graphical symbols with a width of their own" },
    run: () => ({ wide_mm: STROKES["01.2"].width, narrow_mm: STROKES["01.1"].width }),
  },
  "line type use": {
    methods: [],
    run: ({ line }: { line: string }) => ({ use: USES[line]?.() }),
  },
  "lettering heights": { methods: [], run: () => ({ series_mm: LETTERING }) },
  "type B stroke and spacing": {
    later:
      "Drawing: letters are the reader's own sans serif, not type B; the spacing of lines is checked below",
  },
  "external thread, side view": { later: "Drill: a rail has no external thread to draw" },
  "internal thread in section": {
    methods: [],
    run: () => {
      const layer = (name: string) => VIEWS.filter((mark) => mark.layer === name);
      const narrow = layer("threads").some((mark) => "type" in mark && mark.type === "01.1");
      const wide = layer("ports").every((mark) => "type" in mark && mark.type === "01.2");
      return {
        minor: wide ? "continuous wide" : "",
        major: narrow ? "continuous narrow" : "",
        "hatching_to": hatchedToBore() ? "minor diameter (wide line)" : "",
      };
    },
  },
  "blind tapped hole call-out": {
    methods: [],
    run: ({ thread, full_thread_mm, drill_mm, drill_depth_mm }) => ({
      text: calledOut(thread, full_thread_mm, drill_mm, drill_depth_mm).replace("Ø", "diameter "),
    }),
  },
  "dimensioning basics": {
    methods: [],
    leaves: { decimal: "a point, as the case allows" },
    run: () => ({ rules: RULES.filter(([, isKept]) => isKept()).map(([rule]) => rule) }),
  },
  "recommended scales": {
    methods: [],
    run: () => ({
      reduce: SCALES.filter((each) => each < 1 && each >= 0.1).map((each) => `1:${1 / each}`),
      enlarge: SCALES.filter((each) => each > 1).toSorted((a, b) => a - b).map((each) =>
        `${each}:1`
      ),
      full: SCALES.includes(1) ? "1:1" : "",
    }),
  },
  "largest standard scale that fits": {
    methods: [],
    run: ({ part_length_mm, space_mm }) => {
      const scale = largestScale((each) => part_length_mm * each <= space_mm, 1);
      return { scale: `1:${1 / scale}` };
    },
  },
  "A-series area": {
    methods: [],
    run: () => {
      const [width, height] = sizeOf("A0", "portrait");
      return { area_m2: width * height / 1e6, ratio: height / width };
    },
  },
  "group codes of LINE": {
    methods: [],
    run: () => ({
      start: present("LINE", ["10", "20", "30"]),
      end: present("LINE", ["11", "21", "31"]),
      layer: present("LINE", ["8"])[0],
    }),
  },
  "group codes of CIRCLE": {
    methods: [],
    run: () => ({
      centre: present("CIRCLE", ["10", "20", "30"]),
      radius: present("CIRCLE", ["40"])[0],
    }),
  },
  "group codes of TEXT": {
    methods: [],
    run: () => ({
      insert: present("TEXT", ["10", "20", "30"]),
      height: present("TEXT", ["40"])[0],
      string: present("TEXT", ["1"])[0],
    }),
  },
  "header units": {
    methods: [],
    run: () => {
      const { code, value } = headerVariable("$INSUNITS");
      return { variable: "$INSUNITS", code, value: Number(value) };
    },
  },
  "file structure": {
    methods: [],
    run: () => ({
      first: DXF_LINES.slice(0, 2),
      last: DXF_LINES.slice(-2),
      sections: DXF_LINES.flatMap((each, i) =>
        each === "SECTION" && DXF_LINES[i - 1] === "0" ? [DXF_LINES[i + 2]] : []
      ),
      pairs: DXF_LINES.length % 2 === 0 && DXF_LINES.every((each, i) => i % 2 || /^\d+$/.test(each))
        ? "code line then value line"
        : "",
    }),
  },
  "R12 version string": {
    later: "Drawing: the file is written as AC1021 by its library; AC1009 is an older version",
  },
};

/** Whether hatching comes closer to a threaded bore's axis than its major diameter. */
function hatchedToBore(): boolean {
  const areas = MARKS.flatMap((mark) => mark.kind === "area" ? [mark] : []);
  // A port of 9 mm with M10 thread, at 1:1: what is left out of the hatching is 9 mm wide.
  return areas.some(({ holes }) =>
    holes.some((hole) => {
      const xs = hole.map(([x]) => x);
      return Math.abs(Math.max(...xs) - Math.min(...xs) - 9) < 1e-6;
    })
  );
}

/** The call-out of a port drawn with given numbers. */
function calledOut(thread: string, full: number, drill: number, deep: number): string {
  const layout = fourInjectors();
  const holes = layout.holes.map((hole) =>
    hole.id !== "feed" ? hole : {
      ...hole,
      profile: [{
        cut: "thread" as const,
        from_m: 0,
        to_m: deep / 1000,
        fromDiameter_m: drill / 1000,
        toDiameter_m: drill / 1000,
      }],
      thread: { name: thread, major_m: 0.01, pitch_m: 0.001, from_m: 0, to_m: full / 1000 },
    }
  );
  const calls = drawingSheets({ ...layout, holes }, METRIC).flatMap(({ shapes }) => shapes)
    .flatMap((shape) =>
      shape.kind === "dimension" && shape.measure === "call-out" && shape.holes.includes("feed")
        ? [shape.says]
        : []
    );
  return calls[0] ?? "";
}

const DIMENSIONS = SHEETS.flatMap(({ shapes }) => shapes)
  .flatMap((shape) => shape.kind === "dimension" ? [shape] : []);

/** The rules of ISO 129-1 that the drawings keep, each found in what they hold. */
const RULES: readonly [rule: string, isKept: () => boolean][] = [
  ["each feature dimensioned once", () => {
    const places = DIMENSIONS.filter(({ of }) => of === "along").flatMap(({ holes }) => holes);
    return new Set(places).size === places.length;
  }],
  ["values above and parallel to the line, readable from bottom or right", () => {
    const words = DIMENSIONS.flatMap((each) => marksOf([each])).filter(({ kind }) =>
      kind === "text"
    );
    return words.length > 0 &&
      words.every((mark) => mark.kind === "text" && (mark.turned === 0 || mark.turned === 90));
  }],
  ["diameter sign before the value, R before radius", () => {
    const calls = DIMENSIONS.filter(({ measure }) => measure === "call-out");
    return calls.every(({ says }) => /(^|[ /])Ø\d/.test(says) && !/\dØ/.test(says));
  }],
  ["no dimension to hidden lines", () => {
    // A hole's place stands in the view of its own face only, where its mouth is seen.
    const faces = new Map(sixInjectors().holes.map(({ id, face }) => [id, face]));
    return DIMENSIONS.filter(({ of }) => of === "along").every(({ holes }) =>
      new Set(holes.map((id) => faces.get(id))).size === 1
    );
  }],
  ["functional datums first", () => {
    const ids = new Set(
      DIMENSIONS.filter(({ of }) => of === "along").flatMap(({ holes }) => holes),
    );
    return sixInjectors().holes.filter(({ feature }) => feature === "pocket")
      .every(({ id }) => ids.has(id));
  }],
];

/** All checks of the room. */
export const checks: Check[] = [
  ...fromReference("drawing.json", answers),
  {
    name: "lines of text in the table stand 13/10 to 19/10 of their height apart",
    methods: [],
    source: "ISO 3098-1 type B",
    provenance: "from-memory",
    run: () => {
      const table = SHEETS.find(({ kind }) => kind === "holes");
      const texts = marksOf(table?.shapes ?? []).flatMap((mark) =>
        mark.kind === "text" ? [mark] : []
      );
      const first = texts.find(({ says }) => says.startsWith("spotface"));
      assert(first);
      const next = texts.filter(({ at }) => at[0] === first.at[0] && at[1] < first.at[1])
        .map(({ at }) => first.at[1] - at[1]);
      const pitch = Math.min(...next) / TEXT_mm;
      assert(pitch >= 1.3 && pitch <= 1.9, `${pitch}`);
    },
  },
  {
    name: "dashes are 12, long dashes 24, gaps 3 and dots half a line width long",
    methods: [],
    source: "ISO 128-2, lengths of line elements",
    provenance: "from-memory",
    run: () => {
      assertEquals(STROKES["02.1"].dashes.map((each) => each / 0.25), [12, 3]);
      assertEquals(STROKES["04.1"].dashes.map((each) => each / 0.25), [24, 3, 0.5, 3]);
    },
  },
];
