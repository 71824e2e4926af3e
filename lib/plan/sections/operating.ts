/** The points that the engine is held at to look at its supply. */
import { section } from "../field.ts";

const BATTERY = {
  type: "quantity",
  kind: "voltage",
  max: 16,
} as const;

/** The operating section of a plan. */
export const operating = section({
  title: "Operating points",
  about: "Idle, cruise, cranking and priming; full power stands with engine and injectors.",
  fields: {
    idleVoltage: {
      ...BATTERY,
      label: "Voltage at idle",
      hint: "At the battery, fans and lights on, like 13.2 V",
      min: 9,
      because: "12 V systems run between 9 and 16 V",
      default: {
        text: "13.2 V",
        because: "An alternator that turns slowly",
        source: "common practice, no source",
      },
    },
    cruiseVoltage: {
      ...BATTERY,
      label: "Voltage at cruise",
      hint: "At the battery, like 13.8 V",
      min: 9,
      because: "12 V systems run between 9 and 16 V",
      default: {
        text: "13.8 V",
        because: "An alternator with little to do",
        source: "common practice, no source",
      },
    },
    crankVoltage: {
      ...BATTERY,
      label: "Voltage while cranking",
      hint: "At the battery, cold, like 9.5 V",
      why: "Pump and injectors have to work on it",
      min: 6,
      because: "6 to 16 V",
      default: {
        text: "9.5 V",
        because: "A healthy battery under its starter",
        source: "common practice, no source",
      },
    },
    primeVoltage: {
      ...BATTERY,
      label: "Voltage at key-on",
      hint: "At the battery, engine standing, like 12.2 V",
      why: "How soon the rail is filled and at pressure",
      min: 8,
      because: "8 to 16 V",
      default: {
        text: "12.2 V",
        because: "A battery that is half full",
        source: "common practice, no source",
      },
    },
    cruiseShare: {
      type: "quantity",
      kind: "ratio",
      label: "Fuel at cruise",
      hint: "As a share of the fuel at full power, like 12 %",
      why: "Little is burnt, so nearly all returns and warms the tank",
      min: 0.01,
      max: 0.6,
      because: "1 to 60 %",
      default: {
        text: "12 %",
        because: "A light car on a level road",
        source: "common practice, no source",
      },
    },
    cruiseSpeed: {
      type: "quantity",
      kind: "rotation",
      label: "Engine speed at cruise",
      hint: "Like 3000 rpm",
      min: 300 / 60,
      max: 20000 / 60,
      because: "300 to 20 000 rpm, and at most the engine's maximum speed",
      default: (v) => {
        const speed_rev_s = v.number("engine.powerSpeed");
        if (speed_rev_s === undefined) return undefined;
        const rpm = Math.round(speed_rev_s * 60 * 0.45 / 50) * 50;
        return {
          text: `${rpm} rpm`,
          because: "Some 45 % of the power peak's speed",
          source: "ours",
        };
      },
    },
    cruisePressure: {
      type: "quantity",
      kind: "pressure",
      reference: "absolute",
      label: "Manifold pressure at cruise",
      hint: "Absolute, like 55 kPa",
      why: "A manifold-referenced regulator follows it",
      min: 1.5e4,
      max: 3e5,
      because: "15 to 300 kPa absolute",
      default: {
        text: "55 kPa",
        because: "Part throttle on a level road",
        source: "common practice, no source",
      },
    },
  },
});
