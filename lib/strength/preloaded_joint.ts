/** A screw that is tightened before anything pulls on it. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

const SHIGLEY = "J. E. Shigley, Mechanical Engineering Design, preloaded tension joints";

/**
 * Stiffness of what is clamped over that of the screw [-]: three, as is usual where it isn't
 * computed. Soft brackets have less, which loads the screw more. Common practice, no source.
 */
export const CLAMPED_STIFFNESS = 3;

const PRELOAD: MethodInput = { unit: "N", min: 0, max: 1e6, says: "Preload", symbol: "F_i" };
const SHARE: MethodInput = {
  unit: "-",
  min: 0,
  max: 0.99,
  says: "Share of the pull that the screw feels",
  symbol: "C",
};
const PULL: MethodInput = {
  unit: "N",
  min: -1e6,
  max: 1e6,
  says: "Pull from outside; negative where it presses",
  symbol: "P",
};

/**
 * Share of a pull that a tightened screw feels [-]; the rest only takes clamp away.
 *
 * Source: J. E. Shigley, C = k_b / (k_b + k_m).
 *
 * @throws {InputError} When the number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(screwShare({ stiffnessRatio: 4 }), 0.2);
 * ```
 */
export const screwShare: Method<Record<"stiffnessRatio", MethodInput>> = method({
  id: "screw-share",
  title: "Share of a pull that a tightened screw feels",
  inputs: {
    stiffnessRatio: {
      unit: "-",
      min: 0.05,
      max: 1000,
      says: "Stiffness of what is clamped over that of the screw",
      symbol: "k_m / k_b",
    },
  },
  output: { ...SHARE, name: "share", max: 1 },
  formula: "1 / (1 + stiffnessRatio)",
  source: SHIGLEY,
  compute: ({ stiffnessRatio }) => 1 / (1 + stiffnessRatio),
});

/**
 * Load in a tightened screw [N] under a pull, while the joint stays shut.
 *
 * Source: J. E. Shigley, F_b = F_i + C P.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(tightenedScrewLoad({ preload: 4000, share: 0.2, pull: 500 }), 4100);
 * ```
 */
export const tightenedScrewLoad: Method<Record<"preload" | "share" | "pull", MethodInput>> = method(
  {
    id: "tightened-screw-load",
    title: "Load in a tightened screw",
    inputs: { preload: PRELOAD, share: SHARE, pull: PULL },
    output: {
      name: "load",
      unit: "N",
      min: -1e6,
      max: 2e6,
      says: "Load in the screw",
      symbol: "F_b",
    },
    formula: "preload + share * pull",
    source: SHIGLEY,
    compute: ({ preload, share, pull }) => preload + share * pull,
  },
);

/**
 * Clamp left between the parts [N] under a pull; at nought or below the joint opens.
 *
 * Source: J. E. Shigley, F_m = F_i - (1 - C) P.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(clampLeft({ preload: 4000, share: 0.2, pull: 500 }), 3600);
 * ```
 */
export const clampLeft: Method<Record<"preload" | "share" | "pull", MethodInput>> = method({
  id: "clamp-left",
  title: "Clamp left in a joint",
  inputs: { preload: PRELOAD, share: SHARE, pull: PULL },
  output: {
    name: "clamp",
    unit: "N",
    min: -1e6,
    max: 2e6,
    says: "Clamp left; at nought or below the joint opens",
    symbol: "F_m",
  },
  formula: "preload - (1 - share) * pull",
  source: SHIGLEY,
  compute: ({ preload, share, pull }) => preload - (1 - share) * pull,
});

/**
 * How many times the pull opens the joint [-].
 *
 * Source: J. E. Shigley, n_0 = F_i / (P (1 - C)).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(separationFactor({ preload: 4000, share: 0.2, pull: 500 }), 10, 1e-12);
 * ```
 */
export const separationFactor: Method<Record<"preload" | "share" | "pull", MethodInput>> = method({
  id: "separation-factor",
  title: "Factor against the joint opening",
  inputs: { preload: PRELOAD, share: SHARE, pull: { ...PULL, min: 1e-3 } },
  output: {
    name: "factor",
    unit: "-",
    min: 0,
    max: 1e12,
    says: "Times the pull at which the joint opens",
    symbol: "n_0",
  },
  formula: "preload / (pull * (1 - share))",
  source: SHIGLEY,
  compute: ({ preload, share, pull }) => preload / (pull * (1 - share)),
});
