/** What is said of the pressures along the way, in words and in rows. */
import { displayUnit, formatQuantity, type System } from "@/lib/units/mod.ts";
import { figureIn } from "./figure_in.ts";
import type { PieceAlong, Stretch } from "./pieces_along.ts";
import type { PlotGroup } from "./plot_table.ts";

/** A piece with its number. */
export interface Numbered extends PieceAlong {
  readonly number: string;
}

/** The unit of distances. */
export function longUnit(system: System): "m" | "ft" {
  return system === "metric" ? "m" : "ft";
}

/** Which piece loses most; empty where none loses anything. */
export function mostLost(pieces: readonly Numbered[], system: System): string {
  const most = pieces.filter(({ isJump, lost_Pa }) => !isJump && lost_Pa > 0)
    .reduce<Numbered | undefined>((a, b) => a && a.lost_Pa >= b.lost_Pa ? a : b, undefined);
  if (most === undefined) return "";
  const { name, number, lost_Pa } = most;
  return `Most is lost in ${number} (${name}): ${formatQuantity(lost_Pa, "pressure", system)}. `;
}

/** How near the fuel comes to boiling before a pump. */
export function leastAbove(
  pieces: readonly Numbered[],
  suctions: readonly Stretch[],
  vapour_Pa: number | undefined,
  system: System,
): string {
  if (vapour_Pa === undefined) return "";
  const before = pieces.filter(({ stretch, isJump }) => !isJump && suctions.includes(stretch));
  const [lowest] = before.toSorted((a, b) => a.after_Pa - b.after_Pa);
  if (lowest === undefined) return "";
  const above_Pa = lowest.after_Pa - vapour_Pa;
  const size = formatQuantity(Math.abs(above_Pa), "pressure", system);
  return above_Pa > 0
    ? `Before the pump the fuel stays ${size} above boiling, least after ${lowest.number} (${lowest.name}).`
    : `The fuel boils before the pump: after ${lowest.number} (${lowest.name}) its pressure is ${size} too low.`;
}

/** The rows of the table, by stretch; the first says where the way begins. */
export function groupsOf(
  stretches: readonly Stretch[],
  pieces: readonly Numbered[],
  system: System,
): PlotGroup[] {
  const [first] = stretches.flatMap(({ points }) => points);
  const unit = displayUnit("pressure", system).symbol;
  const pressure = (value_Pa: number): string => figureIn(value_Pa, "pressure", unit, 3);
  const long = (at_m: number): string => figureIn(at_m, "length", longUnit(system), 2);
  const start = first &&
    [first.label ?? "Start", long(first.at_m), pressure(first.pressure_Pa), "–"];
  return stretches.map((stretch, i) => ({
    title: stretch.name,
    rows: [
      ...(i === 0 && start ? [start] : []),
      ...pieces.filter((piece) => piece.stretch === stretch)
        .map(({ number, name, at_m, after_Pa, lost_Pa }) => [
          `${number}. ${name}`,
          long(at_m),
          pressure(after_Pa),
          lost_Pa < 0 ? `adds ${pressure(-lost_Pa)}` : pressure(lost_Pa),
        ]),
    ],
  }));
}
