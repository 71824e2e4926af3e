/** What is said of a material and a fuel. */
import type { FuelGroup } from "./fuel_group.ts";

/** What is said of one material in one fuel. */
export interface FuelFitness {
  /** Whether it serves. */
  readonly verdict: "meets" | "marginal" | "fails";
  /** Why. */
  readonly why: string;
  /** What to do, wherever something is to be done. */
  readonly whatToDo?: string;
  /** Where that is published. */
  readonly source: string;
  /** How it was come by. */
  readonly provenance: "read-from-source" | "from-memory" | "ours";
}

/** One material in every fuel. */
export interface AgainstFuel {
  /** The material in words. */
  readonly title: string;
  /** By fuel. */
  readonly fuels: Readonly<Record<FuelGroup, FuelFitness>>;
}

/** A source and how it was come by. */
type Origin = Pick<FuelFitness, "source" | "provenance">;

/** Where the cells come from. */
const ORIGINS = {
  ornl: {
    source: "ORNL, elastomers in test fuels of SAE J1681 with 0 to 17 % ethanol, abstract",
    provenance: "read-from-source",
  },
  hnbr: { source: "Journal of Fuels (2014) 429608, table 6", provenance: "read-from-source" },
  e85Guide: {
    source: "A published guide to cars on E85: which rubbers and plastics degrade",
    provenance: "read-from-source",
  },
  e85Handbook: {
    source: "DOE/GO-102010-3073, handbook for handling E85",
    provenance: "from-memory",
  },
  methanolBulletin: {
    source: "Methanol Institute, bulletins on elastomers and metals in neat methanol",
    provenance: "from-memory",
  },
  rubberClass: {
    source: "ISO 1629, class M: a rubber of hydrocarbons takes up hydrocarbons",
    provenance: "from-memory",
  },
  polyamide: {
    source: "SAE 880684 and 940165 on tube of polyamide 12, abstracts",
    provenance: "read-from-source",
  },
  coatings: {
    source: "SAE 930447, steel and aluminium with coatings in methanol blends, abstract",
    provenance: "read-from-source",
  },
  methanolMetals: {
    source: "SAE 932341, plated and coated metals in M15 and M85, abstract",
    provenance: "read-from-source",
  },
  aluminiumEthanol: {
    source: "Fuel 90 (2011) 1208: an aluminium casting in E10 to E20, abstract",
    provenance: "read-from-source",
  },
  aluminiumMethanol: {
    source: "Zairyo-to-Kankyo 51 (2002) 343: aluminium in methanol, abstract",
    provenance: "read-from-source",
  },
  aluminium6061: {
    source: "An impedance study of fuel-system metals in E0 to E15 with water, abstract",
    provenance: "read-from-source",
  },
  trade: { source: "common practice, no source", provenance: "from-memory" },
  ours: { source: "ours: the neighbouring cells and caution", provenance: "ours" },
} as const satisfies Readonly<Record<string, Origin>>;

type Saying = (origin: keyof typeof ORIGINS, why: string, whatToDo?: string) => FuelFitness;

const saying = (verdict: FuelFitness["verdict"]): Saying => (origin, why, whatToDo) => ({
  verdict,
  why,
  ...(whatToDo === undefined ? {} : { whatToDo }),
  ...ORIGINS[origin],
});

/** It serves. */
export const meets: Saying = saying("meets");

/** It serves with what is to be done. */
export const marginal: Saying = saying("marginal");

/** It does not serve. */
export const fails: Saying = saying("fails");
