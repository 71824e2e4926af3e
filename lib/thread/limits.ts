/** Inputs that many methods of threads and drills share, each with its range. */
import type { MethodInput } from "@/lib/method/mod.ts";

/** Nominal diameter of a thread. */
export const NOMINAL: MethodInput = {
  unit: "m",
  min: 0.001,
  max: 0.06,
  says: "Nominal diameter of the thread",
  symbol: "D",
};

/** Pitch of a thread. */
export const PITCH: MethodInput = {
  unit: "m",
  min: 2e-4,
  max: 0.006,
  says: "Pitch of the thread",
  symbol: "P",
};

/** Diameter of a drill. */
export const DRILL: MethodInput = {
  unit: "m",
  min: 3e-4,
  max: 0.06,
  says: "Diameter of the drill",
  symbol: "d",
};

/** Height of a thread's sharp triangle. */
export const SHARP_HEIGHT: MethodInput = {
  unit: "m",
  min: 1.5e-4,
  max: 0.006,
  says: "Height of the thread's triangle before its crests and roots are cut off",
  symbol: "H",
};

/** Bore of the gallery. */
export const GALLERY: MethodInput = {
  unit: "m",
  min: 0.001,
  max: 0.06,
  says: "Bore of the gallery",
  symbol: "D_g",
};

/** How deep the gallery's axis lies. */
export const AXIS_DEPTH: MethodInput = {
  unit: "m",
  min: 0.001,
  max: 0.2,
  says: "Depth of the gallery's axis below the face",
  symbol: "c",
};

/** Angle of a drill's point or of a cone, all of it. */
export const INCLUDED: MethodInput = {
  unit: "rad",
  min: 0.2,
  max: 2.8,
  says: "Angle of the whole cone, from side to side",
  symbol: "\\sigma",
};
