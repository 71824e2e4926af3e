/** How hard a screw may be tightened, and with what torque. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { NOMINAL, PITCH } from "./limits.ts";

/**
 * Share of its proof load that a screw which will be undone again is tightened to [-].
 * Source: J. E. Shigley, Mechanical Engineering Design, reused connections.
 */
export const PRELOAD_SHARE = 0.75;

const PULL: MethodInput = { unit: "N", min: 1, max: 1e6, says: "Pull in the screw", symbol: "F" };
const FRICTION: MethodInput = { unit: "-", min: 0.04, max: 0.4, says: "Friction", symbol: "\\mu" };
const TORQUE = {
  name: "torque",
  unit: "N m",
  min: 0,
  max: 1e6,
  says: "Tightening torque",
  symbol: "T",
} as const;

/**
 * Proof load of a screw [N]: what it bears without a lasting stretch.
 *
 * Source: ISO 898-1, proof stress times nominal stress area.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M6 8.8; the standard prints 11 600 N
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(proofLoad({ proofStress: 580e6, stressArea: 20.1e-6 }), 11_658, 1e-6);
 * ```
 */
export const proofLoad: Method<Record<"proofStress" | "stressArea", MethodInput>> = method({
  id: "screw-proof-load",
  title: "Proof load of a screw",
  inputs: {
    proofStress: {
      unit: "Pa",
      min: 1e7,
      max: 2e9,
      says: "Proof stress of the screw's class",
      symbol: "S_p",
    },
    stressArea: {
      unit: "m^2",
      min: 1e-7,
      max: 0.003,
      says: "Tensile stress area of the screw",
      symbol: "A_s",
    },
  },
  output: { name: "proofLoad", unit: "N", min: 0, max: 6e6, says: "Proof load", symbol: "F_p" },
  formula: "proofStress * stressArea",
  source: "ISO 898-1: proof load is proof stress times nominal stress area",
  compute: ({ proofStress, stressArea }) => proofStress * stressArea,
});

/**
 * Preload over proof load [-]: 0.75 is usual where a screw is used again, 0.9 where it is not.
 *
 * Source: definition; the shares by J. E. Shigley.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(proofShare({ preload: 8700, proofLoad: 11_600 }), 0.75);
 * ```
 */
export const proofShare: Method<Record<"preload" | "proofLoad", MethodInput>> = method({
  id: "proof-share",
  title: "Preload of a screw over its proof load",
  inputs: {
    preload: { ...PULL, min: 0, says: "Preload", symbol: "F_i" },
    proofLoad: { ...PULL, says: "Proof load of the screw", symbol: "F_p" },
  },
  output: { name: "share", unit: "-", min: 0, max: 1e6, says: "Preload over proof load" },
  formula: "preload / proofLoad",
  source: "Definition",
  compute: ({ preload, proofLoad }) => preload / proofLoad,
});

/**
 * Most that a screw may be tightened to [N]: the least of what the screw, the thread it is in
 * and the face under its head allow.
 *
 * In aluminium it is often the thread or the face, not the screw. Source: the screw's share by
 * J. E. Shigley; that the least rules is plain.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const most_N = mostPreload({
 *   proofLoad: 11_600,
 *   share: 0.75,
 *   strippingLoad: 16_000,
 *   factor: 2,
 *   bearing: 9_000,
 * });
 *
 * assertEquals(most_N, 8_000); // the thread rules
 * ```
 */
export const mostPreload: Method<
  Record<"proofLoad" | "share" | "strippingLoad" | "factor" | "bearing", MethodInput>
