/** How deep a hole for an NPT thread goes. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { nptFace } from "./pipe_geometry.ts";
import { PITCH } from "./limits.ts";

/**
 * Length [m] of full NPT thread in a hole: what is screwed in by hand and the three turns that
 * tools add. Source: ASME B1.20.1, L1 and L3.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1/8 NPT
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const length_m = nptHoleThread({ handTight: 0.1615 * 0.0254, pitch: 0.0254 / 27 });
 *
 * assertAlmostEquals(length_m, 6.924e-3, 1e-6);
 * ```
 */
export const nptHoleThread: Method<Record<"handTight" | "pitch", MethodInput>> = method({
  id: "npt-hole-thread",
  title: "Length of full NPT thread in a hole",
  inputs: { handTight: nptFace.inputs.handTight, pitch: PITCH },
  output: { name: "length", unit: "m", min: 0, max: 0.1, says: "Length of full thread" },
  formula: "handTight + 3 * pitch",
  source: "ASME B1.20.1: L1 and the wrench make-up L3 of three turns",
  compute: ({ handTight, pitch }) => handTight + 3 * pitch,
});

/**
 * Minor diameter [m] of a tapped NPT thread at the face of the hole: its pitch diameter less the
 * thread's height. Source: ASME B1.20.1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 1/8 NPT
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(nptMinorAtFace({ atFace: 9.4896e-3, height: 0.7526e-3 }), 8.737e-3, 1e-9);
 * ```
 */
export const nptMinorAtFace: Method<Record<"atFace" | "height", MethodInput>> = method({
  id: "npt-minor-at-face",
  title: "Minor diameter of an NPT thread at the face of the hole",
  inputs: {
    atFace: {
      unit: "m",
      min: 0.006,
      max: 0.2,
      says: "Pitch diameter at the face",
      symbol: "E_1",
    },
    height: { unit: "m", min: 1e-4, max: 0.003, says: "Height of the thread", symbol: "h" },
  },
  output: { name: "minor", unit: "m", min: 0, max: 0.2, says: "Minor diameter at the face" },
  formula: "atFace - height",
  source: "ASME B1.20.1",
  compute: ({ atFace, height }) => atFace - height,
});
