/** What to say about a sensor port, and what to change where it does not fit. */
import { type ConeSeat, GAP_AIM_m, SEAT_LEFT_AIM_m, SEAT_LEFT_LIMIT_m } from "./cone_seat.ts";
import type { Drill } from "./drills.ts";
import type { SayLength } from "./millimetres.ts";
import type { OtherPort } from "./other_port.ts";
import type { Port } from "./ports.ts";
import { type PortFace, takesFlat } from "./spotted_flat.ts";
import { LEAST_FACTOR } from "./stripping.ts";

/** Least width of a seat ring [m]; ours. */
const RING_LIMIT_m = 0.001;

/** What {@linkcode portAdvice} looks at. */
export interface PortAdviceInput {
  /** Writes a length as the reader wants it. */
  readonly say: SayLength;
  /** The port. */
  readonly port: Port;
  /** Drill used [m]. */
  readonly drill_m: number;
  /** Whether it keeps to the hole's limits. */
  readonly drillInside: boolean | undefined;
  /** Inch drills that keep to the limits. */
  readonly inchInside: readonly Drill[];
  /** Pilot [m]. */
  readonly pilot_m: number;
  /** Reach of the sensor [m]. */
  readonly reach_m: number | undefined;
  /** Nose of the sensor [m]. */
  readonly nose_m: number | undefined;
  /** Bore of the gallery [m]. */
  readonly galleryBore_m: number;
  /** Depth of the gallery's far wall [m]. */
  readonly farWall_m: number;
  /** The face. */
  readonly face: PortFace;
  /** What spotting a flat takes off a round bar [m]. */
  readonly spottedOff_m: number;
  /** Depth where the gallery first opens [m]. */
  readonly opening_m: number;
  /** Full thread there is [m]. */
  readonly fullThread_m: number;
  /** Full thread that the torque asks for [m]. */
  readonly fullThreadForTorque_m: number | undefined;
  /** Full thread without which the port does not fit [m]; undefined where nothing tells it. */
  readonly fullThreadLeast_m: number | undefined;
  /** Length of the tap that cuts no full thread [m]. */
  readonly tapLead_m: number;
  /** Useful length of a taper thread [m]. */
  readonly taperThread_m: number | undefined;
  /** The seat at the bottom. */
  readonly seat: ConeSeat | undefined;
  /** Finds another port that fits; asked only where this one does not. */
  readonly other: () => OtherPort | undefined;
}

/** Sentences about a port. */
export interface PortAdvice {
  /** What to change first where the port does not fit; undefined where it does. */
  readonly changeFirst: string | undefined;
  /** What does not fit and what to change, then what to know. */
  readonly says: readonly string[];
}

/**
 * Sentences about a port: first what does not fit with what to change, then what to know.
 *
 * @param input The port and what was found.
 * @returns The sentences.
 *
 * @example A hole as wide as the gallery
 * ```ts
 * import { assert } from "@std/assert";
 * import { PORTS } from "./ports.ts";
 *
 * const { says } = portAdvice({
 *   say: (length_m) => `${length_m * 1000} mm`,
 *   port: PORTS["M12x1.5-face"],
 *   drill_m: 0.0105,
 *   drillInside: true,
 *   inchInside: [],
 *   pilot_m: 0.004,
 *   reach_m: undefined,
 *   nose_m: undefined,
 *   galleryBore_m: 0.01,
 *   farWall_m: 0.0175,
 *   face: { faceWidth_m: 0.025, isRound: false },
 *   spottedOff_m: 0,
 *   opening_m: 0.0075,
 *   fullThread_m: 0.0075,
 *   fullThreadForTorque_m: 0.005,
 *   fullThreadLeast_m: 0.0033,
 *   tapLead_m: 0.006,
 *   taperThread_m: undefined,
 *   seat: undefined,
 *   other: () => undefined,
 * });
 *
 * assert(says.some((text) => text.includes("never opens all round")));
 * ```
 */
export function portAdvice(input: PortAdviceInput): PortAdvice {
  const changes = changesOf(input);
  return {
    changeFirst: fits(input) ? undefined : changes[0],
    says: [
      ...ofThread(input),
      ...ofSeat(input),
      ...changes,
      ...standingProud(input),
      ...ofGallery(input),
      ...ofFace(input),
      ...ofDrill(input),
    ],
  };
}

/** A hair's breadth below which two lengths are the same [m]. */
const SAME_m = 1e-9;

/** Whether thread, seat and face keep to their limits. */
function fits(input: PortAdviceInput): boolean {
  const { port, fullThread_m, fullThreadLeast_m = 0, seat, face } = input;
  if (fullThread_m < Math.max(SAME_m, fullThreadLeast_m - SAME_m)) return false;
  if (port.nominal_m >= face.faceWidth_m) return false;
  if (seat === undefined) return true;
  return seat.seatDepth_m >= 0 &&
    (seat.seatToGallery_m ?? SEAT_LEFT_LIMIT_m) >= SEAT_LEFT_LIMIT_m - SAME_m;
}

