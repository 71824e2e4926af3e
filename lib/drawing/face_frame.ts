/** Where a piece of a face lies on paper. */
import { BEYOND_mm } from "./centre_lines.ts";
import { project, type Projection } from "./projection.ts";
import type { Scene } from "./scene.ts";

/** Where a piece of a view lies on paper. */
export interface Frame {
  /** Where its drawing is cut, a little beyond the bar's own ends. */
  readonly left: number;
  readonly right: number;
  /** The bar's edges. */
  readonly low: number;
  readonly high: number;
  /** The piece of the bar itself. */
  readonly room: readonly [least: number, most: number];
  /** Whether the piece has the bar's end that is on the left or right of the view. */
  readonly hasLeft: boolean;
  readonly hasRight: boolean;
}

/** Finds it. */
export function frameOf(
  { body }: Scene,
  view: Projection,
  piece: readonly [number, number],
): Frame {
  const ends = piece.map((x) => project(view, [x, 0, 0])[0]);
  const room = [Math.min(...ends), Math.max(...ends)] as const;
  const levels = [
    project(view, [0, -body.width / 2, 0])[1],
    project(view, [0, body.width / 2, body.height])[1],
  ];
  const whole = [0, body.length].map((x) => project(view, [x, 0, 0])[0]);
  const hasLeft = room[0] <= Math.min(...whole) + 1e-6;
  const hasRight = room[1] >= Math.max(...whole) - 1e-6;
  return {
    room,
    low: Math.min(...levels),
    high: Math.max(...levels),
    hasLeft,
    hasRight,
    left: hasLeft ? room[0] - 2 * BEYOND_mm : room[0],
    right: hasRight ? room[1] + 2 * BEYOND_mm : room[1],
  };
}
