/** What a test lets loose when something gives way. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const GAUGE: MethodInput = {
  unit: "Pa",
  min: 0,
  max: 5e6,
  says: "Test pressure, gauge",
  symbol: "p",
};
const AMBIENT: MethodInput = {
  unit: "Pa",
  min: 5e4,
  max: 1.1e5,
  says: "Pressure of the outside air, absolute",
  symbol: "p_a",
};
const VOLUME: MethodInput = {
  unit: "m^3",
  min: 0,
  max: 0.1,
  says: "Volume under pressure",
  symbol: "V",
};
const HEAT_RATIO: MethodInput = {
  unit: "-",
  min: 1.05,
  max: 1.67,
  says: "Ratio of heat capacities of the gas; air 1.4",
  symbol: "k",
};

/**
 * Energy [J] that compressed gas gives off when it expands to the outside
 * without taking up heat.
 *
 * Source: first law, reversible adiabatic expansion of an ideal gas.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 60 mL of air at 5 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const energy_J = gasEnergy({ gauge: 5e5, ambient: 101325, volume: 60e-6, heatRatio: 1.4 });
 *
 * assertAlmostEquals(energy_J, 36, 0.1);
 * ```
 */
export const gasEnergy: Method<
  Record<"gauge" | "ambient" | "volume" | "heatRatio", MethodInput>
> = method({
  id: "gas-energy",
  title: "Energy stored in compressed gas",
  inputs: { gauge: GAUGE, ambient: AMBIENT, volume: VOLUME, heatRatio: HEAT_RATIO },
  output: {
    name: "energy",
    unit: "J",
    min: 0,
    max: 1e7,
    says: "Energy given off",
    symbol: "E",
  },
  formula: "(ambient + gauge) * volume / (heatRatio - 1)" +
    " * (1 - (ambient / (ambient + gauge))^((heatRatio - 1) / heatRatio))",
  source: "First law; reversible adiabatic expansion of an ideal gas",
  compute: ({ gauge, ambient, volume, heatRatio }) => {
    const pressure = ambient + gauge;
    const left = (ambient / pressure) ** ((heatRatio - 1) / heatRatio);
    return pressure * volume / (heatRatio - 1) * (1 - left);
  },
});

/**
 * Energy stored in compressed air [J] in the form of the pressure-test article.
 *
 * Source: ASME PCC-2 article 501, equation 501-II-2.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const energy_J = airEnergyByCode({ gauge: 5e5, ambient: 101325, volume: 60e-6 });
 *
 * assertAlmostEquals(energy_J, 36, 0.1);
 * ```
 */
export const airEnergyByCode: Method<
  Record<"gauge" | "ambient" | "volume", MethodInput>
> = method({
  id: "air-energy-by-code",
  title: "Energy stored in compressed air, form of the test article",
  inputs: { gauge: GAUGE, ambient: AMBIENT, volume: VOLUME },
  output: {
    name: "energy",
    unit: "J",
    min: 0,
    max: 1e7,
    says: "Energy given off",
    symbol: "E",
  },
  formula: "2.5 * (ambient + gauge) * volume * (1 - (ambient / (ambient + gauge))^0.286)",
  source: "ASME PCC-2 article 501, equation 501-II-2",
  compute: ({ gauge, ambient, volume }) => {
    const pressure = ambient + gauge;
    return 2.5 * pressure * volume * (1 - (ambient / pressure) ** 0.286);
  },
});

/**
 * Upper bound [J] of the energy stored in compressed gas.
 *
 * Source: H. L. Brode, "Blast wave from a spherical charge", Phys. Fluids 2 (1959) 217-229,
 * doi:10.1063/1.1705911.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(gasEnergyBound({ gauge: 5e5, volume: 5e-4, heatRatio: 1.4 }), 625, 1e-6);
 * ```
 */
export const gasEnergyBound: Method<
  Record<"gauge" | "volume" | "heatRatio", MethodInput>
> = method({
  id: "gas-energy-bound",
  title: "Upper bound of the energy stored in compressed gas",
  inputs: { gauge: GAUGE, volume: VOLUME, heatRatio: HEAT_RATIO },
  output: {
    name: "energy",
    unit: "J",
    min: 0,
    max: 1e8,
    says: "Upper bound of the energy given off",
    symbol: "E",
  },
  formula: "gauge * volume / (heatRatio - 1)",
  source: "H. L. Brode, Phys. Fluids 2 (1959) 217-229, doi:10.1063/1.1705911",
  compute: ({ gauge, volume, heatRatio }) => gauge * volume / (heatRatio - 1),
});