/** What to change, in the order to try it. */
function changesOf(input: PortAdviceInput): string[] {
  const { say, fullThread_m, fullThreadForTorque_m, taperThread_m, tapLead_m, seat, port } = input;
  const changes: string[] = [];
  const other = fits(input) ? undefined : input.other();
  const leads = other !== undefined && other.factor >= LEAST_FACTOR;
  if (leads) changes.push(toOther(say, other));
  const needed_m = fullThreadForTorque_m ?? taperThread_m ?? 0;
  const metal_m = seat?.seatToGallery_m === undefined ? 0 : SEAT_LEFT_AIM_m - seat.seatToGallery_m;
  // A seat placed by the sensor's reach does not move with the bar: only the metal below it does.
  const isByReach = seat?.shoulderGap_m !== undefined;
  const by_m = isByReach ? metal_m : Math.max(metal_m, needed_m - fullThread_m);
  if (by_m > SAME_m) changes.push(deeper(say, by_m));
  if (isByReach && needed_m - (seat.seatDepth_m - tapLead_m) > SAME_m) {
    changes.push(
      by_m > SAME_m
        ? "Even then the thread holds less than 3 times the pull: ask for a lower torque, or for a longer reach in a bar deeper by as much again."
        : "Take a sensor with a longer reach or a lower torque, or another port.",
    );
  }
  // A port that holds the pull only at a lower torque is no first choice.
  if (other !== undefined && !leads) changes.push(toOther(say, other));
  if (port.nominal_m >= input.face.faceWidth_m) {
    changes.push("Take a wider bar, or a port with a smaller thread.");
  }
  return changes;
}

function toOther(say: SayLength, { port, fullThread_m, factor }: OtherPort): string {
  const has = `${port.title}, has ${say(fullThread_m)} of full thread above this gallery`;
  return factor >= LEAST_FACTOR
    ? `First look at another port, with a sensor to suit: ${has}, ${
      Math.floor(factor * 10) / 10
    } times what the same torque pulls.`
    : `Or, only if its maker allows ${
      Math.floor(factor / LEAST_FACTOR * 100)
    } % of this torque, another port with a sensor to suit: ${has}, and holds twice the pull of that torque.`;
}

function ofThread(input: PortAdviceInput): string[] {
  const { say, port, fullThread_m: there, fullThreadForTorque_m, taperThread_m } = input;
  const says: string[] = [];
  if (port.seal === "taper") {
    says.push(
      "A taper thread wedges: its torque spreads the bar and pulls nothing, so no factor against stripping applies.",
    );
  }
  const needed = fullThreadForTorque_m ?? taperThread_m;
  if (needed === undefined || there >= needed) return says;
  const why = port.seal === "taper"
    ? "is its useful length by the standard"
    : "holds 3 times the pull of the tightening torque";
  const found = there > 0 ? `${say(there)} of full thread is left` : "No full thread is left";
  says.push(`${found}; ${say(needed)} ${why}.`);
  return says;
}

/** How to get more metal between face and gallery. */
function deeper(say: PortAdviceInput["say"], by_m: number): string {
  return `It takes ${say(by_m)} more between face and gallery: a bar ${
    say(2 * by_m)
  } thicker with the gallery centred, or the gallery offset by ${
    say(by_m)
  }; else a port in the bar's end, or a boss.`;
}

function ofSeat(input: PortAdviceInput): string[] {
  const { say, seat, pilot_m, drill_m, nose_m, reach_m } = input;
  if (seat === undefined) return [];
  const says: string[] = [];
  const { coneDepth_m, seatRing_m, seatToGallery_m, seatAt_m, seatDepth_m } = seat;
  if (coneDepth_m === undefined) {
    says.push(
      `A ${say(pilot_m)} pilot leaves no seat in a ${say(drill_m)} hole: take a smaller pilot.`,
    );
  } else if (seatRing_m < RING_LIMIT_m) {
    says.push(
      `The seat ring is ${say(seatRing_m)} wide, under ${say(RING_LIMIT_m)}: take a smaller pilot.`,
    );
  }
  if (nose_m !== undefined && nose_m >= drill_m) {
    says.push(`A ${say(nose_m)} nose does not enter a ${say(drill_m)} hole.`);
  } else if (nose_m !== undefined && nose_m <= pilot_m) {
    says.push(
      `A ${say(nose_m)} nose falls into a ${
        say(pilot_m)
      } pilot and never meets the seat: take a smaller pilot.`,
    );
  }
  if (nose_m === undefined || reach_m === undefined) {
    says.push(
      "Measure the sensor's reach, shoulder to sealing circle, and its nose; until then the seat is shown as deep as the gallery allows.",
    );
  }
  if (reach_m === undefined && seatAt_m !== undefined && seatDepth_m > 0) {
    says.push(
      `With the seat there the sensor's reach must be at least ${say(seatAt_m + GAP_AIM_m)}.`,
    );
  }
  if (seatDepth_m < 0) {
    says.push(
      seatAt_m !== undefined && reach_m !== undefined
        ? "The sensor is too short: its seat would begin above the face."
        : "The bar has no room for a seat above the gallery: it would begin above the face.",
    );
  } else if (seatToGallery_m !== undefined && seatToGallery_m < SEAT_LEFT_AIM_m - SAME_m) {
    says.push(
      seatToGallery_m > 0
        ? `${say(seatToGallery_m)} of metal is left between seat and gallery; aim for ${
          say(SEAT_LEFT_AIM_m)
        }.`
        : "A seat at the sensor's reach runs into the gallery.",
    );
  }
  return says;
}

