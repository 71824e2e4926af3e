/** The whole plan as a form, section by section. */
import type { VNode } from "preact";
import {
  type Assumption,
  type Boxes,
  type Earlier,
  type Fault,
  type Field as Declared,
  type ListField,
  type Section,
  type SectionName,
  SECTIONS,
  unusedNote,
} from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { echoOf } from "./echo.ts";
import { Field } from "./field.ts";
import { html } from "./html.ts";
import { withoutLabel } from "./label_of.ts";
import { sentence } from "./show.ts";

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
}

/**
 * The form. It is sent to `/plan` by its own button, or by one that confirms an
 * assumption (`confirm` holds the path). Boxes that are not asked for now are
 * left out while they are blank; what was typed into one is shown as not used.
 */
export function PlanForm(props: PlanFormProps): VNode {
  const lookup: Lookup = {
    ...props,
    faultAt: new Map(props.faults.map(({ path, message }) => [path, message])),
    assumedAt: new Map(props.assumed.map((assumption) => [assumption.path, assumption])),
    missingAt: new Set(props.missing),
  };
  return html`
    <form id=${PLAN_FORM} class="plan-form" method="post" action="/plan" novalidate>
      <p class="send"><button class="main">Work it out</button></p>
      ${Object.entries<Section>(SECTIONS).map(([name, section]) =>
        sectionOf(name, section, lookup)
      )}
      <p class="send"><button class="main">Work it out</button></p>
    </form>
  `;
}

interface Lookup extends PlanFormProps {
  readonly faultAt: ReadonlyMap<string, string>;
  readonly assumedAt: ReadonlyMap<string, Assumption>;
  readonly missingAt: ReadonlySet<string>;
}

function sectionOf(name: string, section: Section, lookup: Lookup): VNode {
  const within = `${name}.`;
  const faults = lookup.faults.filter(({ path }) => path.startsWith(within)).length;
  const assumed = lookup.assumed.filter(({ path }) => path.startsWith(within)).length;
  const missing = lookup.missing.filter((path) => path.startsWith(within)).length;
  const counts = [
    faults > 0 && `${faults} not taken`,
    assumed > 0 && `${assumed} assumed`,
    missing > 0 && `${missing} open`,
  ].filter(Boolean).join(", ");
  return html`
    <details class="section" id=${`section-${name}`} open=${faults > 0 || lookup.open === name}>
      <summary><h2>${section.title}</h2>${counts && [" ", html`<small>${counts}</small>`]}</summary>
      <fieldset>
        <legend>${section.about}</legend>
        ${Object.entries(section.fields).map(([key, field]) => {
          const path = within + key;
          return field.type === "list" ? rows(path, field, lookup) : one(path, field, lookup);
        })}
      </fieldset>
    </details>
  `;
}

function one(path: string, field: Declared, lookup: Lookup): VNode | undefined {
  const text = lookup.boxes.get(path) ?? "";
  const fault = lookup.faultAt.get(path);
  const isAsked = !field.when || field.when(lookup.earlier);
  if (!isAsked && text === "" && fault === undefined) return undefined;
  return Field({
    path,
    field,
    text,
    fault,
    echo: text === "" ? undefined : echoOf(field, text, lookup.system),
    note: isAsked ? lookup.notes[path] : unusedNote(field),
    assumed: lookup.assumedAt.get(path),
    missing: lookup.missingAt.has(path),
    form: PLAN_FORM,
    system: lookup.system,
  });
}

/** As many rows as are filled and one more, at least those that the list asks for. */
function rows(path: string, list: ListField, lookup: Lookup): VNode {
  const filled = filledRows(path, list, lookup.boxes);
  const count = Math.min(list.max, Math.max(list.rows, filled + 1));
  const fault = lookup.faultAt.get(path);
  return html`
    <div class="rows" id=${path} tabindex="-1">
      <p class="hint">${sentence(list.hint)}</p>
      ${fault && html`<p class="fault"><b>Not taken:</b> ${withoutLabel(fault, list.label)}</p>`}
      ${Array.from({ length: count }, (_, i) =>
        html`
          <fieldset class="row">
            <legend>${list.label} ${i + 1}</legend>
            ${Object.entries(list.fields).map(([key, field]) =>
              one(`${path}.${i}.${key}`, field, lookup)
            )}
          </fieldset>
        `)}
    </div>
  `;
}

function filledRows(path: string, list: ListField, boxes: Boxes): number {
  for (let i = list.max; i > 0; i--) {
    for (const key in list.fields) {
      if (boxes.get(`${path}.${i - 1}.${key}`)) return i;
    }
  }
  return 0;
}
