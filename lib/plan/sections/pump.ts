/** The pump and the voltage that reaches it. */
import { section } from "../field.ts";

/** The pump section of a plan. */
export const pump = section({
  title: "Pump",
  about: "What it delivers, at which pressure and voltage.",
  fields: {
    voltage: {
      type: "quantity",
      kind: "voltage",
      label: "Voltage of the pump's figures",
      hint: "At which its flow is stated, like 13.5 V",
      first: true,
      min: 6,
      max: 18,
      because: "pump data is stated between 6 and 18 V",
      default: {
        text: "13.5 V",
        because: "Where flow sheets are usually measured",
        source: "common practice, no source",
      },
    },
    points: {
      type: "list",
      label: "Point",
      hint:
        "Flow of one pump at a pressure rise; one point is enough to begin, the curve's points judge better",
      max: 10,
      rows: 6,
      fields: {
        pressure: {
          type: "quantity",
          kind: "pressure",
          label: "Pressure",
          hint: "Like 4 bar or 58 psi",
          first: true,
          min: 0,
          max: 1.6e6,
          because: "0 to 16 bar",
        },
        flow: {
          type: "quantity",
          kind: "pumpFlow",
          label: "Flow",
          hint: "Like 340 L/h",
          why: "It has to exceed what the engine burns, hot and on a low battery",
          first: true,
          min: 0,
          max: 1e-3,
          because: "0 to 3600 L/h",
        },
      },
    },
    count: {
      type: "count",
      label: "Pumps side by side",
      hint: "Alike, in parallel, like 1",
      min: 1,
      max: 4,
      because: "1 to 4",
      default: { text: "1", because: "One pump", source: "ours" },
    },
    wireLoss: {
      type: "quantity",
      kind: "voltage",
      label: "Voltage lost in the pump's wiring",
      hint: "Battery to pump and back, pump running, like 0.5 V",
      why: "A pump at low voltage gives less",
      min: 0,
      max: 4,
      because: "0 to 4 V",
      default: { text: "0.5 V", because: "The most that good wiring should lose", source: "ours" },
    },
    shutOff: {
      type: "quantity",
      kind: "pressure",
      label: "Pressure at shut-off or of the relief valve",
      hint: "The most the pump can make with no flow, gauge, like 8 bar",
      why: "A blocked return or stuck regulator lets it reach the rail",
      min: 1e5,
      max: 2e6,
      because: "1 to 20 bar",
    },
    place: {
      type: "choice",
      label: "Place",
      hint: "Where the pump sits",
      options: { tank: "in the tank", line: "outside, in the line" },
      default: {
        text: "tank",
        because: "Cooled and flooded by fuel",
        source: "common practice, no source",
      },
    },
  },
});
