/** Feeler blades: which there are, and what one tells. */
import { InputError } from "@/lib/basics/mod.ts";

/** A feeler blade. */
export interface FeelerBlade {
  /** As stamped on it: `0.05 mm`, `0.002 in`. */
  readonly name: string;
  /** Its thickness [m]. */
  readonly thickness_m: number;
}

const hundredths = (count: number): FeelerBlade => ({
  name: `${(count / 100).toFixed(2)} mm`,
  thickness_m: count / 100_000,
});

const halfThousandths = (count: number): FeelerBlade => ({
  name: `${(count / 2000).toFixed(count % 2 === 0 ? 3 : 4)} in`,
  thickness_m: count / 2000 * 0.0254,
});

const count = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.floor((to - from) / step) + 1 }, (_, i) => from + i * step);

/**
 * Blades of common sets, thinnest first: 0.03 to 0.10 mm by 0.01, then to 1 mm by 0.05; 0.001 and
 * 0.0015 in, then 0.002 to 0.025 in by 0.001. Common practice, no source.
 *
 * @example 0.002 in is 0.051 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const blade = FEELER_BLADES.inch.find(({ name }) => name === "0.002 in");
 *
 * assertAlmostEquals((blade?.thickness_m ?? 0) * 1000, 0.0508, 1e-9);
 * ```
 */
export const FEELER_BLADES: Readonly<Record<"metric" | "inch", readonly FeelerBlade[]>> = {
  metric: [...count(3, 10, 1), ...count(15, 100, 5)].map(hundredths),
  inch: [2, 3, ...count(4, 50, 2)].map(halfThousandths),
};

/**
 * The blade to try against a limit: the thickest that is no thicker, so that it meets the limit
 * when it stays out.
 *
 * @param blades A set of blades, thinnest first.
 * @param limit_m Gap that must not be reached [m].
 * @returns The blade; undefined when all are thicker.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(bladeFor(FEELER_BLADES.metric, 0.05e-3)?.name, "0.05 mm");
 * assertEquals(bladeFor(FEELER_BLADES.inch, 0.05e-3)?.name, "0.0015 in");
 * ```
 */
export function bladeFor(
  blades: readonly FeelerBlade[],
  limit_m: number,
): FeelerBlade | undefined {
  return blades.findLast(({ thickness_m }) => thickness_m <= limit_m * (1 + 1e-9));
}

/** What a feeler blade under a straight edge tells. */
export interface FeelerReading {
  /** The gap is at least this [m]. */
  readonly least_m: number;
  /** The gap is less than this [m]; absent when the blade went in. */
  readonly below_m?: number;
  /** Against the limit: a blade thinner than the limit that goes in proves nothing. */
  readonly verdict: "meets" | "fails" | "open";
}

/**
 * Reads a feeler blade tried under a straight edge.
 *
 * Source: meaning of a go and no-go blade.
 *
 * @param blade_m Thickness of the blade [m], above nought.
 * @param enters Whether it went in.
 * @param limit_m Gap that must not be reached [m].
 * @returns The bounds on the gap and the verdict.
 * @throws {InputError} When the blade or the limit is not above nought.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(readFeeler(5e-5, false, 5e-5), { least_m: 0, below_m: 5e-5, verdict: "meets" });
 * assertEquals(readFeeler(4e-5, true, 5e-5).verdict, "open");
 * ```
 */
export function readFeeler(blade_m: number, enters: boolean, limit_m: number): FeelerReading {
  if (!(blade_m > 0)) throw new InputError("feeler reading", "blade_m", "must be > 0 m", blade_m);
  if (!(limit_m > 0)) throw new InputError("feeler reading", "limit_m", "must be > 0 m", limit_m);
  if (enters) return { least_m: blade_m, verdict: blade_m >= limit_m ? "fails" : "open" };
  return { least_m: 0, below_m: blade_m, verdict: blade_m <= limit_m ? "meets" : "open" };
}
