/** Formulas and symbols of methods as MathML; the one place where temml is loaded. */
import type { VNode } from "preact";
import type { AnyMethod, MethodInputs } from "@/lib/method/mod.ts";
import { formulaToTex, unitsReady } from "@/lib/units/mod.ts";
import { raw } from "./fast.ts";
import { html } from "./html.ts";

/** What is used of the package. */
interface Temml {
  renderToString(tex: string, options: { readonly displayMode: boolean }): string;
}

let temml: Temml | undefined;
let loading: Promise<void> | undefined;

/** Loads what writes MathML, once. Await it before formulas are shown. */
export function mathmlReady(): Promise<void> {
  loading ??= load();
  return loading;
}

async function load(): Promise<void> {
  const [module] = await Promise.all([import("temml"), unitsReady()]);
  temml = module.default as Temml;
}

/** By id: methods are declared once and never change. */
const formulas = new Map<string, string>();
const symbols = new Map<string, string>();

/**
 * Shows what a method computes: "result = formula".
 *
 * @param method The method.
 * @returns The formula, or what is done in words where there is no closed form.
 * @throws {Error} Before {@linkcode mathmlReady}.
 */
export function Formula(method: AnyMethod): VNode {
  const { id, formula, words, output } = method;
  if (formula === null) return html`<p class="formula">${words ?? "No closed form."}</p>`;
  let text = formulas.get(id);
  if (text === undefined) {
    const left = output.symbol ?? upright(output.name);
    text = mathml(`${left} = ${formulaToTex(formula, symbolsOf(method))}`, true);
    formulas.set(id, text);
  }
  // A long formula is scrolled, so it can be reached by the keyboard.
  return html`
    <div class="formula" tabindex="0" role="group" aria-label=${`Formula: ${method.title}`}>
      ${raw(text)}
    </div>
  `;
}

/**
 * Shows a symbol as it stands in the formula.
 *
 * @param name The name of the input or output.
 * @param symbol Its TeX, if it has one.
 * @throws {Error} Before {@linkcode mathmlReady}.
 */
export function MathSymbol(name: string, symbol: string | undefined): VNode {
  const tex = symbol ?? upright(name);
  let text = symbols.get(tex);
  if (text === undefined) symbols.set(tex, text = mathml(tex, false));
  return raw(text);
}

function symbolsOf(method: AnyMethod): Record<string, string> {
  const found: Record<string, string> = {};
  for (const [name, { symbol }] of Object.entries(method.inputs as MethodInputs)) {
    if (symbol !== undefined) found[name] = symbol;
  }
  return found;
}

function upright(name: string): string {
  return `\\mathrm{${name.replaceAll("_", "\\_")}}`;
}

/** Without temml's style attributes, which the content policy blocks; the stylesheet says the same. */
function mathml(tex: string, displayMode: boolean): string {
  if (temml === undefined) {
    throw new Error("Cannot write formulas yet: await mathmlReady() first");
  }
  return temml.renderToString(tex, { displayMode }).replaceAll(/ style="[^"]*"/g, "");
}
