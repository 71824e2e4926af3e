/** The Hand over sheet: what does the tuner need? */
import type { VNode } from "preact";
import { railPressureTable, tunerSensor } from "@/lib/evaluation/mod.ts";
import { formatIn, formatNumber, formatQuantity, inBoth, type Kind } from "@/lib/units/mod.ts";
import { AssumptionList } from "./assumption_list.ts";
import { CeilingsChart } from "./ceilings_chart.ts";
import { said } from "./assumed.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { NoteList } from "./note_list.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { fieldAt } from "@/lib/plan/mod.ts";
import { quantityRow } from "./size_numbers.ts";
import { VerdictSummary } from "./verdict_summary.ts";

/** What {@linkcode HandOverPage} shows. */
export interface HandOverPageProps {
  readonly shown: PlanShown;
  /** The whole address that opens this plan, to be sent. */
  readonly link: string;
}

/** The sheet: the link, then the numbers. */
export function HandOverPage({ shown, link }: HandOverPageProps): VNode {
  const { evaluation, system } = shown;
  const target_W = evaluation.results.demand?.crankPower_W;
  return html`
    <h1>Hand over: what does the tuner need?</h1>
    <section class="screen-only" aria-labelledby="link-title">
      <h2 id="link-title">The link</h2>
      <p id="link-hint">
        The whole plan travels in this link; nothing is stored. Whoever has it can read the plan.
      </p>
      <div class="field"><label for="link">Copy this address</label></div>
      <textarea id="link" rows="4" readonly aria-describedby="link-hint">${link}</textarea>
    </section>
    <section aria-labelledby="fuel-title">
      <h2 id="fuel-title">Fuel and pressure</h2>
      ${NumberTable({ caption: "At full power", rows: fuelRows(shown) })}
      ${pressureTable(shown)}
    </section>
    <section aria-labelledby="injectors-title">
      <h2 id="injectors-title">Injectors</h2>
      ${injectorTable(shown)}
    </section>
    <section aria-labelledby="sensor-title">
      <h2 id="sensor-title">Pressure sensor</h2>
      ${NumberTable({ caption: "Ratiometric output", rows: sensorRows(shown) })}
    </section>
    <section aria-labelledby="ceilings-title">
      <h2 id="ceilings-title">Verdicts and ceilings</h2>
      ${VerdictSummary({ verdicts: evaluation.checks.map(({ verdict }) => verdict) })}
      ${target_W !== undefined &&
        CeilingsChart({ ceilings: evaluation.ceilings, target_W, system })}
    </section>
    <section aria-labelledby="assumed">
      <h2 id="assumed">Still assumed: ${evaluation.assumed.length}</h2>
      ${AssumptionList({
        assumed: evaluation.assumed,
        fieldHref: fieldHref(shown),
        system,
      })}
    </section>
  `;
}

function fuelRows(shown: PlanShown): NumberRow[] {
  const { evaluation, values } = shown;
  const { demand, pressures } = evaluation.results;
  const row = quantityRow.bind(undefined, shown);
  const fuelField = fieldAt("fuel.name");
  return [
    { label: "Fuel", value: said(fuelField, values.fuel.name) },
    ...(demand
      ? [{
        label: "Stoichiometric air to fuel",
        value: formatNumber(demand.fuel.stoichiometricRatio, 4),
        note: "by mass",
      }]
      : []),
    ...row("Density", demand?.fuel.density_kg_m3, "density", temperatureNote(shown)),
    ...row("Fuel at the power peak", demand?.fuel_kg_s, "massFlow"),
    ...row("Target power at the crank", demand?.crankPower_W, "power"),
    ...row("Speed at that power", values.engine.powerSpeed, "rotation"),
    ...row("Maximum speed", values.engine.maximumSpeed, "rotation"),
    {
      label: "Regulator",
      value: formatQuantity(values.regulator.setPressure, "pressure", shown.system),
      note: `set, gauge; ${values.regulator.layout}, referenced to ${
        values.regulator.reference === "atmosphere" ? "outside air" : "the manifold"
      }`,
    },
    ...row("Across the injectors at full power", pressures?.differentialPeak_Pa, "pressure"),
  ];
}

function temperatureNote({ values, system }: PlanShown): string {
  return `at ${formatQuantity(values.fuel.temperature, "temperature", system)}`;
}

