/** How thin a ring becomes when it is stretched: three laws that bracket the truth. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { FITTED_SECTION, GROOVE, INSIDE, SECTION, STRETCH } from "./limits.ts";

const FITTED = { ...FITTED_SECTION, name: "fittedSection" } as const;

/**
 * Section [m] of a stretched ring, from the stretch of its inside diameter: the length
 * grows as the inside does, the volume stays. The nominal law; the truth lies a little
 * above it for a thick ring and a little below it by test.
 *
 * Source: constant volume; common practice of gland design.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 3.53 mm stretched by a tenth
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(sectionByInside({ section: 3.53e-3, stretch: 0.1 }), 3.366e-3, 1e-6);
 * ```
 */
export const sectionByInside: Method<Record<"section" | "stretch", MethodInput>> = method({
  id: "oring-section-by-inside",
  title: "Section of a stretched O-ring, by its inside diameter",
  inputs: { section: SECTION, stretch: STRETCH },
  output: FITTED,
  formula: "section / sqrt(1 + stretch)",
  source: "Constant volume, length taken on the inside diameter; common practice of gland design",
  compute: ({ section, stretch }) => section / Math.sqrt(1 + stretch),
});

/**
 * Section [m] of a stretched ring by the volume of the torus, length taken on the mean
 * diameter. The mean diameter holds the section sought, so it is put in once from the free
 * ring: what comes out lies above the torus by less than a hundredth. The upper bound.
 *
 * Source: volume of a torus (Pappus of Alexandria, Collection, book VII).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 7.52 x 3.53 mm on a groove of 8.3 mm keeps more than by its inside diameter
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const section_m = sectionByVolume({ section: 3.53e-3, insideDiameter: 7.52e-3, groove: 8.3e-3 });
 *
 * assertAlmostEquals(section_m, 3.429e-3, 1e-6);
 * ```
 */
export const sectionByVolume: Method<
  Record<"section" | "insideDiameter" | "groove", MethodInput>
> = method({
  id: "oring-section-by-volume",
  title: "Section of a stretched O-ring, by the volume of the torus",
  inputs: { section: SECTION, insideDiameter: INSIDE, groove: GROOVE },
  output: { ...FITTED, min: 1e-5, max: 0.1 },
  formula: "section * sqrt((insideDiameter + section) / " +
    "(groove + section * sqrt((insideDiameter + section) / (groove + section))))",
  words: "The inner root is the section sought, estimated from the free ring.",
  source: "Volume of a torus (Pappus of Alexandria, Collection, book VII)",
  compute: ({ section, insideDiameter, groove }) => {
    const mean = insideDiameter + section;
    const estimate = section * Math.sqrt(mean / (groove + section));
    return section * Math.sqrt(mean / (groove + estimate));
  },
});

/**
 * Section [m] of a stretched ring by the published curve through tests. The lower bound.
 * It is published to 25 % and run on to 50 %; a ring that is loose keeps its section. For
 * thick rings, like an injector's, it is on the cautious side: see the checks.
 *
 * Source: SAE AS4716, appendix A. Coefficients from 3 % read in public sources; those
 * below 3 % from memory. One public copy has 0.001 for 0.0001: only the latter meets the
 * other piece at 3 %.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A tenth of stretch takes 6 % of the section
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(sectionByCurve({ section: 1e-3, stretch: 0.1 }), 0.94e-3, 1e-9);
 * ```
 */
export const sectionByCurve: Method<Record<"section" | "stretch", MethodInput>> = method({
  id: "oring-section-by-curve",
  title: "Section of a stretched O-ring, by the published curve",
  inputs: { section: SECTION, stretch: STRETCH },
  output: FITTED,
  formula: "section * (1 - (stretch <= 0 ? 0 : " +
    "stretch <= 0.03 ? 0.0001 + 1.06 * stretch - 10 * stretch^2 : " +
    "0.0056 + 0.59 * stretch - 0.46 * stretch^2))",
  words: "Published to a stretch of 0.25 and run on from there.",
  source: "SAE AS4716, appendix A: loss of section by stretch",
  compute: ({ section, stretch }) => section * (1 - curveLoss(stretch)),
});

function curveLoss(stretch: number): number {
  if (stretch <= 0) return 0;
  if (stretch <= 0.03) return 0.0001 + 1.06 * stretch - 10 * stretch ** 2;
  return 0.0056 + 0.59 * stretch - 0.46 * stretch ** 2;
}
