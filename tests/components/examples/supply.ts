/** Examples of the supply at work, from the demo plans. */
import { SupplyShown } from "@/components/supply_shown.ts";
import { planReady, readPlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";
import { shownOf } from "../../helpers/shown_of.ts";
import type { Examples } from "./example.ts";

await planReady();

/** Every demo, and a plan whose pump is still to be bought. */
const plans: readonly (readonly [name: string, plan: unknown])[] = [
  ...demos.map(({ name, plan }) => [name, plan] as const),
  ["a pump still to be bought", {
    version: 1,
    engine: {
      cycle: "four-stroke",
      cylinders: 4,
      power: "200 hp",
      powerSpeed: "7000 rpm",
      aspiration: "natural",
    },
    fuel: { name: "petrol" },
  }],
];

/** The supply of each. */
export const supplyExamples: Examples = {
  SupplyShown: Object.fromEntries(plans.map(([name, plan]) => [name, () => {
    const reading = readPlan(plan);
    if (!reading.ok) throw new Error(`${name} is no plan`);
    const made = SupplyShown(shownOf(reading.plan));
    if (made === undefined) throw new Error(`${name} has no supply`);
    return made;
  }])),
};
