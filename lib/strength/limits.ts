/** Inputs that the methods of this room share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Pressure of the liquid inside. */
export const PRESSURE: MethodInput = {
  unit: "Pa",
  min: 0,
  max: 2e7,
  says: "Pressure inside, gauge",
  symbol: "p",
};

/** Bore of the gallery. */
export const BORE: MethodInput = {
  unit: "m",
  min: 5e-4,
  max: 0.2,
  says: "Bore of the gallery",
  symbol: "d",
};

/** Wall around the gallery. */
export const WALL: MethodInput = {
  unit: "m",
  min: 1e-6,
  max: 0.2,
  says: "Least wall around the gallery",
  symbol: "t",
};

/** A stress. */
export const STRESS: MethodInput = {
  unit: "Pa",
  min: -1e13,
  max: 1e13,
  says: "A stress; tension is positive",
  symbol: "\\sigma",
};
