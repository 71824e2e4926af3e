/** What every sheet of every drawing keeps to. */
import { assert, assertEquals } from "@std/assert";
import {
  type Box,
  boxOf,
  type DrawingSheet,
  drawingSheets,
  frameBox,
  marksOf,
  type Text,
} from "@/lib/drawing/mod.ts";
import { assertNear } from "./near.ts";
import { type Drawn, DRAWN_SAMPLES, drawnByChance, METRIC } from "./options.ts";
import { fourInjectors, sixInjectors } from "./sample_layouts.ts";

const ALL: readonly Drawn[] = [...DRAWN_SAMPLES, ...drawnByChance(200)];

/** Each drawing of the list once, as drawing takes longer than looking. */
const SHEETS = ALL.map(({ name, layout, options }) => ({
  name,
  layout,
  options,
  sheets: drawingSheets(layout, options),
}));

function texts(sheet: DrawingSheet): Text[] {
  return marksOf(sheet.shapes).filter((mark): mark is Text => mark.kind === "text");
}

function overlap(a: Box, b: Box): boolean {
  const touch = 0.01;
  return a.left < b.right - touch && b.left < a.right - touch && a.bottom < b.top - touch &&
    b.bottom < a.top - touch;
}

Deno.test("nothing is drawn outside the frame but its centring marks", () => {
  for (const { name, sheets } of SHEETS) {
    for (const sheet of sheets) {
      const frame = frameBox(sheet.paper, sheet.orientation);
      for (const mark of marksOf(sheet.shapes)) {
        if (mark.layer === "frame" && "type" in mark && mark.type === "frame") continue;
        const { left, right, bottom, top } = boxOf(mark);
        const inside = left >= frame.left && right <= frame.right && bottom >= frame.bottom &&
          top <= frame.top;
        assert(inside, `${name}, ${sheet.name}: ${JSON.stringify(mark).slice(0, 200)}`);
      }
    }
  }
});

Deno.test("no two texts overlap", () => {
  for (const { name, sheets } of SHEETS) {
    for (const sheet of sheets) {
      const boxes = texts(sheet).map((each) => ({ says: each.says, box: boxOf(each) }));
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) {
          assert(!overlap(a.box, b.box), `${name}, ${sheet.name}: "${a.says}" on "${b.says}"`);
        }
      });
    }
  }
});

Deno.test("nothing is drawn that isn't a finite number", () => {
  for (const { name, sheets } of SHEETS) {
    const text = JSON.stringify(sheets.map(({ shapes }) => shapes));
    assert(!/null|NaN|undefined/.test(text), name);
  }
});

Deno.test("every sheet has bars of 50 mm and of 2 in to measure", () => {
  for (const { name, sheets } of SHEETS) {
    for (const sheet of sheets) {
      const widths = marksOf(sheet.shapes).flatMap((mark) => {
        if (mark.kind !== "polyline" || mark.layer !== "frame" || !mark.closed) return [];
        const { left, right, top, bottom } = boxOf(mark);
        return Math.abs(top - bottom - 2) < 1e-9 ? [right - left] : [];
      });
      assertEquals(widths.map((each) => Math.round(each * 1e6) / 1e6), [50, 50.8], name);
      const says = texts(sheet).map((each) => each.says);
      assert(says.includes("50 mm") && says.includes("2 in"), name);
    }
  }
});

Deno.test("sheets are numbered, and say their scale and the projection's symbol", () => {
  for (const { name, sheets } of SHEETS) {
    sheets.forEach((sheet, i) => {
      const says = texts(sheet).map((each) => each.says);
      assert(says.includes(`${i + 1}/${sheets.length}`), `${name}, ${sheet.name}`);
      assert(says.includes(sheet.scale), `${name}, ${sheet.name}`);
    });
  }
});

Deno.test("every hole stands in the table, and its number in a view, on a strip and over its face", () => {
  for (const { name, layout, sheets } of SHEETS) {
    const said = (kind: DrawingSheet["kind"]) =>
      sheets.filter((sheet) => sheet.kind === kind).flatMap(texts).map(({ says }) => says);
    layout.holes.forEach(({ face }, i) => {
      const number = String(i + 1);
      assert(said("holes").includes(number), `${name}: ${number} in the table`);
      assert(said("overview").includes(number), `${name}: ${number} in the overview`);
      const isEnd = face === "datum-end" || face === "far-end";
      assert(said(isEnd ? "sections" : "views").includes(number), `${name}: ${number} in a view`);
      if (isEnd) return;
      const onStrip = said("strip").some((says) => says.startsWith(`${number}: `));
      assert(onStrip, `${name}: ${number} on a strip`);
    });
  }
});

