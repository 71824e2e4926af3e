/** How much fuel the engine asks for. */
import { bsfcDefault } from "../bsfc_default.ts";
import { section } from "../field.ts";

/** The demand section of a plan. */
export const demand = section({
  title: "Fuel need",
  about: "Fuel from power and BSFC; air as the cross-check.",
  fields: {
    bsfc: {
      type: "quantity",
      kind: "bsfc",
      label: "BSFC at full power",
      hint: "Fuel per work at the crankshaft, like 365 g/kWh or 0.60 lb/(hp h)",
      why: "Power times this is the fuel that has to flow",
      min: 1e-8,
      max: 5e-7,
      because: "up to 1800 g/kWh spans every fuel here, and none does its work on next to nothing",
      default: bsfcDefault,
    },
    route: {
      type: "choice",
      label: "Sizing by",
      hint: "Which fuel figure the rest of the plan uses",
      options: { power: "power and BSFC", air: "air (swept volume, filling, lambda)" },
      default: { text: "power", because: "Needs the fewest guesses", source: "ours" },
    },
    filling: {
      type: "quantity",
      kind: "ratio",
      label: "Filling at the power peak",
      hint: "Volumetric efficiency, or delivery ratio of a two-stroke, like 95 %",
      why: "The air route needs it",
      min: 0.3,
      max: 1.4,
      because: "30 to 140 % of the swept volume at manifold density",
      default: (v) => ({
        text: v.word("engine.aspiration") === "boosted" ? "95 %" : "100 %",
        because: "A well-breathing engine, on the air density in its manifold",
        source: "common practice, no source",
      }),
    },
    lambda: {
      type: "quantity",
      kind: "ratio",
      label: "Lambda at full power",
      hint: "Air over stoichiometric air, like 0.82",
      min: 0.6,
      max: 1.2,
      because: "spark ignition runs from 0.6 to 1.2",
      default: (v) => ({
        text: v.word("engine.aspiration") === "boosted" ? "0.80" : "0.87",
        because: "Rich for power and to keep parts cool",
        source: "common practice, no source",
      }),
    },
    chargeTemperature: {
      type: "quantity",
      kind: "temperature",
      label: "Charge temperature",
      hint: "In the intake manifold at full power, like 45 °C",
      min: 233.15,
      max: 423.15,
      because: "-40 to 150 °C is what manifolds see",
      default: (v) => ({
        text: v.word("engine.aspiration") === "boosted" ? "45 °C" : "25 °C",
        because: v.word("engine.aspiration") === "boosted"
          ? "After a good intercooler"
          : "Cool outside air",
        source: "common practice, no source",
      }),
    },
    idlePressure: {
      type: "quantity",
      kind: "pressure",
      reference: "absolute",
      label: "Manifold pressure at idle",
      hint: "Absolute, like 35 kPa",
      why: "Fuel at idle, and pressure across the injectors there",
      min: 1.5e4,
      max: 1e5,
      because: "15 to 100 kPa absolute",
      default: (v) => ({
        text: v.word("engine.cycle") === "rotary" ? "45 kPa" : "35 kPa",
        because: "A warm engine with mild timing",
        source: "common practice, no source",
      }),
    },
  },
});
