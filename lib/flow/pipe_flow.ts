/** One straight pipe, from flow to pressure drop, with every step recorded. */
import type { Working } from "@/lib/method/mod.ts";
import {
  colebrookFriction,
  darcyFriction,
  laminarFriction,
  type Regime,
  regimeOf,
  transitionFriction,
  TURBULENT_FROM,
} from "./friction.ts";
import { pipePressureDrop } from "./pressure_drop.ts";
import { relativeRoughness, reynoldsNumber } from "./reynolds.ts";
import { meanVelocity } from "./velocity.ts";

/** A straight pipe and what runs through it. */
export interface PipeSpec {
  /** Volume flow, above 0 [m^3/s]. */
  readonly flow_m3_s: number;
  /** Inner diameter [m]. */
  readonly bore_m: number;
  /** Roughness of the wall [m]. */
  readonly roughness_m: number;
  /** Length [m]. */
  readonly length_m: number;
  /** Density of the liquid [kg/m^3]. */
  readonly density_kg_m3: number;
  /** Dynamic viscosity of the liquid [Pa s]. */
  readonly viscosity_Pa_s: number;
}

/** What {@linkcode pipeFlow} finds. */
export interface PipeFlow {
  /** Mean velocity [m/s]. */
  readonly velocity_m_s: number;
  /** Reynolds number [-]. */
  readonly reynolds: number;
  /** How the liquid moves. */
  readonly regime: Regime;
  /** Darcy friction factor; between the regimes by the straight line [-]. */
  readonly frictionFactor: number;
  /** Pressure lost to friction [Pa]. */
  readonly pressureDrop_Pa: number;
  /** Least that it may be: by the laminar law while transitional, else the same [Pa]. */
  readonly pressureDropLow_Pa: number;
  /** Most that it may be: by the turbulent law while transitional, else the same [Pa]. */
  readonly pressureDropHigh_Pa: number;
}

/**
 * Finds velocity, regime, friction and pressure drop of a straight pipe and records how.
 *
 * @param working The record; entries begin with `section`.
 * @param section Where the results belong, like `feed`.
 * @param spec The pipe and the flow.
 * @returns The results.
 * @throws {InputError} When a number lies outside the range of the method it goes into.
 *
 * @example 3 m of 8 mm drawn tube at 4 L/min of petrol
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const pipe = pipeFlow(new Working(), "feed", {
 *   flow_m3_s: 4e-3 / 60,
 *   bore_m: 8e-3,
 *   roughness_m: 1.5e-6,
 *   length_m: 3,
 *   density_kg_m3: 745,
 *   viscosity_Pa_s: 4.1e-4,
 * });
 *
 * assertEquals(pipe.regime, "turbulent");
 * assertAlmostEquals(pipe.pressureDrop_Pa, 6516, 1);
 * ```
 */
export function pipeFlow(working: Working, section: string, spec: PipeSpec): PipeFlow {
  const { bore_m: bore, density_kg_m3: density, viscosity_Pa_s: viscosity } = spec;
  const velocity = working.run(`${section}.velocity_m_s`, meanVelocity, {
    flow: spec.flow_m3_s,
    bore,
  });
  const reynolds = working.run(`${section}.reynolds`, reynoldsNumber, {
    density,
    velocity,
    bore,
    viscosity,
  });
  const regime = regimeOf(reynolds);
  const roughness = regime === "laminar" ? 0 : working.run(
    `${section}.relativeRoughness`,
    relativeRoughness,
    { roughness: spec.roughness_m, bore },
  );
  const frictionFactor = recordFriction(working, section, reynolds, roughness);
  const drop = { length: spec.length_m, bore, density, velocity };
  const pressureDrop_Pa = working.run(`${section}.pressureDrop_Pa`, pipePressureDrop, {
    frictionFactor,
    ...drop,
  });
  const results = { velocity_m_s: velocity, reynolds, regime, frictionFactor, pressureDrop_Pa };
  if (regime !== "transitional") {
    return {
      ...results,
      pressureDropLow_Pa: pressureDrop_Pa,
      pressureDropHigh_Pa: pressureDrop_Pa,
    };
  }
  const low = working.run(`${section}.frictionLow`, laminarFriction, { reynolds });
  const high = working.run(`${section}.frictionHigh`, colebrookFriction, {
    reynolds,
    relativeRoughness: roughness,
  });
  return {
    ...results,
    pressureDropLow_Pa: working.run(`${section}.pressureDropLow_Pa`, pipePressureDrop, {
      frictionFactor: low,
      ...drop,
    }),
    pressureDropHigh_Pa: working.run(`${section}.pressureDropHigh_Pa`, pipePressureDrop, {
      frictionFactor: high,
      ...drop,
    }),
  };
}

/**
 * Pressure lost to friction [Pa] in a straight pipe, unchecked and unrecorded, for inner
 * loops. Keeps the sign of the flow; no flow, no loss.
 *
 * @param spec The pipe; its flow may be negative, against the positive direction.
 * @param friction The friction law: factor from Reynolds number and relative roughness.
 * @returns Pressure at the start less pressure at the end [Pa].
 *
 * @example The loss turns round with the flow
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const pipe = {
 *   flow_m3_s: 1e-4,
 *   bore_m: 8e-3,
 *   roughness_m: 1.5e-6,
 *   length_m: 3,
 *   density_kg_m3: 745,
 *   viscosity_Pa_s: 4.1e-4,
 * };
 *
 * assertEquals(frictionLoss({ ...pipe, flow_m3_s: -1e-4 }), -frictionLoss(pipe));
 * assertEquals(frictionLoss({ ...pipe, flow_m3_s: 0 }), 0);
 * ```
 */
export function frictionLoss(
  spec: PipeSpec,
  friction: (reynolds: number, relativeRoughness: number) => number = darcyFriction,
): number {
  const { flow_m3_s, bore_m, roughness_m, length_m, density_kg_m3, viscosity_Pa_s } = spec;
  if (flow_m3_s === 0) return 0;
  const velocity = 4 * flow_m3_s / (Math.PI * bore_m * bore_m);
  const speed = Math.abs(velocity);
  const factor = friction(density_kg_m3 * speed * bore_m / viscosity_Pa_s, roughness_m / bore_m);
  return factor * length_m / bore_m * density_kg_m3 * velocity * speed / 2;
}

function recordFriction(
  working: Working,
  section: string,
  reynolds: number,
  roughness: number,
): number {
  const result = `${section}.frictionFactor`;
  switch (regimeOf(reynolds)) {
    case "laminar":
      return working.run(result, laminarFriction, { reynolds });
    case "turbulent":
      return working.run(result, colebrookFriction, { reynolds, relativeRoughness: roughness });
    case "transitional": {
      const turbulent = working.run(`${section}.frictionAt4000`, colebrookFriction, {
        reynolds: TURBULENT_FROM,
        relativeRoughness: roughness,
      });
      return working.run(result, transitionFriction, { reynolds, turbulent });
    }
  }
}
