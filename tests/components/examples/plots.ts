/** Examples of plots and of tables over operating points and variants. */
import { OperatingTable } from "@/components/operating_table.ts";
import { axisOf } from "@/components/plot_axis.ts";
import { PlotFrame } from "@/components/plot_frame.ts";
import { PlotTable } from "@/components/plot_table.ts";
import { PressureProfile, type PressureProfileProps } from "@/components/pressure_profile.ts";
import { PumpChart, type PumpChartProps } from "@/components/pump_chart.ts";
import { VerdictMatrix } from "@/components/verdict_matrix.ts";
import type { Examples } from "./example.ts";

/** A point of the way in metres and kilopascals. */
function along(at_m: number, pressure_kPa: number, label?: string) {
  return { at_m, pressure_Pa: pressure_kPa * 1e3, ...(label === undefined ? {} : { label }) };
}

/** Made-up pressures of a system with return. */
export const profile: PressureProfileProps = {
  where: "at the power peak",
  set_Pa: 4.6e5,
  vapour_Pa: -31e3,
  system: "metric",
  stretches: [
    {
      name: "Suction",
      points: [
        along(0, 1.6, "Tank"),
        along(0.05, -1.9, "Strainer"),
        along(0.35, -3.2, "Hose, dash 8"),
        along(0.35, -3.9, "Elbow 90°"),
      ],
    },
    {
      name: "Feed",
      points: [
        along(0.55, 503, "Pump"),
        along(0.55, 488, "Check valve"),
        along(0.75, 486.5, "Hose, dash 6"),
        along(0.9, 478, "Filter"),
        along(4.3, 466.8, "Hose, dash 6"),
        along(4.3, 464.6, "Elbow 90°"),
        along(4.6, 463.5, "Hose to the rail"),
      ],
    },
    {
      name: "Rail",
      points: [along(4.6, 463.5), along(4.8, 463.2), along(5, 463, "Gallery")],
    },
    {
      name: "Return",
      points: [
        along(5.15, 7.4, "Regulator"),
        along(5.15, 6.8, "Elbow 45°"),
        along(9, 1.5, "Hose, dash 6"),
        along(9, 0, "Tank fitting"),
      ],
    },
  ],
};

const [suction, feed, rail] = profile.stretches;

/** Thirty pieces, half of them in one place. */
const crowded = Array.from({ length: 31 }, (_, i) => {
  const name = i === 0 ? {} : { label: i % 2 === 0 ? "Hose, dash 6" : "Elbow 90°" };
  return { ...along(i < 16 ? 0.4 : i * 0.1, 500 - i * 3), ...name };
});

const L_H = 1e-3 / 3600;

function flowAt(flow_L_h: number, pressure_bar: number) {
  return { flow_m3_s: flow_L_h * L_H, pressure_Pa: pressure_bar * 1e5 };
}

/** Made-up curves of one pump. */
export const pump: PumpChartProps = {
  curves: [
    { name: "Pump", voltage_V: 13.5, points: [flowAt(0, 8.5), flowAt(255, 4), flowAt(340, 0)] },
    { name: "Pump", voltage_V: 12, points: [flowAt(0, 7), flowAt(205, 4), flowAt(300, 0)] },
    { name: "Pump", voltage_V: 9.5, points: [flowAt(0, 5), flowAt(90, 3), flowAt(210, 0)] },
  ],
  system: [flowAt(0, 4.6), flowAt(100, 4.66), flowAt(200, 4.85), flowAt(320, 5.2)],
  working: [
    { name: "Idle", ...flowAt(266, 3.48) },
    { name: "Cruise", ...flowAt(253, 4.03) },
    { name: "Power peak", ...flowAt(206, 4.87) },
    { name: "Maximum speed", ...flowAt(205, 4.88) },
    { name: "Key-on prime", ...flowAt(85, 3.11) },
  ],
  system_units: "metric",
};

const axis = (title: string) =>
  axisOf({ title, unit: { scale: 1, symbol: "m" }, values: [-2, 7], marks: 5 });

const judged = {
  columns: ["E0", "E10", "E51", "E85"],
  rows: [
    {
      title: "Injector duty at the power peak",
      href: "#duty",
      cells: [
        { verdict: "meets", value: "61.2 %" },
        { verdict: "meets", value: "63.5 %" },
        { verdict: "marginal", value: "80.4 %" },
        { verdict: "fails", value: "93.1 %" },
      ],
      worst: "At E85 duty is 93.1 %, past 90 %",
    },
    {
      title: "Vapour margin at the pump's inlet",
      cells: [
        { verdict: "marginal", value: "0.12 bar" },
        { verdict: "fails", value: "0.05 bar" },
        { verdict: "meets", value: "0.25 bar" },
        { verdict: "open" },
      ],
    },
    { title: "Fuse", cells: Array(4).fill({ verdict: "meets", value: "20.0 A" }) },
  ],
} as const;

