/** Inputs and the output that many loss coefficients share, each with its range. */
import type { MethodInput, MethodOutput } from "@/lib/method/mod.ts";

/** A loss coefficient, in dynamic pressures; a run past a branch may gain a little. */
export const LOSS_COEFFICIENT: MethodInput = {
  unit: "-",
  min: -0.1,
  max: 1e4,
  says: "Loss coefficient, in dynamic pressures of the bore it is stated for",
  symbol: "K",
};

/** What most methods of minor losses give. */
export const LOSS: MethodOutput = {
  name: "lossCoefficient",
  unit: "-",
  min: 0,
  max: 1,
  says: "Loss coefficient",
  symbol: "K",
};

/** Ratio of the smaller to the larger bore. */
export const BORE_RATIO: MethodInput = {
  unit: "-",
  min: 0.05,
  max: 1,
  says: "Smaller over larger bore",
  symbol: "\\beta",
};

/** Darcy friction factor of turbulent flow, as bends and cones take it. */
export const TURBULENT_FRICTION: MethodInput = {
  unit: "-",
  min: 0.004,
  max: 0.1,
  says: "Darcy friction factor of the straight bore",
  symbol: "f",
};

/** Angle by which a bend turns the stream. */
export const TURN: MethodInput = {
  unit: "rad",
  min: 0.05,
  max: Math.PI,
  says: "Angle by which the stream turns",
  symbol: "\\alpha",
};

/** Rennels and Hudson's handbook, which many methods here come from. */
export const RENNELS =
  "D. C. Rennels, H. M. Hudson, Pipe Flow: A Practical and Comprehensive Guide (2012)";

/** Crane's paper, which the others come from. */
export const CRANE = "Crane Technical Paper 410, Flow of Fluids (2009)";
