/** A lift pump and the surge tank that it fills. */
import { LIFTED, RETURNS } from "../conditions.ts";
import { section } from "../field.ts";
import { FLOW_AT_PRESSURE } from "../pump_points.ts";

/** The lift section of a plan. */
export const lift = section({
  title: "Lift pump and surge tank",
  about: "A small pump that keeps a small tank full, from which the main pump draws.",
  fields: {
    present: {
      type: "choice",
      label: "Surge tank",
      hint: "Whether a lift pump fills one",
      why: "Cornering and braking uncover the inlet of a pump that draws from the tank",
      options: { none: "none", lift: "a lift pump fills one" },
      default: { text: "none", because: "The pump draws from the tank itself", source: "ours" },
    },
    points: {
      type: "list",
      label: "Lift point",
      title: "Points of the lift pump's curve",
      hint: "Flow at a pressure rise, as for the main pump",
      max: 10,
      rows: 2,
      fields: FLOW_AT_PRESSURE,
      ...LIFTED,
    },
    voltage: {
      type: "quantity",
      kind: "voltage",
      label: "Voltage of the lift pump's figures",
      hint: "At which its flow is stated, like 13.5 V",
      ...LIFTED,
      min: 6,
      max: 18,
      because: "pump data is stated between 6 and 18 V",
      default: {
        text: "13.5 V",
        because: "Where flow sheets are usually measured",
        source: "common practice, no source",
      },
    },
    surgeVolume: {
      type: "quantity",
      kind: "volume",
      label: "Usable volume of the surge tank",
      hint: "From full down to the main pump's inlet, like 1.5 L",
      why: "It feeds the engine while the lift pump draws air",
      ...LIFTED,
      min: 1e-4,
      max: 0.01,
      because: "0.1 to 10 L",
    },
    returnTo: {
      type: "choice",
      label: "The rail's return goes to",
      hint: "Where the fuel that is not burnt ends",
      why: "Into the surge tank it keeps that full, and hot",
      when: (v, row) => LIFTED.when(v, row) && RETURNS.when(v, row),
      otherwise: "nothing returns to a surge tank",
      options: { surge: "the surge tank", tank: "the main tank" },
      default: {
        text: "surge",
        because: "The lift pump then only has to make up what is burnt",
        source: "common practice, no source",
      },
    },
  },
});
