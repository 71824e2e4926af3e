/** A rail to be drawn, with all that its views share. */
import type { Face, Layout } from "@/lib/layout/mod.ts";
import { type Body, bodyOf, type Bored } from "./body.ts";
import { type Box, boxAround } from "./boxes.ts";
import { type Say, sayIn } from "./figures.ts";
import type { DrawingOptions } from "./options.ts";
import type { Mark, Shape } from "./shapes.ts";

/** A rail to be drawn. */
export interface Scene {
  readonly body: Body;
  readonly say: Say;
  /** The number in the table of holes, by the hole's id. */
  readonly numbers: ReadonlyMap<string, number>;
  /** What is wrong with a hole, by its id. */
  readonly troubles: ReadonlyMap<string, string>;
  readonly options: DrawingOptions;
  /** Views that several sheets have pieces of, by face and scale. */
  readonly drawn: Map<string, readonly Mark[]>;
}

/** Prepares a layout to be drawn. */
export function sceneOf(layout: Layout, options: DrawingOptions): Scene {
  return {
    body: bodyOf(layout),
    say: sayIn(options.system),
    numbers: new Map(layout.holes.map(({ id }, i) => [id, i + 1])),
    troubles: new Map((options.troubles ?? []).map(({ hole, says }) => [hole, says])),
    options,
    drawn: new Map(),
  };
}

/** What was drawn under a name before, or is drawn now. */
export function drawnOnce(
  { drawn }: Scene,
  name: string,
  draw: () => readonly Mark[],
): readonly Mark[] {
  const known = drawn.get(name) ?? draw();
  drawn.set(name, known);
  return known;
}

/** A view with its figures, ready to be put somewhere on a sheet. */
export interface Block {
  readonly title: string;
  readonly shapes: readonly Shape[];
  readonly box: Box;
}

/** Puts a box around shapes. */
export function block(title: string, shapes: readonly Shape[]): Block {
  return { title, shapes, box: boxAround(shapes) };
}

/** What the faces are called on a drawing. */
export const FACE_TITLES: Readonly<Record<Face, string>> = {
  injectors: "Injector face",
  opposite: "Opposite face",
  front: "Front",
  back: "Back",
  "datum-end": "Datum end",
  "far-end": "Far end",
};

/** A hole's number as it stands in its balloon. */
export function numberOf(scene: Scene, { hole }: Bored): string {
  return String(scene.numbers.get(hole.id) ?? "");
}
