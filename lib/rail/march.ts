/** Pressures along a gallery fed at one end, from take-off to take-off. */
import { InputError } from "@/lib/basics/mod.ts";
import { darcyFriction, frictionLoss, type PipeSpec } from "@/lib/flow/mod.ts";
import { takeOffLoss, takeOffRecovery } from "./take_off.ts";

/** A gallery fed at one end and the fuel in it. */
export interface RailSpec {
  /** Bore of the gallery [m]. */
  readonly bore_m: number;
  /** Roughness of its wall [m]. */
  readonly roughness_m: number;
  /** Distance of each take-off from the feed end, not falling [m]. */
  readonly takeOffs_m: readonly number[];
  /** Flow taken off by all together, in equal parts, as the mean over the cycle [m^3/s]. */
  readonly flow_m3_s: number;
  /** Flow that runs on out of the far end to a regulator; none when left out [m^3/s]. */
  readonly throughFlow_m3_s?: number;
  /** Density of the fuel [kg/m^3]. */
  readonly density_kg_m3: number;
  /** Dynamic viscosity of the fuel [Pa s]. */
  readonly viscosity_Pa_s: number;
}

/** Pressures at the take-offs over the pressure at the feed end; each list in their order. */
export interface RailPressures {
  /** With friction alone: the lowest that can be [Pa]. */
  readonly noRecovery_Pa: readonly number[];
  /** With all dynamic pressure recovered, before each take-off [Pa]. */
  readonly fullBefore_Pa: readonly number[];
  /** The same after each take-off: the highest that can be [Pa]. */
  readonly fullAfter_Pa: readonly number[];
  /** With recovery less the loss past a take-off, before each [Pa]. */
  readonly partBefore_Pa: readonly number[];
  /** The same after each take-off [Pa]. */
  readonly partAfter_Pa: readonly number[];
}

/** How a march finds the steps of pressure; `section` counts from the feed end. */
export interface MarchSteps {
  /** Pressure lost to friction in one section [Pa]. */
  readonly friction: (section: number, pipe: PipeSpec) => number;
  /** Pressure recovered past a take-off [Pa]. */
  readonly recovery: (section: number, stream: Stream) => number;
  /** Pressure lost past a take-off [Pa]. */
  readonly loss: (section: number, stream: Stream) => number;
}

/** A stream before and after a take-off. */
export interface Stream {
  /** Density [kg/m^3]. */
  readonly density: number;
  /** Velocity before [m/s]. */
  readonly before: number;
  /** Velocity after [m/s]. */
  readonly after: number;
}

/** The friction law: Darcy factor from Reynolds number and relative roughness. */
export type FrictionLaw = (reynolds: number, relativeRoughness: number) => number;

/**
 * Finds the pressures at the take-offs, unchecked and unrecorded, for inner loops and for
 * comparison with other friction laws.
 *
 * @param spec The gallery.
 * @param law The friction law.
 * @returns Pressures over the feed end.
 * @throws {InputError} When there is no take-off, or they are not in order.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pressures = railPressures({
 *   bore_m: 10e-3,
 *   roughness_m: 1.5e-6,
 *   takeOffs_m: [0.05, 0.15, 0.25, 0.35],
 *   flow_m3_s: 8e-5,
 *   density_kg_m3: 745,
 *   viscosity_Pa_s: 4.1e-4,
 * });
 *
 * assertAlmostEquals(pressures.noRecovery_Pa.at(-1) ?? 0, -153.8, 0.1);
 * ```
 */
export function railPressures(spec: RailSpec, law: FrictionLaw = darcyFriction): RailPressures {
  return march(spec, {
    friction: (_, pipe) => frictionLoss(pipe, law),
    recovery: (_, stream) => takeOffRecovery.compute(stream),
    loss: (_, stream) => takeOffLoss.compute(stream),
  });
}

/**
 * Walks a gallery from the feed end: friction on the flow that is left, and at each
 * take-off recovery and loss.
 *
 * @param spec The gallery.
 * @param steps How the steps of pressure are found.
 * @returns Pressures over the feed end.
 * @throws {InputError} When there is no take-off, or they are not in order.
 */
export function march(spec: RailSpec, steps: MarchSteps): RailPressures {
  const { takeOffs_m, density_kg_m3: density } = spec;
  requireOrder(takeOffs_m);
  const each = spec.flow_m3_s / takeOffs_m.length;
  const through = spec.throughFlow_m3_s ?? 0;
  const area = Math.PI / 4 * spec.bore_m * spec.bore_m;
  const noRecovery_Pa: number[] = [];
  const fullBefore_Pa: number[] = [];
  const fullAfter_Pa: number[] = [];
  const partBefore_Pa: number[] = [];
  const partAfter_Pa: number[] = [];
  let lost = 0;
  let recovered = 0;
  let lostPast = 0;
  for (let i = 0; i < takeOffs_m.length; i++) {
    const left = through + each * (takeOffs_m.length - i);
    const length_m = (takeOffs_m[i] as number) - (i > 0 ? takeOffs_m[i - 1] as number : 0);
    lost += steps.friction(i, sectionOf(spec, left, length_m));
    noRecovery_Pa.push(-lost);
    fullBefore_Pa.push(recovered - lost);
    partBefore_Pa.push(recovered - lostPast - lost);
    const runsOn = through + each * (takeOffs_m.length - i - 1);
    const stream = { density, before: left / area, after: runsOn / area };
    recovered += steps.recovery(i, stream);
    lostPast += steps.loss(i, stream);
    fullAfter_Pa.push(recovered - lost);
    partAfter_Pa.push(recovered - lostPast - lost);
  }
  return { noRecovery_Pa, fullBefore_Pa, fullAfter_Pa, partBefore_Pa, partAfter_Pa };
}

/** One section of a gallery as a pipe. */
export function sectionOf(
  spec: Omit<RailSpec, "takeOffs_m" | "flow_m3_s">,
  flow_m3_s: number,
  length_m: number,
): PipeSpec {
  const { bore_m, roughness_m, density_kg_m3, viscosity_Pa_s } = spec;
  return { flow_m3_s, bore_m, roughness_m, length_m, density_kg_m3, viscosity_Pa_s };
}

/** Throws unless there are take-offs and none lies before the one ahead of it. */
export function requireOrder(takeOffs_m: readonly number[]): void {
  if (takeOffs_m.length === 0) {
    throw new InputError("rail pressures", "takeOffs_m", "must have at least one take-off", "none");
  }
  let last = 0;
  for (const position of takeOffs_m) {
    if (!(position >= last)) {
      throw new InputError("rail pressures", "takeOffs_m", `must not fall below ${last}`, position);
    }
    last = position;
  }
}
