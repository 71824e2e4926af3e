/** The screws that keep pressure from lifting the rail off its injectors. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Working } from "@/lib/method/mod.ts";
import {
  preloadFromTorque,
  strippingFactor,
  threadOf,
  torqueForPreload,
} from "@/lib/thread/mod.ts";
import {
  barDeflection,
  bendingStress,
  boredRectangleInertia,
  boredRoundInertia,
} from "./bar_bending.ts";
import { type HeldBar, heldBar } from "./held_bar.ts";
import type { HeldScrew, HoldDown, HoldDownSpec } from "./hold_down_spec.ts";
import { clampForFactor, decidingPull, preloadFactor, shareOfStiffBar } from "./hold_down_share.ts";
import { type HeldThread, heldThread } from "./hold_down_thread.ts";
import { clampLeft, screwShare, separationFactor, tightenedScrewLoad } from "./preloaded_joint.ts";

/** A pull below this counts as none [N]. */
const NO_PULL_N = 0.01;

/**
 * Works out the hold-down of a rail: what each screw must hold, what it holds, whether its
 * thread, its head's face and the bar bear that.
 *
 * The rail stands on stands or bosses at its screws, and touches nothing else. How far the
 * screws stand to the side of the injectors' line is not counted: a lug that sticks out far
 * loads its screw by more than the lift.
 *
 * @param working Takes the record.
 * @param section Path that the numbers are recorded under: `holdDown`.
 * @param spec Lifts, screws, bar and threads.
 * @returns What screws and bar bear.
 * @throws {InputError} When a number lies outside its range, or all screws stand at one place.
 * @throws {RangeError} When the thread is in no table.
 *
 * @example Four injectors at 10 bar, two M6 screws between the outer pairs
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const held = holdDown(new Working(), "holdDown", {
 *   lifts: [0.02, 0.11, 0.2, 0.29].map((x_m) => ({ x_m, force_N: 154 })),
 *   screws: [0.065, 0.245],
 *   bar: {
 *     shape: "rectangular",
 *     height_m: 0.025,
 *     width_m: 0.025,
 *     bore_m: 0.0127,
 *     elasticModulus_Pa: 69e9,
 *   },
 *   screw: { thread: "M6x1", class: "8.8", head: "socket", torque_Nm: 9, nutFactor: 0.2 },
 *   tapped: { engagement_m: 0.012, shearStrength_Pa: 156e6, ultimate_Pa: 260e6 },
 *   underHead_Pa: 240e6,
 *   stiffnessRatio: 3,
 *   factor: 3,
 * });
 *
 * assertAlmostEquals(held.preload_N, 7500, 1e-9);
 * assertAlmostEquals(held.screws[0]?.pull_N ?? NaN, 308, 1e-6);
 * assert((held.screws[0]?.preloadFactor ?? 0) > 20);
 * assert(held.deflection_m < 20e-6);
 * ```
 */
export function holdDown(working: Working, section: string, spec: HoldDownSpec): HoldDown {
  const { bar, screw } = spec;
  const across = bar.shape === "round" ? bar.height_m : Math.min(bar.height_m, bar.width_m);
  if (!(bar.bore_m < across)) {
    throw new InputError("hold-down", "bore_m", "must be smaller than the bar", bar.bore_m);
  }
  const held = heldBar(spec.screws, spec.lifts);
  const { nominal_m: nominal } = threadOf(screw.thread);
  const preload_N = working.run(`${section}.preload_N`, preloadFromTorque, {
    torque: screw.torque_Nm,
    nutFactor: screw.nutFactor,
    nominal,
  });
  const { weaker, ...thread } = heldThread(working, section, spec, preload_N);
  const screws = screwsOf(working, section, spec, held, { preload_N, weaker });
  const torque = (step: string, preload: number): number =>
    working.run(`${section}.${step}.torque_Nm`, torqueForPreload, {
      preload,
      nutFactor: screw.nutFactor,
      nominal,
    });
  return {
    lift_N: liftOf(spec),
    preload_N,
    ...thread,
    mostTorque_Nm: torque("atMost", thread.mostPreload_N),
    leastTorque_Nm: torque("atLeast", Math.max(...screws.map((s) => s.preloadNeeded_N))),
    screws,
    ...bending(working, section, spec, held),
  };
}

