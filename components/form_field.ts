/** One field of a plan's form, as the rest of the plan has it. */
import type { VNode } from "preact";
import { type Field as Declared, type Row, unusedNote } from "@/lib/plan/mod.ts";
import { echoOf } from "./echo.ts";
import { Field } from "./field.ts";
import { isAsked, type Lookup, NO_ROW, PLAN_FORM } from "./form_lookup.ts";

/** Where in a list a field stands. */
export interface Place {
  /** The row that the box stands in. */
  readonly row: Row;
  /** The id of its hint, where that stands at the head of the list. */
  readonly hintAt?: string;
}

/** A field that stands in no list. */
const ALONE: Place = { row: NO_ROW };

/** The field, unless it is neither asked for nor filled. */
export function formField(
  path: string,
  field: Declared,
  lookup: Lookup,
  place = ALONE,
): VNode | undefined {
  const text = lookup.boxes.get(path) ?? "";
  const fault = lookup.faultAt.get(path);
  const asked = isAsked(field, lookup, place.row);
  if (!asked && text === "" && fault === undefined) return undefined;
  return Field({
    path,
    field,
    text,
    fault,
    echo: text === "" ? undefined : echoOf(field, text, lookup.system),
    note: asked ? lookup.notes[path] : unusedNote(field),
    assumed: lookup.assumedAt.get(path),
    missing: lookup.missingAt.has(path),
    form: PLAN_FORM,
    system: lookup.system,
    hintAt: place.hintAt,
  });
}
