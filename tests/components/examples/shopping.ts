/** Examples of what there is to buy. */
import { html } from "@/components/html.ts";
import { ShoppingPage } from "@/components/shopping_page.ts";
import { ShoppingTable } from "@/components/shopping_table.ts";
import { evaluate, type ShoppingItem, shoppingList } from "@/lib/evaluation/mod.ts";
import { boxesOf, type Plan, planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";
import type { Examples } from "./example.ts";

await planReady();

function planOf(document: unknown): Plan {
  const reading = readPlan(document);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.plan;
}

function page(document: unknown): () => ReturnType<typeof ShoppingPage> {
  return () => {
    const plan = planOf(document);
    const { values } = resolvePlan(plan);
    return ShoppingPage({
      evaluation: evaluate(plan),
      values,
      boxes: boxesOf(plan),
      planPath: "/p/1.abc",
      system: values.sheet.units,
    });
  };
}

/** Eight answers and no more: nearly all is assumed, much is open. */
const plain = {
  version: 1,
  engine: {
    cycle: "four-stroke",
    cylinders: 4,
    power: "200 hp",
    powerSpeed: "7000 rpm",
    aspiration: "natural",
  },
  fuel: { name: "blend", ethanolShare: "40 %" },
};

const fitting: ShoppingItem = {
  id: "tee-dash-8",
  part: "fittings",
  what: "Tee <small>, size -8",
  quantity: { unit: "pieces", value: 1 },
  figures: [{ name: "bore", value: 0.0111, kind: "length", sense: "about" }],
  facts: [{ name: "fuel", says: "methanol" }],
  shares: [{ place: "branch", times: 2, each: 1 }],
  missing: ["Pressure rating: the proof pressure could not be found."],
  because: "The branches part at a tee.",
  assumed: [],
};

/** The examples. */
export const shoppingExamples: Examples = {
  ShoppingTable: {
    none: () => ShoppingTable({ items: [], system: "metric", fieldHref: (path) => `#${path}` }),
    "one that is open": () =>
      ShoppingTable({ items: [fitting], system: "inch", fieldHref: (path) => `#${path}` }),
    "all of a plan": () => {
      const plan = planOf(plain);
      const items = shoppingList(evaluate(plan), resolvePlan(plan).values);
      return ShoppingTable({
        items,
        system: "metric",
        fieldHref: (path) => `/p/1.abc/size#${path}`,
      });
    },
  },
  ShoppingPage: {
    ...Object.fromEntries(demos.map(({ name, plan }) => [name, page(plan)])),
    "eight answers": () => html`<main>${page(plain)()}</main>`,
  },
};
