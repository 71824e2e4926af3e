/** What gland tables and design notes ask for, to stand beside what was computed. */

/** From one number to another. */
export interface Band {
  /** Lower end. */
  readonly min: number;
  /** Upper end. */
  readonly max: number;
}

/** A published gland of a static ring sealing in a bore, without back-up ring. */
export interface RadialGland {
  /** Section [m]. */
  readonly section_m: number;
  /** Depth [m]. */
  readonly depth_m: Band;
  /** Squeeze that the depth gives over the section's tolerance [-]. */
  readonly squeeze: Band;
}

const INCH_m = 0.0254;

const radial = (
  section_in: number,
  [least_in, most_in]: readonly [number, number],
  [min, max]: readonly [number, number],
): RadialGland => ({
  section_m: section_in * INCH_m,
  depth_m: { min: least_in * INCH_m, max: most_in * INCH_m },
  squeeze: { min, max },
});

/**
 * Published glands by section, thinnest first: for plugs and whatever else is turned to
 * take a ring. Source: a seal maker's public table of static radial glands.
 */
export const RADIAL_GLANDS: readonly RadialGland[] = [
  radial(0.07, [0.05, 0.055], [0.18, 0.32]),
  radial(0.103, [0.08, 0.086], [0.14, 0.25]),
  radial(0.139, [0.11, 0.116], [0.14, 0.23]),
  radial(0.21, [0.17, 0.176], [0.14, 0.21]),
];

/**
 * What public design notes recommend. Squeeze, stretch and fill: gland tables and notes
 * read; width from memory. Finish and lead-in: ISO 3601-2, from memory, with public notes
 * that agree.
 */
export const GLAND_PRACTICE = {
  /** Squeeze of a static face seal [-]. */
  faceSqueeze: { min: 0.2, max: 0.3 },
  /** Stretch of the inside diameter [-]; injectors commonly have more. */
  stretch: { min: 0, max: 0.05 },
  /** Fill of a static gland [-]: three quarters as drawn. */
  fill: { min: 0.65, max: 0.85 },
  /** Width of a groove over the ring's section, without back-up ring [-]. */
  widthPerSection: 1.35,
  /** Roughness Ra of the bore where it seals [m]: the most, and what is better. */
  finish: { most_m: 1.6e-6, preferred_m: 0.8e-6 },
  /** Angle of a lead-in from the axis [rad]: 15 to 20 degrees, its edges rounded. */
  leadInAngle: { min: Math.PI / 12, max: Math.PI / 9 },
  /** What a lead-in's mouth is wider than the ring [m]; ours. */
  leadInClearance_m: 0.2e-3,
} as const;
