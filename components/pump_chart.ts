/** What the pump gives against what the system asks for, and where the two meet. */
import type { VNode } from "preact";
import { displayUnit, formatQuantity, type System } from "@/lib/units/mod.ts";
import { html } from "./html.ts";
import { type Axis, axisOf } from "./plot_axis.ts";
import { PlotFrame } from "./plot_frame.ts";
import { lineSample, type LineType, type PlotLine } from "./plot_lines.ts";
import type { PlotPoint } from "./plot_place.ts";
import { PlotTable } from "./plot_table.ts";
import { unbroken } from "./unbroken.ts";

/** A flow at a pressure rise. */
export interface FlowAtPressure {
  readonly flow_m3_s: number;
  readonly pressure_Pa: number;
}

/** What the pump gives at one voltage. */
export interface PumpCurveShown {
  readonly name: string;
  /** At the pump's terminals. */
  readonly voltage_V?: number;
  readonly points: readonly FlowAtPressure[];
}

/** What {@linkcode PumpChart} shows. */
export interface PumpChartProps {
  /** One for each voltage. */
  readonly curves: readonly PumpCurveShown[];
  /** The pressure that it takes to drive so much through the system, at full power. */
  readonly system: readonly FlowAtPressure[];
  /** Where pump and system meet, by operating point. */
  readonly working: readonly (FlowAtPressure & { readonly name: string })[];
  readonly system_units: System;
}

/** The lines of the pump's curves, in their order. */
const TYPES: readonly LineType[] = ["solid", "dashed", "dotted", "chain", "doubleChain"];
const SYSTEM = "What the system asks for at full power";

/** The curves, each named in a key, with numbered working points; then all numbers as a table. */
export function PumpChart(given: PumpChartProps): VNode {
  const curves = given.curves.map((curve) => ({ ...curve, points: fromNoFlow(curve.points) }));
  const props = { ...given, curves };
  const { system, working, system_units } = props;
  const flow = (value: number): string => formatQuantity(value, "pumpFlow", system_units);
  const pressure = (value: number): string => formatQuantity(value, "pressure", system_units);
  const rows = (points: readonly FlowAtPressure[]): string[][] =>
    byFlow(points).map(({ flow_m3_s, pressure_Pa }) => [flow(flow_m3_s), pressure(pressure_Pa)]);
  const names = namesOf(curves, system_units);
  if (![...curves.map(({ points }) => points), system].some((points) => points.length > 1)) {
    return html`
      <figure class="plot">
        <figcaption>No curve of the pump can be drawn yet.</figcaption>
      </figure>
    `;
  }
  return html`
    <figure class="plot">
      <figcaption>
        Pump against system: at each flow, the pressure rise that the pump gives and that the system
        asks for${working.length === 0 ? "." : ". The numbers mark where the pump works:"}
      </figcaption>
      ${working.length > 0 && html`
        <ol class="plot-key">
          ${working.map(({ name, flow_m3_s, pressure_Pa }) =>
            html`<li>${unbroken(`${name}: ${flow(flow_m3_s)} at ${pressure(pressure_Pa)}`)}</li>`
          )}
        </ol>
      `}
      ${drawing(props)}
      <ul class="plot-key">
        ${names.map((name, i) => html`<li>${lineSample(typeOf(i))} ${name}</li>`)}
        ${system.length > 0 && html`<li>${lineSample("wide")} ${SYSTEM}</li>`}
      </ul>
      ${PlotTable({
        summary: "The curves as a table",
        columns: ["Flow", "Pressure rise"],
        groups: [
          ...curves.map(({ points }, i) => ({ title: names[i] ?? "", rows: rows(points) })),
          { title: SYSTEM, rows: rows(system) },
        ].filter((group) => group.rows.length > 0),
      })}
    </figure>
  `;
}

function typeOf(curve: number): LineType {
  return TYPES[curve % TYPES.length] ?? "solid";
}

/** A curve where it pumps: what is driven back through a pump that turns slowly is no flow of it. */
function fromNoFlow(points: readonly FlowAtPressure[]): FlowAtPressure[] {
  const along = byFlow(points);
  const first = along.findIndex(({ flow_m3_s }) => flow_m3_s >= 0);
  const [back, on] = [along[first - 1], along[first]];
  if (back === undefined || on === undefined) return along;
  const part = back.flow_m3_s / (back.flow_m3_s - on.flow_m3_s);
  const pressure_Pa = back.pressure_Pa + part * (on.pressure_Pa - back.pressure_Pa);
  return [{ flow_m3_s: 0, pressure_Pa }, ...along.slice(first)];
}

function byFlow(points: readonly FlowAtPressure[]): FlowAtPressure[] {
  return points.toSorted((a, b) => a.flow_m3_s - b.flow_m3_s);
}

/** Each curve's name with its voltage; the voltage alone where that is all they differ by. */
function namesOf(curves: readonly PumpCurveShown[], system: System): string[] {
  const [first] = curves;
  const isOnePump = curves.length > 1 &&
    curves.every(({ name, voltage_V }) => name === first?.name && voltage_V !== undefined);
  return curves.map(({ name, voltage_V }) => {
    if (voltage_V === undefined) return name;
    const voltage = formatQuantity(voltage_V, "voltage", system);
    return isOnePump ? voltage : `${name}, ${voltage}`;
  });
}

function drawing(props: PumpChartProps): VNode {
  const { curves, system, working, system_units } = props;
  const all = [...curves.flatMap(({ points }) => points), ...system, ...working];
  const axis = (title: string, kind: "pumpFlow" | "pressure", values: number[]): Axis =>
    axisOf({ title, unit: displayUnit(kind, system_units), values, marks: 5 });
  const x = axis("Flow", "pumpFlow", all.map(({ flow_m3_s }) => flow_m3_s));
  const y = axis("Pressure rise", "pressure", all.map(({ pressure_Pa }) => pressure_Pa));
  return PlotFrame({
    x,
    y,
    lines: [
      ...curves.map(({ points }, i): PlotLine => ({
        type: typeOf(i),
        points: lineThrough(points),
      })),
      { type: "wide", points: lineThrough(system) },
    ],
    balloons: working.map((point, i) => ({ text: String(i + 1), at: pointOf(point) })),
    labels: [],
  });
}

function pointOf({ flow_m3_s, pressure_Pa }: FlowAtPressure): PlotPoint {
  return [flow_m3_s, pressure_Pa];
}

function lineThrough(points: readonly FlowAtPressure[]): PlotPoint[] {
  return byFlow(points).map(pointOf);
}
