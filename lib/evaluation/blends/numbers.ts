/** The numbers that a blend moves most. */
import { formatNumber, formatQuantity, formatShare, type System } from "@/lib/units/mod.ts";
import type { Shown } from "../check.ts";
import type { Evaluation } from "../evaluation.ts";

/** One number at each share. */
export interface NumberAcross {
  /** Unique; what it is, with its SI unit. */
  readonly id: string;
  /** What it is called. */
  readonly title: string;
  /** How it is shown. */
  readonly kind: Shown;
  /** Significant digits, where it takes more than its kind. */
  readonly digits?: number;
  /** In SI, column by column; undefined where it can't be said. */
  readonly values: readonly (number | undefined)[];
}

/** How a number is found. */
type Sought = Omit<NumberAcross, "values"> & {
  of(evaluation: Evaluation): number | undefined;
};

const SOUGHT: readonly Sought[] = [
  {
    id: "bsfc_kg_J",
    title: "BSFC",
    kind: "bsfc",
    of: ({ results: { demand } }) => demand && demand.fuelByPower_kg_s / demand.crankPower_W,
  },
  {
    id: "fuel_kg_s",
    title: "Fuel at full power",
    kind: "massFlow",
    of: ({ results }) => results.demand?.fuel_kg_s,
  },
  {
    id: "fuelVolume_m3_s",
    title: "The same as a volume",
    kind: "pumpFlow",
    of: ({ results }) => results.demand?.fuelVolume_m3_s,
  },
  {
    id: "density_kg_m3",
    title: "Density at rail temperature",
    kind: "density",
    of: ({ results }) => results.demand?.fuel.density_kg_m3,
  },
  {
    id: "stoichiometricRatio",
    title: "Stoichiometric air to fuel, by mass",
    kind: "factor",
    digits: 4,
    of: ({ results }) => results.demand?.fuel.stoichiometricRatio,
  },
  {
    id: "shopFlow_m3_s",
    title: "Pump flow to ask for, the aim included",
    kind: "pumpFlow",
    of: ({ results }) => results.pump?.shopFlow_m3_s,
  },
  {
    id: "pumpPressure_Pa",
    title: "Pressure that the pump adds then",
    kind: "pressure",
    of: ({ results }) => results.pump?.pressure_Pa,
  },
  {
    id: "pumpMargin",
    title: "Pump flow beyond the need",
    kind: "ratio",
    of: ({ results }) => results.pump?.margin,
  },
  {
    id: "duty",
    title: "Highest injector duty",
    kind: "ratio",
    of: ({ results }) =>
      highest(
        results.injectors?.stages.flatMap(({ dutyPeak, dutyMaximum }) => [
          dutyPeak,
          dutyMaximum,
        ]),
      ),
  },
  {
    id: "idleOpenTime_s",
    title: "Open time of an injector at idle",
    kind: "duration",
    of: ({ results }) => results.injectors?.idleOpenTime_s,
  },
  {
    id: "inletVapour_Pa",
    title: "Pump inlet over vapour pressure, hottest tank",
    kind: "pressure",
    of: (evaluation) => judged(evaluation, "inlet-vapour"),
  },
  {
    id: "soakVapour_Pa",
    title: "Rail over vapour pressure, hot and standing",
    kind: "pressure",
    of: (evaluation) => judged(evaluation, "soak-vapour"),
  },
];

/** Finds the numbers of each evaluation, side by side. */
export function numbersAcross(evaluations: readonly Evaluation[]): readonly NumberAcross[] {
  return SOUGHT.map(({ of, ...rest }) => ({ ...rest, values: evaluations.map(of) }));
}

/**
 * Shows a number that is judged or stands beside what is.
 *
 * @param value In SI.
 * @param kind How it is shown.
 * @param system The plan's units.
 * @param digits Significant digits of a factor.
 * @returns Like "93.1 %".
 */
export function inWords(value: number, kind: Shown, system: System, digits?: number): string {
  if (kind === "word") return "";
  if (kind === "factor") return formatNumber(value, digits);
  return kind === "ratio" ? formatShare(value) : formatQuantity(value, kind, system);
}

function highest(values: readonly number[] | undefined): number | undefined {
  return values === undefined || values.length === 0 ? undefined : Math.max(...values);
}

function judged({ checks }: Evaluation, id: string): number | undefined {
  return checks.find((check) => check.id === id)?.value;
}
