/** What a shop's own drills do in place of the one asked for. */
import type { PlanValues } from "@/lib/plan/mod.ts";
import {
  drillChoices,
  DRILLS,
  type DrillSet,
  G_THREADS,
  type NearDrill,
  nearestDrills,
  nearestInchDrill,
  STRAIGHT_THREADS,
  threadOf,
} from "@/lib/thread/mod.ts";
import type { ToolEquivalent } from "./tool.ts";

/** Which drills the shop has. */
export type ShopDrills = PlanValues["shop"]["drills"];

/** A drill further off than this is no stand-in [m]; ours. */
export const NEAR_m = 0.0003;

/** Sizes that differ by less are the same [m]: a drill's name is rounded to this. */
export const SAME_m = 1e-6;

const SETS: Readonly<Record<ShopDrills, readonly DrillSet[]>> = {
  metric: ["metric"],
  inch: ["fractional", "number", "letter"],
  both: ["metric", "fractional", "number", "letter"],
};

/** The nearest drill that the shop has of each kind, at most {@linkcode NEAR_m} off. */
export function nearest(
  drills: ShopDrills,
  wanted_m: number,
  limits?: Limits,
): readonly ToolEquivalent[] {
  const found: readonly NearDrill[] = [
    ...(drills === "inch" ? [] : [nearestDrills(wanted_m).metric]),
    ...(drills === "metric" ? [] : [nearestInchDrill(wanted_m)]),
  ];
  return found.filter(isNear).map((drill) => equivalent(drill, limits));
}

/** Limits of a hole. */
export interface Limits {
  /** Smallest diameter [m]. */
  readonly least_m: number;
  /** Largest diameter [m]. */
  readonly most_m: number;
}

function isNear({ error_m }: NearDrill): boolean {
  return Math.abs(error_m) <= NEAR_m;
}

function equivalent(
  { name, diameter_m, error_m }: NearDrill,
  limits: Limits | undefined,
): ToolEquivalent {
  return {
    name,
    diameter_m,
    error_m,
    heightIso: undefined,
    heightUs: undefined,
    inside: limits && isWithin(diameter_m, limits),
  };
}

/** Whether a diameter keeps to limits, whatever its last bit. */
export function isWithin(diameter_m: number, { least_m, most_m }: Limits): boolean {
  return diameter_m >= least_m - SAME_m / 10 && diameter_m <= most_m + SAME_m / 10;
}

/** The drills of the shop between two diameters, of each kind the one nearest to the larger. */
export function between(
  drills: ShopDrills,
  { least_m, most_m }: Limits,
): readonly ToolEquivalent[] {
  const sets = drills === "both" ? [SETS.metric, SETS.inch] : [SETS[drills]];
  return sets.flatMap((set): readonly ToolEquivalent[] => {
    const best = set.flatMap((name) => DRILLS[name])
      .filter(({ diameter_m }) => isWithin(diameter_m, { least_m, most_m }))
      .toSorted((a, b) => b.diameter_m - a.diameter_m)[0];
    return best === undefined
      ? []
      : [equivalent({ ...best, error_m: best.diameter_m - most_m }, { least_m, most_m })];
  });
}

/** The parallel threads; of a taper thread no hole has limits. */
const PARALLEL: ReadonlySet<string> = new Set(
  [...STRAIGHT_THREADS, ...Object.values(G_THREADS)].map(({ designation }) => designation),
);

/** Limits of a parallel thread's hole; undefined for a taper thread. */
export function holeLimits(designation: string): Limits | undefined {
  if (!PARALLEL.has(designation)) return undefined;
  const { minorMin_m, minorMax_m } = threadOf(designation).hole;
  return { least_m: minorMin_m, most_m: minorMax_m };
}

/** Drills of the shop for a thread; errors are told from the drill that the sheet asks for. */
export function forThread(
  drills: ShopDrills,
  designation: string,
  wanted_m: number,
): readonly ToolEquivalent[] {
  if (holeLimits(designation) === undefined) return nearest(drills, wanted_m);
  const sets: ReadonlySet<string> = new Set(SETS[drills]);
  const seen = new Set<string>();
  return drillChoices(designation)
    .filter(({ set, name }) => sets.has(set) && !seen.has(name) && seen.add(name))
    .map(({ name, diameter_m, heightIso, heightUs, inside }) => ({
      name,
      diameter_m,
      error_m: diameter_m - wanted_m,
      heightIso,
      heightUs,
      inside,
    }))
    .filter(isNear);
}
