/** What holds a plug or fitting in its thread against the pressure. */
import type { Working } from "@/lib/method/mod.ts";
import {
  preloadFromTorque,
  strippingFactor,
  strippingLoad,
  tappedShearArea,
  threadOf,
} from "@/lib/thread/mod.ts";
import { pressureForce } from "./pressure_force.ts";

/** A pull below this counts as none [N]. */
const NO_PULL_N = 1;

/** What {@linkcode blowOut} needs. */
export interface BlowOutSpec {
  /** Pressure behind the plug [Pa, gauge]. */
  readonly pressure_Pa: number;
  /** Diameter that is sealed, not the bore behind it [m]. */
  readonly sealDiameter_m: number;
  /** Its parallel thread: `M14x1.5`, `7/16-20`. */
  readonly thread: string;
  /** Length of full thread in the bar [m]. */
  readonly fullThread_m: number;
  /** Shear strength of the bar [Pa]. */
  readonly shearStrength_Pa: number;
  /** How it is tightened; left out, only the pressure counts. */
  readonly tightened?: {
    /** Tightening torque [N m]. */
    readonly torque_Nm: number;
    /** Nut factor [-]. */
    readonly nutFactor: number;
  };
}

/** What a plug's thread bears. */
export interface BlowOut {
  /** Force of the pressure [N]. */
  readonly force_N: number;
  /** Load that strips the thread in the bar [N]. */
  readonly strippingLoad_N: number;
  /** Stripping load over the force; none without pressure. */
  readonly factor: number | undefined;
  /** Pull of the tightening [N]; none when no torque is given. */
  readonly preload_N: number | undefined;
  /**
   * Stripping load over the greater of tightening and pressure. It is the one that decides:
   * pressure takes clamp away from a tightened plug before it adds load to the thread.
   */
  readonly tightenedFactor: number | undefined;
}

/**
 * Weighs a plug or fitting with a parallel thread against stripping out of the bar.
 *
 * @param working Takes the record.
 * @param section Path that the numbers are recorded under: `drill.plug`.
 * @param spec The plug, its thread, pressure and torque.
 * @returns Force, stripping load and factors.
 * @throws {InputError} When a number lies outside its range.
 * @throws {RangeError} When the thread is in no table.
 *
 * @example Pressure never pushes a plug out of 10 mm of thread
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const plug = blowOut(new Working(), "plug", {
 *   pressure_Pa: 1e6,
 *   sealDiameter_m: 0.0158,
 *   thread: "M14x1.5",
 *   fullThread_m: 0.01,
 *   shearStrength_Pa: 156e6,
 *   tightened: { torque_Nm: 30, nutFactor: 0.15 },
 * });
 *
 * assertAlmostEquals(plug.force_N, 196, 0.1);
 * assert((plug.factor ?? 0) > 200);
 * assertAlmostEquals(plug.tightenedFactor ?? 0, 3.29, 0.01); // tightening does more
 * ```
 */
export function blowOut(working: Working, section: string, spec: BlowOutSpec): BlowOut {
  const { screw, hole, pitch_m, flank_rad, nominal_m } = threadOf(spec.thread);
  const force_N = working.run(`${section}.force_N`, pressureForce, {
    pressure: spec.pressure_Pa,
    diameter: spec.sealDiameter_m,
  });
  const thread = {
    areaPerLength: working.run(`${section}.areaPerLength_m`, tappedShearArea, {
      screwMajorMin: screw.majorMin_m,
      holePitchMax: hole.pitchMax_m,
      pitch: pitch_m,
      flank: flank_rad,
    }),
    fullThread: spec.fullThread_m,
    shearStrength: spec.shearStrength_Pa,
  };
  const preload_N = spec.tightened &&
    working.run(`${section}.preload_N`, preloadFromTorque, {
      torque: spec.tightened.torque_Nm,
      nutFactor: spec.tightened.nutFactor,
      nominal: nominal_m,
    });
  const against = (step: string, pull: number): number | undefined =>
    pull < NO_PULL_N
      ? undefined
      : working.run(`${section}.${step}.factor`, strippingFactor, { ...thread, preload: pull });
  return {
    force_N,
    strippingLoad_N: working.run(`${section}.strippingLoad_N`, strippingLoad, thread),
    factor: against("againstPressure", force_N),
    preload_N,
    tightenedFactor: preload_N === undefined
      ? undefined
      : against("tightened", Math.max(preload_N, force_N)),
  };
}
