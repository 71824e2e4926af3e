/** The way of the fuel from the tank to the rail and back. */
import { BRANCHES, CROSSES, IN_LINE, LIFTED, RETURNS } from "../conditions.ts";
import { type Default, type Earlier, section } from "../field.ts";
import { RUNS } from "../runs.ts";

const BORE = {
  type: "quantity",
  kind: "length",
  min: 0.003,
  max: 0.03,
  because: "3 to 30 mm",
} as const;

/** A bore like that of an earlier run. */
const boreLike = (path: string, because: string) => (v: Earlier): Default | undefined => {
  const bore_m = v.number(path);
  if (bore_m === undefined) return undefined;
  return { text: `${+(bore_m * 1000).toFixed(3)} mm`, because, source: "ours" };
};

/** The supply section of a plan. */
export const supply = section({
  title: "Hoses, fittings and filters",
  about: "Each run from the tank to the rail and back, piece by piece in the order of the flow.",
  fields: {
    hoseFamily: {
      type: "choice",
      label: "Family of hose",
      hint: "What its dash size means; ask whoever sells it, or measure the bore",
      why: "A -6 hose is bored 7.9, 8.7 or 9.5 mm by its family",
      options: {
        inside: "inside diameter in sixteenths of an inch (most SAE J517 hose)",
        tube: "size of the tube it replaces (100R5, 100R14)",
        motorsport: "rubber-lined braided fuel hose of the motorsport trade",
      },
      default: {
        text: "motorsport",
        because: "The usual fuel hose of a modified engine",
        source: "from memory, common practice",
      },
    },
    suctionBore: {
      ...BORE,
      label: "Bore of the suction run",
      hint: "Inside diameter where a piece does not say otherwise, like 12.7 mm",
      ...IN_LINE,
      min: 0.004,
      because: "4 to 30 mm",
      default: {
        text: "12.7 mm",
        because: "Half an inch; anything less starves a large pump",
        source: "ours",
      },
    },
    feedBore: {
      ...BORE,
      label: "Bore of the feed",
      hint: "Inside diameter where a piece does not say otherwise, like 8.7 mm",
      why: "Too fast a flow costs pressure; the dash number is not the bore",
      default: {
        text: "8.7 mm",
        because: "Rubber-lined braided -6 hose of the motorsport trade",
        source: "from memory, common practice",
      },
    },
    branchBore: {
      ...BORE,
      label: "Bore of the branches",
      hint: "Inside diameter where a piece does not say otherwise, like 8.7 mm",
      ...BRANCHES,
      default: boreLike("supply.feedBore", "As the feed"),
    },
    crossoverBore: {
      ...BORE,
      label: "Bore of the crossover",
      hint: "Inside diameter where a piece does not say otherwise, like 8.7 mm",
      ...CROSSES,
      default: boreLike("supply.feedBore", "As the feed"),
    },
    returnBore: {
      ...BORE,
      label: "Bore of the return",
      hint: "Inside diameter where a piece does not say otherwise, like 8.7 mm",
      ...RETURNS,
      default: {
        text: "8.7 mm",
        because: "As the feed",
        source: "common practice, no source",
      },
    },
    liftBore: {
      ...BORE,
      label: "Bore of the lift run",
      hint: "Inside diameter where a piece does not say otherwise, like 8.7 mm",
      ...LIFTED,
      default: boreLike("supply.feedBore", "As the feed"),
    },
    feedLoss: {
      type: "quantity",
      kind: "pressure",
      label: "Pressure lost between pump and rail, if you measured it",
      hint: "At full flow, like 0.4 bar; leave blank to have it worked out from the pieces",
      why: "A gauge at each end beats any sum of pieces",
      optional: true,
      when: (v) => !v.number("supply.feed"),
      otherwise: "the pieces of the feed are listed, and their losses count",
      min: 0,
      max: 5e5,
      because: "0 to 5 bar",
    },
    suction: RUNS.suction,
    feed: RUNS.feed,
    branch: RUNS.branch,
    crossover: RUNS.crossover,
    return: RUNS.return,
    lift: RUNS.lift,
    tankHead: {
      type: "quantity",
      kind: "length",
      label: "Fuel above the pump's inlet",
      hint: "Level of a nearly empty tank over the inlet, like 0.1 m; below it with a minus",
      why: "Fuel that stands above the inlet keeps vapour away",
      min: -1,
      max: 2,
      because: "-1 to 2 m",
      default: (v) =>
        v.word("pump.place") === "tank"
          ? {
            text: "0.05 m",
            because: "A pump in a low tank is still covered by a little fuel",
            source: "ours",
          }
          : {
            text: "0.1 m",
            because: "A pump mounted just below a low tank's level",
            source: "ours",
          },
    },
    tankPressure: {
      type: "quantity",
      kind: "pressure",
      label: "Pressure in the tank",
      hint: "Gauge, like 0 kPa; a blocked vent draws it down, like -5 kPa",
      min: -2e4,
      max: 2e4,
      because: "-20 to 20 kPa is what tanks stand",
      default: {
        text: "0 kPa",
        because: "A vent that is free",
        source: "common practice, no source",
      },
    },
    tankFuel: {
      type: "quantity",
      kind: "volume",
      label: "Fuel in the tank when it is warmed",
      hint: "Late in a long drive, like 15 L",
      why: "The less there is, the faster pump and return heat it",
      min: 1e-3,
      max: 0.2,
      because: "1 to 200 L",
      default: { text: "15 L", because: "About a quarter of a road car's tank", source: "ours" },
    },
    returnWarming: {
      type: "quantity",
      kind: "temperatureDifference",
      label: "Warming of the fuel that returns",
      hint: "What it gains under the bonnet, like 5 K or 9 °F",
      why: "Often more heat than the pump's own",
      ...RETURNS,
      min: 0,
      max: 30,
      because: "0 to 30 K",
      default: {
        text: "5 K",
        because: "A rail on a hot engine; measure tank and return to know yours",
        source: "ours",
      },
    },
    holdsPressure: {
      type: "choice",
      label: "A check valve holds the pressure after key-off",
      hint: "In the pump or in the feed",
      why: "Held pressure keeps a hot rail from boiling, and must be let off before work",
      options: { yes: "yes", no: "no" },
      default: {
        text: "yes",
        because: "Nearly every electric pump has one at its outlet",
        source: "common practice, no source",
      },
    },
  },
});
