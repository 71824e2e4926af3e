/** What holds the pressure. */
import { RETURNS } from "../conditions.ts";
import { section } from "../field.ts";

/** The regulator section of a plan. */
export const regulator = section({
  title: "Regulator",
  about: "Where rail pressure comes from.",
  fields: {
    layout: {
      type: "choice",
      label: "Layout of the fuel system",
      hint: "Whether fuel flows through the rail and back, or only to the injectors",
      options: {
        return: "return: regulator after the rail",
        "dead-ended": "dead-ended: regulator before the rail",
      },
      default: {
        text: "return",
        because: "The usual layout of a modified engine",
        source: "common practice, no source",
      },
    },
    place: {
      type: "choice",
      label: "Place of the regulator",
      hint: "Where it stands before a dead-ended rail",
      when: (v) => v.word("regulator.layout") === "dead-ended",
      otherwise: "the regulator stands after the rail",
      options: {
        tank: "at the tank, letting its surplus out there",
        feed: "in the feed near the rail, with a return line of its own",
      },
      default: {
        text: "tank",
        because: "The usual place in a system without a return line",
        source: "common practice, no source",
      },
    },
    reference: {
      type: "choice",
      label: "Reference of the regulator",
      hint: "What the regulator's spring side sees",
      why: "A manifold reference keeps the pressure across the injectors constant",
      options: { manifold: "intake manifold pressure", atmosphere: "outside air" },
      default: (v) =>
        v.word("regulator.layout") === "dead-ended"
          ? {
            text: "atmosphere",
            because: "A regulator at the tank seldom has a line to the manifold",
            source: "common practice, no source",
          }
          : {
            text: "manifold",
            because: "Regulators on the rail have a port for it",
            source: "common practice, no source",
          },
    },
    setPressure: {
      type: "quantity",
      kind: "pressure",
      label: "Set pressure",
      hint: "Gauge, hose to the manifold off, like 3 bar or 43.5 psi",
      min: 1e5,
      max: 1e6,
      because: "port injection works from 1 to 10 bar",
      default: {
        text: "3 bar",
        because: "The usual base pressure",
        source: "common practice, no source",
      },
    },
    droop: {
      type: "quantity",
      kind: "pressure",
      label: "Rise of pressure with flow",
      hint: "From little to full return flow, like 0.15 bar",
      why: "A spring holds a little more pressure the more has to pass",
      optional: true,
      min: 0,
      max: 1e5,
      because: "0 to 1 bar",
    },
    leastDrop: {
      type: "quantity",
      kind: "pressure",
      label: "Least drop across the regulator",
      hint: "Wide open, at full return flow, like 0.5 bar",
      why: "Below it a full return line lifts rail pressure at idle",
      ...RETURNS,
      min: 0,
      max: 3e5,
      because: "0 to 3 bar, and below the set pressure",
    },
    dropFlow: {
      type: "quantity",
      kind: "pumpFlow",
      label: "Return flow at which rise and least drop are stated",
      hint: "Of the two figures above, like 200 L/h",
      when: (v) =>
        v.number("regulator.droop") !== undefined || v.number("regulator.leastDrop") !== undefined,
      otherwise: "neither rise nor least drop is given",
      min: 2e-6,
      max: 2e-3,
      because: "7.2 to 7200 L/h",
      default: {
        text: "200 L/h",
        because: "What a common street pump returns at idle; ask the maker",
        source: "ours",
      },
    },
  },
});
