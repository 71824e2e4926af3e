/** The Prove sheet: is it dry? */
import type { VNode } from "preact";
import { formatQuantity } from "@/lib/units/mod.ts";
import {
  type CautionId,
  cautionsOf,
  fillLine,
  type Line,
  type ProofContext,
  proofContextOf,
  type Rung,
  testLadder,
  walkRoundLists,
} from "@/lib/walkround/mod.ts";
import { type CautionShown } from "./caution_box.ts";
import { CheckList } from "./check_list.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { StepList } from "./step_list.ts";
import { TickList } from "./tick_list.ts";
import { workingHref } from "./working_link.ts";

/** The sheet: pressures, the ladder of tests, the walk-round lists. */
export function ProvePage(shown: PlanShown): VNode {
  const { evaluation, values, system } = shown;
  const context = proofContextOf(evaluation, values);
  const checks = evaluation.checks.filter(({ step }) => step === "prove");
  return html`
    <h1>Prove: is it dry?</h1>
    <p class="lead">
      Climb the rungs in order. Go on only when a rung is passed; a leak sends you back to the
      rung that would show it mended.
    </p>
    <section aria-labelledby="proof-pressures">
      <h2 id="proof-pressures">Pressures and numbers</h2>
      ${NumberTable({ caption: "All pressures gauge", rows: pressureRows(shown) })}
      ${CheckList({ checks, system, workingHref: workingHref(shown) })}
    </section>
    ${context === undefined
      ? withoutNumbers(shown)
      : [ladder(shown, context), lists(shown, context)]}
  `;
}

function withoutNumbers({ planPath }: PlanShown): VNode {
  return html`
    <p>
      The tests follow from the volume under test. <a href=${`${planPath}/size#rail.bore`}>Enter
      the bore of the gallery</a>, then the ladder and the lists stand here.
    </p>
  `;
}

function pressureRows({ evaluation, system }: PlanShown): NumberRow[] {
  const { proof } = evaluation.results;
  if (!proof) return [];
  const say = (value: number): string => formatQuantity(value, "pressure", system);
  const { pressures, fault, weakest } = proof;
  return [
    {
      label: "Highest working pressure",
      value: say(pressures.workingPressure_Pa),
      note: `waves included by ${say(pressures.swing_Pa)}, a tenth of the set pressure`,
    },
    {
      label: "Highest pressure in a fault",
      value: fault ? say(fault.pressure_Pa) : "open",
      note: fault ? `by ${fault.cause}` : "enter the pump's shut-off or relief pressure",
    },
    {
      label: "Weakest part",
      value: weakest ? say(weakest.rating_Pa) : "open",
      note: weakest?.part ?? "enter the lowest rating of all parts under test",
    },
    {
      label: "Proof pressure",
      value: say(pressures.proofPressure_Pa),
      note: pressures.conflict?.change ?? "with liquid only, never with air and never with petrol",
    },
  ];
}

/** Writes lines and cautions in the units and for the fuel of a plan. */
function writer({ system }: PlanShown, context: ProofContext) {
  return {
    line: (text: Line): string =>
      fillLine(text, ({ value, kind }) => formatQuantity(value, kind, system)),
    cautions(ids: readonly CautionId[]): CautionShown[] {
      return cautionsOf(ids, context.fuel).map(({ title, points, source, defers }) => ({
        title,
        points: [...points.map((point) => this.line(point)), defers],
        source,
      }));
    },
  };
}

function ladder(shown: PlanShown, context: ProofContext): VNode {
  return html`
    <section aria-labelledby="ladder" class="ladder">
      <h2 id="ladder">The ladder of tests</h2>
      ${testLadder(context).map((rung, i) => rungOf(shown, context, rung, i + 1))}
    </section>
  `;
}

function rungOf(shown: PlanShown, context: ProofContext, rung: Rung, number: number): VNode {
  const write = writer(shown, context);
  const say = (value: number, kind: "pressure" | "duration" | "volume" | "energy"): string =>
    formatQuantity(value, kind, shown.system);
  const facts = [
    `Where: ${rung.where === "bench" ? "on the bench" : "in the car"}`,
    `with ${rung.medium}`,
    rung.pressure_Pa !== undefined && `at ${say(rung.pressure_Pa, "pressure")} gauge`,
    rung.hold_s !== undefined && `held ${say(rung.hold_s, "duration")}`,
    rung.volume_m3 !== undefined && `volume ${say(rung.volume_m3, "volume")}`,
    rung.energy_J !== undefined && `stored energy ${say(rung.energy_J, "energy")}`,
  ].filter(Boolean).join(", ");
  return html`
    <section class="rung" aria-labelledby=${`rung-${rung.id}`}>
      <h3 id=${`rung-${rung.id}`}>Rung ${number}: ${rung.title}</h3>
      <p>${write.line(rung.why)}</p>
      <p class="facts">${facts}.</p>
      ${rung.blocked && html`<p class="blocked"><b>Not now:</b> ${write.line(rung.blocked)}</p>`}
      ${part("Fitted", rung.fitted.map(write.line))} ${part("Know", rung.notes.map(write.line))}
      <h4>Do</h4>
      ${StepList({
        steps: rung.steps.map(({ text, cautions }) => ({
          text: write.line(text),
          cautions: write.cautions(cautions),
        })),
      })}
      <h4>Look at</h4>
      ${TickList({ items: rung.look.map(({ what, how }) => ({ text: what, note: how })) })}
      ${part("Passes when", rung.passes.map(write.line))}
      <h4>If not</h4>
      ${StepList({
        steps: rung.ifNot.map(({ text, cautions }) => ({
          text: write.line(text),
          cautions: write.cautions(cautions),
        })),
      })}
      ${part("What this test can and can't see", rung.sees.map(write.line))}
      ${TickList({ items: [{ text: "Passed", blanks: blanksOf(rung) }] })}
    </section>
  `;
}

function blanksOf({ pressure_Pa }: Rung): string[] {
  const pressures = pressure_Pa === undefined ? [] : ["Pressure at start", "at end", "Temperature"];
  return [...pressures, "Date", "Initials"];
}

function part(title: string, lines: readonly string[]): VNode | undefined {
  if (lines.length === 0) return undefined;
  return html`
    <div>
      <h4>${title}</h4>
      <ul>
        ${lines.map((text) => html`<li>${text}</li>`)}
      </ul>
    </div>
  `;
}

function lists(shown: PlanShown, context: ProofContext): VNode {
  const write = writer(shown, context);
  return html`
    <section aria-labelledby="walk-round" class="walk-round">
      <h2 id="walk-round">Walk-round lists</h2>
      ${walkRoundLists(context).map(({ id, title, items }) =>
        html`
          <section class="walk-round-list" aria-labelledby=${`list-${id}`}>
            <h3 id=${`list-${id}`}>${title}</h3>
            ${TickList({
              items: items.map((item) => ({
                text: write.line(item.text),
                note: noteOf(item.with, item.time_s, shown),
                cautions: write.cautions(item.cautions),
              })),
            })}
          </section>
        `
      )}
    </section>
  `;
}

function noteOf(tool: string, time_s: number | undefined, { system }: PlanShown): string {
  return time_s === undefined
    ? `with ${tool}`
    : `with ${tool}, ${formatQuantity(time_s, "duration", system)}`;
}
