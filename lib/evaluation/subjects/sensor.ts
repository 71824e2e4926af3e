/** Whether the sensor reads as high as the pressure goes. */
import { sensorRange } from "@/lib/sensor/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { ProofResults } from "./proof.ts";

/** Judges the sensor's range against the highest working pressure. */
export function judgeSensor(context: Context, proof: ProofResults | undefined): void {
  context.subject([CRITERIA.sensorRange], () => {
    const { range } = context.values.sensor;
    if (!proof) {
      context.check(CRITERIA.sensorRange, { value: undefined, because: "No working pressure." });
      return;
    }
    const { workingPressure_Pa, wantedPressure_Pa } = proof.pressures;
    const value = context.working.run("sensor.rangeFactor", sensorRange, {
      range,
      workingPressure: workingPressure_Pa,
    });
    context.check(CRITERIA.sensorRange, {
      value,
      because: `${context.say(range, "pressure")} of range; the highest working pressure is ${
        context.say(workingPressure_Pa, "pressure")
      }, a tenth of the set pressure for waves included.${
        wantedPressure_Pa > range
          ? " Take the sensor out for the proof test and plug its port."
          : ""
      }`,
      result: "sensor.rangeFactor",
    });
  });
}
