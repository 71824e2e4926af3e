/** The Drill sheet: where does each hole go? */
import type { VNode } from "preact";
import { formatIn, formatNumber, formatQuantity } from "@/lib/units/mod.ts";
import { PORTS } from "@/lib/thread/mod.ts";
import type { Check, PortResults } from "@/lib/evaluation/mod.ts";
import { CautionBox } from "./caution_box.ts";
import { changesHref } from "./changes_link.ts";
import { CheckList } from "./check_list.ts";
import { drillCautions } from "./drill_cautions.ts";
import { DrillDrawing } from "./drill_drawing.ts";
import { DrillFuel, DrillHeld } from "./drill_held.ts";
import { DrillHoles } from "./drill_holes.ts";
import { DrillInjectors } from "./drill_injectors.ts";
import { DrillPorts } from "./drill_ports.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { portFits } from "./port_shown.ts";
import { capital } from "./show.ts";
import { workingHref } from "./working_link.ts";

/** A drill further off than this is no stand-in and not named [m]. */
const NEAR_M = 0.0003;

/** Answers that move a hole, its size or its depth. */
const MOVES_HOLES: ReadonlySet<string> = new Set([
  "rail.count",
  "rail.shape",
  "rail.width",
  "rail.galleryUp",
  "rail.galleryAcross",
  "rail.length",
  "rail.pitch",
  "rail.pocketBore",
  "rail.ends",
  "rail.plugThread",
  "pockets.depth",
  "pockets.land",
  "pockets.groove",
  "sensor.port",
  "sensor.pilot",
  "sensor.face",
]);

/** The sheet: the rail from the side, its holes, the port, the tools and the order. */
export function DrillPage(shown: PlanShown): VNode {
  const { evaluation, system } = shown;
  const checks = evaluation.checks.filter(({ step }) => step === "drill");
  return html`
    <h1>Drill: where does each hole go?</h1>
    ${blocked(shown, checks)} ${CautionBox({ cautions: drillCautions(shown) })}
    ${DrillDrawing(shown)} ${DrillHoles(shown)} ${port(shown)} ${DrillPorts(shown)}
    ${DrillInjectors(shown)} ${DrillHeld(shown)} ${DrillFuel(shown)}
    <section aria-labelledby="drill-verdicts">
      <h2 id="drill-verdicts">Verdicts</h2>
      ${CheckList({
        checks,
        system,
        workingHref: workingHref(shown),
        changesHref: changesHref(shown),
      })}
    </section>
  `;
}

/** Why the bar must not be drilled, or not yet. */
function blocked({ evaluation, planPath }: PlanShown, checks: readonly Check[]): VNode | undefined {
  const titles = (verdict: Check["verdict"]): string[] =>
    checks.filter((check) => check.verdict === verdict).map(({ title }) => title);
  const [fails, open] = [titles("fails"), titles("open")];
  const assumed = evaluation.assumed.filter(({ path }) => MOVES_HOLES.has(path));
  if (fails.length + open.length + assumed.length === 0) return undefined;
  const verdicts = html`<a href="#drill-verdicts">See the verdicts</a>`;
  return html`
    <div class="blocked">
      ${fails.length > 0 && html`
        <p>
          <b>Do not drill: ${fails.length === 1
            ? "1 check fails"
            : `${fails.length} checks fail`}.</b>
          ${" "}${listed(fails)}. ${verdicts}${" "}for what to change.
        </p>
      `}
      ${open.length > 0 && html`
        <p>
          <b>Do not drill yet: ${open.length === 1
            ? "1 check is"
            : `${open.length} checks are`} open.</b>
          ${" "}${listed(open)}. ${verdicts}${" "}for what is missing.
        </p>
      `}
      ${assumed.length > 0 && html`
        <p>
          <b>Do not drill yet:</b>${" "}${assumed.length === 1
            ? "1 value of rail and port is"
            : `${assumed.length} values of rail and port are`} assumed
          (${assumed.map(({ label }) => label.toLowerCase()).join(", ")}).${" "}
          <a href=${`${planPath}/size#assumed`}>Confirm after measuring</a>.
        </p>
      `}
    </div>
  `;
}

/** Titles in one sentence. */
function listed(titles: readonly string[]): string {
  return capital(titles.map((title) => title.charAt(0).toLowerCase() + title.slice(1)).join("; "));
}

function port(shown: PlanShown): VNode | undefined {
  const { evaluation, values, system } = shown;
  const { port: found } = evaluation.results;
  if (!found) return undefined;
  const declared = PORTS[values.sensor.port];
  const unit = system === "metric" ? "mm" : "in";
  const long = (value: number): string => formatIn(value, "length", unit);
  const { nearest } = found;
  const drills = Object.values(nearest)
    .filter(({ error_m }) => Math.abs(error_m) <= NEAR_M)
    .map(({ name, error_m }) => `${name} (${signed(error_m, unit)})`).join(", ");
  return html`
    <section aria-labelledby="port">
      <h2 id="port">Sensor port: ${declared.title}</h2>
      ${NumberTable({
        caption: "Drill and tap",
        rows: [
          { label: "Tap", value: declared.thread, note: declared.source },
          {
            label: "Tapping drill",
            value: long(found.drill_m),
            note: `nearest in each set: ${drills}`,
          },
          ...heightRow(shown, found),
          {
            label: "Full thread before the gallery or seat",
            value: found.fullThreadAvailable_m > 0 ? long(found.fullThreadAvailable_m) : "none",
            note: found.fullThreadAvailable_m > 0 ? "" : "what to change stands below",
          },
          ...(found.strippingFactor === undefined ? [] : [{
            label: "Thread strength over tightening",
            value: formatNumber(found.strippingFactor),
            note: `at ${formatQuantity(values.sensor.torque, "torque", system)}`,
          }]),
        ],
      })}
      ${depths(shown, found, long)}
      <ul>
        ${[...found.says, ...(portFits(shown) ? declared.remarks(long) : [])].map((text) =>
          html`<li>${text}</li>`
        )}
      </ul>
    </section>
  `;
}

function depths(
  shown: PlanShown,
  { stack, pilot_m }: PortResults,
  long: (value: number) => string,
): VNode {
  if (stack.length === 0) {
    return html`
      <p><b>No depths to drill to:</b> the seat would have to begin above the face.</p>
    `;
  }
  return HoleTable({
    caption: !portFits(shown)
      ? "Depths from the face as planned: the port does not fit"
      : pilot_m === undefined
      ? "Depths from the face"
      : "Depths from the face, from the top down; the pilot is drilled first",
    columns: [
      { title: "What" },
      { title: "From", isNumber: true },
      { title: "To", isNumber: true },
      { title: "Tool" },
    ],
    rows: stack.map(({ what, from_m, to_m, tool }) => [what, long(from_m), long(to_m), tool]),
  });
}

function heightRow({ system }: PlanShown, { heightIso, heightUs }: PortResults): NumberRow[] {
  if (heightIso === undefined || heightUs === undefined) return [];
  return [{
    label: "Thread height",
    value: formatQuantity(heightIso, "ratio", system),
    note: `of the ISO internal height; ${
      formatQuantity(heightUs, "ratio", system)
    } on the US base of three quarters of the sharp height`,
  }];
}

function signed(error_m: number, unit: string): string {
  const sign = error_m < 0 ? "−" : "+";
  return `${sign}${formatIn(Math.abs(error_m), "length", unit)}`;
}
