/** A ring in its gland: depth, squeeze, fill. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BORE, FITTED_SECTION, GROOVE, LAND, WIDTH } from "./limits.ts";

const DEPTH: MethodInput = {
  unit: "m",
  min: -0.2,
  max: 0.2,
  says: "Depth of the gland; nought or below, groove and bore overlap",
  symbol: "g",
};

/**
 * Depth [m] of a gland, groove and bore on one axis.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(glandDepth({ bore: 14e-3, groove: 8.3e-3 }), 2.85e-3, 1e-12);
 * ```
 */
export const glandDepth: Method<Record<"bore" | "groove", MethodInput>> = method({
  id: "gland-depth",
  title: "Depth of an O-ring gland",
  inputs: { bore: BORE, groove: GROOVE },
  output: { ...DEPTH, name: "depth" },
  formula: "(bore - groove) / 2",
  source: "Geometry",
  compute: ({ bore, groove }) => (bore - groove) / 2,
});

/**
 * Depth [m] of a gland on the wide side, where the part lies against the other side of
 * the bore: all of the clearance opens here.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A part of 13.8 mm in a bore of 14 mm adds 0.1 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const depth_m = glandDepthWide({ bore: 14e-3, groove: 8.3e-3, land: 13.8e-3 });
 *
 * assertAlmostEquals(depth_m, 2.95e-3, 1e-12);
 * ```
 */
export const glandDepthWide: Method<Record<"bore" | "groove" | "land", MethodInput>> = method({
  id: "gland-depth-wide",
  title: "Depth of an O-ring gland on the wide side",
  inputs: { bore: BORE, groove: GROOVE, land: LAND },
  output: { ...DEPTH, name: "depth" },
  formula: "(bore - groove) / 2 + (bore - land) / 2",
  source: "Geometry: the part touches the bore on the other side",
  compute: ({ bore, groove, land }) => (bore - groove) / 2 + (bore - land) / 2,
});

/**
 * Depth [m] of a gland where the part lies against the bore: the land touches it, so the
 * groove alone is left.
 *
 * Source: geometry.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(glandDepthNarrow({ groove: 8.3e-3, land: 13.8e-3 }), 2.75e-3, 1e-12);
 * ```
 */
export const glandDepthNarrow: Method<Record<"groove" | "land", MethodInput>> = method({
  id: "gland-depth-narrow",
  title: "Depth of an O-ring gland on the narrow side",
  inputs: { groove: GROOVE, land: LAND },
  output: { ...DEPTH, name: "depth" },
  formula: "(land - groove) / 2",
  source: "Geometry: the part touches the bore on this side",
  compute: ({ groove, land }) => (land - groove) / 2,
});

/**
 * Squeeze [-]: what the gland takes off the section, over the section in the groove. Below
 * nought the ring does not touch.
 *
 * Source: definition, as public gland tables have it.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(oringSqueeze({ section: 3.36e-3, depth: 2.85e-3 }), 0.1518, 1e-4);
 * ```
 */
export const oringSqueeze: Method<Record<"section" | "depth", MethodInput>> = method({
  id: "oring-squeeze",
  title: "Squeeze of an O-ring",
  inputs: { section: FITTED_SECTION, depth: { ...DEPTH, min: 0 } },
  output: {
    name: "squeeze",
    unit: "-",
    min: -1999,
    max: 1,
    says: "Squeeze; below nought the ring does not touch",
    symbol: "S",
  },
  formula: "(section - depth) / section",
  source: "Definition, as public gland tables have it",
  compute: ({ section, depth }) => (section - depth) / section,
});

/**
 * Fill [-] of a gland: the ring's section over the gland's. Above one there is no room for
 * the rubber, and rubber gives way to nothing.
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const fill = glandFill({ section: 3.36e-3, depth: 2.85e-3, width: 4.8e-3 });
 *
 * assertAlmostEquals(fill, 0.6482, 1e-4);
 * ```
 */
export const glandFill: Method<Record<"section" | "depth" | "width", MethodInput>> = method({
  id: "gland-fill",
  title: "Fill of an O-ring gland",
  inputs: {
    section: FITTED_SECTION,
    depth: { ...DEPTH, min: 1e-4 },
    width: WIDTH,
  },
  output: {
    name: "fill",
    unit: "-",
    min: 0,
    max: 5e4,
    says: "Fill of the gland",
    symbol: "\\varphi",
  },
  formula: "pi / 4 * section^2 / (depth * width)",
  source: "Definition: section of the ring over section of the gland",
  compute: ({ section, depth, width }) => Math.PI / 4 * section ** 2 / (depth * width),
});
