/** Whether the sensor port fits the bar, and which tools it takes. */
import { MATERIALS } from "@/lib/strength/mod.ts";
import { PORTS, type SealKind, type SensorPort, sensorPort } from "@/lib/thread/mod.ts";
import type { Criterion } from "../check.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";

/** What was found for the sensor port. */
export type PortResults = SensorPort;

/** Checks by how the port seals: a taper wedges where the others clamp. */
const OWED: Readonly<Record<SealKind, readonly Criterion[]>> = {
  cone: [
    CRITERIA.portHole,
    CRITERIA.portThread,
    CRITERIA.seatRing,
    CRITERIA.seatGallery,
    CRITERIA.sensorReach,
  ],
  face: [CRITERIA.portHole, CRITERIA.portThread],
  "o-ring": [CRITERIA.portHole, CRITERIA.portThread],
  taper: [CRITERIA.portTaper],
};

/** Lays the port out and judges hole, thread, seat and reach. */
export function judgePort(context: Context): PortResults | undefined {
  const { sensor, rail } = context.values;
  const { seal } = PORTS[sensor.port];
  const owed = OWED[seal];
  return context.subject(owed, () => {
    const { bore, height } = rail;
    if (bore === undefined || height === undefined) {
      const because = "Enter the bore of the gallery and the size of the bar.";
      for (const criterion of owed) context.check(criterion, { value: undefined, because });
      return undefined;
    }
    const across = rail.shape === "round" ? height : rail.width ?? height;
    const up = rail.galleryUp ?? height / 2;
    const [faceToAxis_m, faceWidth_m] = sensor.face === "opposite"
      ? [height - up, across]
      : [across / 2 - rail.galleryAcross, height];
    const port = sensorPort(context.working, {
      port: sensor.port,
      torque_Nm: sensor.torque,
      shearStrength_Pa: MATERIALS[rail.material].shear_Pa,
      faceToAxis_m,
      galleryBore_m: bore,
      faceWidth_m,
      isRound: rail.shape === "round",
      say: (length_m) => context.say(length_m, "length"),
      ...(sensor.drill !== undefined && { drill_m: sensor.drill }),
      ...(sensor.pilot !== undefined && { pilot_m: sensor.pilot }),
      ...(sensor.reach !== undefined && { reach_m: sensor.reach }),
      ...(sensor.nose !== undefined && { nose_m: sensor.nose }),
    });
    if (seal === "taper") {
      judgeTaper(context, port);
    } else {
      judgeHole(context, port);
      judgeThread(context, port);
    }
    if (seal === "cone") judgeSeat(context, port);
    return port;
  });
}

/** Whether the thread's own check fails, and so says what to change. */
function threadFails({ strippingFactor = 0, wallAround_m }: SensorPort): boolean {
  return strippingFactor < CRITERIA.portThread.limit || wallAround_m <= 0;
}

/** What was found, then what to change first where the port does not fit. */
function told(because: string, { changeFirst }: SensorPort): string {
  return changeFirst === undefined ? because : `${because} ${changeFirst}`;
}

const WIDER_THAN_FACE = "The thread is wider than the face.";

function judgeTaper(context: Context, port: SensorPort): void {
  const { taperThread_m, fullThreadAvailable_m, wallAround_m } = port;
  if (wallAround_m <= 0) {
    context.check(CRITERIA.portTaper, { value: 0, because: told(WIDER_THAN_FACE, port) });
    return;
  }
  const there_m = Math.max(0, fullThreadAvailable_m);
  context.check(CRITERIA.portTaper, {
    value: taperThread_m === undefined ? undefined : there_m / taperThread_m,
    because: taperThread_m === undefined
      ? "The standard gives no useful length for this thread."
      : told(
        `${context.say(there_m, "length")} above the gallery; a joint takes ${
          context.say(taperThread_m, "length")
        }. A taper thread wedges a thin boss apart: a straight thread with an O-ring is the better choice.`,
        port,
      ),
    result: "port.fullThreadAvailable_m",
  });
}

