/** One field of a plan: its label, its hint, its box, and what stands in it or for it. */
import type { VNode } from "preact";
import type { Assumption, ChoiceField, Field as Declared } from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { Assumed, said } from "./assumed.ts";
import { html } from "./html.ts";
import { withoutLabel } from "./label_of.ts";
import { sentence } from "./show.ts";

/** What {@linkcode Field} shows. */
export interface FieldProps {
  /** Where in the plan; also the box's name and id, that links lead to. */
  readonly path: string;
  /** The field's declaration. */
  readonly field: Declared;
  /** The text as it was typed, wrong or not; empty when blank. */
  readonly text: string;
  /** What is wrong with it and what to do. */
  readonly fault?: string | undefined;
  /** What was typed, in other units: "= 313 kW". */
  readonly echo?: string | undefined;
  /** What was converted on reading. */
  readonly note?: string | undefined;
  /** What stands in while the box is blank. */
  readonly assumed?: Assumption | undefined;
  /** True when it is blank and nothing honest can stand in. */
  readonly missing?: boolean | undefined;
  /** The id of the form it stands in, for the button that confirms what is assumed. */
  readonly form?: string | undefined;
  /** The units of the plan; what is assumed is said in them too. */
  readonly system?: System | undefined;
  /** The id of its hint where that stands elsewhere, for a box in a row of small ones. */
  readonly hintAt?: string | undefined;
}

/** A labelled box. It is described by its hint, then its fault, then what stands in it. */
export function Field(props: FieldProps): VNode {
  const { path, field, fault } = props;
  const hintId = props.hintAt ?? `${path}-hint`;
  const faultId = fault && `${path}-fault`;
  const stateId = `${path}-state`;
  const state = stateOf(props, stateId);
  const attributes = {
    id: path,
    name: path,
    "aria-describedby": [hintId, faultId, state && stateId].filter(Boolean).join(" "),
    "aria-invalid": fault ? "true" : undefined,
  };
  const label = html`<label for=${path}>${field.label}</label>`;
  const why = field.why && html`<span class="why">${sentence(field.why)}</span>`;
  const box = field.type === "choice"
    ? select(field, props, attributes)
    : input(field, props, attributes);
  return html`
    <div class=${classOf(props)}>
      ${label}
      ${props.hintAt === undefined &&
        html`<p class="hint" id=${hintId}>${sentence(field.hint)}${why && [" ", why]}</p>`}
      ${fault &&
        html`<p class="fault" id=${faultId}><b>Not taken:</b> ${
          withoutLabel(fault, field.label)
        }</p>`}
      ${box} ${state}
    </div>
  `;
}

/** Words need the breadth of the row that a small box stands in. */
function classOf({ fault, assumed, note, text, hintAt }: FieldProps): string {
  if (fault) return "field field-fault";
  if (assumed) return "field field-assumed";
  return hintAt !== undefined && note && text !== "" ? "field field-noted" : "field";
}

type Attributes = Readonly<Record<string, string | undefined>>;

function input(field: Declared, { text }: FieldProps, attributes: Attributes): VNode {
  return html`
    <input
      ...${attributes}
      type="text"
      inputmode=${field.type === "count" ? "numeric" : undefined}
      maxlength=${field.type === "text" ? field.max : undefined}
      spellcheck=${field.type === "text" ? "true" : undefined}
      value=${text}
    />
  `;
}

/** What lies outside the tool can be chosen too: the answer says why it is not taken. */
function select(field: ChoiceField, props: FieldProps, attributes: Attributes): VNode {
  const { text, assumed, hintAt } = props;
  const refused = Object.entries(field.refused ?? {});
  const known = text === "" || text in field.options || refused.some(([word]) => word === text);
  const none = field.required ? "choose one" : hintAt === undefined ? "no answer" : "–";
  const blank = assumed ? `assumed: ${said(field, assumed.text)}` : none;
  return html`
    <select ...${attributes}>
      ${(text === "" || !field.required) && option("", blank, text)}
      ${Object.entries(field.options).map(([word, label]) => option(word, label, text))}
      ${refused.map(([word, { label }]) => option(word, `${label} (not covered)`, text))}
      ${!known && option(text, text, text)}
    </select>
  `;
}

function option(word: string, label: string, chosen: string): VNode {
  return html`<option value=${word} selected=${word === chosen}>${label}</option>`;
}

function stateOf(props: FieldProps, id: string): VNode | undefined {
  const { text, fault, echo, note, assumed, missing, form, system } = props;
  if (fault) return undefined;
  if (text !== "") {
    const words = [echo, note && sentence(note)].filter(Boolean).join("; ");
    return words === "" ? undefined : html`<p class="echo" id=${id}>${words}</p>`;
  }
  if (assumed) return Assumed({ assumed, form, button: "settle", id, system });
  if (!missing) return undefined;
  return html`<p class="missing" id=${id}><b>open:</b> nothing honest can stand in here</p>`;
}
