/** The page one starts from. */
import type { VNode } from "preact";
import { type Demo, DemoList } from "./demo_list.ts";
import { ErrorSummary } from "./error_summary.ts";
import { html } from "./html.ts";
import { StartForm, type StartFormProps } from "./start_form.ts";

/** What {@linkcode StartPage} shows: the form, and the demos. */
export interface StartPageProps extends StartFormProps {
  readonly demos: readonly Demo[];
}

/** What this is, the eight questions, the demos, and who comes first. */
export function StartPage({ boxes, faults, demos }: StartPageProps): VNode {
  return html`
    <div class="start">
      ${faults.length > 0 && ErrorSummary({ faults })}
      <h1>A fuel rail of your own, from target power to a dry joint</h1>
      <p class="lead">
        Dryrail works out whether injectors, rail and pump feed the engine you build, and which holes
        to drill where. Then it plans how to prove the rail dry before fuel goes near a hot engine, and
        writes the numbers down for whoever tunes it.
      </p>
      <p class="first-of-all">
        Petrol, alcohols and pressure hurt people. Local codes, the rules of the place where the vehicle
        is used, and the judgement of licensed or qualified people come first.
      </p>
      <div class="start-columns">
        <section aria-labelledby="questions-title">
          <h2 id="questions-title">Eight questions</h2>
          <p>
            Type any unit: 420 hp, 313 kW, 1000 cc/min, 5/8 in. What you leave blank is assumed, and
            every sheet says so.
          </p>
          ${StartForm({ boxes, faults })}
        </section>
        <section aria-labelledby="demos-title">
          <h2 id="demos-title">Or open a worked plan</h2>
          ${DemoList({ demos })}
        </section>
      </div>
    </div>
  `;
}
