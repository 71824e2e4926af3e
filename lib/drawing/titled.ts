/** Titles above views. */
import { boxAround, boxOf } from "./boxes.ts";
import { text } from "./ink.ts";
import { TITLE_mm } from "./line_types.ts";
import { type Block, block } from "./scene.ts";
import type { Shape } from "./shapes.ts";

/** Sets a title above a view, at its left. */
export function titled(
  title: string,
  shapes: readonly Shape[],
  [least]: readonly [number, number],
): Block {
  const { top } = boxAround(shapes);
  const words = text(title, [least, top + 3], { height: TITLE_mm });
  const all = [...shapes, words];
  return { ...block(title, all), box: { ...boxAround(all), top: boxOf(words).top } };
}
