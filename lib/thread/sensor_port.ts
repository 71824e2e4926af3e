/** All that one sensor port is computed to be. */
import type { Working } from "@/lib/method/mod.ts";
import { type ConeSeat, layConeSeat } from "./cone_seat.ts";
import { type DrillSet, inchDrillsWithin, type NearDrill, nearestDrills } from "./drills.ts";
import { millimetres, type SayLength } from "./millimetres.ts";
import { nptUsefulLength } from "./pipe_geometry.ts";
import { otherPort } from "./other_port.ts";
import { portAdvice } from "./port_advice.ts";
import { fullThreadAboveGallery, fullThreadAboveSeat, wallAroundPort } from "./port_depths.ts";
import { firstOpening, lastOpening, spottedAxisDepth, tapRunOut } from "./port_geometry.ts";
import { type PortLayer, portStack } from "./port_stack.ts";
import { type Port, type PortId, PORTS } from "./ports.ts";
import { heightShareIso, heightShareUs, sharpHeight } from "./profile.ts";
import { spottedOff, takesFlat } from "./spotted_flat.ts";
import { FULL_FACTOR, LEAST_FACTOR, NUT_FACTOR } from "./stripping.ts";
import {
  preloadFromTorque,
  strippingFactor,
  tappedShearArea,
  threadForFactor,
} from "./thread_load.ts";
import { threadOf } from "./thread_of.ts";

/** Pilot of a cone seat where none is given [m]; ours. */
const PILOT_m = 0.004;

/** Threads of lead: a bottoming tap above a seat, a plug tap where the lead can run out. */
const LEAD_THREADS = { bottoming: 2, plug: 4 } as const;

/** What {@linkcode sensorPort} needs. */
export interface SensorPortSpec {
  /** Which port. */
  readonly port: PortId;
  /** Tapping drill at hand [m]; the list's drill unless given. */
  readonly drill_m?: number;
  /** Pilot of a cone seat [m]; 4 mm unless given. */
  readonly pilot_m?: number;
  /** Shoulder of the sensor to its sealing circle [m]. */
  readonly reach_m?: number;
  /** Diameter of the sensor's sealing circle [m]. */
  readonly nose_m?: number;
  /** Tightening torque [N m]. */
  readonly torque_Nm: number;
  /** Shear strength of the bar's material [Pa]. */
  readonly shearStrength_Pa: number;
  /** Depth of the gallery's axis below the port's face, before any flat is spotted [m]. */
  readonly faceToAxis_m: number;
  /** Bore of the gallery [m]. */
  readonly galleryBore_m: number;
  /** Width of the bar across the port's face [m]. */
  readonly faceWidth_m: number;
  /** Whether the bar is round, so that a flat spotted on it lowers the face; not unless given. */
  readonly isRound?: boolean;
  /** Writes a length in `says` and `stack`; in millimetres unless given. */
  readonly say?: SayLength;
}

/** What was found for a sensor port. Depths count from the face; on a round bar from the flat spotted on it. */
export interface SensorPort {
  /** Tapping drill used [m]. */
  readonly drill_m: number;
  /** Pilot that goes on into the gallery [m]; undefined for a port without a seat at its bottom. */
  readonly pilot_m: number | undefined;
  /** Whether it keeps to the hole's limits; undefined where the standard gives none. */
  readonly drillInside: boolean | undefined;
  /** Thread height over 5/8 of the thread's sharp height [-]; undefined for a taper thread. */
  readonly heightIso: number | undefined;
  /** Thread height over 3/4 of the thread's sharp height [-]; undefined for a taper thread. */
  readonly heightUs: number | undefined;
  /** Nearest drill of each set to the list's tapping drill. */
  readonly nearest: Readonly<Record<DrillSet, NearDrill>>;
  /** Depth where the gallery first opens [m]. */
  readonly firstOpening_m: number;
  /** Depth where the tapping drill is open all round [m]; undefined when it is as wide as the gallery. */
  readonly lastOpening_m: number | undefined;
  /** Full thread there is [m]; negative when none. */
  readonly fullThreadAvailable_m: number;
  /** Full thread that 3 times the pull of the torque takes [m]; undefined for a taper thread. */
  readonly fullThreadForTorque_m: number | undefined;
  /** Pull of the tightening torque [N]; undefined for a taper thread, which wedges. */
  readonly preload_N: number | undefined;
  /** Stripping load over pull [-]; 0 without full thread, undefined for a taper thread. */
  readonly strippingFactor: number | undefined;
  /** Useful length of the taper thread [m]; undefined for parallel threads. */
  readonly taperThread_m: number | undefined;
  /** Length that the tap leaves without full thread [m]: above a seat with one pitch of clearance. */
  readonly tapLead_m: number;
  /** Depth where the seat begins [m]; 0 for a seat at the face or mouth. */
  readonly seatDepth_m: number;
  /** Width of the cone seat's ring along the radius [m]. */
  readonly seatRing_m: number | undefined;
  /** Depth of the cone [m]. */
  readonly coneDepth_m: number | undefined;
  /** Length of the spotting drill's point, from the start of the cone to its tip [m]. */
  readonly spotPoint_m: number | undefined;
  /** Metal between cone and gallery [m]; negative when the cone runs into it. */
  readonly seatToGallery_m: number | undefined;
  /** Depth of the sealing circle [m]. */
  readonly seatAt_m: number | undefined;
  /** Gap under the sensor's shoulder when the nose seals [m]; negative: the shoulder bottoms first. */
  readonly shoulderGap_m: number | undefined;
  /** Whether the nose seals on the cone; undefined until that can be told. */
  readonly noseArrives: boolean | undefined;
  /** Wall between the thread and the nearer edge of the face [m]. */
  readonly wallAround_m: number;
  /** Whether the face has room for the flat that the seal takes. */
  readonly takesFlat: boolean;
  /** The port from the face down; empty when a cone seat has no room above the gallery. */
  readonly stack: readonly PortLayer[];
  /** What to change first where the port does not fit; undefined where it does. */
  readonly changeFirst: string | undefined;
  /** What does not fit and what to change, then what to know. */
  readonly says: readonly string[];
}

