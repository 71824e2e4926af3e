/** Figures that the engine methods are fed with, and bands to judge by. */

/** Specific gas constant of dry air [J/(kg K)]. Source: CIPM-2007 air with carbon dioxide as today. */
export const AIR_GAS_CONSTANT_J_kg_K = 287.055;

/** How an engine works. */
export type Cycle = "four-stroke" | "rotary" | "two-stroke";

/** Shaft turns from one filling of a chamber or cylinder to the next, by cycle. */
export const TURNS_PER_FILLING: Readonly<Record<Cycle, number>> = {
  "four-stroke": 2,
  // The rotor turns at a third of shaft speed and has three chambers.
  rotary: 1,
  "two-stroke": 1,
};

/** A least and a most. */
export interface Band {
  /** The least. */
  readonly min: number;
  /** The most. */
  readonly max: number;
}

/**
 * Share of the fuel's heat that engines at full power bring to the crankshaft [-],
 * by cycle. Outside it an input is wrong. Ours.
 */
export const EFFICIENCY_BANDS: Readonly<Record<Cycle, Band>> = {
  "four-stroke": { min: 0.20, max: 0.38 },
  rotary: { min: 0.16, max: 0.32 },
  "two-stroke": { min: 0.12, max: 0.28 },
};

/** One gram per kilowatt-hour [kg/J]. */
const G_PER_KWH = 1e-3 / 3.6e6;

/**
 * BSFC at full power to plan with [kg/J]. Engineering judgement, not a standard: around
 * the textbook best, by ratio of heating values, with full-load enrichment. No band for
 * rotaries was found in print; they burn more.
 */
export const BSFC_BANDS: Readonly<
  Record<
    "petrol natural" | "petrol boosted" | "E85 boosted" | "methanol boosted" | "petrol two-stroke",
    Band
  >
> = {
  "petrol natural": { min: 255 * G_PER_KWH, max: 330 * G_PER_KWH },
  "petrol boosted": { min: 300 * G_PER_KWH, max: 400 * G_PER_KWH },
  "E85 boosted": { min: 420 * G_PER_KWH, max: 600 * G_PER_KWH },
  "methanol boosted": { min: 650 * G_PER_KWH, max: 950 * G_PER_KWH },
  "petrol two-stroke": { min: 400 * G_PER_KWH, max: 600 * G_PER_KWH },
};

/**
 * Best BSFC of spark-ignition engines on petrol [kg/J].
 * Source: J. B. Heywood, Internal Combustion Engine Fundamentals (1988), section 2.10, from memory.
 */
export const TEXTBOOK_BEST_BSFC_kg_J = 75e-9;
