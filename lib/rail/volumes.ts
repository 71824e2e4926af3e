/** How much fuel the gallery holds, and how much of it one injection takes. Information, no check. */
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";

const VOLUME = { unit: "m^3", min: 0, max: 1 } as const;

/**
 * Volume [m^3] of a round gallery. Source: volume of a cylinder.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 12.7 mm, 400 mm long
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(galleryVolume({ bore: 12.7e-3, length: 0.4 }) * 1e6, 50.7, 0.1); // mL
 * ```
 */
export const galleryVolume: Method<Record<"bore" | "length", MethodInput>> = method({
  id: "gallery-volume",
  title: "Volume of the gallery",
  inputs: {
    bore: { unit: "m", min: 1e-3, max: 0.1, says: "Bore of the gallery", symbol: "d" },
    length: { unit: "m", min: 0, max: 5, says: "Length of the gallery", symbol: "L" },
  },
  output: { ...VOLUME, name: "galleryVolume", says: "Volume of the gallery", symbol: "V" },
  formula: "pi / 4 * bore^2 * length",
  source: "Volume of a cylinder",
  compute: ({ bore, length }) => Math.PI / 4 * bore * bore * length,
});

/**
 * Volume [m^3] of one injection. Source: definition of density.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(shotVolume({ mass: 1e-4, density: 745 }) * 1e9, 134.2, 0.1); // mm3
 * ```
 */
export const shotVolume: Method<Record<"mass" | "density", MethodInput>> = method({
  id: "shot-volume",
  title: "Volume of one injection",
  inputs: {
    mass: { unit: "kg", min: 0, max: 1, says: "Fuel of one injection", symbol: "m" },
    density: {
      unit: "kg/m^3",
      min: 500,
      max: 1100,
      says: "Density of the fuel",
      symbol: "\\rho",
    },
  },
  output: { ...VOLUME, name: "shotVolume", says: "Volume of one injection", symbol: "V_s" },
  formula: "mass / density",
  source: "Definition of density",
  compute: ({ mass, density }) => mass / density,
});

/**
 * Share [-] of the gallery's volume that one injection takes.
 *
 * Source: arithmetic. It judges nothing: fuel flows in while it flows out.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(shotShare({ shot: 1.34e-7, gallery: 5.07e-5 }), 0.00264, 1e-5);
 * ```
 */
export const shotShare: Method<Record<"shot" | "gallery", MethodInput>> = method({
  id: "shot-share",
  title: "Share of the gallery that one injection takes",
  inputs: {
    shot: { ...VOLUME, says: "Volume of one injection", symbol: "V_s" },
    gallery: { ...VOLUME, min: 1e-9, says: "Volume of the gallery", symbol: "V" },
  },
  output: {
    name: "shotShare",
    unit: "-",
    min: 0,
    max: 1e9,
    says: "One injection over the gallery's volume",
    symbol: "s",
  },
  formula: "shot / gallery",
  words: "It judges nothing: fuel flows in while it flows out.",
  source: "Arithmetic",
  compute: ({ shot, gallery }) => shot / gallery,
});

/** A gallery and the injection that is held against it. */
export interface VolumesSpec {
  /** Bore [m]. */
  readonly bore_m: number;
  /** Length [m]. */
  readonly length_m: number;
  /** Fuel of one injection [kg]. */
  readonly fuelPerInjection_kg: number;
  /** Density of the fuel [kg/m^3]. */
  readonly density_kg_m3: number;
}

/** What {@linkcode railVolumes} finds. */
export interface RailVolumes {
  /** Volume of the gallery [m^3]. */
  readonly galleryVolume_m3: number;
  /** Volume of one injection [m^3]. */
  readonly shotVolume_m3: number;
  /** One injection over the gallery's volume [-]. */
  readonly shotShare: number;
}

/**
 * Finds the volumes of gallery and injection and records how.
 *
 * @param working The record.
 * @param section Where the results belong, like `rail`.
 * @param spec The gallery and the injection.
 * @returns The volumes.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const volumes = railVolumes(new Working(), "rail", {
 *   bore_m: 12.7e-3,
 *   length_m: 0.4,
 *   fuelPerInjection_kg: 1e-4,
 *   density_kg_m3: 745,
 * });
 *
 * assertAlmostEquals(volumes.shotShare, 0.00265, 1e-5);
 * ```
 */
export function railVolumes(working: Working, section: string, spec: VolumesSpec): RailVolumes {
  const galleryVolume_m3 = working.run(`${section}.galleryVolume_m3`, galleryVolume, {
    bore: spec.bore_m,
    length: spec.length_m,
  });
  const shotVolume_m3 = working.run(`${section}.shotVolume_m3`, shotVolume, {
    mass: spec.fuelPerInjection_kg,
    density: spec.density_kg_m3,
  });
  const share = working.run(`${section}.shotShare`, shotShare, {
    shot: shotVolume_m3,
    gallery: galleryVolume_m3,
  });
  return { galleryVolume_m3, shotVolume_m3, shotShare: share };
}
