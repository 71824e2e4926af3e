/** Pumps to ask for, and the tank between them. */
import { Run } from "@/lib/line/mod.ts";
import { CRITERIA } from "../criteria.ts";
import { runOf, systemOf } from "../supply/system_of.ts";
import { unstatedBeforeRegulator } from "../supply/unstated.ts";
import {
  about,
  at,
  atLeast,
  pieces,
  type ShoppingFact,
  type ShoppingFigure,
  type Wanted,
} from "./item.ts";
import type { Shop } from "./shop.ts";

/** What the pump's figures follow from. */
const FROM = [
  "demand.bsfc",
  "fuel.temperature",
  "injectors.lowestVoltage",
  "regulator.setPressure",
  "supply.suction",
  "supply.feed",
  "supply.branch",
  "supply.return",
  "wiring.wire",
  "wiring.outLength",
  "wiring.returnLength",
  "wiring.contacts",
  "pump.efficiency",
  "pump.driveRatio",
] as const;

/** The main pumps, the lift pump and the surge tank. */
export function wantedPumps(shop: Shop): Wanted[] {
  return [mainPump(shop), ...liftPump(shop)];
}

function mainPump(shop: Shop): Wanted {
  const { evaluation, values } = shop;
  const { pump } = evaluation.results;
  const { count, arrangement } = values.pump;
  const isDriven = values.pump.drive === "engine";
  const isInSeries = arrangement === "series";
  const what = isDriven ? "Pump that the engine drives" : "Electric fuel pump";
  if (pump === undefined) {
    const missing = [`Flow and pressure: ${shop.because(CRITERIA.pumpMargin)}`];
    return { id: "pump", what, quantity: pieces(count), missing, from: FROM };
  }
  return {
    id: "pump",
    what,
    quantity: pieces(count),
    figures: [
      atLeast(
        count > 1 ? "flow of each" : "flow",
        pump.shopFlow_m3_s / (isInSeries ? 1 : count),
        "pumpFlow",
      ),
      at("pressure rise", pump.pressure_Pa / (isInSeries ? count : 1), "pressure"),
      ...(isDriven
        ? [
          at(
            "pump speed",
            values.engine.powerSpeed * (values.pump.driveRatio ?? 1),
            "rotation",
          ),
        ]
        : pump.voltage_V === undefined
        ? []
        : [at("at its terminals", pump.voltage_V, "voltage")]),
      ...(values.pump.relief === undefined
        ? []
        : [about("its relief valve opens", values.pump.relief, "pressure")]),
    ],
    facts: [{ name: "fuel", says: shop.fuel }, ...together(shop)],
    missing: [
      ...(!isDriven && pump.voltage_V === undefined
        ? [`Voltage at its terminals: ${shop.because(CRITERIA.wireLoss)}`]
        : []),
      ...(isDriven && values.pump.relief === undefined
        ? ["Relief valve: ask for one, nothing else holds such a pump back."]
        : []),
      ...unstated(shop),
    ],
    because: `What is burnt at full power and ${
      shop.say(CRITERIA.pumpMargin.aim, "ratio")
    }, the aim, on top.`,
    from: FROM,
  };
}

/** What several pumps need to work together, and what holds the pressure after key-off. */
function together({ values }: Shop): ShoppingFact[] {
  const { count, arrangement, checkValves } = values.pump;
  const isListed = values.supply.feed.some(({ piece }) => piece === "check-valve");
  const isNeeded = checkValves === "yes" || (values.supply.holdsPressure === "yes" && !isListed);
  return [
    ...(count > 1
      ? [{
        name: "arrangement",
        says: arrangement === "series" ? "one behind the other" : "side by side",
      }]
      : []),
    ...(isNeeded ? [{ name: "check valve in its outlet", says: "yes" }] : []),
  ];
}

/** Parts whose loss is in no figure yet. */
function unstated({ values, liquid, flows }: Shop): string[] {
  if (liquid === undefined || flows === undefined) return [];
  const { names } = unstatedBeforeRegulator(systemOf(values, liquid, flows.burnt_m3_s));
  return names.length === 0 ? [] : [
    `Pressure rise: not in it is what is lost in ${names.join(", ")}; enter flow and loss there.`,
  ];
}

function liftPump(shop: Shop): Wanted[] {
  const { values, flows, liquid, evaluation } = shop;
  if (values.lift.present !== "lift") return [];
  const taken_m3_s = evaluation.results.surge?.taken_m3_s;
  const lift_m3_s = flows?.lift_m3_s;
  if (lift_m3_s === undefined || taken_m3_s === undefined || liquid === undefined) {
    const missing = [`Flow: ${shop.because(CRITERIA.liftMargin)}`];
    return [{
      id: "lift-pump",
      what: "Electric lift pump",
      quantity: pieces(1),
      missing,
      from: [],
    }];
  }
  const run = runOf(values, "lift", liquid) ?? new Run([], liquid);
  const rise_Pa = Math.max(0, run.drop_Pa(lift_m3_s));
  return [
    {
      id: "lift-pump",
      what: "Electric lift pump",
      quantity: pieces(1),
      figures: [
        atLeast("flow", lift_m3_s, "pumpFlow"),
        at("pressure rise", rise_Pa, "pressure"),
        at(
          "at its terminals",
          values.injectors.lowestVoltage - CRITERIA.wireLoss.aim,
          "voltage",
        ),
      ],
      facts: [{ name: "fuel", says: shop.fuel }],
      missing: [
        "Its wire and fuse: they are not in the plan; its current decides.",
        ...(run.unstated.length === 0 ? [] : [
          `Pressure rise: not in it is what is lost in ${
            run.unstated.map(({ name }) => name).join(", ")
          }; enter flow and loss there.`,
        ]),
      ],
      because: `What leaves the surge tank for good and ${
        shop.say(CRITERIA.liftMargin.aim, "ratio")
      }, the aim, on top.`,
      from: ["supply.lift", "lift.returnTo", "injectors.lowestVoltage", "demand.bsfc"],
    },
    surgeTank(shop, taken_m3_s),
  ];
}

function surgeTank(shop: Shop, taken_m3_s: number): Wanted {
  const aim_s = CRITERIA.surgeTank.aim;
  const figures: ShoppingFigure[] = [atLeast("usable volume", aim_s * taken_m3_s, "volume")];
  return {
    id: "surge-tank",
    what: "Surge tank",
    quantity: pieces(1),
    figures,
    facts: [{ name: "fuel", says: shop.fuel }],
    because: `It lasts ${shop.say(aim_s, "duration")}, the aim, at full power with no lift.`,
    from: ["lift.returnTo", "demand.bsfc"],
  };
}
