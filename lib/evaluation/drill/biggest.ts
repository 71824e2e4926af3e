/** The biggest and the smallest gallery that a plan's bar and holes allow: a search, so only where it is shown. */
import { biggestGallery, type Face } from "@/lib/layout/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import { CRITERIA } from "../criteria.ts";
import type { Evaluation } from "../evaluation.ts";
import { FACES } from "./holes.ts";
import { WANTED } from "./laid.ts";
import { laidAgain } from "./laid_again.ts";

/** Metal below which a gallery counts as cutting into a bore [m]. */
const TOUCHING_m = 1e-6;

/** How big the gallery may be and has to be. */
export interface GalleryRange {
  /** The biggest that leaves wall, ligaments and the pockets' bores whole [m]; none if not even 1 mm does. */
  readonly biggest_m: number | undefined;
  /** What stops it from being bigger: a hole, or a face of the bar. */
  readonly heldBy: string;
  /** The smallest that takes every drill that opens it [m]; none when no hole does. */
  readonly least_m: number | undefined;
  /** The hole that asks for that. */
  readonly askedBy: string | undefined;
}

/**
 * Searches the biggest gallery whose walls and ligaments keep their aims wherever its drill
 * wanders, and works out the smallest that takes every drill that opens it.
 *
 * @param evaluation The plan evaluated.
 * @param values The plan in numbers.
 * @returns Both; undefined while there is no layout.
 *
 * @example
 * ```ts
 * import { assert } from "@std/assert";
 * import { planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
 * import { evaluate } from "../evaluate.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   injectors: { stages: [{ flow: "440 cc/min" }] },
 *   rail: { bore: "12 mm", height: "40 mm", width: "30 mm", galleryUp: "24 mm" },
 * });
 * assert(reading.ok);
 * const { biggest_m = 0, least_m = 0 } =
 *   galleryRange(evaluate(reading.plan), resolvePlan(reading.plan).values) ?? {};
 *
 * assert(biggest_m > least_m && least_m > 0.008); // the pilots are 8 mm wide
 * ```
 */
export function galleryRange(evaluation: Evaluation, values: PlanValues): GalleryRange | undefined {
  const laid = laidAgain(evaluation, values);
  if (laid === undefined) return undefined;
  const { spec, drift, layout } = laid;
  const limits = { ...WANTED, wall_m: CRITERIA.wall.aim, above_m: TOUCHING_m, drift };
  const { bore_m: biggest_m, heldBy } = biggestGallery(spec, limits);
  const opened = (evaluation.results.drill.holes ?? [])
    .filter(({ opening_m }) => opening_m !== undefined)
    .toSorted((a, b) => (a.opening_m ?? 0) - (b.opening_m ?? 0))[0];
  return {
    biggest_m,
    heldBy: layout.holes.find(({ id }) => id === heldBy)?.title ?? faceOf(heldBy),
    least_m: opened?.opening_m && spec.gallery.bore_m - 2 * opened.opening_m,
    askedBy: opened?.title,
  };
}

function faceOf(id: string): string {
  return id in FACES ? FACES[id as Face] : id;
}
