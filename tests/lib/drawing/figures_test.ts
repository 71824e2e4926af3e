/** Every figure on a drawing is the layout's own number. */
import { assert, assertEquals } from "@std/assert";
import { type Dimension, type DrawingSheet, drawingSheets, dxfShapes } from "@/lib/drawing/mod.ts";
import type { Hole, Layout } from "@/lib/layout/mod.ts";
import { assertNear } from "./near.ts";
import { type Drawn, DRAWN_SAMPLES, drawnByChance } from "./options.ts";

const ALL: readonly Drawn[] = [...DRAWN_SAMPLES, ...drawnByChance(60)];
const SHEETS = ALL.map((drawn) => ({
  ...drawn,
  sheets: drawingSheets(drawn.layout, drawn.options),
}));

function dimensions(sheets: readonly DrawingSheet[]): Dimension[] {
  return sheets.flatMap(({ shapes }) => shapes.filter((shape) => shape.kind === "dimension"));
}

/** The figures in a text, in millimetres; degrees left out. */
function figures(says: string, system: "metric" | "inch"): number[] {
  const unit = system === "metric" ? 1 : 25.4;
  return [...says.replaceAll("−", "-").matchAll(/-?\d+(?:\.\d+)?(?!\d|\.|°)/g)].map(([each]) =>
    Number(each) * unit
  );
}

/** Half of the last place that is written [mm]. */
const HALF_PLACE = { metric: 0.00501, inch: 0.0005 * 25.4 + 1e-6 } as const;

/** What a dimension of a hole must be, straight from the layout [mm]. */
function wanted({ bar }: Layout, hole: Hole, of: string): number[] {
  const [x, y, z] = hole.entry.map((each) => each * 1000) as [number, number, number];
  const isRound = bar.shape === "round";
  const fromFront = isRound ? y : y + bar.width_m * 500;
  switch (of) {
    case "along":
      return [x];
    case "up":
      return [z];
    case "across":
      if (hole.face === "front" || hole.face === "back") {
        return [isRound ? z - bar.height_m * 500 : z];
      }
      return [fromFront];
    case "depth": {
      const thread = hole.thread ? [hole.thread.to_m] : [];
      return [...hole.profile.map(({ to_m }) => to_m), ...thread].map((each) => each * 1000);
    }
  }
  throw new Error(`a dimension of a hole's ${of}`);
}

const SIZES: Readonly<Record<string, (layout: Layout) => number>> = {
  length: ({ bar }) => bar.length_m * 1000,
  width: ({ bar }) => bar.width_m * 1000,
  height: ({ bar }) => bar.height_m * 1000,
  diameter: ({ bar }) => bar.height_m * 1000,
};

Deno.test("each dimension's value is the layout's, and its text that value", () => {
  let count = 0;
  for (const { name, layout, options, sheets } of SHEETS) {
    for (const { value, holes, of, says, measure } of dimensions(sheets)) {
      if (measure === "call-out") continue;
      count++;
      assert(value !== undefined, `${name}: ${of} has a value`);
      const [figure = NaN, ...more] = figures(says, options.system);
      assertEquals(more, [], says);
      assertNear(figure, value, HALF_PLACE[options.system]);
      const size = SIZES[of];
      if (size) assertNear(value, size(layout), 1e-6);
      for (const id of size ? [] : holes) {
        const hole = layout.holes.find((each) => each.id === id);
        assert(hole, `${name}: ${id}`);
        const near = wanted(layout, hole, of).some((each) => Math.abs(each - value) < 0.0101);
        assert(near, `${name}: ${of} of ${id} is ${value}`);
      }
    }
  }
  assert(count > 1000, `${count} dimensions`);
});

Deno.test("each call-out's figures are diameters and depths of the holes that it is for", () => {
  for (const { name, layout, options, sheets } of SHEETS) {
    for (const { says, holes, measure } of dimensions(sheets)) {
      if (measure !== "call-out") continue;
      assert(holes.length > 0, says);
      // A thread's name and tolerance class hold figures of their own.
      const plain = says.replace(/^\S+ x /, "");
      for (const id of holes) {
        const hole = layout.holes.find((each) => each.id === id);
        assert(hole);
        const own = hole.profile.flatMap((each) => [
          each.fromDiameter_m * 1000,
          each.toDiameter_m * 1000,
          each.to_m * 1000,
        ]).concat(hole.thread ? [hole.thread.to_m * 1000] : []);
        for (const figure of figures(plain, options.system)) {
          const near = own.some((each) => Math.abs(each - figure) <= HALF_PLACE[options.system]);
          assert(near, `${name}: ${says} of ${id}`);
        }
      }
    }
  }
});

Deno.test("each hole is dimensioned once: its place in its view, its sizes in one section", () => {
  for (const { name, layout, sheets } of SHEETS) {
    const views = dimensions(sheets.filter(({ kind }) => kind === "views"));
    const sections = dimensions(sheets.filter(({ kind }) => kind === "sections"));
    for (const { id, face, profile } of layout.holes) {
      const isEnd = face === "datum-end" || face === "far-end";
      const along = views.filter(({ of, holes }) => of === "along" && holes.includes(id));
      assertEquals(along.length, isEnd ? 0 : 1, `${name}: places of ${id}`);
      const calls = sections.filter(({ measure, holes }) =>
        measure === "call-out" && holes.includes(id)
      ).map(({ says }) => says);
      const stretches = profile.filter(({ cut }) => cut !== "tip").length;
      assert(new Set(calls).size >= Math.min(1, stretches), `${name}: ${id} is called out`);
    }
    const lengths = views.filter(({ of }) => of === "length");
    assertEquals(lengths.length, 1, `${name}: the bar's length`);
  }
});

Deno.test("the figures in brackets are the bar's own sizes", () => {
  for (const { name, options, sheets } of SHEETS) {
    const overview = dimensions(sheets.filter(({ kind }) => kind === "overview"));
    assert(overview.length >= 2, name);
    for (const { says, value = NaN } of overview) {
      assert(/^\(.*\)$/.test(says), says);
      assertNear(figures(says, options.system)[0] ?? NaN, value, HALF_PLACE[options.system]);
    }
  }
});

Deno.test("at 1:1 an arrow points at the very place that its figure names", () => {
  for (const { name, layout, options } of ALL) {
    const onBack = new Set(layout.holes.filter(({ face }) => face === "back").map(({ id }) => id));
    for (const shape of dxfShapes(layout, options)) {
      if (shape.kind !== "dimension" || shape.of !== "along") continue;
      if (shape.holes.some((id) => onBack.has(id))) continue;
      const tip = shape.marks.find((mark) => mark.kind === "solid")?.points[0];
      assert(tip, `${name}: ${shape.says}`);
      assertNear(tip[0], shape.value ?? NaN, 1e-6);
    }
  }
});
