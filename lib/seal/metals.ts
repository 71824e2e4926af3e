/** Metals of fittings and of the bar against fuel. */
import { type AgainstFuel, fails, marginal, meets } from "./against_fuel.ts";

/** A metal, with what covers it. */
export type FuelMetal =
  | "aluminium"
  | "aluminium-printed"
  | "aluminium-anodised"
  | "aluminium-nickel"
  | "stainless"
  | "brass"
  | "steel"
  | "steel-nickel"
  | "steel-zinc";

const INSPECT = "look into the bores at least once a year for white deposit, gel and pits";
const COAT = "Coat it inside (nickel without current, or hard anodising after all drilling)";
const CARE_E85 =
  `${COAT}; keep water out, drain or run petrol through before it stands; ${INSPECT}.`;
const CARE_METHANOL =
  `${COAT}; flush with petrol after each day's use, leave nothing standing; ${INSPECT}.`;
const BARE_CUTS = `Threads and faces cut later are bare: ${INSPECT}.`;
const NICKEL = "Nickel without current stood best of the coatings tested.";
const RUST = "Plate it with nickel, inside too; drain it before it stands.";

const BARE: AgainstFuel["fuels"] = {
  petrol: meets("trade", "What most rails are made of."),
  E10: meets(
    "aluminium6061",
    "Satisfactory with up to 15 % ethanol, wet or dry.",
    "Keep water out, and the rail off the exhaust.",
  ),
  E85: marginal("e85Handbook", "Wet ethanol attacks bare aluminium, faster when hot.", CARE_E85),
  methanol: marginal(
    "aluminiumMethanol",
    "Dry methanol with salt, and wet methanol with acid, corrode it; in use it leaves white gel.",
    CARE_METHANOL,
  ),
};

/** Metals of fittings and of the bar. */
export const METALS: Readonly<Record<FuelMetal, AgainstFuel>> = {
  aluminium: { title: "Bare aluminium", fuels: BARE },
  "aluminium-printed": {
    title: "Bare aluminium, laser-sintered",
    fuels: {
      ...BARE,
      petrol: meets("trade", "As wrought aluminium.", "Prove it for pores as for leaks."),
      E10: meets(
        "aluminiumEthanol",
        "A casting rich in silicon pitted in E10 only at 100 °C.",
        "Keep water out, and the rail off the exhaust.",
      ),
      E85: marginal(
        "aluminiumEthanol",
        "Attack on a casting rich in silicon grew with the ethanol, tested up to 20 %.",
        CARE_E85,
      ),
    },
  },
  "aluminium-anodised": {
    title: "Anodised aluminium",
    fuels: {
      petrol: meets("trade", "What most fuel fittings are made of."),
      E10: meets("trade", "What most fuel fittings are made of."),
      E85: meets(
        "e85Handbook",
        "Hard anodising is what the handbook asks of aluminium.",
        BARE_CUTS,
      ),
      methanol: marginal(
        "coatings",
        "Anodising stood well in methanol blends, but in use methanol gets through in time.",
        `Flush with petrol after each day's use. ${BARE_CUTS}`,
      ),
    },
  },
  "aluminium-nickel": {
    title: "Aluminium, nickel-plated without current",
    fuels: {
      petrol: meets("coatings", NICKEL),
      E10: meets("coatings", NICKEL),
      E85: meets("coatings", NICKEL, BARE_CUTS),
      methanol: meets("coatings", NICKEL, BARE_CUTS),
    },
  },
  stainless: {
    title: "Stainless steel",
    fuels: {
      petrol: meets("trade", "Nothing in fuel attacks it."),
      E10: meets("trade", "Nothing in fuel attacks it."),
      E85: meets("e85Handbook", "Named among what serves with E85."),
      methanol: meets("methanolBulletin", "The usual metal for methanol."),
    },
  },
  brass: {
    title: "Brass",
    fuels: {
      petrol: meets("trade", "Long used in fuel fittings."),
      E10: meets("trade", "Long used in fuel fittings.", "Keep water out."),
      E85: marginal(
        "e85Handbook",
        "Named among what ethanol attacks: the zinc in it goes.",
        "Take stainless steel or nickel-plated fittings; else look at it yearly.",
      ),
      methanol: marginal(
        "ours",
        "Called resistant in neat methanol, but wet and salty methanol takes its zinc.",
        "Take stainless steel or nickel-plated fittings; else look at it yearly.",
      ),
    },
  },
  steel: {
    title: "Bare mild steel",
    fuels: {
      petrol: marginal("trade", "Water at the bottom of the fuel rusts it.", RUST),
      E10: marginal("trade", "Ethanol draws water, and water rusts it.", RUST),
      E85: marginal("e85Handbook", "Ethanol leaves it alone; the water it draws does not.", RUST),
      methanol: marginal("methanolMetals", "Wet, salty methanol blends corroded it.", RUST),
    },
  },
  "steel-nickel": {
    title: "Steel, nickel-plated without current",
    fuels: {
      petrol: meets("coatings", NICKEL),
      E10: meets("coatings", NICKEL),
      E85: meets("coatings", NICKEL),
      methanol: meets("coatings", NICKEL),
    },
  },
  "steel-zinc": {
    title: "Zinc-plated steel",
    fuels: {
      petrol: meets("trade", "The usual plating of cheap fittings."),
      E10: marginal("trade", "Wet ethanol dissolves zinc slowly.", "Take nickel-plated fittings."),
      E85: fails("e85Handbook", "Ethanol dissolves zinc.", "Take stainless or nickel-plated."),
      methanol: fails(
        "ours",
        "As ethanol, and methanol is the stronger; what dissolves blocks injectors.",
        "Take stainless or nickel-plated.",
      ),
    },
  },
};
