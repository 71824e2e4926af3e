/** The power at which each part gives out, against the target: what gives out first. */
import type { VNode } from "preact";
import { displayUnit, formatQuantity, type System } from "@/lib/units/mod.ts";
import { fast } from "./fast.ts";
import { html } from "./html.ts";
import { scaleTo } from "./scale.ts";
import { capital, sentence } from "./show.ts";

/** The power at which one part reaches its limit. */
export interface CeilingShown {
  readonly id: string;
  readonly title: string;
  /** Crank power [W]; undefined when it can't be said. */
  readonly power_W: number | undefined;
  /** False for a part whose limit is no matter of power. */
  readonly dependsOnPower: boolean;
  /** What limits there, or why there is no number. */
  readonly because: string;
}

/** What {@linkcode CeilingsChart} shows. */
export interface CeilingsChartProps {
  readonly ceilings: readonly CeilingShown[];
  /** The crank power wanted [W]. */
  readonly target_W: number;
  readonly system: System;
}

const TOP = 26;
const ROW = 44;
const BAR = 14;
const FOOT = 22;
/** Bars beyond this many times the target would make the rest small: they are cut, and say so. */
const MOST_TARGETS = 2.5;

/** Bars from the lowest ceiling up, then the same as a table. */
export function CeilingsChart({ ceilings, target_W, system }: CeilingsChartProps): VNode {
  const show = (power_W: number): string => formatQuantity(power_W, "power", system);
  const known = ceilings.filter(isKnown).sort((a, b) => a.power_W - b.power_W);
  return html`
    <figure class="ceilings">
      <figcaption>
        ${known.length === 0
          ? "No ceiling can be said yet"
          : headline(known, unknown(ceilings), target_W, show)}${independent(ceilings)}
      </figcaption>
      ${known.length > 0 && chart(known, target_W, system)}
      <details>
        <summary>The same as a table, with what limits</summary>
        <table class="stacks columns">
          <thead>
            <tr><th scope="col">Part</th><th scope="col">Ceiling</th><th scope="col">Against target</th><th scope="col">What limits</th></tr>
          </thead>
          <tbody>
            ${[...known, ...ceilings.filter((each) => !isKnown(each))].map((each) =>
              fast`<tr>
              <th scope="row">${each.title}</th>
              <td class="number" data-title="Ceiling">${
                each.power_W === undefined ? "no number" : show(each.power_W)
              }</td>
              <td class="number" data-title="Against target">${
                each.power_W === undefined ? "–" : shareOf(each.power_W, target_W)
              }</td>
              <td data-title="What limits"><span>${
                sentence(capital(each.because))
              }</span></td></tr>`
            )}
          </tbody>
        </table>
      </details>
    </figure>
  `;
}

type Known = CeilingShown & { readonly power_W: number };

function isKnown(ceiling: CeilingShown): ceiling is Known {
  return ceiling.power_W !== undefined;
}

/** Which part gives out first; as long as a part is not known, that may be the one. */
function headline(
  known: readonly Known[],
  unknown: readonly string[],
  target_W: number,
  show: (power_W: number) => string,
): string {
  const [first] = known;
  if (first === undefined) return "";
  const how = first.power_W < target_W ? "short of" : "beyond";
  const part = `the ${first.title.toLowerCase()}, at ${show(first.power_W)}, ${how} the target of ${
    show(target_W)
  }`;
  return unknown.length === 0
    ? `Power ceilings at the crank: the first part to give out is ${part}`
    : `Power ceilings at the crank: the lowest known is that of ${part}; not known: ${
      unknown.join(", ")
    }`;
}

/** Parts whose ceiling is not known. */
function unknown(ceilings: readonly CeilingShown[]): string[] {
  return ceilings.filter((each) => each.dependsOnPower && !isKnown(each))
    .map(({ title }) => title.toLowerCase());
}

function independent(ceilings: readonly CeilingShown[]): string {
  const titles = ceilings.filter(({ dependsOnPower }) => !dependsOnPower)
    .map(({ title }) => title.toLowerCase());
  return titles.length === 0 ? "" : `. What does not depend on power: ${titles.join(", ")}`;
}

function shareOf(power_W: number, target_W: number): string {
  return `${Math.round(power_W / target_W * 100)} %`;
}

/** Places are shares of the width, so that the text keeps its size on a phone. */
function chart(known: readonly Known[], target_W: number, system: System): VNode {
  const { scale: unit_W, symbol } = displayUnit("power", system);
  const most_W = Math.max(target_W, ...known.map(({ power_W }) => power_W));
  const end_W = Math.min(most_W, target_W * MOST_TARGETS);
  const scale = scaleTo(end_W / unit_W, 5);
  const percent = (power_W: number): string =>
    `${(Math.min(scale.at(power_W / unit_W), 1) * 100).toFixed(2)}%`;
  const bottom = TOP + known.length * ROW;
  const side = scale.at(target_W / unit_W) > 0.5 ? "end" : "start";
  return html`
    <svg
      class="chart"
      width="100%"
      height=${bottom + FOOT}
      role="img"
      aria-label="Bar chart; the table below holds the same numbers"
    >
      ${scale.ticks.map((tick) => {
        const x = percent(tick * unit_W);
        const anchor = tick === 0 ? "start" : scale.at(tick) > 0.97 ? "end" : "middle";
        return fast`<line class="grid" x1="${x}" x2="${x}" y1="${TOP}" y2="${bottom}"/>
          <text class="tick" x="${x}" y="${bottom + 16}" text-anchor="${anchor}">${tick}${
          tick === 0 ? ` ${symbol}` : ""
        }</text>`;
      })}
      ${known.map(({ power_W }, i) => {
        const name = power_W < target_W ? "bar-short" : "bar-long";
        const y = TOP + i * ROW + 22;
        return fast`<rect class="${name}" x="0" y="${y}" width="${
          percent(power_W)
        }" height="${BAR}"/>`;
      })}
      <line class="target" x1=${percent(target_W)} x2=${percent(target_W)} y1="4" y2=${bottom} />
      ${known.map(({ title, power_W }, i) => {
        const isCut = scale.at(power_W / unit_W) > 1;
        const where = isCut ? ", beyond the chart" : power_W < target_W ? ", short" : "";
        const said = `${title}: ${formatQuantity(power_W, "power", system)}${where}`;
        return fast`<text class="bar-title" x="0" y="${TOP + i * ROW + 16}">${said}</text>`;
      })}
      <text class="target-title" x=${percent(target_W)} dx=${side === "end"
        ? -6
        : 6} y="14" text-anchor=${side}>
        target ${formatQuantity(target_W, "power", system)}
      </text>
    </svg>
  `;
}
