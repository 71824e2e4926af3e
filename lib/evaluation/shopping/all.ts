/** What goes for every part that holds fuel under pressure. */
import { about, atLeast, type Wanted } from "./item.ts";
import type { Shop } from "./shop.ts";

/** The rating that the proof asks for, the weakest part as the plan names it, and the fuel. */
export function wantedOfAll(shop: Shop): Wanted[] {
  const { evaluation, rating_Pa } = shop;
  const proof = evaluation.results.proof;
  const isOpen = proof === undefined || proof.fault === undefined || proof.fault.isLeast;
  return [
    {
      id: "every-part",
      what: "Every part that stays on for the proof",
      figures: rating_Pa === undefined
        ? []
        : [atLeast("pressure rating (gauge)", rating_Pa, "pressure")],
      facts: [{ name: "fuel", says: shop.fuel }],
      missing: [
        ...(rating_Pa === undefined
          ? ["Pressure rating: the proof pressure could not be found."]
          : []),
        ...(isOpen
          ? ["Pressure rating: the pump's shut-off or relief pressure may ask for more; enter it."]
          : []),
      ],
      because: "The larger of 1.5 times the highest working pressure and what a fault can make.",
      from: ["regulator.setPressure"],
    },
    ...(proof?.weakest === undefined ? [] : [{
      id: "weakest-part",
      what: `Weakest part, by the plan: ${proof.weakest.part}`,
      figures: [about("its rating (gauge)", proof.weakest.rating_Pa, "pressure")],
      because: "No part on the rail may be weaker, or the proof has to go by that one.",
      from: [],
    }]),
  ];
}
