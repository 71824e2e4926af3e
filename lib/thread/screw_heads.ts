/** The face under a screw's head, and what it does to what it presses on. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { CLEARANCE_HOLES, type ClearanceScrew } from "./clearance_holes.ts";
import { NOMINAL } from "./limits.ts";

/** The ring that a screw presses with. */
export interface ScrewHead {
  /** Outside diameter of the ring, at its least [m]. */
  readonly outside_m: number;
  /** Hole under the head [m]. */
  readonly hole_m: number;
}

/** Heads that {@linkcode screwHead} knows, and a plain washer under either. */
export type HeadKind = "socket" | "hexagon" | "washer";

/** Outside diameters of the ring [mm]: ISO 4762 and ISO 4017 least d_w, ISO 7089 nominal. */
const OUTSIDE_mm: Readonly<Record<ClearanceScrew, Readonly<Record<HeadKind, number>>>> = {
  M3: { socket: 5.07, hexagon: 4.57, washer: 7 },
  M4: { socket: 6.53, hexagon: 5.88, washer: 9 },
  M5: { socket: 8.03, hexagon: 6.88, washer: 10 },
  M6: { socket: 9.38, hexagon: 8.88, washer: 12 },
  M8: { socket: 12.33, hexagon: 11.63, washer: 16 },
  M10: { socket: 15.33, hexagon: 14.63, washer: 20 },
  M12: { socket: 17.23, hexagon: 16.63, washer: 24 },
};

/** For threads that the table has not: outside and hole over nominal diameter; ours. */
const OUTSIDE_SHARE: Readonly<Record<HeadKind, number>> = {
  socket: 1.43,
  hexagon: 1.38,
  washer: 2,
};
const HOLE_SHARE = 1.1;

/**
 * The ring that a screw presses with, in a hole of medium fit.
 *
 * Source: ISO 4762 (socket heads) and ISO 7089 (washers) as printed; ISO 4017 (hexagon heads) and
 * ISO 273 (holes) from memory. Sizes that those lack, inch ones too, by shares of the diameter
 * at the lower end of the table's; ours.
 *
 * @param nominal_m Nominal diameter of the screw [m].
 * @param kind Its head, or the washer under it.
 * @returns The ring.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(screwHead(0.006, "socket").outside_m, 0.00938, 1e-9);
 * ```
 */
export function screwHead(nominal_m: number, kind: HeadKind): ScrewHead {
  const name = `M${Math.round(nominal_m * 1e6) / 1e3}`;
  if (isListed(name)) {
    return { outside_m: OUTSIDE_mm[name][kind] / 1000, hole_m: CLEARANCE_HOLES[name].medium_m };
  }
  return { outside_m: OUTSIDE_SHARE[kind] * nominal_m, hole_m: HOLE_SHARE * nominal_m };
}

function isListed(name: string): name is ClearanceScrew {
  return Object.hasOwn(OUTSIDE_mm, name);
}

/**
 * Pull at which the face under a head yields [N], taken as the yield strength over the ring.
 * A face bears more than that for a while; what it gives way by is preload lost.
 *
 * Source: balance of forces on a ring.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example An M6 socket head on 240 MPa
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const pull_N = headBearingLoad({ hole: 6.6e-3, ring: 1.39e-3, yield: 240e6 });
 *
 * assertAlmostEquals(pull_N, 8374, 1);
 * ```
 */
export const headBearingLoad: Method<Record<"hole" | "ring" | "yield", MethodInput>> = method({
  id: "head-bearing-load",
  title: "Pull at which the face under a head yields",
  inputs: {
    hole: { ...NOMINAL, says: "Hole under the head", symbol: "d_h" },
    ring: {
      unit: "m",
      min: 1e-5,
      max: 0.06,
      says: "Width of the ring that the head presses with",
      symbol: "b",
    },
    yield: {
      unit: "Pa",
      min: 1e6,
      max: 3e9,
      says: "Yield strength of what the head presses on",
      symbol: "R_p",
    },
  },
  output: { name: "pull", unit: "N", min: 0, max: 1e8, says: "Pull", symbol: "F_b" },
  formula: "pi * (hole + ring) * ring * yield",
  source: "Balance of forces on a ring",
  compute: ({ hole, ring, yield: strength }) => Math.PI * (hole + ring) * ring * strength,
});

/**
 * Stress under a head [Pa].
 *
 * Source: balance of forces on a ring.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const stress_Pa = headBearingStress({ preload: 8374, hole: 6.6e-3, ring: 1.39e-3 });
 *
 * assertAlmostEquals(stress_Pa, 240e6, 1e5);
 * ```
 */
export const headBearingStress: Method<Record<"preload" | "hole" | "ring", MethodInput>> = method({
  id: "head-bearing-stress",
  title: "Stress under a screw's head",
  inputs: {
    preload: { unit: "N", min: 0, max: 1e6, says: "Pull in the screw", symbol: "F" },
    hole: { ...NOMINAL, says: "Hole under the head", symbol: "d_h" },
    ring: {
      unit: "m",
      min: 1e-5,
      max: 0.06,
      says: "Width of the ring that the head presses with",
      symbol: "b",
    },
  },
  output: {
    name: "stress",
    unit: "Pa",
    min: 0,
    max: 1e14,
    says: "Stress under the head",
    symbol: "p_h",
  },
  formula: "preload / (pi * (hole + ring) * ring)",
  source: "Balance of forces on a ring",
  compute: ({ preload, hole, ring }) => preload / (Math.PI * (hole + ring) * ring),
});
