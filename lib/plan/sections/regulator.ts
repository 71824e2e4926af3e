/** What holds the pressure. */
import { section } from "../field.ts";

/** The regulator section of a plan. */
export const regulator = section({
  title: "Regulator",
  about: "Where rail pressure comes from.",
  fields: {
    layout: {
      type: "choice",
      label: "Layout",
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
    reference: {
      type: "choice",
      label: "Reference",
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
  },
});