> = method({
  id: "most-preload",
  title: "Most that a screw may be tightened to",
  inputs: {
    proofLoad: { ...PULL, says: "Proof load of the screw", symbol: "F_p" },
    share: {
      unit: "-",
      min: 0.1,
      max: 1,
      says: "Share of the proof load; 0.75 where the screw is used again",
      symbol: "k",
    },
    strippingLoad: { ...PULL, min: 0, says: "Load that strips the thread", symbol: "F_s" },
    factor: {
      unit: "-",
      min: 1,
      max: 10,
      says: "Factor against stripping that is asked for",
      symbol: "S",
    },
    bearing: { ...PULL, says: "Load at which the face under the head yields", symbol: "F_b" },
  },
  output: { name: "preload", unit: "N", min: 0, max: 1e6, says: "Most preload", symbol: "F" },
  formula: "min(share * proofLoad, strippingLoad / factor, bearing)",
  source: "J. E. Shigley, Mechanical Engineering Design, for the screw; the least of three rules",
  compute: ({ proofLoad, share, strippingLoad, factor, bearing }) =>
    Math.min(share * proofLoad, strippingLoad / factor, bearing),
});

/**
 * Torque [N m] for a pull in the screw, by the nut factor. Scatters by a quarter to a third.
 *
 * Source: T = K d F, J. E. Shigley, Mechanical Engineering Design.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M6 to 8000 N, dry
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const torque_Nm = torqueForPreload({ preload: 8000, nutFactor: 0.2, nominal: 0.006 });
 *
 * assertAlmostEquals(torque_Nm, 9.6, 1e-9);
 * ```
 */
export const torqueForPreload: Method<Record<"preload" | "nutFactor" | "nominal", MethodInput>> =
  method({
    id: "torque-for-preload",
    title: "Tightening torque for a pull in the screw",
    inputs: {
      preload: { ...PULL, min: 0 },
      nutFactor: {
        unit: "-",
        min: 0.08,
        max: 0.4,
        says: "Nut factor: about 0.2 dry, 0.12 to 0.18 oiled",
        symbol: "K",
      },
      nominal: NOMINAL,
    },
    output: TORQUE,
    formula: "nutFactor * nominal * preload",
    source: "T = K d F; J. E. Shigley, Mechanical Engineering Design",
    compute: ({ preload, nutFactor, nominal }) => nutFactor * nominal * preload,
  });

/**
 * Torque [N m] for a pull in the screw, split into pitch, thread and head. For 60 degree threads.
 *
 * Source: VDI 2230-1.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example M8x1 with a hexagon head, friction 0.12; tables print 26.1 N m
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const torque_Nm = torqueBySplit({
 *   preload: 20_200,
 *   pitch: 1e-3,
 *   pitchDiameter: 7.35e-3,
 *   threadFriction: 0.12,
 *   head: 11.63e-3,
 *   hole: 9e-3,
 *   headFriction: 0.12,
 * });
 *
 * assertAlmostEquals(torque_Nm, 26.1, 0.1);
 * ```
 */
export const torqueBySplit: Method<
  Record<
    "preload" | "pitch" | "pitchDiameter" | "threadFriction" | "head" | "hole" | "headFriction",
    MethodInput
  >
> = method({
  id: "torque-by-split",
  title: "Tightening torque by pitch, thread and head",
  inputs: {
    preload: { ...PULL, min: 0 },
    pitch: PITCH,
    pitchDiameter: { ...NOMINAL, says: "Pitch diameter of the thread", symbol: "d_2" },
    threadFriction: { ...FRICTION, says: "Friction in the thread", symbol: "\\mu_G" },
    head: { ...NOMINAL, max: 0.12, says: "Outside diameter of the head's face", symbol: "d_w" },
    hole: { ...NOMINAL, max: 0.12, says: "Hole under the head", symbol: "d_h" },
    headFriction: { ...FRICTION, says: "Friction under the head", symbol: "\\mu_K" },
  },
  output: TORQUE,
  formula:
    "preload * (0.16 * pitch + 0.58 * pitchDiameter * threadFriction + (head + hole) / 4 * headFriction)",
  source: "VDI 2230-1: M = F (0.16 P + 0.58 d2 mu_G + D_Km / 2 mu_K), D_Km = (d_w + d_h) / 2",
  compute: ({ preload, pitch, pitchDiameter, threadFriction, head, hole, headFriction }) =>
    preload *
    (0.16 * pitch + 0.58 * pitchDiameter * threadFriction + (head + hole) / 4 * headFriction),
});
