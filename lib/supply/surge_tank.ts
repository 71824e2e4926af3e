/** A surge tank: how long it lasts, and how long a pump takes to fill what is empty. */
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";
import { FLOW } from "./limits.ts";

const VOLUME: MethodInput = {
  unit: "m^3",
  min: 0,
  max: 1,
  says: "Volume",
  symbol: "V",
};

/** Flows smaller than this are none: a litre would last for eleven days [m^3/s]. */
const LEAST_FLOW_m3_s = 1e-9;

/**
 * Flow [m^3/s] that a surge tank has to make up: what is asked of it less what the lift pump
 * brings. Negative when the lift pump brings more, and the rest overflows.
 *
 * Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(missingFlow({ demand: 6e-5, lift: 4e-5 }), 2e-5, 1e-15);
 * ```
 */
export const missingFlow: Method<Record<"demand" | "lift", MethodInput>> = method({
  id: "missing-flow",
  title: "Flow that the surge tank makes up",
  inputs: {
    demand: { ...FLOW, says: "Flow taken from the surge tank for good", symbol: "Q_d" },
    lift: { ...FLOW, says: "Flow that the lift pump brings; none when it stops", symbol: "Q_l" },
  },
  output: { ...FLOW, name: "missing", min: -1, max: 1, says: "Flow that is missing" },
  formula: "demand - lift",
  source: "Continuity",
  compute: ({ demand, lift }) => demand - lift,
});

/**
 * How long [s] a surge tank lasts. Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A litre, 72 L/h missing
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(surgeSeconds({ usableVolume: 1e-3, missing: 2e-5 }), 50, 1e-9);
 * ```
 */
export const surgeSeconds: Method<Record<"usableVolume" | "missing", MethodInput>> = method({
  id: "surge-seconds",
  title: "How long the surge tank lasts",
  inputs: {
    usableVolume: {
      ...VOLUME,
      says: "Volume of the surge tank above where its pump begins to draw air",
    },
    missing: { ...FLOW, min: LEAST_FLOW_m3_s, max: 1, says: "Flow that is missing" },
  },
  output: { name: "time", unit: "s", min: 0, max: 2e9, says: "Time until it is empty" },
  formula: "usableVolume / missing",
  source: "Continuity",
  compute: ({ usableVolume, missing }) => usableVolume / missing,
});

/**
 * How long [s] a pump takes to fill what is empty when the key is turned. A lower bound: air has
 * to get out first.
 *
 * Source: continuity.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 0.15 L in the hoses, the rail and the filter, 180 L/h
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(primeTime({ volume: 0.15e-3, flow: 5e-5 }), 3, 1e-9);
 * ```
 */
export const primeTime: Method<Record<"volume" | "flow", MethodInput>> = method({
  id: "prime-time",
  title: "Time to fill what is empty",
  inputs: {
    volume: { ...VOLUME, says: "Volume to fill: hoses, filter, rail" },
    flow: { ...FLOW, min: LEAST_FLOW_m3_s, says: "Flow of the pump" },
  },
  output: { name: "time", unit: "s", min: 0, max: 2e9, says: "Time to fill it", symbol: "t_f" },
  formula: "volume / flow",
  source: "Continuity",
  compute: ({ volume, flow }) => volume / flow,
});

/** A surge tank at work. */
export interface SurgeSpec {
  /** Volume above where its pump begins to draw air [m^3]. */
  readonly usableVolume_m3: number;
  /** Flow taken from it for good: burnt, and returned to elsewhere [m^3/s]. */
  readonly demand_m3_s: number;
  /** Flow that the lift pump brings; nought when it stops [m^3/s]. */
  readonly lift_m3_s: number;
}

/**
 * Finds how long a surge tank lasts and records how.
 *
 * @param working The record.
 * @param section Where the results belong, like `lift`.
 * @param spec The surge tank.
 * @returns The time [s], or undefined when the lift pump keeps up and it never runs empty.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const tank = { usableVolume_m3: 1e-3, demand_m3_s: 6e-5 };
 * const stopped = surgeTime(new Working(), "lift", { ...tank, lift_m3_s: 0 });
 *
 * assertAlmostEquals(stopped ?? 0, 16.67, 0.01);
 * assertEquals(surgeTime(new Working(), "lift", { ...tank, lift_m3_s: 7e-5 }), undefined);
 * ```
 */
export function surgeTime(working: Working, section: string, spec: SurgeSpec): number | undefined {
  const missing = working.run(`${section}.missing_m3_s`, missingFlow, {
    demand: spec.demand_m3_s,
    lift: spec.lift_m3_s,
  });
  if (missing < LEAST_FLOW_m3_s) return undefined;
  return working.run(`${section}.surge_s`, surgeSeconds, {
    usableVolume: spec.usableVolume_m3,
    missing,
  });
}
