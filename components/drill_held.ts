/** The screws that hold the rail down, and what touches the fuel. */
import type { VNode } from "preact";
import { MATERIALS } from "@/lib/strength/mod.ts";
import { FASTENING_NOTES } from "@/lib/thread/mod.ts";
import { formatNumber, formatQuantity, type Kind } from "@/lib/units/mod.ts";
import { HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";
import { NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { quantityRow } from "./size_numbers.ts";
import { Verdict } from "./verdict.ts";

/** Screw by screw, with the torque to set. */
export function DrillHeld(shown: PlanShown): VNode | undefined {
  const { held } = shown.evaluation.results.drill;
  if (held === undefined) return undefined;
  const { holdDown } = shown.values;
  const say = (value: number, kind: Kind): string => formatQuantity(value, kind, shown.system);
  const row = quantityRow.bind(undefined, shown);
  return html`
    <section aria-labelledby="held">
      <h2 id="held">Hold-down</h2>
      ${NumberTable({
        caption: `${held.screws.length} screws ${held.thread}, class ${holdDown.strengthClass}`,
        rows: [
          ...row(
            "Torque",
            holdDown.torque,
            "torque",
            `nut factor ${formatNumber(holdDown.nutFactor)}`,
          ),
          ...row("Clamp load of each", held.preload_N, "force"),
          ...row("Lift of all injectors at proof pressure", held.lift_N, "force"),
          ...row("Torque that is enough for the aim", held.leastTorque_Nm, "torque"),
          ...row(
            "Torque that screw, thread and face allow",
            held.mostTorque_Nm,
            "torque",
            `thread in ${MATERIALS[holdDown.bossMaterial].title.toLowerCase()}`,
          ),
          ...row("Rise of the bar at proof pressure", held.deflection_m, "length"),
        ],
      })}
      ${HoleTable({
        caption: "Screw by screw",
        columns: [
          { title: "Screw" },
          { title: "From the datum end", isNumber: true },
          { title: "Pull at proof", isNumber: true },
          { title: "Clamp over pull", isNumber: true },
          { title: "Clamp left", isNumber: true },
          { title: "Against stripping", isNumber: true },
        ],
        rows: held.screws.map((screw, i) => [
          `Screw ${i + 1}`,
          say(screw.x_m, "length"),
          say(screw.pull_N, "force"),
          screw.preloadFactor === undefined ? "no pull" : formatNumber(screw.preloadFactor),
          screw.clampLeft_N > 0 ? say(screw.clampLeft_N, "force") : "none: it opens",
          formatNumber(screw.strippingFactor),
        ]),
      })}
      <ul class="note">
        <li>
          ${held.throughBar
            ? "The screws go through the bar; their bores keep clear of the gallery."
            : "The bar is held by brackets at these places: each as stiff as the bar, on stand-offs that set the height above. Give the plan places of your screws to have them drilled through the bar."}
          ${" "}Keep connectors and clips clear: turn an injector with its plug on before you drill.
        </li>
        ${FASTENING_NOTES.map(({ text, source }) => html`<li>${text} ${source}.</li>`)}
      </ul>
    </section>
  `;
}

/** Rubbers, bar, liners and fittings in the plan's fuel. */
export function DrillFuel(shown: PlanShown): VNode | undefined {
  const { fitness } = shown.evaluation.results.drill;
  if (fitness === undefined) return undefined;
  const [rubber, bar, ...rest] = fitness.rows;
  const planned = [rubber, bar].flatMap((one) => one ?? []);
  return html`
    <section aria-labelledby="wetted">
      <h2 id="wetted">What touches the fuel</h2>
      ${fitnessTable("As planned", planned)}
      <details>
        <summary>Hose liners and fittings to choose from, in this fuel</summary>
        ${fitnessTable("To choose from", rest)}
      </details>
    </section>
  `;
}

type Row = NonNullable<PlanShown["evaluation"]["results"]["drill"]["fitness"]>["rows"][number];

function fitnessTable(caption: string, rows: readonly Row[]): VNode {
  return html`
    <div class="scroll" tabindex="0" role="group" aria-label=${caption}>
      <table class="stacks columns">
        <caption>${caption}</caption>
        <thead>
          <tr>
            <th scope="col">Part</th>
            <th scope="col">Material</th>
            <th scope="col">Verdict</th>
            <th scope="col">Why, and what to do</th>
          </tr>
        </thead>
        <tbody>
          ${rows.map(({ part, title, fitness }) =>
            html`
              <tr>
                <th scope="row">${part}</th>
                <td data-title="Material">${title}</td>
                <td data-title="Verdict">${Verdict({ verdict: fitness.verdict })}</td>
                <td data-title="Why">
                  ${fitness.why} ${fitness.whatToDo} <span class="source">${fitness.source}.</span>
                </td>
              </tr>
            `
          )}
        </tbody>
      </table>
    </div>
  `;
}
