/** What the parts of a plan's form look up while they are made. */
import {
  type Assumption,
  type Boxes,
  type Earlier,
  type Fault,
  type Field,
  type ListField,
  type Row,
  type Section,
  type SectionName,
  SECTIONS,
} from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { isFilled, withRows } from "./earlier.ts";

/** The id of the form, for buttons that stand outside of it. */
export const PLAN_FORM = "plan-form";

/** What {@linkcode PlanForm} shows. */
export interface PlanFormProps {
  /** The text of each box, by path. */
  readonly boxes: Boxes;
  /** What could not be taken. */
  readonly faults: readonly Fault[];
  /** What stands in for blank boxes. */
  readonly assumed: readonly Assumption[];
  /** Paths of blank boxes that nothing can stand in for. */
  readonly missing: readonly string[];
  /** What was converted on reading, by path. */
  readonly notes: Readonly<Record<string, string>>;
  /** What the fields' conditions see: `earlierOf(values)`, or `earlierOfBoxes(boxes)`. */
  readonly earlier: Earlier;
  /** The units that the plan is shown in. */
  readonly system: System;
  /** The section to show open; those with a fault are open anyway. */
  readonly open?: SectionName | undefined;
  /** The list to show with more blank rows. */
  readonly more?: string | undefined;
}

/** What was asked for, by path. */
export interface Lookup extends PlanFormProps {
  /** What is wrong. */
  readonly faultAt: ReadonlyMap<string, string>;
  /** What stands in. */
  readonly assumedAt: ReadonlyMap<string, Assumption>;
  /** What nothing can stand in for. */
  readonly missingAt: ReadonlySet<string>;
  /** The path of the list whose head holds the hints of rows with these fields. */
  readonly hintsAt: ReadonlyMap<ListField["fields"], string>;
}

/** Makes ready what is looked up. */
export function lookUp(props: PlanFormProps): Lookup {
  const found = {
    ...props,
    earlier: withRows(props.earlier, props.boxes),
    faultAt: new Map(props.faults.map(({ path, message }) => [path, message])),
    assumedAt: new Map(props.assumed.map((assumption) => [assumption.path, assumption])),
    missingAt: new Set(props.missing),
  };
  return { ...found, hintsAt: placeHints(found) };
}

/** What a field that stands in no list sees of its row. */
export const NO_ROW: Row = { number: () => undefined, word: () => undefined };

/** Whether a field or list has a place in the plan as it is. */
export function isAsked(
  field: Field | ListField,
  { earlier }: Pick<Lookup, "earlier">,
  row: Row = NO_ROW,
): boolean {
  return !field.when || field.when(earlier, row);
}

/** The number of the last row that holds anything. */
export function filledRows(path: string, list: ListField, boxes: Boxes): number {
  for (let i = list.max; i > 0; i--) if (isFilled(`${path}.${i - 1}`, list, boxes)) return i;
  return 0;
}

/** Lists are shown where they are asked for, and where something stands in them. */
export function isListShown(
  path: string,
  list: ListField,
  lookup: Omit<Lookup, "hintsAt">,
): boolean {
  return isAsked(list, lookup) || lookup.faultAt.has(path) ||
    filledRows(path, list, lookup.boxes) > 0;
}

/**
 * Where the hints of rows stand, by the fields of the row: at the first list
 * that has them. Rows in which something is assumed keep their hints, as their
 * boxes need the breadth anyway.
 */
function placeHints(lookup: Omit<Lookup, "hintsAt">): ReadonlyMap<ListField["fields"], string> {
  const places = new Map<ListField["fields"], string>();
  for (const [name, section] of Object.entries<Section>(SECTIONS)) {
    for (const [key, field] of Object.entries(section.fields)) {
      if (field.type !== "list" || places.has(field.fields)) continue;
      const path = `${name}.${key}`;
      if (!hasDefaults(field) && isListShown(path, field, lookup)) places.set(field.fields, path);
    }
  }
  return places;
}

function hasDefaults({ fields }: ListField): boolean {
  return Object.values(fields).some((field) => field.type !== "text" && field.default);
}