/**
 * Energy [J] that compressed liquid gives off: thousands of times less than air.
 *
 * Holds for a stiff rail without air; a trapped bubble stores more than all the liquid.
 *
 * Source: work of a linear spring, stiffness by the definition of the bulk modulus.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 60 mL of water at 5 bar
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const energy_J = liquidEnergy({ gauge: 5e5, volume: 60e-6, bulkModulus: 2.2e9 });
 *
 * assertAlmostEquals(energy_J, 0.0034, 1e-4);
 * ```
 */
export const liquidEnergy: Method<
  Record<"gauge" | "volume" | "bulkModulus", MethodInput>
> = method({
  id: "liquid-energy",
  title: "Energy stored in compressed liquid",
  inputs: {
    gauge: { ...GAUGE, max: 1e9 },
    volume: VOLUME,
    bulkModulus: {
      unit: "Pa",
      min: 5e8,
      max: 3e9,
      says: "Bulk modulus of the liquid",
      symbol: "K",
    },
  },
  output: {
    name: "energy",
    unit: "J",
    min: 0,
    max: 1e9,
    says: "Energy given off",
    symbol: "E",
  },
  formula: "gauge^2 * volume / (2 * bulkModulus)",
  source: "Work of a linear spring; definition of the bulk modulus",
  compute: ({ gauge, volume, bulkModulus }) => gauge * gauge * volume / (2 * bulkModulus),
});

/**
 * Mass of explosive [kg] with the same energy, the measure of the test article.
 *
 * Source: ASME PCC-2 article 501, equation 501-II-3 with 4.26692 MJ/kg;
 * elsewhere 4.184 MJ/kg is in use, so it is an input.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(explosiveEquivalent({ energy: 4266.92, heat: 4.26692e6 }), 1e-3);
 * ```
 */
export const explosiveEquivalent: Method<Record<"energy" | "heat", MethodInput>> = method({
  id: "explosive-equivalent",
  title: "Explosive of the same energy",
  inputs: {
    energy: { unit: "J", min: 0, max: 1e9, says: "Energy stored", symbol: "E" },
    heat: {
      unit: "J/kg",
      min: 4e6,
      max: 5e6,
      says: "Heat of explosion of TNT: 4.26692 MJ/kg in ASME PCC-2, 4.184 MJ/kg elsewhere",
      symbol: "h",
    },
  },
  output: {
    name: "mass",
    unit: "kg",
    min: 0,
    max: 250,
    says: "Mass of TNT",
    symbol: "m_\\text{TNT}",
  },
  formula: "energy / heat",
  source: "ASME PCC-2 article 501, equation 501-II-3",
  compute: ({ energy, heat }) => energy / heat,
});

/**
 * Distance [m] that the test article keeps people away, by scaled distance.
 * Below 135.5 MJ it asks for 30 m whatever comes out. Meant for plant piping:
 * for a rail it shows why strength is proved with liquid.
 *
 * Source: ASME PCC-2 article 501, appendix III.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(standOff({ explosive: 4, scaledDistance: 20 }), 40, 1e-9);
 * ```
 */
export const standOff: Method<Record<"explosive" | "scaledDistance", MethodInput>> = method({
  id: "stand-off",
  title: "Distance of the test article",
  inputs: {
    explosive: {
      unit: "kg",
      min: 0,
      max: 250,
      says: "Mass of TNT of the same energy",
      symbol: "m_\\text{TNT}",
    },
    scaledDistance: {
      unit: "m",
      min: 20,
      max: 60,
      says: "Distance for one kilogram, at least 20",
      symbol: "R_1",
    },
  },
  output: { name: "distance", unit: "m", min: 0, max: 500, says: "Distance to keep", symbol: "R" },
  formula: "scaledDistance * (2 * explosive)^(1 / 3)",
  fit: true,
  source: "ASME PCC-2 article 501, appendix III",
  compute: ({ explosive, scaledDistance }) => scaledDistance * Math.cbrt(2 * explosive),
});

/** The least distance of the test article for energies up to 135.5 MJ [m]. Source: ASME PCC-2 article 501. */
export const LEAST_STAND_OFF_m = 30;

/** Heat of explosion of TNT as the test article takes it [J/kg]. Source: ASME PCC-2 equation 501-II-3. */
export const CODE_EXPLOSIVE_HEAT_J_kg = 4_266_920;
