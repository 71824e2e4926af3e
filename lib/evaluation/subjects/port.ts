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
    const [depth_m, faceWidth_m] = sensor.face === "opposite" ? [height, across] : [across, height];
    const port = sensorPort(context.working, {
      port: sensor.port,
      torque_Nm: sensor.torque,
      shearStrength_Pa: MATERIALS[rail.material].shear_Pa,
      faceToAxis_m: depth_m / 2,
      galleryBore_m: bore,
      faceWidth_m,
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

function judgeTaper(context: Context, port: SensorPort): void {
  const { taperThread_m, fullThreadAvailable_m } = port;
  context.check(CRITERIA.portTaper, {
    value: taperThread_m === undefined ? undefined : fullThreadAvailable_m / taperThread_m,
    because: taperThread_m === undefined
      ? "The standard gives no useful length for this thread."
      : `${
        context.say(Math.max(0, fullThreadAvailable_m), "length")
      } above the gallery; a joint takes ${
        context.say(taperThread_m, "length")
      }. A taper thread wedges a thin boss apart: a straight thread with an O-ring is the better choice.`,
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
  context.check(CRITERIA.portThread, {
    value: port.strippingFactor,
    because: port.strippingFactor === undefined
      ? `No full thread is left above the gallery. ${port.says[0] ?? ""}`.trim()
      : `${context.say(Math.max(0, port.fullThreadAvailable_m), "length")} of full thread against ${
        context.say(sensor.torque, "torque")
      }.`,
    result: "port.strippingFactor",
  });
}

/** A nose that misses the cone leaves no gap worth the name. */
function judgeReach(context: Context, { shoulderGap_m, noseArrives }: SensorPort): void {
  if (noseArrives === false) {
    context.check(CRITERIA.sensorReach, {
      value: 0,
      because:
        "The nose can't seal: it is as wide as the tapping hole, or falls into the pilot. See the port.",
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

function judgeSeat(context: Context, port: SensorPort): void {
  context.check(CRITERIA.seatRing, {
    value: port.seatRing_m,
    because: "The ring between the tapping drill's diameter and the pilot's, where the nose seals.",
    result: "port.seatRing_m",
  });
  context.check(CRITERIA.seatGallery, {
    value: port.seatToGallery_m,
    because: "What is left below the cone before the gallery opens.",
    result: "port.seatToGallery_m",
  });
  judgeReach(context, port);
}
