/** What one field of a plan is, as data: the schema, the form, the defaults and the hints come from it. */
import type { Kind } from "@/lib/units/mod.ts";
import type { Typed } from "./typed.ts";

/** A value that stands until the user gives or confirms one. */
export interface Default {
  /** As a user would type it. */
  readonly text: string;
  /** Why this value, in one line. */
  readonly because: string;
  /** Where it is published, or `common practice, no source`, or `ours`. */
  readonly source: string;
}

/** Rows that stand until the user gives or confirms some. */
export interface DefaultRows {
  /** As a user would type them; nothing in them may be left to assume. */
  readonly rows: readonly Typed[];
  /** Why these, in one line. */
  readonly because: string;
  /** Where they are published, or `common practice, no source`, or `ours`. */
  readonly source: string;
}

/** The values resolved before a field, by path, for defaults and conditions that depend on them. */
export interface Earlier {
  /** The number of a quantity or count, in SI; of a list, how many rows were given, wherever it stands. */
  number(path: string): number | undefined;
  /** The word of a choice, or a text. */
  word(path: string): string | undefined;
}

/** The values before a field in its own row, by name; none for a field that stands in no list. */
export interface Row {
  /** The number of a quantity or count, in SI. */
  number(name: string): number | undefined;
  /** The word of a choice, or a text. */
  word(name: string): string | undefined;
}

/** Whether a field is asked, by what stands before it in the plan and in its row. */
export type Condition = (earlier: Earlier, row: Row) => boolean;

/** What stands in for a field, or how it comes from what stands before it. */
export type Fallback = Default | ((earlier: Earlier, row: Row) => Default | undefined);

/** What every field has. */
export interface Common {
  /** The label, as a noun without a unit. */
  readonly label: string;
  /** What to enter, with an example where one helps. */
  readonly hint: string;
  /** Why it is asked, in one line. */
  readonly why?: string;
  /** Asked on the start page. */
  readonly first?: true;
  /** A plan without it can't be evaluated. */
  readonly required?: true;
  /** It may stay blank for good: nothing is open then. */
  readonly optional?: true;
  /** The field is asked only when this holds. */
  readonly when?: Condition;
  /** Why it is not asked where it isn't, to go on after "not used: ". */
  readonly otherwise?: string;
}

/** A quantity: text with its unit. */
export interface QuantityField extends Common {
  /** A quantity field. */
  readonly type: "quantity";
  /** What kind of quantity. */
  readonly kind: Kind;
  /** The smallest value taken, in SI. */
  readonly min: number;
  /** The largest value taken, in SI. */
  readonly max: number;
  /** Why these are the bounds, to go on after the bound in a message. */
  readonly because: string;
  /** What a pressure is counted from; the outside air (gauge) unless said. */
  readonly reference?: "absolute";
  /** Where a mass flow is taken for a volume flow: at this density [kg/m^3]. */
  readonly massAt_kg_m3?: number;
  /** The value assumed until one is given, if there is an honest one. */
  readonly default?: Fallback;
}

/** One of a few words. */
export interface ChoiceField extends Common {
  /** A choice field. */
  readonly type: "choice";
  /** The words taken, each with how the page says it. */
  readonly options: Readonly<Record<string, string>>;
  /** Words that people may look for and that are outside what Dryrail does, each with the reason. */
  readonly refused?: Readonly<Record<string, { readonly label: string; readonly because: string }>>;
  /** The word assumed until one is given. */
  readonly default?: Fallback;
}

/** A whole number. */
export interface CountField extends Common {
  /** A count field. */
  readonly type: "count";
  /** The smallest number taken. */
  readonly min: number;
  /** The largest number taken. */
  readonly max: number;
  /** Why these are the bounds. */
  readonly because: string;
  /** The number assumed until one is given. */
  readonly default?: Fallback;
}

/** A line of text that is only shown again. */
export interface TextField extends Common {
  /** A text field. */
  readonly type: "text";
  /** The most characters taken. */
  readonly max: number;
}

/** Any single field. */
export type Field = QuantityField | ChoiceField | CountField | TextField;

/** Rows of the same fields. */
export interface ListField {
  /** A list field. */
  readonly type: "list";
  /** What a row is called, with its number behind it. */
  readonly label: string;
  /** What the rows are together, where that isn't the label. */
  readonly title?: string;
  /** What a row holds and how many are needed. */
  readonly hint: string;
  /** The most rows taken. */
  readonly max: number;
  /** Rows that the form shows at the least. */
  readonly rows: number;
  /** Their order counts: a row may have to be put between two. */
  readonly ordered?: true;
  /** The fields of a row. */
  readonly fields: Readonly<Record<string, Field>>;
  /** The list is asked only when this holds. */
  readonly when?: Condition;
  /** Why it is not asked where it isn't, to go on after "not used: ". */
  readonly otherwise?: string;
  /** The rows assumed until some are given. */
  readonly default?: DefaultRows | ((earlier: Earlier) => DefaultRows | undefined);
}

/** One section of a plan. */
export interface Section {
  /** Its heading. */
  readonly title: string;
  /** What it is about, in a line under the heading. */
  readonly about: string;
  /** The fields by name, in the order of the form. */
  readonly fields: Readonly<Record<string, Field | ListField>>;
}

/** The value that a field resolves to. */
export type ValueOf<F> = F extends { type: "list"; fields: infer Fields } ? readonly RowOf<Fields>[]
  : F extends { type: "choice"; options: infer Options }
    ? F extends Settled ? keyof Options : keyof Options | undefined
  : F extends { type: "text" } ? string | undefined
  : F extends Settled ? number
  : number | undefined;

/** A field that always has a value: asked for, or assumed whatever the rest of the plan. */
export type Settled =
  | { required: true }
  | { default: Default | ((earlier: Earlier, row: Row) => Default); when?: never };

/** The values of a section or of a row. */
export type RowOf<Fields> = { readonly [Name in keyof Fields]: ValueOf<Fields[Name]> };

/** Declares a section, keeping the types of its fields. */
export function section<const S extends Section>(declaration: S): S {
  return declaration;
}
