/** Holes that can't be made as planned, and why in a few words, for marking them in a drawing. */
import { formatQuantity, type System } from "@/lib/units/mod.ts";
import type { Check } from "../check.ts";
import { CRITERIA } from "../criteria.ts";
import type { Evaluation } from "../evaluation.ts";
import { SENSOR_ID } from "./laid.ts";

/** A hole in trouble. */
export interface Trouble {
  /** The hole's id. */
  readonly hole: string;
  /** What is wrong, like `runs into Pocket 3`. */
  readonly says: string;
}

/** Of the sensor's port, what to write beside it. */
const PORT_WORDS: readonly (readonly [id: string, says: string])[] = [
  [CRITERIA.portThread.id, "too little full thread"],
  [CRITERIA.portTaper.id, "too little taper thread"],
  [CRITERIA.seatGallery.id, "seat too near the gallery"],
  [CRITERIA.seatRing.id, "seat ring too narrow"],
  [CRITERIA.sensorReach.id, "sensor does not seal"],
  [CRITERIA.portHole.id, "wrong tapping drill"],
];

/** Of the pockets. */
const POCKET_WORDS: readonly (readonly [id: string, says: string])[] = [
  [CRITERIA.ringEntered.id, "ring stays in the lead-in"],
  [CRITERIA.ringBelow.id, "no whole bore for the ring"],
  [CRITERIA.injectorRoom.id, "injector bottoms"],
];

/**
 * Lists the holes that fail, each with the first reason.
 *
 * @param evaluation The plan evaluated.
 * @param system Units of lengths.
 * @returns One entry at most for each hole, in the order of the holes.
 *
 * @example
 * ```ts
 * import { assert, assertEquals } from "@std/assert";
 * import { planReady, readPlan } from "@/lib/plan/mod.ts";
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
 * });
 * assert(reading.ok);
 *
 * assertEquals(troublesOf(evaluate(reading.plan), "metric"), []); // no bar yet
 * ```
 */
export function troublesOf(evaluation: Evaluation, system: System): Trouble[] {
  const { layout, holes } = evaluation.results.drill;
  if (layout === undefined) return [];
  const say = (length_m: number): string => formatQuantity(length_m, "length", system);
  const fails = new Set(evaluation.checks.filter(isFailing).map(({ id }) => id));
  const first = (words: typeof PORT_WORDS): string | undefined =>
    words.find(([id]) => fails.has(id))?.[1];
  return layout.holes.flatMap(({ id, feature }): Trouble[] => {
    const found = holes?.find(({ hole }) => hole === id);
    const says = (found && geometry(found, say)) ??
      (id === "gallery" && fails.has(CRITERIA.wall.id) ? "wall too thin" : undefined) ??
      (id === SENSOR_ID ? first(PORT_WORDS) : undefined) ??
      (feature === "pocket" ? first(POCKET_WORDS) : undefined);
    return says === undefined ? [] : [{ hole: id, says }];
  });
}

const isFailing = ({ verdict, step }: Check): boolean => verdict === "fails" && step === "drill";

type Found = NonNullable<Evaluation["results"]["drill"]["holes"]>[number];

function geometry(found: Found, say: (length_m: number) => string): string | undefined {
  const { hole, wall_m, gap_m, nearest, opening_m } = found;
  if (gap_m !== undefined && gap_m <= 0) return `runs into ${nearest}`;
  if (hole !== "gallery" && wall_m <= 0) return "breaks out";
  if (gap_m !== undefined && gap_m < CRITERIA.holeGap.limit) {
    return `${say(gap_m)} to ${nearest}`;
  }
  if (hole !== "gallery" && wall_m < CRITERIA.holeWall.limit) return `wall ${say(wall_m)}`;
  return opening_m !== undefined && opening_m < 0 ? "leaves a lip in the gallery" : undefined;
}
