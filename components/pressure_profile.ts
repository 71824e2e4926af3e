/** The pressures on the way from the tank to the injectors and back. */
import type { VNode } from "preact";
import { displayUnit, formatQuantity, type System } from "@/lib/units/mod.ts";
import { html } from "./html.ts";
import { piecesAlong, type Stretch, suctionsOf } from "./pieces_along.ts";
import { type Axis, axisOf } from "./plot_axis.ts";
import type { Balloon } from "./plot_balloons.ts";
import { PlotFrame, type PlotLabel } from "./plot_frame.ts";
import type { PlotLine } from "./plot_lines.ts";
import { type PlotPoint, roomOf } from "./plot_place.ts";
import { PlotTable } from "./plot_table.ts";
import { groupsOf, leastAbove, longUnit, mostLost, type Numbered } from "./profile_words.ts";
import { unbroken } from "./unbroken.ts";

/** What {@linkcode PressureProfile} shows. */
export interface PressureProfileProps {
  /** In the order that the fuel runs, distances running on. */
  readonly stretches: readonly Stretch[];
  /** What the regulator is set to; gauge. */
  readonly set_Pa?: number;
  /** Where the fuel boils in the tank's heat; gauge. */
  readonly vapour_Pa?: number;
  /** The operating point in words: "at the power peak". */
  readonly where: string;
  readonly system: System;
}

/** Where a suction takes up less of the plot than this share, it is drawn again by itself. */
const LEAST_SHARE = 0.25;

/** The profile, the suction by itself where it is too flat to be read, and all as a table. */
export function PressureProfile(props: PressureProfileProps): VNode {
  const { where, system } = props;
  const stretches = props.stretches.filter(({ points }) => points.length > 0);
  const pieces = piecesAlong(stretches).map((piece, i) => ({ ...piece, number: String(i + 1) }));
  if (pieces.length === 0) {
    return html`
      <figure class="plot">
        <figcaption>No pressures along the way can be said yet.</figcaption>
      </figure>
    `;
  }
  const suctions = suctionsOf(pieces, stretches);
  const [suction] = suctions;
  return html`
    <figure class="plot">
      <figcaption>
        Pressures from the tank to the injectors and back, ${where}. ${unbroken(
          mostLost(pieces, system) + leastAbove(pieces, suctions, props.vapour_Pa, system),
        )}
      </figcaption>
      ${drawing({ stretches, pieces, suctions }, props)}
      ${suction && isFlat(suction, stretches, props) && html`
        <div>
          <p class="note">The way to the pump again, its pressures enlarged:</p>
          ${drawing({
            stretches: [suction],
            pieces: pieces.filter(({ stretch, isJump }) => stretch === suction && !isJump),
            suctions: [suction],
          }, { ...props, set_Pa: undefined })}
        </div>
      `}
      ${PlotTable({
        summary: "The pieces by their numbers; each mark stands at its piece's end",
        columns: [
          "Piece",
          `At, ${longUnit(system)}`,
          `After it, ${displayUnit("pressure", system).symbol}`,
          `Lost, ${displayUnit("pressure", system).symbol}`,
        ],
        groups: groupsOf(stretches, pieces, system),
        isOpen: true,
      })}
    </figure>
  `;
}

function pressuresOf(stretches: readonly Stretch[]): number[] {
  return stretches.flatMap(({ points }) => points.map(({ pressure_Pa }) => pressure_Pa));
}

function isFlat(
  suction: Stretch,
  stretches: readonly Stretch[],
  { vapour_Pa = 0 }: PressureProfileProps,
): boolean {
  const { points } = suction;
  // A pump that stands in the fuel has no way to it that could be drawn.
  if (points.at(-1)?.at_m === points[0]?.at_m) return false;
  const spread = (values: number[]): number => Math.max(0, ...values) - Math.min(0, ...values);
  return spread([vapour_Pa, ...pressuresOf([suction])]) <
    LEAST_SHARE * spread([vapour_Pa, ...pressuresOf(stretches)]);
}

/** What one drawing holds. */
interface Drawn {
  readonly stretches: readonly Stretch[];
  readonly pieces: readonly Numbered[];
  readonly suctions: readonly Stretch[];
}

type Levels = Omit<PressureProfileProps, "set_Pa"> & { readonly set_Pa?: number | undefined };