function pressureTable(shown: PlanShown): VNode {
  const say = (value: number): string => formatQuantity(value, "pressure", shown.system);
  return HoleTable({
    caption: "Rail pressure against manifold pressure",
    columns: [
      { title: "Manifold" },
      { title: "Rail, gauge", isNumber: true },
      { title: "Across the injectors", isNumber: true },
      { title: "Flow against rating, by volume", isNumber: true },
    ],
    rows: railPressureTable(shown.evaluation, shown.values).map((row) => [
      `${say(row.manifold_Pa)} absolute`,
      say(row.rail_Pa),
      say(row.differential_Pa),
      row.flowShare === undefined ? "open" : formatQuantity(row.flowShare, "ratio", shown.system),
    ]),
  });
}

function injectorTable(shown: PlanShown): VNode {
  const { evaluation, values, system } = shown;
  const stages = evaluation.results.injectors?.stages ?? [];
  if (stages.length === 0) return html`<p>No injector is named yet.</p>`;
  const say = (value: number | undefined, kind: Kind): string =>
    value === undefined ? "open" : formatQuantity(value, kind, system);
  const rows: [string, ...string[]][] = [
    ["Count", ...stages.map(({ count }) => String(count))],
    ["Static flow at rating", ...stages.map((s) => inBoth(s.ratedFlow_m3_s, "flow", system))],
    ["Rating pressure", ...stages.map((s) => say(s.ratedPressure_Pa, "pressure"))],
    ["Static flow as used", ...stages.map((s) => say(s.staticFlow_m3_s, "flow"))],
    ["The same by mass", ...stages.map((s) => formatIn(s.staticFlow_kg_s, "massFlow", "lb/h"))],
    ["and in grams", ...stages.map((s) => `${formatNumber(s.staticFlow_kg_s * 1000)} g/s`)],
    ["Dead time at the lowest voltage", ...stages.map((s) => say(s.deadTime_s, "duration"))],
    ["Pulse at the power peak", ...stages.map((s) => say(s.pulsePeak_s, "duration"))],
    ["Duty at the power peak", ...stages.map((s) => say(s.dutyPeak, "ratio"))],
    ["Duty at maximum speed", ...stages.map((s) => say(s.dutyMaximum, "ratio"))],
    ["Smallest repeatable pulse", ...given(shown, (s) => say(s.smallestPulse, "duration"))],
    ["Coil resistance", ...given(shown, (s) => say(s.resistance, "resistance"))],
    ["Driver", ...given(shown, (s) => driverOf(s.driver))],
  ];
  return html`
    ${HoleTable({
      caption: "Stage by stage, with the fuel in use at its temperature and pressure",
      columns: [
        { title: "Injectors" },
        ...stages.map((_, i) => ({
          title: stages.length === 1 ? "All" : `Stage ${i + 1}${i === 0 ? ", primary" : ""}`,
          isNumber: true,
        })),
      ],
      rows,
    })}
    ${NoteList({ notes: injectorNotes(shown), fieldHref: fieldHref(shown) })}
    ${stages.length > 1 && html`
      <p>
        Stage 1, the primary, injects alone up to ${say(
          values.injectors.changeover,
          "ratio",
        )} of its duty; above,
        all share in proportion to their static flow.
      </p>
    `}
  `;
}

function injectorNotes({ evaluation }: PlanShown): Record<string, string> {
  return Object.fromEntries(
    Object.entries(evaluation.notes).filter(([path]) => path.startsWith("injectors.")),
  );
}

function fieldHref({ planPath }: PlanShown): (path: string) => string {
  return (path) => `${planPath}/size#${path}`;
}

type StageGiven = PlanShown["values"]["injectors"]["stages"][number];

function given(shown: PlanShown, say: (stage: StageGiven) => string): string[] {
  return shown.values.injectors.stages.filter(({ flow }) => flow !== undefined).map(say);
}

function driverOf(driver: StageGiven["driver"]): string {
  return driver === undefined ? "open" : said(fieldAt("injectors.stages.0.driver"), driver);
}

function sensorRows(shown: PlanShown): NumberRow[] {
  const { system } = shown;
  const sensor = tunerSensor(shown.values);
  const say = (value: number, kind: Kind): string => formatQuantity(value, kind, system);
  return [
    { label: "Supply", value: say(shown.values.sensor.supply, "voltage") },
    { label: "At zero gauge pressure", value: say(sensor.zero_V, "voltage") },
    {
      label: "At full scale",
      value: say(sensor.full_V, "voltage"),
      note: say(shown.values.sensor.range, "pressure"),
    },
    {
      label: "Slope",
      value: `${say(sensor.slope_Pa_V, "pressure")} per V`,
      note: "pressure = slope × (output − output at zero)",
    },
  ];
}
