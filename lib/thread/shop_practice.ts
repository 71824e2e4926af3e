/** What rail builders do that no handbook prints. */
import { InputError } from "@/lib/basics/mod.ts";
import type { SayLength } from "./millimetres.ts";

/** Ids of the practices. */
export type ShopPracticeId =
  | "one-drill-two-jobs"
  | "hone-the-pocket"
  | "form-drill"
  | "guide-the-tap";

/** One practice. */
export interface ShopPractice {
  /** What is done and why, with lengths as the reader wants them. */
  readonly says: (say: SayLength) => string;
  /** Where it comes from. */
  readonly source: "common practice, no source";
}

const practice = (says: ShopPractice["says"]): ShopPractice => ({
  says,
  source: "common practice, no source",
});

/**
 * The practices by id, for the order of work.
 *
 * @example
 * ```ts
 * import { assertStringIncludes } from "@std/assert";
 *
 * const millimetres = (length_m: number): string => `${length_m * 1000} mm`;
 *
 * assertStringIncludes(SHOP_PRACTICE["form-drill"].says(millimetres), "one stroke");
 * ```
 */
export const SHOP_PRACTICE: Readonly<Record<ShopPracticeId, ShopPractice>> = {
  "one-drill-two-jobs": practice((say) =>
    `A ${say(0.009)} spotting drill of 90 degrees does both jobs of an M10x1 cone port: its ` +
    "diameter is the tapping size, its point cuts the 45 degree seat."
  ),
  "hone-the-pocket": practice((say) =>
    "Finish each pocket with a flexible hone of the bore's own size, " +
    `${say(0.014)} for a bore of ${say(0.014)}: a raw printed or drilled surface does not seal ` +
    "reliably."
  ),
  "form-drill": practice(() =>
    "One form drill can cut pilot and O-ring bore in one stroke, so that both lie on one axis."
  ),
  "guide-the-tap": practice(() =>
    "Guide the tap square to the face, by the press's spindle or a guide block: a long stud " +
    "shows every degree that its thread leans."
  ),
};

/**
 * Size of the flexible hone for a bore [m]: that of the bore, in whole millimetres, as hones are
 * made wider than the size they are sold by. Common practice, no source.
 *
 * @param bore_m Diameter of the finished bore [m].
 * @returns The size to ask for.
 * @throws {InputError} When the bore is not from 4 to 60 mm.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(flexibleHone(0.014), 0.014);
 * assertEquals(flexibleHone(0.01405), 0.014);
 * ```
 */
export function flexibleHone(bore_m: number): number {
  if (!(bore_m >= 0.004 && bore_m <= 0.06)) {
    throw new InputError("flexible hone", "bore_m", "must be >= 0.004 and <= 0.06 m", bore_m);
  }
  return Math.round(bore_m * 1000) / 1000;
}
