/** What touches the fuel, against the fuel. */
import { fuelSpecOf } from "@/lib/plan/mod.ts";
import {
  type AgainstFuel,
  type Elastomer,
  type FuelFitness,
  type FuelGroup,
  fuelGroup,
  MATERIALS_AGAINST_FUEL,
} from "@/lib/seal/mod.ts";
import { MATERIALS } from "@/lib/strength/mod.ts";
import type { Context } from "../context.ts";
import type { Criterion } from "../check.ts";
import { CRITERIA } from "../criteria.ts";

/** A material in the plan's fuel. */
export interface FitnessRow {
  /** What it is for: `O-rings`. */
  readonly part: string;
  /** The material in words. */
  readonly title: string;
  /** What is said of it. */
  readonly fitness: FuelFitness;
}

/** What was found for the materials. */
export interface FitnessResults {
  /** How the fuel counts. */
  readonly group: FuelGroup;
  /** Rubber and bar as planned, then hoses and fittings to choose from. */
  readonly rows: readonly FitnessRow[];
}

/** The rubbers as the table has them. */
const RUBBERS: Readonly<Record<string, Elastomer>> = {
  FKM: "FKM",
  "FKM-high-fluorine": "FKM-70",
  FVMQ: "FVMQ",
  HNBR: "HNBR",
  NBR: "NBR",
  EPDM: "EPDM",
};

/** Judges the rubber of the O-rings and the metal of the bar. */
export function judgeFitness(context: Context): FitnessResults | undefined {
  return context.subject([CRITERIA.fuelRubber, CRITERIA.fuelBar], () => {
    const { values } = context;
    const { elastomers, bars, liners, metals } = MATERIALS_AGAINST_FUEL;
    const group = fuelGroup(fuelSpecOf(values.fuel));
    const row = (part: string, { title, fuels }: AgainstFuel): FitnessRow => ({
      part,
      title,
      fitness: fuels[group],
    });
    const rubber = row("O-rings", elastomers[RUBBERS[values.pockets.elastomer] ?? "FKM"]);
    const bar = row("Bar", bars[values.rail.material]);
    judgeRow(context, CRITERIA.fuelRubber, rubber);
    judgeRow(context, CRITERIA.fuelBar, {
      ...bar,
      title: MATERIALS[values.rail.material].title,
    });
    return {
      group,
      rows: [
        rubber,
        bar,
        ...Object.values(liners).map((one) => row("Hose liner", one)),
        ...Object.values(metals).map((one) => row("Fitting", one)),
      ],
    };
  });
}

function judgeRow(context: Context, criterion: Criterion, { title, fitness }: FitnessRow): void {
  const { verdict, why, whatToDo, source } = fitness;
  context.check({ ...criterion, source }, {
    value: RANK[verdict],
    because: [`${title}: ${why}`, whatToDo].filter(Boolean).join(" "),
    atBest: verdict,
    atWorst: verdict,
  });
}

/** A table has words, not numbers; the number only tells that something was found. */
const RANK = { fails: 0, marginal: 1, meets: 2 } as const;
