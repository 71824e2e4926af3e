/** The Drill sheet: where does each hole go? */
import type { VNode } from "preact";
import { formatIn, formatNumber, formatQuantity } from "@/lib/units/mod.ts";
import { PORTS } from "@/lib/thread/mod.ts";
import type { PortResults } from "@/lib/evaluation/mod.ts";
import { CautionBox } from "./caution_box.ts";
import { CheckList } from "./check_list.ts";
import { drillCautions, drillSteps } from "./drill_steps.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { RailView } from "./rail_view.ts";
import { StepList } from "./step_list.ts";
import { quantityRow } from "./size_numbers.ts";
import { workingHref } from "./working_link.ts";

/** A drill further off than this is no stand-in and not named [m]. */
const NEAR_M = 0.0003;

/** Answers that move a hole, its size or its depth. */
const MOVES_HOLES: ReadonlySet<string> = new Set([
  "rail.count",
  "rail.shape",
  "rail.width",
  "rail.length",
  "rail.pitch",
  "rail.pocketBore",
  "sensor.port",
  "sensor.pilot",
  "sensor.face",
]);

/** The sheet: the rail from the side, its holes, the port, the tools and the order. */
export function DrillPage(shown: PlanShown): VNode {
  const { evaluation, system, planPath } = shown;
  const checks = evaluation.checks.filter(({ step }) => step === "drill");
  const assumedHere = evaluation.assumed.filter(({ path }) => MOVES_HOLES.has(path));
  return html`
    <h1>Drill: where does each hole go?</h1>
    ${assumedHere.length > 0 && html`
      <p class="blocked">
        <b>Do not drill yet:</b> ${assumedHere.length} values of rail and port are assumed
        (${assumedHere.map(({ label }) => label.toLowerCase()).join(", ")}).${" "}
        <a href=${`${planPath}/size#assumed`}>Confirm them</a>${" "}after measuring.
      </p>
    `}
    ${CautionBox({ cautions: drillCautions(shown.values.fuel.name) })}
    ${view(shown)} ${holes(shown)} ${port(shown)}
    <section aria-labelledby="drill-verdicts">
      <h2 id="drill-verdicts">Verdicts</h2>
      ${CheckList({ checks, system, workingHref: workingHref(shown) })}
    </section>
    <section aria-labelledby="order">
      <h2 id="order">Order of the work</h2>
      ${StepList({ steps: drillSteps(shown) })}
    </section>
  `;
}

function view(shown: PlanShown): VNode {
  const { evaluation, values, system, planPath } = shown;
  const { bar, rail, port: found } = evaluation.results;
  const bore_m = values.rail.bore;
  if (!bar || !rail || bore_m === undefined) {
    return html`
      <p>
        The drawing needs the bar and its bore: <a href=${`${planPath}/size#rail.bore`}>enter them</a>.
      </p>
    `;
  }
  const [first, second] = rail.stations_m;
  const between = first !== undefined && second !== undefined ? (first + second) / 2 : undefined;
  const opposite = values.sensor.face === "opposite";
  return RailView({
    length_m: bar.length_m,
    height_m: bar.height_m,
    bore_m,
    pocketBore_m: values.rail.pocketBore,
    stations_m: rail.stations_m,
    ...(found && opposite && between !== undefined && {
      port: { at_m: between, bore_m: found.drill_m },
    }),
    system,
  });
}

function holes(shown: PlanShown): VNode {
  const { evaluation, values, system } = shown;
  const { rail, bar, port: found } = evaluation.results;
  const unit = system === "metric" ? "mm" : "in";
  const long = (value: number | undefined): string =>
    value === undefined ? "open" : formatIn(value, "length", unit);
  const stations = rail?.stations_m ?? [];
  const rows = [
    ["Gallery", "along the bar", long(values.rail.bore), depthOf(shown, long)],
    ...stations.map((at, i) => [
      `Pocket ${i + 1}`,
      `${long(at)} from the datum end`,
      long(values.rail.pocketBore),
      "by your injector: O-ring seat, then pilot into the gallery",
    ]),
    ...(found
      ? [[
        "Sensor port",
        values.sensor.face === "opposite" ? "opposite the injectors" : "in a side face",
        long(found.drill_m),
        long(found.stack.at(-1)?.to_m),
      ]]
      : []),
  ];
  const rails = values.rail.count > 1 ? `, for each of ${values.rail.count} rails` : "";
  return html`
    <section aria-labelledby="holes">
      <h2 id="holes">Holes${rails}</h2>
      ${HoleTable({
        caption: "All places from one end of the bar, the datum",
        columns: [
          { title: "Hole" },
          { title: "Place" },
          { title: "Diameter", isNumber: true },
          { title: "Depth" },
        ],
        rows,
      })}
      ${bar && NumberTable({ caption: "The bar", rows: barRows(shown) })}
    </section>
  `;
}

function depthOf(
  { values, evaluation }: PlanShown,
  long: (value: number | undefined) => string,
): string {
  const length = evaluation.results.bar?.length_m;
  return values.rail.drilledFrom === "both"
    ? `${long(length && length / 2)} from each end`
    : `${long(length)} from one end`;
}

function barRows(shown: PlanShown): NumberRow[] {
  const { bar } = shown.evaluation.results;
  const row = quantityRow.bind(undefined, shown);
  return [
    ...row("Wall with the gallery centred", bar?.wallNominal_m, "length"),
    ...row("Drill drift allowed for", bar?.drift_m, "length"),
    ...row("Least wall left", bar?.wallLeft_m, "length"),
    ...row("Peak stress at proof pressure", bar?.peak_Pa, "pressure"),
    ...row("Force on an end plug at proof pressure", bar?.plugForce_N, "force"),
    ...row("Lift at each pocket at proof pressure", bar?.liftPerInjector_N, "force"),
  ];
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
            value: long(found.fullThreadAvailable_m),
            note: found.fullThreadAvailable_m > 0 ? "" : "none: see below",
          },
          ...(found.strippingFactor === undefined ? [] : [{
            label: "Thread strength over tightening",
            value: formatNumber(found.strippingFactor),
            note: `at ${formatQuantity(values.sensor.torque, "torque", system)}`,
          }]),
        ],
      })}
      ${HoleTable({
        caption: "Depths from the face",
        columns: [
          { title: "What" },
          { title: "From", isNumber: true },
          { title: "To", isNumber: true },
          { title: "Tool" },
        ],
        rows: found.stack.map(({ what, from_m, to_m, tool }) => [
          what,
          long(from_m),
          long(to_m),
          tool,
        ]),
      })}
      <ul>
        ${[...declared.remarks, ...found.says].map((text) => html`<li>${text}</li>`)}
      </ul>
    </section>
  `;
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
