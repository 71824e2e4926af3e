/** The page of one method: its formula, its symbols, where it holds and where it is from. */
import type { VNode } from "preact";
import type { AnyMethod, MethodInput, MethodInputs, MethodOutput } from "@/lib/method/mod.ts";
import { fast } from "./fast.ts";
import { html } from "./html.ts";
import { Formula, MathSymbol } from "./mathml.ts";
import { sentence } from "./show.ts";
import { showRange, unitText } from "./si.ts";

/** What {@linkcode MethodPage} shows. */
export interface MethodPageProps {
  readonly method: AnyMethod;
  /** The subject it belongs to. */
  readonly subject: string;
}

/** The page. Needs `mathmlReady()`. */
export function MethodPage({ method, subject }: MethodPageProps): VNode {
  const { title, formula, words, fit, inputs, output, source } = method;
  return html`
    <article class="method">
      <p class="trail"><a href="/methods">Methods</a> · ${subject}</p>
      <h1>${title}</h1>
      ${Formula(method)} ${formula !== null && words && html`<p>${sentence(words)}</p>`}
      ${fit && html`
        <p>
          A fit: its constants carry units that are not written, so it holds for plain numbers in the
          units below only.
        </p>
      `}
      <div class="scroll">
        <table>
          <caption>Symbols, in SI units, with the range that the method is valid in</caption>
          <thead>
            <tr>
              <th scope="col">Symbol</th>
              <th scope="col">Meaning</th>
              <th scope="col">Unit</th>
              <th scope="col">Valid</th>
            </tr>
          </thead>
          <tbody>
            ${row(output.name, output, "Result: ")}
            ${Object.entries(inputs as MethodInputs).map(([name, input]) => row(name, input, ""))}
          </tbody>
        </table>
      </div>
      <h2>Source</h2>
      <p>${sentence(source)}</p>
      <p>Outside its range a method gives no number.</p>
    </article>
  `;
}

function row(name: string, number: MethodInput | MethodOutput, before: string): VNode {
  return fast`<tr><td>${MathSymbol(name, number.symbol)}</td><td>${before}${number.says}</td>
    <td>${unitText(number.unit) || "none"}</td><td>${showRange(number)}</td></tr>`;
}
