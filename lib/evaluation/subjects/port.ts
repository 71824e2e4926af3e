/** Whether the sensor port fits the bar, and which tools it takes. */
import { MATERIALS } from "@/lib/strength/mod.ts";
import { PORTS, type SensorPort, sensorPort } from "@/lib/thread/mod.ts";
import type { Criterion } from "../check.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";

/** What was found for the sensor port. */
export type PortResults = SensorPort;

const OWED = [
  CRITERIA.portHole,
  CRITERIA.portThread,
  CRITERIA.seatRing,
  CRITERIA.seatGallery,
  CRITERIA.sensorReach,
] as const;

/** Checks that only a port with its seat at the bottom has. */
const OF_CONE: readonly Criterion[] = [
  CRITERIA.seatRing,
  CRITERIA.seatGallery,
  CRITERIA.sensorReach,
];

/** Lays the port out and judges hole, thread, seat and reach. */
export function judgePort(context: Context): PortResults | undefined {
  const { sensor, rail } = context.values;
  const cone = PORTS[sensor.port].seal === "cone";
  const owed = OWED.filter((criterion) => cone || !OF_CONE.includes(criterion));
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
      ...(sensor.drill !== undefined && { drill_m: sensor.drill }),
      ...(sensor.pilot !== undefined && { pilot_m: sensor.pilot }),
      ...(sensor.reach !== undefined && { reach_m: sensor.reach }),
      ...(sensor.nose !== undefined && { nose_m: sensor.nose }),
    });
    judgeHole(context, port);
    judgeThread(context, port);
    if (cone) judgeSeat(context, port);
    return port;
  });
}

function judgeHole(context: Context, port: SensorPort): void {
  const { minorMin_m, minorMax_m, thread } = PORTS[context.values.sensor.port];
  if (minorMin_m === undefined || minorMax_m === undefined) return;
  context.check(CRITERIA.portHole, {
    value: port.drill_m,
    limit: [minorMin_m, minorMax_m],
    because: `A ${context.say(port.drill_m, "length")} drill leaves ${
      context.say(port.heightIso, "ratio")
    } of the ISO thread height in ${thread} (${
      context.say(port.heightUs, "ratio")
    } on the US base). A drill cuts a little over its size.`,
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
  context.check(CRITERIA.sensorReach, {
    value: port.shoulderGap_m,
    because: port.shoulderGap_m === undefined
      ? "Measure the sensor: its reach from shoulder to sealing circle, and its nose."
      : "The nose must seal before the shoulder meets the bar.",
    result: "port.shoulderGap_m",
  });
}