function judgeHole(context: Context, port: SensorPort): void {
  const { minorMin_m, minorMax_m, thread } = PORTS[context.values.sensor.port];
  const { drill_m, heightIso, heightUs } = port;
  const known = minorMin_m !== undefined && minorMax_m !== undefined;
  const height = heightIso === undefined || heightUs === undefined
    ? ""
    : ` It leaves ${context.say(heightIso, "ratio")} of the ISO thread height (${
      context.say(heightUs, "ratio")
    } on the US base).`;
  context.check(CRITERIA.portHole, {
    value: known ? drill_m : undefined,
    ...(known && { limit: [minorMin_m, minorMax_m] as const }),
    because: known
      ? `A ${
        context.say(drill_m, "length")
      } drill for ${thread}.${height} A drill cuts a little over its size.`
      : `The standard gives no hole limits for ${thread}.`,
    result: "port.heightIso",
  });
}

function judgeThread(context: Context, port: SensorPort): void {
  const { sensor } = context.values;
  const { strippingFactor, fullThreadAvailable_m: there_m, wallAround_m } = port;
  if (wallAround_m <= 0) {
    context.check(CRITERIA.portThread, { value: 0, because: told(WIDER_THAN_FACE, port) });
    return;
  }
  const torque = context.say(sensor.torque, "torque");
  const thread = there_m > 0
    ? `${context.say(there_m, "length")} of full thread against ${torque}.`
    : `No full thread is left to hold ${torque}.`;
  const isProvisional = PORTS[sensor.port].seal === "cone" && !isPlacedByReach(port);
  const because = !port.takesFlat
    ? `${thread} The face has no room for the flat that the seal takes.`
    : isProvisional
    ? `${thread} The seat is drawn as deep as the gallery allows; a shorter reach leaves less.`
    : thread;
  context.check(CRITERIA.portThread, {
    value: strippingFactor,
    because: threadFails(port) ? told(because, port) : because,
    result: "port.strippingFactor",
    ...((isProvisional || !port.takesFlat) && { atBest: "marginal" as const }),
  });
}

function judgeSeat(context: Context, port: SensorPort): void {
  context.check(CRITERIA.seatRing, {
    value: port.seatRing_m,
    because: "The ring between the tapping drill's diameter and the pilot's, where the nose seals.",
    result: "port.seatRing_m",
  });
  judgeSeatToGallery(context, port);
  judgeReach(context, port);
}

/** Whether the sensor's reach placed the seat; else it lies where its own aim puts it. */
function isPlacedByReach({ shoulderGap_m }: SensorPort): boolean {
  return shoulderGap_m !== undefined;
}

function judgeSeatToGallery(context: Context, port: SensorPort): void {
  const { seatToGallery_m, seatDepth_m, coneDepth_m, firstOpening_m } = port;
  const check = context.check.bind(context, CRITERIA.seatGallery);
  if (seatToGallery_m === undefined || coneDepth_m === undefined) {
    check({ value: undefined, because: "The pilot leaves no seat: take a smaller one." });
  } else if (seatDepth_m < 0 && !isPlacedByReach(port)) {
    check({
      value: firstOpening_m - coneDepth_m,
      because: "Even a seat that begins at the face leaves no more than this.",
    });
  } else if (seatDepth_m < 0) {
    check({
      value: undefined,
      because: "The sensor is too short: its seat would begin above the face.",
    });
  } else if (!isPlacedByReach(port)) {
    check({
      value: undefined,
      because: port.noseArrives === false
        ? "The nose does not meet the cone, so the seat has no place yet."
        : "Reach and nose of the sensor are not measured: the seat is drawn as deep as leaves the aim, so this can't be judged yet.",
    });
  } else {
    const because = "What is left below the cone before the gallery opens.";
    check({
      value: seatToGallery_m,
      because: seatToGallery_m < CRITERIA.seatGallery.limit && !threadFails(port)
        ? told(because, port)
        : because,
      result: "port.seatToGallery_m",
    });
  }
}

/** A nose that misses the cone, or has none to meet, leaves no gap worth the name. */
function judgeReach(context: Context, port: SensorPort): void {
  const { shoulderGap_m, noseArrives, seatDepth_m } = port;
  if (noseArrives === false) {
    context.check(CRITERIA.sensorReach, {
      value: 0,
      because: isPlacedByReach(port) && seatDepth_m < 0
        ? "The sensor is too short: its seat would begin above the face."
        : "The nose can't seal: it is as wide as the tapping hole, or falls into the pilot. See the port.",
    });
    return;
  }
  context.check(CRITERIA.sensorReach, {
    value: shoulderGap_m,
    because: shoulderGap_m === undefined
      ? "Measure the sensor: its reach from shoulder to sealing circle, and its nose."
      : "The nose must seal before the shoulder meets the bar; the seat is placed so that it does.",
    result: "port.shoulderGap_m",
  });
}
