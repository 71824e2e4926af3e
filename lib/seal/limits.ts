/** Inputs that the methods of this room share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Bore that the ring seals in. */
export const BORE: MethodInput = {
  unit: "m",
  min: 2e-3,
  max: 0.1,
  says: "Bore that the ring seals in",
  symbol: "D",
};

/** Diameter of the groove's bottom. */
export const GROOVE: MethodInput = {
  unit: "m",
  min: 1e-3,
  max: 0.1,
  says: "Diameter of the groove's bottom",
  symbol: "d_g",
};

/** Diameter of the part beside the groove. */
export const LAND: MethodInput = {
  unit: "m",
  min: 1e-3,
  max: 0.1,
  says: "Diameter of the part beside the groove",
  symbol: "d_l",
};

/** Inside diameter of the free ring. */
export const INSIDE: MethodInput = {
  unit: "m",
  min: 1e-3,
  max: 0.1,
  says: "Inside diameter of the free ring",
  symbol: "d_1",
};

/** Section of the free ring. */
export const SECTION: MethodInput = {
  unit: "m",
  min: 5e-4,
  max: 0.01,
  says: "Section of the free ring",
  symbol: "d_2",
};

/** Section of the ring in its groove, before it is squeezed. */
export const FITTED_SECTION: MethodInput = {
  unit: "m",
  min: 1e-4,
  max: 0.02,
  says: "Section of the ring in its groove, before it is squeezed",
  symbol: "d_2'",
};

/**
 * Stretch of a ring on its groove. Below nought the ring is loose; above a half it is no
 * gland any more.
 */
export const STRETCH: MethodInput = {
  unit: "-",
  min: -0.2,
  max: 0.5,
  says: "Stretch of the inside diameter; below nought the ring is loose on its groove",
  symbol: "s",
};

/** Width of the groove. */
export const WIDTH: MethodInput = {
  unit: "m",
  min: 1e-4,
  max: 0.05,
  says: "Width of the groove",
  symbol: "w",
};
