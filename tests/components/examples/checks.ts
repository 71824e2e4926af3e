/** Examples of what comes of a plan. */
import { CeilingsChart } from "@/components/ceilings_chart.ts";
import { CheckList } from "@/components/check_list.ts";
import { Verdict } from "@/components/verdict.ts";
import { VerdictSummary } from "@/components/verdict_summary.ts";
import { type Check, judge } from "@/lib/evaluation/mod.ts";
import { CRITERIA } from "@/lib/evaluation/mod.ts";
import type { Examples } from "./example.ts";

/** Made-up findings for real criteria. */
export const checks: readonly Check[] = [
  judge(CRITERIA.dutyPeak, {
    value: 0.82,
    because: "Pulse of 14.0 ms in 17.1 ms between injections, dead time of 1.15 ms included",
    part: 1,
    result: "injectors.0.dutyPeak",
  }),
  judge(CRITERIA.pumpMargin, {
    value: 0.04,
    because: "Two pumps deliver 347 L/h at 5.1 bar and 12.6 V; the engine burns 333 L/h",
    result: "pump.margin",
  }),
  judge(CRITERIA.wall, { value: 0.0066, because: "30 mm bar, 14 mm bore, 0.65 mm drift" }),
  judge(CRITERIA.yield, { value: 31.4, because: "Thick-wall hoop stress at 9 bar proof" }),
  judge(CRITERIA.portHole, {
    value: 0.009,
    because: "A 9.0 mm drill",
    limit: [0.008917, 0.009153],
    aim: [0.008917, 0.009153],
  }),
  judge(CRITERIA.sensorReach, { value: undefined, because: "The sensor's reach is not given" }),
  judge(CRITERIA.routes, { value: 0.08, because: "Air route 41.2 g/s, power route 44.8 g/s" }),
  judge(CRITERIA.airEnergy, { value: 3.1, because: "60 cc at 0.5 bar" }),
];

const ceilings = [
  {
    id: "injectors",
    title: "Injectors",
    dependsOnPower: true,
    power_W: 319e3,
    because: "duty reaches 90 %",
  },
  {
    id: "pump",
    title: "Pump",
    dependsOnPower: true,
    power_W: 287e3,
    because: "no flow beyond the need is left",
  },
  {
    id: "feed",
    title: "Feed hose",
    dependsOnPower: true,
    power_W: 410e3,
    because: "velocity reaches 6 m/s",
  },
  {
    id: "rail",
    title: "Rail",
    dependsOnPower: true,
    power_W: 1.9e6,
    because: "spread reaches 1 % of flow",
  },
  {
    id: "sensor",
    title: "Sensor",
    dependsOnPower: false,
    power_W: undefined,
    because: "Its range does not depend on power",
  },
];

/** The examples. */
export const checkExamples: Examples = {
  Verdict: {
    meets: () => Verdict({ verdict: "meets" }),
    marginal: () => Verdict({ verdict: "marginal" }),
    fails: () => Verdict({ verdict: "fails" }),
    open: () => Verdict({ verdict: "open" }),
  },
  VerdictSummary: {
    all: () => VerdictSummary({ verdicts: checks.map(({ verdict }) => verdict) }),
    none: () => VerdictSummary({ verdicts: [] }),
  },
  CheckList: {
    "all verdicts": () =>
      CheckList({ checks, system: "metric", workingHref: (result) => `/working#${result}` }),
    "in inches": () => CheckList({ checks, system: "inch" }),
    none: () => CheckList({ checks: [], system: "metric" }),
  },
  CeilingsChart: {
    metric: () => CeilingsChart({ ceilings, target_W: 313.2e3, system: "metric" }),
    inch: () => CeilingsChart({ ceilings, target_W: 313.2e3, system: "inch" }),
    "no number": () =>
      CeilingsChart({ ceilings: ceilings.slice(4), target_W: 313.2e3, system: "metric" }),
    "all far beyond a small target": () =>
      CeilingsChart({ ceilings, target_W: 5e3, system: "metric" }),
  },
};
