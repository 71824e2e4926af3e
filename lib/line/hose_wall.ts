/** How hose and tube walls resist: roughness, and corrugations, which no roughness tells. */

/** The wall of a hose or tube: drawn tube, smooth polymer liner, rubber hose. */
export type Wall = "tube" | "liner" | "hose";

/**
 * Roughness of walls [m]. Rubber hose to 60 % either way; a liner may be smoother than this.
 *
 * Source: L. F. Moody, Trans. ASME 66 (1944) 671 for drawn tube; F. M. White, Fluid
 * Mechanics, 7th ed. (2011), table 6.1 for rubber; the liner as drawn tube, from memory.
 */
export const ROUGHNESS_M: Readonly<Record<Wall, number>> = {
  tube: 1.5e-6,
  liner: 1.5e-6,
  hose: 10e-6,
};

/**
 * Friction in corrugated hose over that in a smooth one of the same bore [-], to plan with.
 * Rough: it depends on depth and pitch of the corrugations and grows with the Reynolds
 * number; two to three times is common, the upper end is taken.
 *
 * Source: a hose maker's bulletin says "almost 100 %" more than steel pipe for corrugated
 * metal hose; three times from memory, common practice, no source.
 */
export const CORRUGATED_FRICTION = 3;
