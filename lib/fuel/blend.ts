/** Petrol and ethanol mixed: what follows the volumes. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { BULK_MODULUS, DENSITY, MASS_SHARE, VISCOSITY, VOLUME_SHARE } from "./limits.ts";

const PETROL_DENSITY: MethodInput = {
  ...DENSITY,
  says: "Density of the petrol alone",
  symbol: "\\rho_p",
};
const ETHANOL_DENSITY: MethodInput = {
  ...DENSITY,
  says: "Density of ethanol",
  symbol: "\\rho_e",
};

/**
 * Share of ethanol by mass [-], from its share by volume.
 *
 * Source: balance of mass; both densities at the temperature at which the volumes count, 15 °C.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example E85
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const share = ethanolMassShare({ ethanolShare: 0.85, petrolDensity: 745, ethanolDensity: 793.7 });
 *
 * assertAlmostEquals(share, 0.858, 1e-3);
 * ```
 */
export const ethanolMassShare: Method<
  Record<"ethanolShare" | "petrolDensity" | "ethanolDensity", MethodInput>
> = method({
  id: "ethanol-mass-share",
  title: "Share of ethanol by mass",
  inputs: {
    ethanolShare: VOLUME_SHARE,
    petrolDensity: PETROL_DENSITY,
    ethanolDensity: ETHANOL_DENSITY,
  },
  output: { ...MASS_SHARE, name: "massShare" },
  formula: "ethanolShare * ethanolDensity" +
    " / (ethanolShare * ethanolDensity + (1 - ethanolShare) * petrolDensity)",
  source: "Balance of mass",
  compute: ({ ethanolShare, petrolDensity, ethanolDensity }) => {
    const ethanol = ethanolShare * ethanolDensity;
    return ethanol / (ethanol + (1 - ethanolShare) * petrolDensity);
  },
});

/**
 * Density [kg/m^3] of a blend of petrol and ethanol.
 *
 * Source: ideal mixing by volume; the true volume is up to 0.3 % larger.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example E10 at 15 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const density = blendDensity({ ethanolShare: 0.1, petrolDensity: 745, ethanolDensity: 793.7 });
 *
 * assertAlmostEquals(density, 749.87, 0.01);
 * ```
 */
export const blendDensity: Method<
  Record<"ethanolShare" | "petrolDensity" | "ethanolDensity", MethodInput>
> = method({
  id: "blend-density",
  title: "Density of a blend",
  inputs: {
    ethanolShare: VOLUME_SHARE,
    petrolDensity: PETROL_DENSITY,
    ethanolDensity: ETHANOL_DENSITY,
  },
  output: { ...DENSITY, name: "density" },
  formula: "ethanolShare * ethanolDensity + (1 - ethanolShare) * petrolDensity",
  source: "Ideal mixing by volume; excess volume below 0.3 %",
  compute: ({ ethanolShare, petrolDensity, ethanolDensity }) =>
    ethanolShare * ethanolDensity + (1 - ethanolShare) * petrolDensity,
});

/**
 * Dynamic viscosity [Pa s] of a blend of petrol and ethanol.
 *
 * Source: S. Arrhenius, Z. Phys. Chem. 1 (1887) 285, logarithms mixed by volume; within 10 %.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example E85, measured 1.016 mPa s
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const viscosity_Pa_s = blendViscosity({
 *   ethanolShare: 0.85,
 *   petrolViscosity: 0.407e-3,
 *   ethanolViscosity: 1.194e-3,
 * });
 *
 * assertAlmostEquals(viscosity_Pa_s, 1.016e-3, 1e-6);
 * ```
 */
export const blendViscosity: Method<
  Record<"ethanolShare" | "petrolViscosity" | "ethanolViscosity", MethodInput>
> = method({
  id: "blend-viscosity",
  title: "Viscosity of a blend",
  inputs: {
    ethanolShare: VOLUME_SHARE,
    petrolViscosity: {
      ...VISCOSITY,
      says: "Dynamic viscosity of the petrol alone",
      symbol: "\\mu_p",
    },
    ethanolViscosity: { ...VISCOSITY, says: "Dynamic viscosity of ethanol", symbol: "\\mu_e" },
  },
  output: { ...VISCOSITY, name: "viscosity" },
  formula: "petrolViscosity * (ethanolViscosity / petrolViscosity)^ethanolShare",
  source: "S. Arrhenius, Z. Phys. Chem. 1 (1887) 285",
  compute: ({ ethanolShare, petrolViscosity, ethanolViscosity }) =>
    petrolViscosity * (ethanolViscosity / petrolViscosity) ** ethanolShare,
});

/**
 * Bulk modulus [Pa] of a blend of petrol and ethanol: compressibilities add by volume.
 *
 * Source: A. B. Wood, A Textbook of Sound (1930); neglects about 1 % from mixing.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const modulus_Pa = blendBulkModulus({
 *   ethanolShare: 0.85,
 *   petrolModulus: 0.997e9,
 *   ethanolModulus: 1.06e9,
 * });
 *
 * assertAlmostEquals(modulus_Pa, 1.05e9, 1e6);
 * ```
 */
export const blendBulkModulus: Method<
  Record<"ethanolShare" | "petrolModulus" | "ethanolModulus", MethodInput>
> = method({
  id: "blend-bulk-modulus",
  title: "Bulk modulus of a blend",
  inputs: {
    ethanolShare: VOLUME_SHARE,
    petrolModulus: { ...BULK_MODULUS, says: "Bulk modulus of the petrol alone", symbol: "K_p" },
    ethanolModulus: { ...BULK_MODULUS, says: "Bulk modulus of ethanol", symbol: "K_e" },
  },
  output: { ...BULK_MODULUS, name: "bulkModulus" },
  formula: "1 / (ethanolShare / ethanolModulus + (1 - ethanolShare) / petrolModulus)",
  source: "A. B. Wood, A Textbook of Sound (1930)",
  compute: ({ ethanolShare, petrolModulus, ethanolModulus }) =>
    1 / (ethanolShare / ethanolModulus + (1 - ethanolShare) / petrolModulus),
});