/**
 * The other way out: a shallower seat, the sensor standing proud. Offered only where the
 * thread above it holds.
 */
function standingProud(
  { say, seat, tapLead_m, reach_m, opening_m, fullThreadLeast_m }: PortAdviceInput,
): string[] {
  const { coneDepth_m, seatAt_m, seatToGallery_m, seatDepth_m = 0 } = seat ?? {};
  if (coneDepth_m === undefined || seatAt_m === undefined || reach_m === undefined) return [];
  if (seatToGallery_m === undefined || seatToGallery_m >= SEAT_LEFT_AIM_m - SAME_m) return [];
  const shallow_m = opening_m - SEAT_LEFT_AIM_m - coneDepth_m;
  const thread_m = shallow_m - tapLead_m;
  if (fullThreadLeast_m === undefined || thread_m < fullThreadLeast_m) return [];
  return [
    `Or begin the seat at ${say(shallow_m)}: the shoulder then stands ${
      say(reach_m - (seatAt_m - seatDepth_m + shallow_m))
    } proud and ${say(thread_m)} of full thread is left.`,
  ];
}

function ofGallery(input: PortAdviceInput): string[] {
  const { say, drill_m, galleryBore_m, opening_m, tapLead_m, farWall_m, seat, port, pilot_m } =
    input;
  const says: string[] = [];
  if (drill_m >= galleryBore_m) {
    says.push(
      `A ${say(drill_m)} hole is as wide as the ${
        say(galleryBore_m)
      } gallery or wider: it never opens all round, and no full thread is left beyond first opening.`,
    );
  }
  if (seat !== undefined && pilot_m >= galleryBore_m) {
    says.push(`A ${say(pilot_m)} pilot is as wide as the gallery: take a smaller one.`);
  }
  if (opening_m <= 0) says.push("The gallery comes out of the face: check bore and bar.");
  if (seat === undefined && port.seal !== "taper" && opening_m + tapLead_m > farWall_m) {
    says.push(
      "The lead of a plug tap meets the gallery's far wall before the thread is full: finish with a bottoming tap.",
    );
  }
  return says;
}

function ofFace({ say, port, face, spottedOff_m }: PortAdviceInput): string[] {
  const { flat_m, nominal_m } = port;
  const { faceWidth_m, isRound } = face;
  if (nominal_m >= faceWidth_m) return ["The thread is wider than the face."];
  if (flat_m === undefined) return [];
  if (!takesFlat(face, flat_m)) {
    return [
      `The seal takes a flat of ${say(flat_m)}; the ${isRound ? "round bar" : "face"} is ${
        say(faceWidth_m)
      } wide.`,
    ];
  }
  return isRound
    ? [
      `A flat of ${say(flat_m)} on this round bar is ${
        say(spottedOff_m)
      } deep; all depths count from it.`,
    ]
    : [];
}

function ofDrill({ say, port, drill_m, drillInside, inchInside }: PortAdviceInput): string[] {
  const { minorMin_m, minorMax_m, tappingDrill_m, thread } = port;
  if (minorMin_m === undefined || minorMax_m === undefined) return [];
  const says: string[] = [];
  if (drillInside === false) {
    says.push(
      `A ${say(drill_m)} hole is outside ${say(minorMin_m)} to ${say(minorMax_m)} for ${thread}: ${
        drill_m < minorMin_m ? "the tap binds and may break" : "the thread is left too shallow"
      }. The list's drill is ${say(tappingDrill_m)}.`,
    );
  }
  says.push(
    inchInside.length === 0
      ? `No inch drill lies inside the limits of ${thread}.`
      : `Inch drills inside the limits of ${thread}: ${
        inchInside.map(({ name }) => name).join(", ")
      }.`,
  );
  return says;
}