/** By component. */
export const plotExamples: Examples = {
  PlotFrame: {
    "every line, below zero too": () =>
      PlotFrame({
        x: axis("Along"),
        y: axis("Up"),
        lines: (["wide", "solid", "dashed", "dotted", "chain", "doubleChain"] as const).map((
          type,
          i,
        ) => ({ type, points: [[-2, i], [6, i - 2]] })),
        balloons: [{ text: "1", at: [3, 2] }],
        labels: [{ text: "a word", at: [0, 0], anchor: "middle" }],
        spans: [{ name: "a part", from: 0, to: 2 }, { name: "next to it", from: 2, to: 2.1 }],
      }),
    "nothing in it": () =>
      PlotFrame({ x: axis("Along"), y: axis("Up"), lines: [], balloons: [], labels: [] }),
  },
  PlotTable: {
    closed: () =>
      PlotTable({
        summary: "The numbers",
        columns: ["Piece", "Lost"],
        groups: [{ title: "Feed", rows: [["Hose", "1"], ["Filter <new>", "2"]] }],
      }),
    open: () => PlotTable({ summary: "The numbers", columns: ["Piece"], groups: [], isOpen: true }),
  },
  PressureProfile: {
    "with a return": () => PressureProfile(profile),
    "in inches": () => PressureProfile({ ...profile, system: "inch" }),
    "dead-ended, no levels": () =>
      PressureProfile({
        where: "at idle",
        system: "metric",
        stretches: [suction, feed, rail].filter((each) => each !== undefined),
      }),
    "boiling, thirty pieces": () =>
      PressureProfile({
        ...profile,
        vapour_Pa: -2e3,
        stretches: [...profile.stretches.slice(0, 1), { name: "Feed", points: crowded }],
      }),
    "all at rest": () =>
      PressureProfile({
        where: "at rest",
        system: "metric",
        stretches: [{ name: "Feed", points: [along(0, 0), along(1, 0)] }],
      }),
    nothing: () => PressureProfile({ stretches: [], where: "at idle", system: "metric" }),
  },
  PumpChart: {
    "three voltages": () => PumpChart(pump),
    "in inches, six pumps, nowhere working": () =>
      PumpChart({
        ...pump,
        curves: Array.from({ length: 6 }, (_, i) => ({
          name: `Pump ${i}`,
          points: [flowAt(0, 8 - i), flowAt(100 + i, 2)],
        })),
        working: [],
        system_units: "inch",
      }),
    "one pump, the system not known": () =>
      PumpChart({ ...pump, curves: pump.curves.slice(0, 1), system: [] }),
    nothing: () => PumpChart({ curves: [], system: [], working: [], system_units: "metric" }),
  },
  OperatingTable: {
    "five points": () =>
      OperatingTable({
        system: "metric",
        rows: [
          ["Idle", 13.8, 3, 262, 259, 3.42, 4.02, "meets"],
          ["Cruise", 13.6, 22, 245, 223, 3.9, 4.01, "meets"],
          ["Power peak", 12.7, 188, 212, 24, 4.63, 3.98, "marginal"],
          ["Maximum speed", 12.7, 190, 211, 21, 4.63, 3.98, "marginal"],
          ["Cranking", 9.4, 5, 90, 85, 3, 3, "fails"],
        ].map(([name, V, burnt, pumped, returned, rail, across, says]) => ({
          name: String(name),
          voltage_V: Number(V),
          burnt_m3_s: Number(burnt) * L_H,
          pumped_m3_s: Number(pumped) * L_H,
          returned_m3_s: Number(returned) * L_H,
          rail_Pa: Number(rail) * 1e5,
          differential_Pa: Number(across) * 1e5,
          says: String(says),
        })),
      }),
    "little known": () =>
      OperatingTable({
        system: "inch",
        rows: [{ name: "Idle", burnt_m3_s: 1e-6, says: "" }, {
          name: "Power peak",
          burnt_m3_s: 5e-5,
          rail_Pa: 4e5,
          says: "",
        }],
      }),
  },
  VerdictMatrix: {
    "three blends": () => VerdictMatrix(judged),
    "no checks": () => VerdictMatrix({ columns: ["E0"], rows: [] }),
  },
};