const liftOf = ({ lifts }: HoldDownSpec): number =>
  lifts.reduce((sum, { force_N }) => sum + force_N, 0);

function screwsOf(
  working: Working,
  section: string,
  spec: HoldDownSpec,
  held: HeldBar,
  tight: { readonly preload_N: number; readonly weaker: HeldThread["weaker"] },
): HeldScrew[] {
  const middle = spec.screws.reduce((sum, x) => sum + x, 0) / spec.screws.length;
  const whole = {
    lift: liftOf(spec),
    screws: spec.screws.length,
    moment: spec.lifts.reduce((sum, { x_m, force_N }) => sum + force_N * (x_m - middle), 0),
    spread: spec.screws.reduce((sum, x) => sum + (x - middle) ** 2, 0),
  };
  const share = working.run(`${section}.screwShare`, screwShare, {
    stiffnessRatio: spec.stiffnessRatio,
  });
  return spec.screws.map((x_m, i): HeldScrew => {
    const at = `${section}.screws.${i}`;
    const stiffBar = working.run(`${at}.stiffBar_N`, shareOfStiffBar, {
      ...whole,
      offset: x_m - middle,
    });
    const bendingBar = held.pullsMost_N[i] ?? 0;
    const pull = working.run(`${at}.pull_N`, decidingPull, { stiffBar, bendingBar });
    const joint = { preload: tight.preload_N, share, pull };
    const pulled = pull > NO_PULL_N;
    const load = working.run(`${at}.screwLoad_N`, tightenedScrewLoad, joint);
    return {
      x_m,
      stiffBar_N: stiffBar,
      bendingBar_N: bendingBar,
      pull_N: pull,
      unloads: Math.min(stiffBar, held.pullsLeast_N[i] ?? 0) < -NO_PULL_N,
      preloadNeeded_N: working.run(`${at}.preloadNeeded_N`, clampForFactor, {
        pull: Math.max(0, pull),
        factor: spec.factor,
      }),
      preloadFactor: pulled
        ? working.run(`${at}.preloadFactor`, preloadFactor, { preload: tight.preload_N, pull })
        : undefined,
      screwLoad_N: load,
      clampLeft_N: working.run(`${at}.clampLeft_N`, clampLeft, joint),
      separationFactor: pulled
        ? working.run(`${at}.separationFactor`, separationFactor, joint)
        : undefined,
      strippingFactor: working.run(`${at}.strippingFactor`, strippingFactor, {
        ...tight.weaker,
        preload: load,
      }),
    };
  });
}

function bending(
  working: Working,
  section: string,
  { bar }: HoldDownSpec,
  held: HeldBar,
): Pick<HoldDown, "gaps" | "deflection_m" | "bendingStress_Pa"> {
  const { bore_m: bore, height_m: depth, width_m: width } = bar;
  const inertia = bar.shape === "round"
    ? working.run(`${section}.inertia_m4`, boredRoundInertia, { outside: depth, bore })
    : working.run(`${section}.inertia_m4`, boredRectangleInertia, { width, height: depth, bore });
  const gaps = held.gaps.map(({ from_m, to_m, flexure_N_m3 }, i) => ({
    from_m,
    to_m,
    deflection_m: working.run(`${section}.gaps.${i}.deflection_m`, barDeflection, {
      flexure: flexure_N_m3,
      elasticModulus: bar.elasticModulus_Pa,
      inertia,
    }),
  }));
  return {
    gaps,
    deflection_m: Math.max(...gaps.map(({ deflection_m }) => deflection_m)),
    bendingStress_Pa: working.run(`${section}.bendingStress_Pa`, bendingStress, {
      moment: held.moment_Nm,
      depth,
      inertia,
    }),
  };
}
