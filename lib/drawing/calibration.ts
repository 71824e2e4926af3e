/** Two bars to hold a rule against before a print is trusted: 50 mm and 2 in. */
import { rectangle, text } from "./ink.ts";
import type { Point, Shape } from "./shapes.ts";

/** The room that they take [mm]. */
export const CALIBRATION_mm: readonly [width: number, height: number] = [76, 16];

const BARS = [
  { length: 50, steps: 5, says: "50 mm" },
  { length: 50.8, steps: 4, says: "2 in" },
] as const;
const THICK_mm = 2;
const PITCH_mm = 4.5;

/** Draws them with their lower left corner at a place. */
export function calibration([x, y]: Point): Shape[] {
  const shapes: Shape[] = [
    text("Print at 100 %, then measure both bars.", [x, y + 12.3]),
  ];
  BARS.forEach(({ length, steps, says }, i) => {
    const low = y + 6 - i * PITCH_mm;
    const step = length / steps;
    for (let k = 0; k < steps; k += 2) {
      const [left, right] = [x + k * step, x + (k + 1) * step];
      shapes.push({
        kind: "solid",
        layer: "frame",
        points: [[left, low], [right, low], [right, low + THICK_mm], [left, low + THICK_mm]],
      });
    }
    shapes.push(
      rectangle([x, low], [x + length, low + THICK_mm], "frame", "01.1"),
      text(says, [x + 53, low - 0.2]),
    );
  });
  return shapes;
}
