/** What a hold-down is worked out from, and what comes out. */
import type { HeadKind, ScrewClass } from "@/lib/thread/mod.ts";
import type { Lift } from "./held_bar.ts";

/** What {@linkcode holdDown} needs. */
export interface HoldDownSpec {
  /** Lifts of the injectors at test pressure, where they act along the bar. */
  readonly lifts: readonly Lift[];
  /** Places of the screws along the bar, at two places or more [m]. */
  readonly screws: readonly number[];
  /** The bar that they hold. */
  readonly bar: {
    /** Its section. */
    readonly shape: "rectangular" | "round";
    /** Size along the lift, or diameter [m]. */
    readonly height_m: number;
    /** Size across; of a round bar not used [m]. */
    readonly width_m: number;
    /** Bore of the gallery [m]. */
    readonly bore_m: number;
    /** Modulus of elasticity [Pa]. */
    readonly elasticModulus_Pa: number;
  };
  /** The screws and how they are tightened. */
  readonly screw: {
    /** Thread: `M6x1`. */
    readonly thread: string;
    /** Mark on the head. */
    readonly class: ScrewClass;
    /** Head, or the washer under it. */
    readonly head: HeadKind;
    /** Tightening torque [N m]. */
    readonly torque_Nm: number;
    /** Nut factor [-]. */
    readonly nutFactor: number;
  };
  /** What the screws are tapped into. */
  readonly tapped: {
    /** Engagement of full thread [m]. */
    readonly engagement_m: number;
    /** Shear strength [Pa]. */
    readonly shearStrength_Pa: number;
    /** Tensile strength [Pa]. */
    readonly ultimate_Pa: number;
  };
  /** Yield strength of what the heads press on [Pa]. */
  readonly underHead_Pa: number;
  /** Stiffness of what is clamped over that of a screw [-]. */
  readonly stiffnessRatio: number;
  /** Factor asked of preload over pull, and of the thread against stripping [-]. */
  readonly factor: number;
}

/** What one screw bears. */
export interface HeldScrew {
  /** Where it stands [m]. */
  readonly x_m: number;
  /** Pull with a bar that doesn't bend [N]. */
  readonly stiffBar_N: number;
  /** The most pull with a bar that bends, however much its stands yield [N]. */
  readonly bendingBar_N: number;
  /** The pull it is judged by, the greater of both [N]. */
  readonly pull_N: number;
  /** Whether the bar may press down there: the screw unloads and holds nothing. */
  readonly unloads: boolean;
  /** Preload that it needs for the factor asked [N]. */
  readonly preloadNeeded_N: number;
  /** Preload over pull; none where nothing pulls. */
  readonly preloadFactor: number | undefined;
  /** Load in the screw [N]. */
  readonly screwLoad_N: number;
  /** Clamp left under the bar [N]; at nought or below it opens. */
  readonly clampLeft_N: number;
  /** Factor against opening; none where nothing pulls. */
  readonly separationFactor: number | undefined;
  /** Stripping load over the load in the screw. */
  readonly strippingFactor: number;
}

/** A part of the bar between screws, or beyond the last one. */
export interface HeldGap {
  /** Where it begins [m]. */
  readonly from_m: number;
  /** Where it ends [m]. */
  readonly to_m: number;
  /** How far it bends up, at the worst injector in it or midway [m]. */
  readonly deflection_m: number;
}

/** What a hold-down bears. */
export interface HoldDown {
  /** All lifts together [N]. */
  readonly lift_N: number;
  /** Preload of each screw by its torque [N]. */
  readonly preload_N: number;
  /** Preload over proof load of the screw [-]. */
  readonly proofShare: number;
  /** Load that strips a thread, tapped or the screw's, whichever is weaker [N]. */
  readonly strippingLoad_N: number;
  /** Which of them it is. */
  readonly strips: "tapped thread" | "screw's thread";
  /** Engagement at which the screw would break first [m]. */
  readonly engagementToBreak_m: number;
  /** Stress under the heads [Pa]. */
  readonly underHead_Pa: number;
  /** Most preload that screw, thread and face allow [N]. */
  readonly mostPreload_N: number;
  /** Torque for that [N m]. */
  readonly mostTorque_Nm: number;
  /** Torque for the preload that the worst screw needs [N m]. */
  readonly leastTorque_Nm: number;
  /** The screws, in the order given. */
  readonly screws: readonly HeldScrew[];
  /** The parts of the bar, from its datum end. */
  readonly gaps: readonly HeldGap[];
  /** The most that the bar bends up anywhere [m]. */
  readonly deflection_m: number;
  /** Stress of bending, pockets not counted [Pa]. */
  readonly bendingStress_Pa: number;
}