/**
 * Lays a sensor port out above the gallery and holds its thread against the tightening torque.
 *
 * Where it does not fit, the numbers come out all the same, negative or undefined, and `says`
 * tells what to change.
 *
 * @param working Takes the record, each number under `port.` and its key.
 * @param spec The port, the sensor and the bar.
 * @returns What was found.
 * @throws {InputError} When a number lies outside its method's range.
 *
 * @example A 25 mm bar with a central 12.7 mm gallery leaves 6.15 mm
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const port = sensorPort(new Working(), {
 *   port: "M10x1-cone",
 *   torque_Nm: 18,
 *   shearStrength_Pa: 207e6,
 *   faceToAxis_m: 0.0125,
 *   galleryBore_m: 0.0127,
 *   faceWidth_m: 0.025,
 * });
 *
 * assertAlmostEquals(port.firstOpening_m, 6.15e-3, 1e-9);
 * ```
 */
export function sensorPort(working: Working, spec: SensorPortSpec): SensorPort {
  const { galleryBore_m: gallery, faceWidth_m } = spec;
  const port = PORTS[spec.port];
  const face = { faceWidth_m, isRound: spec.isRound ?? false };
  const spottedOff_m = spottedOff(
    face,
    port.flat_m,
    (input) => working.run("port.spottedAxis_m", spottedAxisDepth, input),
  );
  const axisDepth = spec.faceToAxis_m - spottedOff_m;
  const { tappingDrill_m, minorMin_m, minorMax_m, pitch_m, nominal_m } = port;
  const drill_m = spec.drill_m ?? tappingDrill_m;
  const pilot_m = spec.pilot_m ?? PILOT_m;
  const limited = minorMin_m !== undefined && minorMax_m !== undefined;
  const firstOpening_m = working.run("port.firstOpening_m", firstOpening, { axisDepth, gallery });
  const lastOpening_m = drill_m < gallery
    ? working.run("port.lastOpening_m", lastOpening, { axisDepth, gallery, drill: drill_m })
    : undefined;
  const cone = port.seal === "cone";
  const seat = cone
    ? layConeSeat(working, {
      drill_m,
      pilot_m,
      opening_m: firstOpening_m,
      reach_m: spec.reach_m,
      nose_m: spec.nose_m,
    })
    : undefined;
  const tapLead_m = working.run("port.tapLead_m", tapRunOut, {
    pitch: pitch_m,
    leadThreads: cone ? LEAD_THREADS.bottoming : LEAD_THREADS.plug,
    clearThreads: cone ? 1 : 0,
  });
  const fullThreadAvailable_m = seat
    ? working.run("port.fullThreadAvailable_m", fullThreadAboveSeat, {
      seatDepth: seat.seatDepth_m,
      runOut: tapLead_m,
      opening: firstOpening_m,
    })
    : working.run("port.fullThreadAvailable_m", fullThreadAboveGallery, {
      opening: firstOpening_m,
      mouth: port.mouth_m,
    });
  const load = port.seal === "taper"
    ? taperLoad(working, port)
    : threadLoad(working, spec, port, fullThreadAvailable_m);
  const drillInside = limited ? drill_m >= minorMin_m && drill_m <= minorMax_m : undefined;
  const say = spec.say ?? millimetres;
  const found = { say, port, drill_m, pilot_m, opening_m: firstOpening_m, seat };
  return {
    drill_m,
    pilot_m: cone ? pilot_m : undefined,
    drillInside,
    ...heights(working, port, drill_m),
    nearest: nearestDrills(tappingDrill_m),
    firstOpening_m,
    lastOpening_m,
    fullThreadAvailable_m,
    ...load,
    tapLead_m,
    ...(seat ?? NO_SEAT),
    wallAround_m: working.run("port.wallAround_m", wallAroundPort, {
      faceWidth: faceWidth_m,
      nominal: nominal_m,
    }),
    takesFlat: takesFlat(face, port.flat_m),
    stack: portStack({
      ...found,
      fullThread_m: fullThreadAvailable_m,
      opened_m: cone
        ? pilotOpened(working, axisDepth, gallery, pilot_m)
        : lastOpening_m ?? axisDepth,
    }),
    ...portAdvice({
      ...found,
      drillInside,
      inchInside: limited ? inchDrillsWithin(minorMin_m, minorMax_m) : [],
      reach_m: spec.reach_m,
      nose_m: spec.nose_m,
      galleryBore_m: gallery,
      farWall_m: axisDepth + gallery / 2,
      face,
      spottedOff_m,
      fullThread_m: fullThreadAvailable_m,
      fullThreadForTorque_m: load.fullThreadForTorque_m,
      fullThreadLeast_m: load.fullThreadForTorque_m === undefined
        ? load.taperThread_m
        : load.fullThreadForTorque_m * LEAST_FACTOR / FULL_FACTOR,
      tapLead_m,
      taperThread_m: load.taperThread_m,
      other: () =>
        otherPort({
          port,
          opening_m: firstOpening_m + spottedOff_m,
          face,
          torque_Nm: spec.torque_Nm,
          shearStrength_Pa: spec.shearStrength_Pa,
        }),
    }),
  };
}

