/** Shapes shifted on paper. */
import type { Mark, Point, Shape } from "./shapes.ts";

/** The same shapes so far to the right and up. */
export function moved<T extends Shape>(shapes: readonly T[], dx: number, dy: number): T[] {
  const shift = ([x, y]: Point): Point => [x + dx, y + dy];
  return shapes.map((shape) => {
    if (shape.kind === "dimension" || shape.kind === "trouble") {
      return { ...shape, marks: moved<Mark>(shape.marks, dx, dy) };
    }
    return movedMark(shape, shift);
  }) as T[];
}

function movedMark(mark: Mark, shift: (point: Point) => Point): Mark {
  switch (mark.kind) {
    case "line":
      return { ...mark, from: shift(mark.from), to: shift(mark.to) };
    case "circle":
    case "arc":
      return { ...mark, centre: shift(mark.centre) };
    case "text":
      return { ...mark, at: shift(mark.at) };
    case "area":
      return {
        ...mark,
        outline: mark.outline.map(shift),
        holes: mark.holes.map((hole) => hole.map(shift)),
      };
    default:
      return { ...mark, points: mark.points.map(shift) };
  }
}
