/** What stands in for an answer not given, with the button that settles it. */
import type { VNode } from "preact";
import { type Assumption, type Field, fieldAt, type ListField } from "@/lib/plan/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { inInches } from "./echo.ts";
import { html } from "./html.ts";

/** What {@linkcode Assumed} shows. */
export interface AssumedProps {
  /** The value that stands in, and why. */
  readonly assumed: Assumption;
  /** The id of the form that the button sends; without it there is no button. */
  readonly form?: string | undefined;
  /**
   * What the button is to the service: `confirm` leads on to the list of what is still assumed,
   * `settle` back to the box that the value stands in from now on.
   */
  readonly button?: "confirm" | "settle";
  /** The id of its words, for what they describe. */
  readonly id?: string | undefined;
  /** The units of the plan; defaults are metric, and said in inches and pounds too where those are wanted. */
  readonly system?: System | undefined;
}

/** "assumed 40 °C: reason (source)", and a button that sends the path. */
export function Assumed(props: AssumedProps): VNode {
  const { assumed, form, button = "confirm", id, system } = props;
  const { path, label, text, because, source } = assumed;
  const field = fieldAt(path);
  const inch = system === "inch" && inInches(field, text);
  const confirm = form && html`
    <button name=${button} value=${path} form=${form} aria-label=${`Confirm ${label}`}>
      Confirm
    </button>
  `;
  return html`
    <p class="assumed">
      <span id=${id}><b>assumed ${said(field, text)}${inch &&
        ` (${inch})`}:</b> ${because} (${source})</span>${" "}
      ${confirm}
    </p>
  `;
}

/** A value as a page says it: the words of a choice, else the text. */
export function said(field: Field | ListField | undefined, text: string): string {
  return field?.type === "choice" ? field.options[text] ?? text : text;
}
