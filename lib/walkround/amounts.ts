/** Short names for the values that lines hold. */
import type { LineValue } from "./line.ts";

/** A gauge pressure. */
export const pressure = (value: number): LineValue => ({ value, kind: "pressure" });

/** A time. */
export const duration = (value: number): LineValue => ({ value, kind: "duration" });

/** A volume. */
export const volume = (value: number): LineValue => ({ value, kind: "volume" });

/** An energy. */
export const energy = (value: number): LineValue => ({ value, kind: "energy" });

/** A leak of air. */
export const leak = (value: number): LineValue => ({ value, kind: "leakRate" });

/** A temperature. */
export const temperature = (value: number): LineValue => ({ value, kind: "temperature" });

/** A length. */
export const length = (value: number): LineValue => ({ value, kind: "length" });
