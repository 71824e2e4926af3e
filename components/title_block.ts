/** The block at the foot of every sheet: whose drawing it is, which, and what is not settled in it. */
import type { VNode } from "preact";
import { html } from "./html.ts";

/** What the user says of his sheet; the fields of ISO 7200. */
export interface SheetFacts {
  readonly title?: string | undefined;
  readonly number?: string | undefined;
  readonly revision?: string | undefined;
  readonly date?: string | undefined;
  readonly owner?: string | undefined;
  readonly creator?: string | undefined;
  readonly approver?: string | undefined;
}

/** What {@linkcode TitleBlock} shows. */
export interface TitleBlockProps {
  /** What the user says of his sheet; without a plan the block names the page only. */
  readonly sheet?: SheetFacts | undefined;
  /** The title where the user gave none. */
  readonly title: string;
  /** Like "Size, sheet 1 of 4". */
  readonly name?: string | undefined;
  /** Like "1:1"; not given where the sheet has no drawing. */
  readonly scale?: string | undefined;
  /** How many values are assumed. */
  readonly assumedCount?: number | undefined;
  /** How many checks are open for want of an answer. */
  readonly openCount?: number | undefined;
}

/** The title block. What is not given is left blank for a pen. */
export function TitleBlock(props: TitleBlockProps): VNode {
  const { sheet, title, name, scale, assumedCount, openCount } = props;
  if (sheet === undefined) {
    return html`
      <dl class="title-block no-plan">
        ${cell("title", "Title", title)} ${cell("sheet", "Sheet", name ?? "no plan open")}
        ${cell("tool", "Drawn with", "Dryrail")}
      </dl>
    `;
  }
  return html`
    <dl class="title-block">
      ${cell("title", "Title", sheet.title ?? title)} ${cell("owner", "Owner", sheet.owner)}
      ${cell("drawn", "Drawn by", sheet.creator)} ${cell("approved", "Approved by", sheet.approver)}
      ${cell("number", "Drawing number", sheet.number)}
      ${cell("revision", "Revision", sheet.revision)} ${cell("date", "Date", sheet.date)}
      ${cell("sheet", "Sheet", name)} ${cell("scale", "Scale", scale ?? "none")}
      ${cell("assumed", "Assumed", countOf(assumedCount, "value", "left"))}
      ${cell("open", "Open", countOf(openCount, "check", ""))}
    </dl>
  `;
}

function cell(name: string, label: string, value: string | undefined): VNode {
  return html`
    <div class=${`tb-${name}`}>
      <dt>${label}</dt>
      <dd>${value ?? html`<span class="spoken">not given</span>`}</dd>
    </div>
  `;
}

function countOf(count: number | undefined, noun: string, after: string): string | undefined {
  if (count === undefined) return undefined;
  return `${count} ${noun}${count === 1 ? "" : "s"} ${after}`.trim();
}
