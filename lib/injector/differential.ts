/** The pressure that pushes fuel through an injector. */
import { type Method, method, type MethodInput, type Working } from "@/lib/method/mod.ts";

const AMBIENT: MethodInput = {
  unit: "Pa",
  min: 4e4,
  max: 1.1e5,
  says: "Pressure of the outside air, absolute; it falls with altitude",
  symbol: "p_a",
};
const MANIFOLD: MethodInput = {
  unit: "Pa",
  min: 5e3,
  max: 8e5,
  says: "Pressure in the intake manifold, absolute",
  symbol: "p_m",
};
const GAUGE_RANGE = { unit: "Pa", min: 0, max: 3e6 } as const;

/**
 * Least differential pressure at which injectors are worked with here [Pa]: below it the
 * root law and dead times tell nothing. Ours.
 */
export const LEAST_DIFFERENTIAL_Pa = 2e4;

/**
 * Rail pressure [Pa gauge] that a regulator holds: its set pressure plus its share of
 * the manifold's pressure over the outside air (1 with a hose to the manifold, 0 without).
 *
 * Source: balance of forces on the regulator's diaphragm.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 3 bar set, 1.5 bar of boost, hose to the manifold
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const gauge_Pa = railPressure({ setPressure: 3e5, reference: 1, manifold: 2.5e5, ambient: 1e5 });
 *
 * assertEquals(gauge_Pa, 4.5e5);
 * ```
 */
export const railPressure: Method<
  Record<"setPressure" | "reference" | "manifold" | "ambient", MethodInput>
> = method({
  id: "rail-pressure",
  title: "Rail pressure that the regulator holds",
  inputs: {
    setPressure: {
      ...GAUGE_RANGE,
      min: 5e4,
      max: 1.2e6,
      says: "Set pressure of the regulator, gauge, hose to the manifold off",
      symbol: "p_s",
    },
    reference: {
      unit: "-",
      min: 0,
      max: 1,
      says: "1 when the regulator's spring side is joined to the manifold, 0 when open to air",
      symbol: "r",
    },
    manifold: MANIFOLD,
    ambient: AMBIENT,
  },
  output: {
    ...GAUGE_RANGE,
    name: "railPressure",
    min: -1e5,
    says: "Pressure in the rail, gauge",
    symbol: "p_r",
  },
  formula: "setPressure + reference * (manifold - ambient)",
  source: "Balance of forces on the regulator's diaphragm",
  compute: ({ setPressure, reference, manifold, ambient }) =>
    setPressure + reference * (manifold - ambient),
});

/**
 * Differential pressure [Pa] across an injector: rail less manifold, both absolute.
 * Boost takes away, vacuum adds; negative when the manifold is above the rail.
 *
 * Source: definition.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example 4 bar in the rail at idle, 35 kPa in the manifold
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const differential_Pa = injectorDifferential({ railGauge: 4e5, ambient: 1e5, manifold: 3.5e4 });
 *
 * assertEquals(differential_Pa, 4.65e5);
 * ```
 */
export const injectorDifferential: Method<
  Record<"railGauge" | "ambient" | "manifold", MethodInput>
> = method({
  id: "injector-differential",
  title: "Differential pressure across an injector",
  inputs: {
    railGauge: {
      ...GAUGE_RANGE,
      min: -1e5,
      says: "Pressure in the rail, gauge",
      symbol: "p_r",
    },
    ambient: AMBIENT,
    manifold: MANIFOLD,
  },
  output: {
    name: "differential",
    unit: "Pa",
    min: -1e6,
    max: 4e6,
    says: "Pressure in the rail less pressure in the manifold",
    symbol: "\\Delta p",
  },
  formula: "railGauge + ambient - manifold",
  source: "Definition: both pressures absolute",
  compute: ({ railGauge, ambient, manifold }) => railGauge + ambient - manifold,
});

/** A regulator and the pressures round it at one running point. */
export interface RegulatedPoint {
  /** Set pressure of the regulator, hose off [Pa gauge]. */
  readonly setPressure_Pa: number;
  /** What the regulator's spring side is joined to. */
  readonly reference: "manifold" | "atmosphere";
  /** Pressure in the manifold [Pa absolute]. */
  readonly manifold_Pa: number;
  /** Pressure of the outside air [Pa absolute]. */
  readonly ambient_Pa: number;
}

/** Pressures that {@linkcode injectorPressures} finds. */
export interface InjectorPressures {
  /** In the rail [Pa gauge]. */
  readonly railPressure_Pa: number;
  /** Across the injector; not above 0 when the manifold outdoes the rail [Pa]. */
  readonly differential_Pa: number;
}

/**
 * Finds rail pressure and differential pressure at one running point and records how.
 *
 * @param working The record.
 * @param section Where the results belong, like `injectors.idle`.
 * @param point The regulator and the pressures round it.
 * @returns Both pressures.
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Without a hose to the manifold, boost takes from the differential
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const pressures = injectorPressures(new Working(), "injectors.peak", {
 *   setPressure_Pa: 4e5,
 *   reference: "atmosphere",
 *   manifold_Pa: 2e5,
 *   ambient_Pa: 1e5,
 * });
 *
 * assertEquals(pressures, { railPressure_Pa: 4e5, differential_Pa: 3e5 });
 * ```
 */
export function injectorPressures(
  working: Working,
  section: string,
  point: RegulatedPoint,
): InjectorPressures {
  const { manifold_Pa: manifold, ambient_Pa: ambient } = point;
  const railGauge = working.run(`${section}.railPressure_Pa`, railPressure, {
    setPressure: point.setPressure_Pa,
    reference: point.reference === "manifold" ? 1 : 0,
    manifold,
    ambient,
  });
  const differential_Pa = working.run(`${section}.differential_Pa`, injectorDifferential, {
    railGauge,
    ambient,
    manifold,
  });
  return { railPressure_Pa: railGauge, differential_Pa };
}
