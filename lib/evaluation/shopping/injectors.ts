/** Injectors to ask for, stage by stage. */
import { SECTIONS } from "@/lib/plan/mod.ts";
import { CRITERIA } from "../criteria.ts";
import {
  about,
  at,
  atLeast,
  atMost,
  pieces,
  type ShoppingFact,
  type ShoppingFigure,
  type Wanted,
} from "./item.ts";
import type { Shop } from "./shop.ts";

type StageGiven = Shop["values"]["injectors"]["stages"][number];

/** The injectors of a stage, whether they are named or still to be bought. */
interface Sought {
  readonly id: string;
  readonly what: string;
  readonly count: number;
  readonly flow_m3_s: number | undefined;
  readonly pressure_Pa: number;
  /** Its row in the plan. */
  readonly row: number;
}

/** The injectors of each stage. */
export function wantedInjectors(shop: Shop): Wanted[] {
  const { evaluation, values } = shop;
  const found = evaluation.results.injectors;
  if (found === undefined) {
    const missing = [`Static flow: ${shop.because(CRITERIA.dutyPeak)}`];
    return [{ id: "injectors", what: "Injectors", missing, from: [] }];
  }
  const { stages } = values.injectors;
  if (found.stages.length === 0) {
    return [wanted(shop, {
      id: "injectors",
      what: "Injectors",
      count: values.engine.cylinders * (stages[0]?.perCylinder ?? 1),
      flow_m3_s: found.shopFlow_m3_s,
      pressure_Pa: found.shopPressure_Pa ?? values.regulator.setPressure,
      row: 0,
    })];
  }
  const rows = stages.flatMap(({ flow }, row) => flow === undefined ? [] : [row]);
  const isAlone = found.stages.length === 1;
  return found.stages.map((stage, i) =>
    wanted(shop, {
      id: isAlone ? "injectors" : `injectors-${i + 1}`,
      what: isAlone ? "Injectors" : `Injectors of stage ${i + 1}`,
      count: stage.count,
      flow_m3_s: stage.neededFlow_m3_s,
      pressure_Pa: stage.ratedPressure_Pa,
      row: rows[i] ?? i,
    })
  );
}

function wanted(shop: Shop, { id, what, count, flow_m3_s, pressure_Pa, row }: Sought): Wanted {
  const given = shop.values.injectors.stages[row];
  const isBlunt = given?.resistance === undefined || given.driver === undefined;
  return {
    id,
    what,
    quantity: pieces(count),
    figures: [
      ...(flow_m3_s === undefined ? [] : [
        atLeast("static flow of each", flow_m3_s, "flow"),
        at("across it", pressure_Pa, "pressure"),
      ]),
      ...deadTime(shop, given),
      ...(given?.resistance === undefined
        ? []
        : [about("coil resistance", given.resistance, "resistance")]),
    ],
    facts: [...driver(given), { name: "fuel", says: shop.fuel }],
    missing: [
      ...(flow_m3_s === undefined
        ? [
          "Static flow: dead time alone takes the time there is; ask for injectors that open faster.",
        ]
        : []),
      ...(isBlunt
        ? ["Coil resistance and driver: ask the maker, the control unit has to suit them."]
        : []),
    ],
    because: `Flow that keeps duty at ${
      shop.say(CRITERIA.dutyPeak.aim, "ratio")
    }, the aim, both at the power peak and at maximum speed.`,
    from: [
      ...["pressure", "perCylinder", "deadTime"].map((name) => `injectors.stages.${row}.${name}`),
      "injectors.lowestVoltage",
      ...(shop.values.injectors.stages.length > 1 ? ["injectors.changeover"] : []),
      "demand.bsfc",
      "engine.maximumSpeed",
      "regulator.setPressure",
    ],
  };
}

/** The flow was found with a dead time; an injector that opens more slowly needs more. */
function deadTime({ values }: Shop, given: StageGiven | undefined): ShoppingFigure[] {
  if (given === undefined) return [];
  return [
    atMost("dead time", given.deadTime, "duration"),
    at("supplied", values.injectors.lowestVoltage, "voltage"),
  ];
}

function driver(given: StageGiven | undefined): ShoppingFact[] {
  if (given?.driver === undefined) return [];
  const { options } = SECTIONS.injectors.fields.stages.fields.driver;
  return [{ name: "driver", says: options[given.driver] }];
}
