/** Bar for the rails, and what seals the injectors in it. */
import { SECTIONS } from "@/lib/plan/mod.ts";
import { about, exactly, pieces, type ShoppingFigure, type Wanted } from "./item.ts";
import { branchesOf } from "../supply/ways.ts";
import type { Shop } from "./shop.ts";

/** Bar stock and upper O-rings, and the hoses that joining the rails takes besides those listed. */
export function wantedRail(shop: Shop): Wanted[] {
  return [bar(shop), rings(shop)];
}

function bar({ values }: Shop): Wanted {
  const { rail } = values;
  const section = sectionOf(rail);
  return {
    id: "bar",
    what: `Bar, ${SECTIONS.rail.fields.material.options[rail.material]}`,
    quantity: pieces(rail.count),
    figures: [...section, exactly("finished length", rail.length, "length")],
    missing: section.length === 0 ? ["Section: enter the size of the bar."] : [],
    because: "Cut it longer by what squaring its ends takes.",
    from: ["rail.shape", "rail.width", "rail.length", "rail.pitch", "rail.material"],
  };
}

function sectionOf({ shape, height, width }: Shop["values"]["rail"]): ShoppingFigure[] {
  if (height === undefined) return [];
  if (shape === "round") return [exactly("diameter", height, "length")];
  return [
    exactly("height", height, "length"),
    ...(width === undefined ? [] : [exactly("width", width, "length")]),
  ];
}

function rings(shop: Shop): Wanted {
  const { injectors, engine, rail } = shop.values;
  const perCylinder = injectors.stages.reduce((sum, stage) => sum + stage.perCylinder, 0) || 1;
  return {
    id: "upper-o-rings",
    what: "Upper O-rings of the injectors",
    quantity: pieces(perCylinder * engine.cylinders),
    figures: [about("pocket that each seals in", rail.pocketBore, "length")],
    facts: [{ name: "fuel", says: shop.fuel }],
    missing: ["Section and rubber of the ring: ask the injectors' maker."],
    from: ["rail.pocketBore"],
  };
}

/** Hoses that the rails need and that the plan has no run for. */
export function wantedJoints({ values }: Shop): Wanted[] {
  const { rail, regulator, supply } = values;
  const isAlone = rail.count === 1 || (rail.connection ?? "parallel") === "parallel";
  const entries = branchesOf(values);
  const isParted = entries > 1 && supply.branch.length === 0;
  const outlets = regulator.layout === "return" && isAlone
    ? rail.count * (rail.feed === "middle" ? 2 : 1)
    : 1;
  return [
    ...(isParted
      ? [joint("feed-joints", "Hoses from the end of the feed to where fuel comes in", entries)]
      : []),
    ...(outlets > 1
      ? [joint("outlet-joints", "Hoses from where fuel leaves the rails to the regulator", outlets)]
      : []),
  ];
}

function joint(id: string, what: string, count: number): Wanted {
  return {
    id,
    what,
    quantity: pieces(count),
    missing: ["Size and length: the plan has no run for them; measure them at the engine."],
    from: ["rail.feed"],
  };
}
