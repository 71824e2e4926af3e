/** The DXF file, read back by a second library. */
import { assert, assertEquals } from "@std/assert";
import parserModule from "dxf-parser";
import { DXF_LAYERS, dxfOf, dxfShapes, marksOf } from "@/lib/drawing/mod.ts";
import { assertNear } from "./near.ts";
import { DRAWN_SAMPLES, drawnByChance, METRIC } from "./options.ts";
import { sixInjectors } from "./sample_layouts.ts";

interface Point {
  readonly x: number;
  readonly y: number;
}

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly center?: Point;
  readonly radius?: number;
  readonly startAngle?: number;
  readonly endAngle?: number;
  readonly text?: string;
  readonly textHeight?: number;
  readonly vertices?: readonly Point[];
}

interface Read {
  readonly header: Readonly<Record<string, unknown>>;
  readonly entities: readonly Entity[];
  readonly tables: { readonly layer: { readonly layers: Readonly<Record<string, unknown>> } };
}

// The package's types know its default export only to CommonJS programs.
const Parser = parserModule as unknown as new () => { parseSync(text: string): Read };

const ALL = [...DRAWN_SAMPLES, ...drawnByChance(20)];

Deno.test("the file is in millimetres, with a layer for each feature", async () => {
  for (const { layout, options } of ALL) {
    const { header, tables } = new Parser().parseSync(await dxfOf(layout, options));
    assertEquals(header["$INSUNITS"], 4);
    for (const layer of Object.keys(DXF_LAYERS)) assert(layer.toUpperCase() in tables.layer.layers);
  }
});

Deno.test("circles, arcs, lines and texts come back as they were drawn, on their layers", async () => {
  for (const { name, layout, options } of ALL) {
    const { entities } = new Parser().parseSync(await dxfOf(layout, options));
    const marks = marksOf(dxfShapes(layout, options));
    const read = (type: string) => entities.filter((each) => each.type === type);
    const circles = marks.filter((mark) => mark.kind === "circle");
    assertEquals(read("CIRCLE").length, circles.length, name);
    read("CIRCLE").forEach(({ center, radius, layer }, i) => {
      const circle = circles[i];
      assert(center && circle?.kind === "circle");
      assertNear(center.x, circle.centre[0], 1e-6);
      assertNear(center.y, circle.centre[1], 1e-6);
      assertNear(radius ?? NaN, circle.radius, 1e-6);
      assertEquals(layer, circle.layer.toUpperCase());
    });
    const arcs = marks.filter((mark) => mark.kind === "arc");
    assertEquals(read("ARC").length, arcs.length, name);
    read("ARC").forEach(({ startAngle = NaN, endAngle = NaN }, i) => {
      const arc = arcs[i];
      assert(arc?.kind === "arc");
      const turn = (angle: number) => (angle + 4 * Math.PI) % (2 * Math.PI);
      const swept = turn(endAngle - startAngle);
      assertNear(swept, turn((arc.to_deg - arc.from_deg) * Math.PI / 180), 1e-6);
    });
    const texts = marks.flatMap((mark) => mark.kind === "text" ? [mark.says] : []);
    assertEquals(read("TEXT").map(({ text }) => text), texts, name);
  }
});

Deno.test("holes lie where the layout has them: centres, radii and layers, at 1:1 from the datum corner", async () => {
  const layout = sixInjectors();
  const { entities } = new Parser().parseSync(await dxfOf(layout, METRIC));
  const circles = entities.filter(({ type }) => type === "CIRCLE");
  const layers = { pocket: "POCKETS", screw: "SCREWS", port: "PORTS" } as const;
  const found = layout.holes.flatMap(({ id, feature, face, entry, into, profile }) => {
    if (face === "datum-end" || face === "far-end" || face === "back") return [];
    if (feature === "gallery" || feature === "plug") return [];
    if (into.some((each) => each !== 0 && Math.abs(each) !== 1)) return [];
    const radius = (profile[0]?.fromDiameter_m ?? 0) * 500;
    const here = circles.filter(({ center, layer, radius: read = 0 }) =>
      center && Math.abs(center.x - entry[0] * 1000) < 1e-6 && Math.abs(read - radius) < 1e-6 &&
      layer === layers[feature]
    );
    assertEquals(here.length, 1, id);
    return [{ face, y: here[0]?.center?.y ?? NaN, at: entry }];
  });
  assertEquals(found.length, 5 + 4 + 2);
  // The front's lower edge is at nought, so up is up; from below, what is farther back lies lower.
  for (const { face, y, at } of found) {
    if (face === "front") assertNear(y, at[2] * 1000, 1e-6);
    const [other] = found.filter((each) => each.face === face);
    if (other && face === "injectors") assertNear(y - other.y, -(at[1] - other.at[1]) * 1000, 1e-6);
    if (other && face === "opposite") assertNear(y - other.y, (at[1] - other.at[1]) * 1000, 1e-6);
  }
});

Deno.test("the same rail gives the same file", async () => {
  assertEquals(await dxfOf(sixInjectors(), METRIC), await dxfOf(sixInjectors(), METRIC));
});
