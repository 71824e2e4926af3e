/** The way of the fuel from the tank to the rail. */
import { section } from "../field.ts";

/** The supply section of a plan. */
export const supply = section({
  title: "Hoses and filter",
  about: "What lies between tank and rail; a first allowance, to be solved piece by piece later.",
  fields: {
    suctionBore: {
      type: "quantity",
      kind: "length",
      label: "Bore of the suction hose",
      hint: "Inside diameter, tank to pump, like 12.7 mm; the dash number is not the bore",
      when: (v) => v.word("pump.place") !== "tank",
      otherwise: "the pump sits in the tank",
      min: 0.004,
      max: 0.03,
      because: "4 to 30 mm",
    },
    feedBore: {
      type: "quantity",
      kind: "length",
      label: "Bore of the feed hose",
      hint: "Inside diameter, pump to rail, like 8.7 mm; the dash number is not the bore",
      why: "Too fast a flow costs pressure",
      min: 0.003,
      max: 0.03,
      because: "3 to 30 mm",
      default: {
        text: "8.7 mm",
        because: "Rubber-lined braided -6 hose of the motorsport trade",
        source: "from memory, common practice",
      },
    },
    feedLoss: {
      type: "quantity",
      kind: "pressure",
      label: "Pressure lost between pump and rail",
      hint: "Hose, fittings, check valve and filter at full flow, like 0.4 bar",
      why: "The pump works against it on top of rail pressure",
      min: 0,
      max: 5e5,
      because: "0 to 5 bar",
      default: {
        text: "0.4 bar",
        because: "A clean filter, a check valve and a few metres of hose",
        source: "common practice, no source",
      },
    },
    returnBore: {
      type: "quantity",
      kind: "length",
      label: "Bore of the return hose",
      hint: "Inside diameter, regulator to tank, like 8.7 mm",
      when: (v) => v.word("regulator.layout") !== "dead-ended",
      otherwise: "nothing returns from a dead-ended rail",
      min: 0.003,
      max: 0.03,
      because: "3 to 30 mm",
      default: {
        text: "8.7 mm",
        because: "As the feed",
        source: "common practice, no source",
      },
    },
  },
});