/** The seat of a port that seals at its face, mouth or thread. */
const NO_SEAT: Record<Exclude<keyof ConeSeat, "seatDepth_m">, undefined> & {
  readonly seatDepth_m: number;
} = {
  seatDepth_m: 0,
  seatRing_m: undefined,
  coneDepth_m: undefined,
  spotPoint_m: undefined,
  seatToGallery_m: undefined,
  seatAt_m: undefined,
  shoulderGap_m: undefined,
  noseArrives: undefined,
};

function pilotOpened(
  working: Working,
  axisDepth: number,
  gallery: number,
  pilot: number,
): number {
  return pilot < gallery
    ? working.run("port.pilotOpened_m", lastOpening, { axisDepth, gallery, drill: pilot })
    : axisDepth;
}

function heights(
  working: Working,
  port: Port,
  drill: number,
): Pick<SensorPort, "heightIso" | "heightUs"> {
  // A taper thread is cut to a gauge, not to a height that the drill decides.
  if (port.seal === "taper") return { heightIso: undefined, heightUs: undefined };
  const { nominal_m: nominal, pitch_m: pitch, flank_rad: flank } = threadOf(port.thread);
  const height = working.run("port.sharpHeight_m", sharpHeight, { pitch, flank });
  const of = { nominal, drill, sharpHeight: height };
  return {
    heightIso: working.run("port.heightIso", heightShareIso, of),
    heightUs: working.run("port.heightUs", heightShareUs, of),
  };
}

type Load = Pick<
  SensorPort,
  "preload_N" | "fullThreadForTorque_m" | "strippingFactor" | "taperThread_m"
>;

function taperLoad(working: Working, { nominal_m: outside, pitch_m: pitch }: Port): Load {
  return {
    preload_N: undefined,
    fullThreadForTorque_m: undefined,
    strippingFactor: undefined,
    taperThread_m: working.run("port.taperThread_m", nptUsefulLength, { outside, pitch }),
  };
}

function threadLoad(
  working: Working,
  spec: SensorPortSpec,
  port: Port,
  fullThread: number,
): Load {
  const thread = threadOf(port.thread);
  const shearStrength = spec.shearStrength_Pa;
  const preload = working.run("port.preload_N", preloadFromTorque, {
    torque: spec.torque_Nm,
    nutFactor: NUT_FACTOR,
    nominal: thread.nominal_m,
  });
  const areaPerLength = working.run("port.shearArea_m", tappedShearArea, {
    screwMajorMin: thread.screw.majorMin_m,
    holePitchMax: thread.hole.pitchMax_m,
    pitch: thread.pitch_m,
    flank: thread.flank_rad,
  });
  const bar = { areaPerLength, shearStrength, preload };
  return {
    preload_N: preload,
    fullThreadForTorque_m: working.run("port.fullThreadForTorque_m", threadForFactor, {
      ...bar,
      factor: FULL_FACTOR,
    }),
    // Without full thread the factor is 0: the port fails, it is not left open.
    strippingFactor: working.run("port.strippingFactor", strippingFactor, {
      ...bar,
      fullThread: Math.max(0, fullThread),
    }),
    taperThread_m: undefined,
  };
}
