/** What to beware of at the drill press, and with this bar and fuel. */
import { MATERIALS } from "@/lib/strength/mod.ts";
import type { CautionShown } from "./caution_box.ts";
import type { PlanShown } from "./plan_shown.ts";

const PRACTICE = "common practice, no source";

const ATTACKING: ReadonlySet<string> = new Set(["methanol", "E85", "E100"]);

/**
 * Cautions of drilling and of the bar.
 *
 * @param shown The plan: its fuel and the bar's material decide.
 */
export function drillCautions({ values }: PlanShown): CautionShown[] {
  const always: CautionShown = {
    title: "drill press, chips and edges",
    points: [
      "Clamp the bar; never hold it by hand. Eye protection on; no gloves or loose sleeves near the spindle.",
      "Deep holes pack with chips: clear them often, with the drill out, by brush, not by hand or mouth.",
      "Local rules for machine work and the judgement of qualified people come first.",
    ],
    source: PRACTICE,
  };
  return ATTACKING.has(values.fuel.name) ? [always, attack(values.rail.material)] : [always];
}

/** What alcohol does to the metal that it touches. */
function attack(material: keyof typeof MATERIALS): CautionShown {
  const { title } = MATERIALS[material];
  const source = "U.S. DOE handbook on E85, from memory";
  if (title.startsWith("Aluminium")) {
    return {
      title: "alcohol and the bare aluminium of this bar",
      points: [
        "Methanol and wet ethanol attack bare aluminium, zinc and brass: coat or flush, and look inside every season.",
      ],
      source,
    };
  }
  if (title.startsWith("Brass")) {
    return {
      title: "alcohol and the brass of this bar",
      points: [
        "Methanol and wet ethanol attack brass, zinc and bare aluminium: plate or flush, and look inside every season.",
      ],
      source,
    };
  }
  return {
    title: "alcohol and bare fittings",
    points: [
      `The bar is ${title.charAt(0).toLowerCase()}${
        title.slice(1)
      }; but methanol and wet ethanol attack fittings, plugs and parts of bare aluminium, zinc and brass: take plated or stainless ones, and look at them every season.`,
    ],
    source,
  };
}
