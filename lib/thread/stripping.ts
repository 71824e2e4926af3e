/** What a port's thread is asked to hold. */

/** Factor against stripping that the full thread asked for has; ours. */
export const FULL_FACTOR = 3;

/** Factor against stripping below which no port is offered; ours. */
export const LEAST_FACTOR = 2;

/**
 * Nut factor of the sensor's thread: oiled, as a thread in a soft bar should be, and the
 * middle of the oiled range 0.12 to 0.18. Dry threads pull less, so this is the cautious side.
 */
export const NUT_FACTOR = 0.15;
