/** The working: which formulas ran, with which numbers. */
import type { VNode } from "preact";
import type { AnyMethod, MethodInputs, Use } from "@/lib/method/mod.ts";
import type { System } from "@/lib/units/mod.ts";
import { fast } from "./fast.ts";
import { html } from "./html.ts";
import { Formula, MathSymbol } from "./mathml.ts";
import { inPlanUnits, showRange, showSi } from "./si.ts";
import { partOf, subjectTitle } from "./working_names.ts";

/** What {@linkcode Working} shows. */
export interface WorkingProps {
  /** What ran, in order. */
  readonly uses: readonly Use[];
  /** Finds a method by its id. */
  readonly methodOf: (id: string) => AnyMethod | undefined;
  /** The units that the plan is shown in. */
  readonly system: System;
  /** True to show every formula at once, as for print. */
  readonly isOpen?: boolean | undefined;
}

/** The id that links to the working of a result lead to. */
export function workingId(result: string): string {
  return `working-${result}`;
}

/** The uses by subject, each to be opened. Needs `mathmlReady()`. */
export function Working({ uses, methodOf, system, isOpen }: WorkingProps): VNode {
  const seen = new Set<string>();
  const bySubject = Map.groupBy(uses, ({ result }) => result.split(".")[0] ?? "");
  return html`
    <div class="working">
      ${[...bySubject].map(([subject, group]) =>
        html`
          <section>
            <h3>${subjectTitle(subject)}</h3>
            ${group.map((use) => {
              // A result found in several rounds is linked to by its first.
              const id = seen.has(use.result) ? undefined : workingId(use.result);
              seen.add(use.result);
              return one({ use, method: methodOf(use.method), system, id, isOpen });
            })}
          </section>
        `
      )}
    </div>
  `;
}

/** One step of the working. */
interface Step {
  readonly use: Use;
  readonly method: AnyMethod | undefined;
  readonly system: System;
  readonly id: string | undefined;
  readonly isOpen: boolean | undefined;
}

function one({ use, method, system, id, isOpen }: Step): VNode {
  if (method === undefined) return html`<p id=${id}>${use.result}: method ${use.method}</p>`;
  const { output, source, title } = method;
  const inputs = Object.entries(method.inputs as MethodInputs);
  const part = partOf(use.result);
  return html`
    <details id=${id} open=${isOpen}>
      <summary>
        ${output.says}${part && ` (${part})`}:${" "}
        <b>${withPlanUnits(use.value, output.unit, system)}</b>
      </summary>
      ${Formula(method)}
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">Symbol</th>
              <th scope="col">Put in</th>
              <th scope="col">Value</th>
              <th scope="col">Valid</th>
            </tr>
          </thead>
          <tbody>
            ${inputs.map(([name, input]) =>
              fast`<tr><td>${MathSymbol(name, input.symbol)}</td>
              <td>${input.says}</td>
              <td class="number">${withPlanUnits(use.inputs[name], input.unit, system)}</td>
              <td>${showRange(input)}</td></tr>`
            )}
          </tbody>
        </table>
      </div>
      <p class="source">
        ${`${title}. Source: ${source}.`}${" "}<a href=${`/methods/${method.id}`}>Method</a>
      </p>
    </details>
  `;
}

function withPlanUnits(value: number | undefined, unit: string, system: System): string {
  if (value === undefined) return "not recorded";
  const own = inPlanUnits(value, unit, system);
  return own === undefined ? showSi(value, unit) : `${showSi(value, unit)} ${own}`;
}
