/** Constants of nature and of ours that the proof methods are fed with. */

/** The standard atmosphere at sea level [Pa, absolute]. Source: ISO 2533. */
export const ATMOSPHERE_Pa = 101_325;

/** Molar gas constant [J/(mol K)]. Source: SI Brochure, 9th edition (2019), exact to the digits given. */
export const MOLAR_GAS_CONSTANT_J_mol_K = 8.314462618;

/** Specific gas constant of dry air [J/(kg K)]. Source: CIPM-2007 air with carbon dioxide as today. */
export const AIR_GAS_CONSTANT_J_kg_K = 287.055;

/** Ratio of the heat capacities of air at room temperature [-]. Source: ISO 2533. */
export const AIR_HEAT_RATIO = 1.4;

/** Molar mass of dry air [kg/mol]. Source: ISO 2533 to within 2 parts in 100 000. */
export const AIR_MOLAR_MASS_kg_mol = 0.0289647;

/** Bulk modulus of water at room temperature [Pa]. Source: handbook value, IAPWS-95 gives 2.18 GPa. */
export const WATER_BULK_MODULUS_Pa = 2.2e9;

/** The pressure swing of injection as a share of the set pressure, until waves are computed; ours. */
export const SWING_SHARE = 0.1;

/** The most a rail or line is given of air in the first test [Pa, gauge]; ours. */
export const FIRST_AIR_LIMIT_Pa = 50_000;

/** The most a tank or surge tank is given of air [Pa, gauge]; ours, a maker's lower figure rules. */
export const TANK_AIR_LIMIT_Pa = 20_000;

/** The most energy that air at working pressure may store [J]; ours. */
export const AIR_ENERGY_LIMIT_J = 100;

/** Resolution steps from which a fall of the gauge counts as seen; ours. */
export const SEEN_STEPS = 3;

/** Resolution steps below which a fall of the gauge is not seen at all; ours. */
export const LEAST_STEPS = 2;

/**
 * What a joint of a rail may leak at working pressure, as air [Pa m^3/s]: 1e-4 mbar L/s.
 * A target, not a rule: the vapour-tight class, which bubbles under water just show.
 */
export const ALLOWED_LEAK_Pa_m3_s = 1e-5;

/** How long each joint is watched under water [s]: one minute. Common practice, no source. */
export const BUBBLE_WATCH_s = 60;

/** The bubble that forms at a joint under water [m]: 2 mm. Common practice, no source. */
export const BUBBLE_DIAMETER_m = 0.002;

/** Least flash point of a test liquid that can burn [K]. Source: ASME B31.3 para. 345.4.1, 49 °C. */
export const TEST_LIQUID_FLASH_K = 322.15;

/** How long proof pressure is held at least [s]. Source: ASME B31.3 para. 345.2.2, ten minutes. */
export const PROOF_HOLD_s = 600;
