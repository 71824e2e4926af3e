/** Which other port fits where the chosen one does not. */
import { type Port, type PortId, PORTS } from "./ports.ts";
import { FULL_FACTOR, LEAST_FACTOR, NUT_FACTOR } from "./stripping.ts";
import { preloadFromTorque, strippingFactor, tappedShearArea } from "./thread_load.ts";
import { type PortFace, spottedOff, takesFlat } from "./spotted_flat.ts";
import { threadOf } from "./thread_of.ts";

/** Ports that a plan can choose and that seal at the face or mouth, the plainest first. */
const OFFERED: readonly PortId[] = ["G1/8-face", "M12x1.5-face", "7/16-20-oring"];

/** Stripping load over the pull of the whole torque below which a port is not worth offering. */
const HALF_TORQUE = LEAST_FACTOR / 2;

/** What {@linkcode otherPort} needs. */
export interface OtherPortInput {
  /** The port that does not fit. */
  readonly port: Port;
  /** Depth where the gallery first opens, from the face before any flat is spotted [m]. */
  readonly opening_m: number;
  /** The face. */
  readonly face: PortFace;
  /** Tightening torque [N m]. */
  readonly torque_Nm: number;
  /** Shear strength of the bar's material [Pa]. */
  readonly shearStrength_Pa: number;
}

/** A port that fits, and how well. */
export interface OtherPort {
  /** The port. */
  readonly port: Port;
  /** Full thread above the gallery [m]. */
  readonly fullThread_m: number;
  /** Stripping load over the pull of the torque [-]. */
  readonly factor: number;
}

/**
 * Finds a port that seals above its thread and fits the bar: the first that meets the aim
 * against stripping, else the first that keeps to the limit, else the strongest, which then
 * bears less torque.
 *
 * @param input The bar and the port that does not fit it.
 * @returns The port; undefined when none bears even half of the torque.
 * @throws {InputError} When a number lies outside its method's range.
 *
 * @example 8.5 mm of metal above the gallery
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { PORTS } from "./ports.ts";
 *
 * const found = otherPort({
 *   port: PORTS["M10x1-cone"],
 *   opening_m: 0.0085,
 *   face: { faceWidth_m: 0.025, isRound: false },
 *   torque_Nm: 12,
 *   shearStrength_Pa: 156e6,
 * });
 *
 * assertEquals(found?.port.id, "G1/8-face");
 * ```
 */
export function otherPort(input: OtherPortInput): OtherPort | undefined {
  const found = OFFERED.flatMap((id) => id === input.port.id ? [] : fitted(input, PORTS[id]));
  const atLeast = (least: number): OtherPort | undefined =>
    found.find(({ factor }) => factor >= least);
  const strongest = found.toSorted((a, b) => b.factor - a.factor)[0];
  return atLeast(FULL_FACTOR) ?? atLeast(LEAST_FACTOR) ?? strongest;
}

function fitted(
  { opening_m, face, torque_Nm, shearStrength_Pa }: OtherPortInput,
  port: Port,
): OtherPort[] {
  const fullThread_m = opening_m - spottedOff(face, port.flat_m) - port.mouth_m;
  if (fullThread_m <= 0 || !takesFlat(face, port.flat_m)) return [];
  const thread = threadOf(port.thread);
  const factor = strippingFactor({
    areaPerLength: tappedShearArea({
      screwMajorMin: thread.screw.majorMin_m,
      holePitchMax: thread.hole.pitchMax_m,
      pitch: thread.pitch_m,
      flank: thread.flank_rad,
    }),
    fullThread: fullThread_m,
    shearStrength: shearStrength_Pa,
    preload: preloadFromTorque({
      torque: torque_Nm,
      nutFactor: NUT_FACTOR,
      nominal: thread.nominal_m,
    }),
  });
  return factor >= HALF_TORQUE ? [{ port, fullThread_m, factor }] : [];
}