function drawing(drawn: Drawn, levels: Levels): VNode {
  const { stretches, pieces } = drawn;
  const { set_Pa, vapour_Pa, system } = levels;
  const ends = stretches.map(({ points }) => [points.at(0)?.at_m ?? 0, points.at(-1)?.at_m ?? 0]);
  const x = axisOf({
    title: "Distance from the tank",
    unit: { symbol: longUnit(system), scale: system === "metric" ? 1 : 0.3048 },
    values: ends.flat(),
    marks: 5,
  });
  const y = axisOf({
    title: "Gauge pressure",
    unit: displayUnit("pressure", system),
    values: [
      ...pressuresOf(stretches),
      ...[set_Pa, vapour_Pa].filter((each) => each !== undefined),
    ],
    marks: 5,
  });
  const level = levelsOf(drawn, levels, x);
  return PlotFrame({
    x,
    y,
    lines: [...level.lines, ...linesOf(stretches)],
    balloons: pieces.map(({ number, at_m, after_Pa }): Balloon => ({
      text: number,
      at: [at_m, after_Pa],
    })),
    labels: [...level.labels, ...jumpLabels(pieces, x, system)],
    spans: stretches.map(({ name }, i) => {
      const [from = 0, to = 0] = ends[i] ?? [];
      return { name, from, to };
    }),
  });
}

/** Wide along the stretches, narrow where one ends and the next begins. */
function linesOf(stretches: readonly Stretch[]): PlotLine[] {
  const along = stretches.map(({ points }) =>
    points.map(({ at_m, pressure_Pa }): PlotPoint => [at_m, pressure_Pa])
  );
  const joints = along.slice(1).map((next, i) => [along[i]?.at(-1), next[0]])
    .map((ends): PlotLine => ({ type: "solid", points: ends.filter((end) => end !== undefined) }));
  return [...joints, ...along.map((points): PlotLine => ({ type: "wide", points }))];
}

/** The set pressure all the way, and where the fuel boils on the way to a pump. */
function levelsOf(
  { stretches, suctions }: Drawn,
  { set_Pa, vapour_Pa, system }: Levels,
  x: Axis,
): { readonly lines: readonly PlotLine[]; readonly labels: readonly PlotLabel[] } {
  const show = (pressure_Pa: number): string => formatQuantity(pressure_Pa, "pressure", system);
  const lines: PlotLine[] = [];
  const labels: PlotLabel[] = [];
  const end = stretches.at(-1)?.points.at(-1);
  if (set_Pa !== undefined && end !== undefined) {
    lines.push({ type: "dashed", points: [[0, set_Pa], [end.at_m, set_Pa]] });
    // At its end, on the side of the line where the profile does not run.
    labels.push({
      text: `set ${show(set_Pa)}`,
      at: [end.at_m, set_Pa],
      anchor: "end",
      aside: -7,
      up: end.pressure_Pa < set_Pa ? 11 : -12,
    });
  }
  if (vapour_Pa !== undefined) {
    suctions.forEach(({ points }, i) => {
      const [from, to] = [points.at(0)?.at_m ?? 0, points.at(-1)?.at_m ?? 0];
      lines.push({ type: "chain", points: [[from, vapour_Pa], [to, vapour_Pa]] });
      if (i > 0) return;
      // Beside the line, or above it where it runs through the whole plot.
      const isLong = x.at(to) > 0.5;
      labels.push({
        text: `boils at ${show(vapour_Pa)}`,
        at: [isLong ? from : to, vapour_Pa],
        ...(isLong ? { up: 11, aside: 4 } : { aside: 6 }),
      });
    });
  }
  return { lines, labels };
}

/** Pumps and regulators are named at their line, on the side where there is room on a phone. */
function jumpLabels(pieces: readonly Numbered[], x: Axis, system: System): PlotLabel[] {
  return pieces.filter(({ isJump }) => isJump).flatMap(({ name, at_m, after_Pa, lost_Pa }, i) => {
    const size = formatQuantity(Math.abs(lost_Pa), "pressure", system);
    const texts = [name, `${lost_Pa < 0 ? "+" : "−"}${size}`];
    const isRight = x.at(at_m) + Math.max(...texts.map(roomOf)) < 1;
    const low_Pa = Math.min(after_Pa, after_Pa + lost_Pa);
    // In turn at two heights, as two may stand side by side.
    const level_Pa = low_Pa + Math.abs(lost_Pa) * (i % 2 === 0 ? 0.7 : 0.4);
    return texts.map((text, row): PlotLabel => ({
      text,
      at: [at_m, level_Pa],
      up: row === 0 ? 8 : -8,
      ...(isRight ? { aside: 7 } : { anchor: "end", aside: -7 }),
    }));
  });
}