Deno.test("a hole in trouble is marked by a cloud and by words on its view, its section and its strip", () => {
  for (const { name, layout, options, sheets } of SHEETS) {
    for (const { hole, says } of options.troubles ?? []) {
      const marks = sheets.flatMap(({ shapes }) => shapes).filter((shape) =>
        shape.kind === "trouble" && shape.hole === hole
      );
      assert(marks.length >= 2, `${name}: ${hole} in the overview and its view`);
      const number = layout.holes.findIndex(({ id }) => id === hole) + 1;
      const full = `TROUBLE ${number}: ${says}`;
      for (const mark of marks) {
        assert(mark.kind === "trouble");
        assert([full, `TROUBLE ${number}`].includes(mark.says), mark.says);
        assert(mark.marks.some(({ kind }) => kind === "arc"));
      }
      assert(marks.some((mark) => mark.kind === "trouble" && mark.says === full));
      const sections = sheets.filter(({ kind }) => kind === "sections").flatMap(texts);
      assert(
        sections.some((each) => each.says === full),
        `${name}: ${hole} at its section`,
      );
    }
  }
});

Deno.test("pockets stand on paper as far apart as in the bar, at 1:1", () => {
  for (const { name, layout, options, sheets } of SHEETS.slice(0, 2 * 3)) {
    const [a, b] = layout.holes.filter(({ feature }) => feature === "pocket");
    assert(a && b);
    const mouth = a.profile[0]?.fromDiameter_m ?? 0;
    const found = sheets.filter(({ kind }) => kind === "views").some((sheet) => {
      const circles = marksOf(sheet.shapes).filter((mark) =>
        mark.kind === "circle" && Math.abs(mark.radius - mouth * 500) < 1e-6
      );
      const [first, second] = circles.flatMap((mark) =>
        mark.kind === "circle" ? [mark.centre] : []
      );
      if (!first || !second) return false;
      assertNear(second[0] - first[0], (b.entry[0] - a.entry[0]) * 1000, 1e-6);
      return true;
    });
    assert(found, `${name} ${options.paper}`);
  }
});

Deno.test("a bar longer than the paper comes in pieces that join, and no hole is cut", () => {
  const sheets = drawingSheets(sixInjectors(), METRIC);
  const said = sheets.flatMap(texts).map(({ says }) => says);
  for (
    const says of ["Front, piece 1 of 3", "Front, piece 3 of 3", "joins piece 1", "joins piece 3"]
  ) {
    assert(said.includes(says), says);
  }
  const short = drawingSheets({
    ...fourInjectors(),
    bar: { ...fourInjectors().bar, length_m: 0.2 },
  }, {
    ...METRIC,
    paper: "A3",
  });
  assert(!short.flatMap(texts).some(({ says }) => says.startsWith("joins")));
});

Deno.test("words stand clear of wide lines on the samples", () => {
  for (const { name, sheets } of SHEETS.slice(0, 2 * 3)) {
    for (const sheet of sheets) {
      const marks = marksOf(sheet.shapes);
      const lines = marks.flatMap((mark) => {
        if (!("type" in mark) || mark.type !== "01.2") return [];
        if (mark.kind === "line") return [[mark.from, mark.to] as const];
        if (mark.kind !== "polyline") return [];
        const points = mark.closed ? [...mark.points, mark.points[0] ?? [0, 0]] : mark.points;
        return points.slice(1).map((to, i) => [points[i] ?? to, to] as const);
      });
      for (const each of texts(sheet)) {
        const box = boxOf(each);
        for (const [[ax, ay], [bx, by]] of lines) {
          const crosses = Array.from({ length: 101 }, (_, i) => i / 100).some((share) => {
            const [x, y] = [ax + share * (bx - ax), ay + share * (by - ay)];
            return x > box.left && x < box.right && y > box.bottom && y < box.top;
          });
          assert(!crosses, `${name}, ${sheet.name}: "${each.says}"`);
        }
      }
    }
  }
});
