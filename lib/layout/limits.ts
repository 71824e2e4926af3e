/** Inputs that several methods of this room share. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** A height over the datum plane, or a length along an injector. */
export const height = (says: string, symbol: string): MethodInput => ({
  unit: "m",
  min: -0.5,
  max: 0.5,
  says,
  symbol,
});

/** Half of a tolerance's band. */
export const tolerance = (says: string, symbol: string): MethodInput => ({
  unit: "m",
  min: 0,
  max: 0.01,
  says,
  symbol,
});

/** Radial clearance at a ring. */
export const clearance = (says: string, symbol: string): MethodInput => ({
  unit: "m",
  min: 0,
  max: 0.005,
  says,
  symbol,
});
