/** How far a ring is stretched on its groove, and how wide it stands there. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { FITTED_SECTION, GROOVE, INSIDE, STRETCH } from "./limits.ts";

/**
 * Stretch [-] of a ring's inside diameter on its groove: what the groove is larger, over
 * the inside diameter. Below nought the ring is loose.
 *
 * Source: definition, as public gland-design notes have it.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 7.52 mm on a groove of 8.3 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(oringStretch({ insideDiameter: 7.52e-3, groove: 8.3e-3 }), 0.1037, 1e-4);
 * ```
 */
export const oringStretch: Method<Record<"insideDiameter" | "groove", MethodInput>> = method({
  id: "oring-stretch",
  title: "Stretch of an O-ring on its groove",
  inputs: { insideDiameter: INSIDE, groove: GROOVE },
  output: { ...STRETCH, name: "stretch", min: -1, max: 99 },
  formula: "(groove - insideDiameter) / insideDiameter",
  source: "Definition, as public gland-design notes have it",
  compute: ({ insideDiameter, groove }) => (groove - insideDiameter) / insideDiameter,
});

/**
 * Outside diameter [m] of a ring on its groove, before the bore squeezes it.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A section of 3.36 mm on a groove of 8.3 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(fittedOutside({ groove: 8.3e-3, section: 3.36e-3 }), 15.02e-3, 1e-9);
 * ```
 */
export const fittedOutside: Method<Record<"groove" | "section", MethodInput>> = method({
  id: "oring-fitted-outside",
  title: "Outside diameter of an O-ring on its groove",
  inputs: { groove: GROOVE, section: FITTED_SECTION },
  output: {
    name: "outside",
    unit: "m",
    min: 0,
    max: 0.14,
    says: "Outside diameter before the bore squeezes the ring",
    symbol: "d_o",
  },
  formula: "groove + 2 * section",
  source: "Geometry",
  compute: ({ groove, section }) => groove + 2 * section,
});
