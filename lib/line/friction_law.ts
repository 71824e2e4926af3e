/** Friction in a straight duct as a law that a network can be solved with. */
import { darcyFriction, LAMINAR_TO, TURBULENT_FROM } from "@/lib/flow/mod.ts";
import type { LawPoint } from "@/lib/network/mod.ts";

/** A friction law: the Darcy factor, and how it changes with the Reynolds number. */
export interface FrictionLaw {
  /** Darcy friction factor [-]. */
  readonly factor: (reynolds: number, relativeRoughness: number) => number;
  /** Relative change of the factor over that of the Reynolds number [-]; -1 in laminar flow. */
  readonly elasticity: (reynolds: number, relativeRoughness: number, factor: number) => number;
}

/** Ours: laminar to Re 2300, Colebrook from 4000, a straight line between. */
export const DARCY: FrictionLaw = { factor: darcyFriction, elasticity };

const LAMINAR_FACTOR = 64 / LAMINAR_TO;

function elasticity(reynolds: number, relativeRoughness: number, factor: number): number {
  if (reynolds <= LAMINAR_TO) return -1;
  if (reynolds < TURBULENT_FROM) {
    const slope = (factor - LAMINAR_FACTOR) / (reynolds - LAMINAR_TO);
    return reynolds * slope / factor;
  }
  // Colebrook's equation, differentiated as it stands.
  const smooth = 2.51 / reynolds;
  const inside = relativeRoughness / 3.7 + smooth / Math.sqrt(factor);
  const pull = 2 / Math.LN10 * smooth / inside;
  return -2 * pull / (1 + pull);
}

/** A straight duct and what runs through it. */
export interface Duct {
  /** Inside diameter [m]. */
  readonly bore_m: number;
  /** Length [m]. */
  readonly length_m: number;
  /** Roughness of its wall [m]. */
  readonly roughness_m: number;
  /** Friction as a multiple of that of a plain wall [-]; 1 unless it is corrugated. */
  readonly frictionTimes: number;
}

/** A liquid as flow meets it. */
export interface Liquid {
  /** Density [kg/m^3]. */
  readonly density_kg_m3: number;
  /** Dynamic viscosity [Pa s]. */
  readonly viscosity_Pa_s: number;
}

/**
 * Makes the law of friction in a duct, which adds to what is written in a point. It holds for
 * either direction.
 *
 * @param duct The duct.
 * @param liquid What runs through it.
 * @param law The friction law.
 * @returns A function that adds drop and slope at a flow.
 *
 * @example The loss turns round with the flow
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const duct = { bore_m: 8e-3, length_m: 3, roughness_m: 1.5e-6, frictionTimes: 1 };
 * const add = addFriction(duct, { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 });
 * const at = { drop_Pa: 0, slope_Pa_s_m3: 0 };
 *
 * add(4e-3 / 60, at);
 * assertAlmostEquals(at.drop_Pa, 6516, 1);
 * add(-4e-3 / 60, at);
 * assertAlmostEquals(at.drop_Pa, 0, 1e-9);
 * ```
 */
export function addFriction(
  duct: Duct,
  liquid: Liquid,
  law: FrictionLaw = DARCY,
): (flow_m3_s: number, into: LawPoint) => void {
  const { bore_m, length_m, roughness_m, frictionTimes } = duct;
  const { density_kg_m3, viscosity_Pa_s } = liquid;
  const roughness = roughness_m / bore_m;
  const reynoldsPerFlow = 4 * density_kg_m3 / (Math.PI * bore_m * viscosity_Pa_s);
  const times = frictionTimes * 8 * density_kg_m3 * length_m / (Math.PI ** 2 * bore_m ** 5);
  const still = times * law.factor(1, roughness) / reynoldsPerFlow;
  return (flow_m3_s, into) => {
    const speed = Math.abs(flow_m3_s);
    const reynolds = reynoldsPerFlow * speed;
    if (reynolds <= 1) {
      // Laminar: the drop is straight in the flow, down to no flow at all.
      into.drop_Pa += still * flow_m3_s;
      into.slope_Pa_s_m3 += still;
      return;
    }
    const factor = law.factor(reynolds, roughness);
    const perFlow = times * factor * speed;
    into.drop_Pa += perFlow * flow_m3_s;
    into.slope_Pa_s_m3 += perFlow * (2 + law.elasticity(reynolds, roughness, factor));
  };
}
