/** The Drill sheet: where does each hole go? */
import type { VNode } from "preact";
import { formatIn, formatNumber, formatQuantity } from "@/lib/units/mod.ts";
import { PORTS } from "@/lib/thread/mod.ts";
import type { Check, PortResults } from "@/lib/evaluation/mod.ts";
import { CautionBox } from "./caution_box.ts";
import { changesHref } from "./changes_link.ts";
import { CheckList } from "./check_list.ts";
import { drillCautions, drillSteps } from "./drill_steps.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { portFits, portPlace, seatOf } from "./port_shown.ts";
import { RailView } from "./rail_view.ts";
import { capital } from "./show.ts";
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
  const { evaluation, system } = shown;
  const checks = evaluation.checks.filter(({ step }) => step === "drill");
  return html`
    <h1>Drill: where does each hole go?</h1>
    ${blocked(shown, checks)} ${CautionBox({ cautions: drillCautions(shown) })}
    ${view(shown)} ${holes(shown)} ${port(shown)}
    <section aria-labelledby="drill-verdicts">
      <h2 id="drill-verdicts">Verdicts</h2>
      ${CheckList({
        checks,
        system,
        workingHref: workingHref(shown),
        changesHref: changesHref(shown),
      })}
    </section>
    <section aria-labelledby="order">
      <h2 id="order">Order of the work</h2>
      ${StepList({ steps: drillSteps(shown) })}
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
  const at_m = portPlace(shown);
  const isDrawn = found && values.sensor.face === "opposite" && portFits(shown);
  return RailView({
    length_m: bar.length_m,
    height_m: bar.height_m,
    bore_m,
    pocketBore_m: values.rail.pocketBore,
    stations_m: rail.stations_m,
    ...(isDrawn && at_m !== undefined && {
      port: { at_m, bore_m: found.drill_m, seat: seatOf(found) },
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
    ...(found ? portHoles(shown, found, long) : []),
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
      <p class="note">
        ${values.rail.count > 1 && html`
          <b>One sensor needs one port: drill it in one rail only.</b>
        `} Not in this table, and yours to place from their makers' figures: end plugs, feed and return
        ports, hold-down screws. Keep them clear of pockets and sensor port.
      </p>
      ${bar && NumberTable({ caption: "The bar", rows: barRows(shown) })}
    </section>
  `;
}

/** The holes of the sensor port in the order of drilling. */
function portHoles(
  shown: PlanShown,
  found: PortResults,
  long: (value: number | undefined) => string,
): string[][] {
  const { sensor } = shown.values;
  const face = sensor.face === "opposite" ? "opposite the injectors" : "in a side face";
  const at_m = portPlace(shown);
  const place = at_m === undefined ? face : `${long(at_m)} from the datum end, ${face}`;
  if (!portFits(shown)) return [["Sensor port", place, "–", "does not fit: see the port"]];
  const into = `through into the gallery, open all round at ${long(found.stack.at(-1)?.to_m)}`;
  const seat = seatOf(found);
  if (seat === undefined) return [["Sensor port", place, long(found.drill_m), into]];
  return [
    ["Sensor port, first the pilot", place, long(seat.pilot_m), into],
    [
      "Sensor port, then the spotting drill",
      "the same, in one set-up",
      long(found.drill_m),
      `only to the seat: it begins at ${long(seat.from_m)}, with the drill's tip at ${
        long(seat.tip_m)
      }`,
    ],
  ];
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
    ...(bar && bar.wallLeft_m <= 0
      ? [{ label: "Least wall left", value: "none", note: "the drill may break out" }]
      : row("Least wall left", bar?.wallLeft_m, "length")),
    ...row("Wall that proof pressure alone takes", bar?.strengthWall_m, "length", "15 % spared"),
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
