/** What a drilled bar bears. */
import type { Working } from "@/lib/method/mod.ts";
import { hoopAtBore } from "./cylinder.ts";
import { crossHoleFactor, peakStress, SHAPE_FACTOR, yieldFactor } from "./peak.ts";
import { pressureForce } from "./pressure_force.ts";
import { centredWall, DRIFT_PER_LENGTH, drillDrift, wallLeft } from "./wall.ts";

/** A wall below this counts as none [m]: less than any bar is true to. */
const NO_WALL_m = 1e-6;

/** What {@linkcode barStrength} needs. */
export interface BarSpec {
  /** Section of the bar. */
  readonly shape: "rectangular" | "round";
  /** Size along the injectors' axis, or diameter [m]. */
  readonly height_m: number;
  /** Size across; of a round bar not used [m]. */
  readonly width_m: number;
  /** Bore of the gallery [m]. */
  readonly bore_m: number;
  /** Length of the gallery [m]. */
  readonly length_m: number;
  /** Whether the gallery is drilled from one end or from both. */
  readonly drilledFrom: "one" | "both";
  /** How far the drill wandered where that was measured [m]; else by its length. */
  readonly drift_m?: number | undefined;
  /** Largest cross hole into the gallery [m]. */
  readonly pilot_m: number;
  /** Proof pressure [Pa, gauge]. */
  readonly proof_Pa: number;
  /** Highest working pressure [Pa, gauge]. */
  readonly working_Pa: number;
  /** Yield strength of the bar, least [Pa]. */
  readonly yield_Pa: number;
  /** Bore of an injector pocket, where it seals [m]. */
  readonly pocketBore_m: number;
}

/** What a bar bears. */
export interface BarStrength {
  /** How far the drill may wander [m]. */
  readonly drift_m: number;
  /** Wall around a centred gallery [m]. */
  readonly wallNominal_m: number;
  /** Least wall after the drill has wandered [m]; 0 or below, it breaks out. */
  readonly wallLeft_m: number;
  /** Hoop stress at proof pressure, least wall all round [Pa]; none without a wall. */
  readonly hoop_Pa: number | undefined;
  /** Highest stress at proof pressure [Pa]. */
  readonly peak_Pa: number | undefined;
  /** Highest stress at the highest working pressure [Pa]. */
  readonly peakWorking_Pa: number | undefined;
  /** Yield strength over highest stress at proof pressure [-]. */
  readonly yieldFactor: number | undefined;
  /** Force at proof pressure on a plug that seals at the gallery's bore [N]; one that seals wider bears more. */
  readonly plugForce_N: number;
  /** Force at proof pressure that lifts the rail off one injector [N]. */
  readonly liftPerInjector_N: number;
}

/**
 * Computes wall, stresses and forces of a bar with a gallery drilled through its middle.
 *
 * @param working Takes the record, each number under `bar.` and its key.
 * @param spec The bar, its holes, pressures and strength.
 * @returns Wall, stresses and forces.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A bar of 25 mm at 6 bar
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const bar = barStrength(new Working(), {
 *   shape: "rectangular",
 *   height_m: 0.025,
 *   width_m: 0.025,
 *   bore_m: 0.0127,
 *   length_m: 0.42,
 *   drilledFrom: "both",
 *   pilot_m: 0.008,
 *   proof_Pa: 6e5,
 *   working_Pa: 4e5,
 *   yield_Pa: 240e6,
 *   pocketBore_m: 0.014,
 * });
 *
 * assertAlmostEquals(bar.wallLeft_m, 5.45e-3, 1e-9);
 * assert((bar.yieldFactor ?? 0) > 50); // pressure is not what limits a rail
 * ```
 */
export function barStrength(working: Working, spec: BarSpec): BarStrength {
  const { bore_m: bore, proof_Pa: proof } = spec;
  const across = spec.shape === "round" ? spec.height_m : Math.min(spec.height_m, spec.width_m);
  const drift_m = spec.drift_m ?? working.run("bar.drift_m", drillDrift, {
    length: spec.length_m,
    driftPerLength: DRIFT_PER_LENGTH,
    ends: spec.drilledFrom === "one" ? 1 : 2,
  });
  const wallNominal_m = working.run("bar.wallNominal_m", centredWall, { across, bore });
  const wallLeft_m = working.run("bar.wallLeft_m", wallLeft, {
    wall: wallNominal_m,
    drift: drift_m,
  });
  const force = (key: string, diameter: number): number =>
    working.run(`bar.${key}`, pressureForce, { pressure: proof, diameter });
  return {
    drift_m,
    wallNominal_m,
    wallLeft_m,
    ...stresses(working, spec, wallLeft_m),
    plugForce_N: force("plugForce_N", bore),
    liftPerInjector_N: force("liftPerInjector_N", spec.pocketBore_m),
  };
}

type Stresses = Pick<BarStrength, "hoop_Pa" | "peak_Pa" | "peakWorking_Pa" | "yieldFactor">;

const NO_STRESSES: Stresses = {
  hoop_Pa: undefined,
  peak_Pa: undefined,
  peakWorking_Pa: undefined,
  yieldFactor: undefined,
};

/** The stresses of the wall that is left. */
function stresses(working: Working, spec: BarSpec, wall: number): Stresses {
  if (wall <= NO_WALL_m) return NO_STRESSES;
  const { bore_m: bore } = spec;
  const factors = {
    shapeFactor: SHAPE_FACTOR[spec.shape],
    holeFactor: working.run("bar.crossHoleFactor", crossHoleFactor, { pilot: spec.pilot_m, bore }),
  };
  const hoop_Pa = working.run("bar.hoop_Pa", hoopAtBore, { pressure: spec.proof_Pa, bore, wall });
  const peak_Pa = working.run("bar.peak_Pa", peakStress, { hoop: hoop_Pa, ...factors });
  const hoopWorking = working.run("bar.hoopWorking_Pa", hoopAtBore, {
    pressure: spec.working_Pa,
    bore,
    wall,
  });
  return {
    hoop_Pa,
    peak_Pa,
    peakWorking_Pa: working.run("bar.peakWorking_Pa", peakStress, {
      hoop: hoopWorking,
      ...factors,
    }),
    yieldFactor: working.run("bar.yieldFactor", yieldFactor, {
      yield: spec.yield_Pa,
      peak: peak_Pa,
    }),
  };
}
