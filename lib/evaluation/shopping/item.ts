/** What there is to buy, as data: what it is, how much of it, and the figures that it has to meet. */
import type { Assumption } from "@/lib/plan/mod.ts";
import type { Kind } from "@/lib/units/mod.ts";

/** The shelves of a shopping list, in the order of the list, each with its heading. */
export const SHOPPING_PARTS = {
  injectors: "Injectors",
  pumps: "Pumps and surge tank",
  hoses: "Hoses and tubes",
  fittings: "Fittings",
  filters: "Filters",
  valves: "Valves and parts in the line",
  regulator: "Regulator",
  wiring: "Wire, fuse and relay",
  sensors: "Sensors",
  rail: "Rail",
  all: "Every part",
} as const;

/** A shelf. */
export type ShoppingPart = keyof typeof SHOPPING_PARTS;

/** Which side of a figure a part has to be on; `at` is where the figure before it has to hold. */
export type ShoppingSense = "at least" | "at most" | "about" | "exactly" | "at";

/** A number that a part has to meet. */
export interface ShoppingFigure {
  /** What it is of: `flow`; of an `at`, what is held there: `pressure rise`. */
  readonly name: string;
  /** The number in the SI unit of its kind; pressures gauge. */
  readonly value: number;
  /** The kind of quantity. */
  readonly kind: Kind;
  /** Which side of it is right. */
  readonly sense: ShoppingSense;
  /** The unit that it is sold in on metric and inch sheets alike; those of the sheet where missing. */
  readonly soldIn?: string;
}

/** Something that a part has to be, where that is no number. */
export interface ShoppingFact {
  /** What it is of: `fuel`. */
  readonly name: string;
  /** What it has to be: `E85 (85 % ethanol)`. */
  readonly says: string;
}

/** A place that takes some of an item. */
export interface ShoppingShare {
  /** What it is called: `feed`. */
  readonly place: string;
  /** How many alike places there are: a branch for each rail. */
  readonly times: number;
  /** What each takes: a count, or a length [m]. */
  readonly each: number;
}

/** How much of it. */
export type ShoppingQuantity =
  | { readonly unit: "pieces"; readonly value: number }
  | { readonly unit: "length"; readonly value_m: number };

/** One thing to buy. */
export interface ShoppingItem {
  /** Unique in its list; lower case and hyphens. */
  readonly id: string;
  /** The shelf. */
  readonly part: ShoppingPart;
  /** How much; undefined for what goes for every part. */
  readonly quantity: ShoppingQuantity | undefined;
  /** What it is, without a make. */
  readonly what: string;
  /** What it has to meet. */
  readonly figures: readonly ShoppingFigure[];
  /** What it has to be besides. */
  readonly facts: readonly ShoppingFact[];
  /** Where it goes, for what several places take; their sum is the quantity, tees that are shared aside. */
  readonly shares: readonly ShoppingShare[];
  /** What can't be said yet, each with what to do. */
  readonly missing: readonly string[];
  /** Where the figures are from. */
  readonly because: string | undefined;
  /** The assumed answers that it rests on; none when all were given. */
  readonly assumed: readonly Assumption[];
}

/** An item as its shelf makes it: what it leaves out is empty, what it rests on is named by path. */
export interface Wanted {
  /** As in the item. */
  readonly id: string;
  /** As in the item. */
  readonly what: string;
  /** As in the item. */
  readonly quantity?: ShoppingQuantity | undefined;
  /** As in the item. */
  readonly figures?: readonly ShoppingFigure[];
  /** As in the item. */
  readonly facts?: readonly ShoppingFact[];
  /** As in the item. */
  readonly shares?: readonly ShoppingShare[];
  /** As in the item. */
  readonly missing?: readonly string[];
  /** As in the item. */
  readonly because?: string | undefined;
  /** Where the answers stand that it follows from: fields, or what their paths begin with. */
  readonly from: readonly string[];
}

/** So many of them. */
export function pieces(value: number): ShoppingQuantity {
  return { unit: "pieces", value };
}

/** A figure that has to be reached. */
export function atLeast(
  name: string,
  value: number,
  kind: Kind,
  soldIn?: string,
): ShoppingFigure {
  return { name, value, kind, sense: "at least", ...(soldIn !== undefined && { soldIn }) };
}

/** A figure that must not be passed. */
export function atMost(name: string, value: number, kind: Kind, soldIn?: string): ShoppingFigure {
  return { name, value, kind, sense: "at most", ...(soldIn !== undefined && { soldIn }) };
}

/** Where the figure before it has to hold. */
export function at(name: string, value: number, kind: Kind): ShoppingFigure {
  return { name, value, kind, sense: "at" };
}

/** A figure that is to be met closely. */
export function about(name: string, value: number, kind: Kind): ShoppingFigure {
  return { name, value, kind, sense: "about" };
}

/** A figure that is one of a series of sizes. */
export function exactly(name: string, value: number, kind: Kind): ShoppingFigure {
  return { name, value, kind, sense: "exactly" };
}

/** What all places take together. */
export function sumOf(shares: readonly ShoppingShare[]): number {
  return shares.reduce((sum, { times, each }) => sum + times * each, 0);
}
