/** The tools, each with its holes, what to set, and what of the shop's drills does instead. */
import type { VNode } from "preact";
import type { PlanValues } from "@/lib/plan/mod.ts";
import type { ToolSetting, Workshop, WorkshopTool } from "@/lib/evaluation/mod.ts";
import { formatIn, formatNumber, formatQuantity, type System } from "@/lib/units/mod.ts";
import { html } from "./html.ts";
import { unbroken } from "./unbroken.ts";
import { equivalentLine, fineLength, toolSize, toolTitle } from "./workshop_words.ts";

/** What {@linkcode WorkshopTools} shows. */
export interface WorkshopToolsProps {
  readonly sheet: Workshop;
  readonly system: System;
  /** Which drills the shop has. */
  readonly drills: PlanValues["shop"]["drills"];
}

const SETS = {
  metric: "Your metric drills",
  inch: "Your inch drills",
  both: "Your drills",
} as const;

/** The table, numbered as the order of work refers to it. */
export function WorkshopTools(props: WorkshopToolsProps): VNode {
  const { sheet, system } = props;
  return html`
    <table class="shopping workshop">
      <caption>In the order in which they are first needed</caption>
      <thead>
        <tr>
          <th scope="col"><abbr title="Number">No.</abbr></th>
          <th scope="col">Tool</th>
          <th scope="col" class="number">Diameter</th>
          <th scope="col">Holes, depth, setting</th>
        </tr>
      </thead>
      <tbody>
        ${sheet.tools.map((tool, i) =>
          html`
            <tr id=${`tool-${tool.id}`}>
              <td>${i + 1}</td>
              <th scope="row">${toolTitle(tool)}</th>
              <td class="number">${unbroken(toolSize(tool.diameter_m, system))}</td>
              <td>${about(tool, props)}</td>
            </tr>
          `
        )}
      </tbody>
    </table>
  `;
}

function about(tool: WorkshopTool, { system, drills }: WorkshopToolsProps): VNode {
  const lines = [
    `${tool.serves}: ${deep(tool, system)}`,
    ...setting(tool, system),
    ...limits(tool, system),
    ...leaving(tool, system),
    ...atHand(tool, system, SETS[drills]),
  ];
  const notes = [...tool.notes, ...remark(tool)];
  return html`
    <div>
      <ul>${lines.map((line) => html`<li>${unbroken(line)}</li>`)}</ul>
      ${notes.length > 0 && html`<p class="note">${unbroken(notes.join(" "))}</p>`}
    </div>
  `;
}

function deep({ deepest_m, depthRatio, clearing, kind }: WorkshopTool, system: System): string {
  const depth = `${formatQuantity(deepest_m, "length", system)} deep`;
  if (kind !== "drill") return depth;
  const how = {
    straight: "at once",
    peck: "pecking",
    deep: "a drill made for deep holes, pecking",
  }[clearing ?? "straight"];
  return `${depth}, ${formatNumber(depthRatio)} diameters: ${how}`;
}

function setting({ setting, kind }: WorkshopTool, system: System): string[] {
  if (setting === undefined) return ["No table has a speed for this size: ask its maker."];
  const { speed_rev_s, spindle: { feed } } = setting;
  const speed = kind === "tap"
    ? byHand(setting, system)
    : `${rpm(speed_rev_s, system)}${held(setting, system)}`;
  return [
    feed === undefined
      ? speed
      : `${speed}; feed ${perTurn(feed.from, system)} to ${perTurn(feed.to, system)} a turn`,
  ];
}

function rpm(speed_rev_s: number, system: System): string {
  return formatQuantity(speed_rev_s, "rotation", system);
}

/** What keeps the speed from being what the tool takes. */
function held(
  { slowedForDepth, spindle }: ToolSetting,
  system: System,
): string {
  const { wanted, limitedBy } = spindle;
  const band = `${rpm(wanted.from, system)} to ${rpm(wanted.to, system)}`;
  if (slowedForDepth) return `, slowed for the depth; in a short hole it takes ${band}`;
  if (limitedBy === "fastest") return `: your press turns no faster, the tool wants ${band}`;
  if (limitedBy === undefined) return "";
  return `: your press turns no slower, the tool wants ${band}; turn it by hand, or on a slower machine`;
}

/** A tap that the press would turn too fast is left to the hand. */
function byHand({ speed_rev_s, spindle }: ToolSetting, system: System): string {
  return spindle.limitedBy === "slowest"
    ? `By hand: your press turns no slower than ${rpm(speed_rev_s, system)}`
    : `By hand; with a tapping head ${rpm(speed_rev_s, system)}`;
}

function perTurn(feed_m: number, system: System): string {
  return system === "metric"
    ? formatIn(feed_m, "length", "mm", 2)
    : formatIn(feed_m, "length", "in", 4);
}

function limits({ limits, kind }: WorkshopTool, system: System): string[] {
  if (limits === undefined) return [];
  const what = kind === "bore" ? "Bore" : "Hole";
  return [
    `${what} from ${fineLength(limits.least_m, system)} to ${fineLength(limits.most_m, system)}`,
  ];
}

function leaving({ leave, before }: WorkshopTool, system: System): string[] {
  if (leave === undefined) return [];
  const drills = before.length === 0
    ? "none of your drills leaves that, so bore it or buy one"
    : `drill ${before.map(({ name }) => name).join(" or ")} first`;
  return [
    `Leave ${fineLength(leave.from, system)} to ${
      fineLength(leave.to, system)
    } for it on diameter: ${drills}`,
  ];
}

function atHand(
  { equivalents, noEquivalent }: WorkshopTool,
  system: System,
  whose: string,
): string[] {
  return [
    ...(equivalents.length === 0
      ? []
      : [`${whose}: ${equivalents.map((one) => equivalentLine(one, system)).join("; ")}`]),
    ...(noEquivalent === undefined ? [] : [noEquivalent]),
  ];
}

/** What the table of speeds says of the tool; that a drill is slowed in deep holes its own line says. */
function remark({ setting, kind }: WorkshopTool): string[] {
  const last = setting?.spindle.says.at(-1);
  return last === undefined || kind === "drill" ? [] : [last];
}
