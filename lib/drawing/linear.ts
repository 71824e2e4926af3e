/** A single dimension between two places: overall sizes, depths. */
import { widthOf } from "./boxes.ts";
import type { Say } from "./figures.ts";
import { arrow, ARROW_mm, line, text } from "./ink.ts";
import { TEXT_mm } from "./line_types.ts";
import type { Dimension, Mark, Point } from "./shapes.ts";

/** What is measured, and where it is written. */
export interface Linear {
  readonly axis: "x" | "y";
  /** Both ends along the line on paper, and where their extension lines begin. */
  readonly ends: readonly [number, number];
  readonly from: number;
  /** Where the line lies, across. */
  readonly line: number;
  /** On the rail [mm]. */
  readonly value: number;
  readonly of: string;
  readonly holes?: readonly string[];
  /** Before the figure: the diameter sign. */
  readonly sign?: string;
  /** In brackets: said again for help, not to work by. */
  readonly brackets?: boolean;
  readonly say: Say;
}

/** The dimension; its heads point inwards from outside where there's no room between them. */
export function linear(given: Linear): Dimension {
  const { axis, from, line: across, value, say } = given;
  const [least, most] = [Math.min(...given.ends), Math.max(...given.ends)];
  const place = (along: number, aside: number): Point =>
    axis === "x" ? [along, aside] : [aside, along];
  const beyond = across + Math.sign(across - from) * 1.5;
  const marks: Mark[] = [least, most].map((end) => line(place(end, from), place(end, beyond)));
  const said = (given.sign ?? "") + say(value);
  const says = given.brackets ? `(${said})` : said;
  const width = widthOf(says, TEXT_mm);
  const inside = most - least >= 2 * ARROW_mm + 1;
  const out = inside ? 0 : ARROW_mm + 2;
  marks.push(line(place(least - out, across), place(most + out, across)));
  const way = inside ? 1 : -1;
  marks.push(
    arrow(place(least, across), place(least + way, across)),
    arrow(place(most, across), place(most - way, across)),
  );
  const isRoomy = most - least >= width;
  const middle = (least + most) / 2;
  if (axis === "x" && !isRoomy) marks.push(line([most, across], [most + out + width + 1, across]));
  marks.push(figure(axis, says, isRoomy, {
    across,
    middle: axis === "y" || isRoomy ? middle : most + out + width / 2 + 0.5,
    away: Math.sign(across - from),
  }));
  return {
    kind: "dimension",
    layer: "dimensions",
    measure: "length",
    value,
    of: given.of,
    says,
    holes: given.holes ?? [],
    marks,
  };
}

/** Above a level line, on the left of an upright one; where there's no room, beyond its end or beside it. */
function figure(
  axis: "x" | "y",
  says: string,
  isRoomy: boolean,
  place: { readonly across: number; readonly middle: number; readonly away: number },
): Mark {
  const { across, middle, away } = place;
  const base = { anchor: "middle", layer: "dimensions" } as const;
  if (axis === "x") return text(says, [middle, across + 0.7], base);
  if (isRoomy) return text(says, [across - 0.7, middle], { ...base, turned: 90 });
  const anchor = away > 0 ? "start" : "end";
  return text(says, [across + away * 0.9, middle - TEXT_mm / 2], { ...base, anchor });
}
