/** The Prove sheet: is it dry? */
import type { VNode } from "preact";
import { comesOff, type Fault, type WeakestPart } from "@/lib/proof/mod.ts";
import { formatQuantity, type Kind } from "@/lib/units/mod.ts";
import {
  type CautionId,
  cautionsOf,
  DEFERS,
  fillLine,
  type Line,
  type ListItem,
  type ProofContext,
  proofContextOf,
  type Rung,
  type Step,
  testLadder,
  walkRoundLists,
} from "@/lib/walkround/mod.ts";
import { type CautionShown } from "./caution_box.ts";
import { changesHref } from "./changes_link.ts";
import { CheckList } from "./check_list.ts";
import { html } from "./html.ts";
import { type NumberRow, NumberTable } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { StepList } from "./step_list.ts";
import { TickList } from "./tick_list.ts";
import { unbroken } from "./unbroken.ts";
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
      ${CheckList({
        checks,
        system,
        workingHref: workingHref(shown),
        changesHref: changesHref(shown),
      })}
    </section>
    ${context === undefined ? withoutNumbers(shown) : tests(shown, context)}
  `;
}

/** One writer for both, so that what the ladder says in full the lists only name. */
function tests(shown: PlanShown, context: ProofContext): VNode[] {
  const write = new Writer(shown, context);
  return [ladder(write, context), lists(write, context)];
}

function withoutNumbers({ planPath }: PlanShown): VNode {
  return html`
    <p>
      The tests follow from the volume under test. <a href=${`${planPath}/size#rail.bore`}>Enter
      the bore of the gallery</a>, then the ladder and the lists stand here.
    </p>
  `;
}

function pressureRows({ evaluation, values, system }: PlanShown): NumberRow[] {
  const { proof } = evaluation.results;
  if (!proof) return [];
  const say = (value: number): string => unbroken(formatQuantity(value, "pressure", system));
  const { pressures, fault, weakest } = proof;
  const { layout } = values.regulator;
  return [
    {
      label: "Highest working pressure",
      value: say(pressures.workingPressure_Pa),
      note: `waves included by ${say(pressures.swing_Pa)}, a tenth of the set pressure`,
    },
    {
      label: "Highest pressure in a fault",
      value: fault ? `${atLeast(fault, layout)}${say(fault.pressure_Pa)}` : "open",
      note: faultNote(fault, layout),
    },
    {
      label: "Weakest part",
      value: weakest ? say(weakest.rating_Pa) : "open",
      note: weakestNote(weakest),
    },
    {
      label: "Proof pressure",
      value: say(pressures.proofPressure_Pa),
      note: pressures.conflict?.change ?? "with liquid only, never with air and never with petrol",
    },
  ];
}

/** Trapped fuel is not computed, so a dead end may always see more than its pump makes. */
function atLeast({ isLeast }: Fault, layout: "return" | "dead-ended"): string {
  return isLeast || layout === "dead-ended" ? "at least " : "";
}

function faultNote(fault: Fault | undefined, layout: "return" | "dead-ended"): string {
  const known = fault === undefined
    ? "enter the pump's shut-off or relief pressure"
    : fault.isLeast
    ? "a point of the pump's curve, until its shut-off or relief pressure is known"
    : `by the ${fault.cause}`;
  return layout === "dead-ended"
    ? `${known}; fuel shut in and warmed may make more: not computed, as that needs how much the ` +
      "hose yields"
    : known;
}

function weakestNote(weakest: WeakestPart | undefined): string {
  if (weakest === undefined) return "enter the lowest rating of all parts under test";
  const { part } = weakest;
  return comesOff(part)
    ? `${part}: it comes off for the proof; enter the lowest rating of what stays on`
    : part;
}

/** Writes lines and cautions in the units and for the fuel of a plan, each caution in full once. */
class Writer {
  readonly #shown: PlanShown;
  readonly #context: ProofContext;
  /** Where each caution stands in full. */
  readonly #inFull = new Map<CautionId, string>();

  constructor(shown: PlanShown, context: ProofContext) {
    this.#shown = shown;
    this.#context = context;
  }

  say(value: number, kind: Kind): string {
    return formatQuantity(value, kind, this.#shown.system);
  }

  line(text: Line): string {
    return unbroken(fillLine(text, ({ value, kind }) => this.say(value, kind)));
  }

  lines(texts: readonly Line[]): string[] {
    return texts.map((text) => this.line(text));
  }

  cautions(ids: readonly CautionId[], place: string): CautionShown[] {
    return cautionsOf(ids, this.#context.fuel).map(({ id, title, points, source }) => {
      const inFullAt = this.#inFull.get(id);
      if (inFullAt === undefined) this.#inFull.set(id, place);
      return { title, points: this.lines(points), source, inFullAt };
    });
  }

  steps(steps: readonly Step[], place: string): VNode {
    return StepList({
      steps: steps.map(({ text, cautions }) => ({
        text: this.line(text),
        cautions: this.cautions(cautions, place),
      })),
      defers: DEFERS,
    });
  }
}

function ladder(write: Writer, context: ProofContext): VNode {
  return html`
    <section aria-labelledby="ladder" class="ladder">
      <h2 id="ladder">The ladder of tests</h2>
      ${testLadder(context).map((rung, i) => rungOf(write, rung, i + 1))}
    </section>
  `;
}

function rungOf(write: Writer, rung: Rung, number: number): VNode {
  const place = `rung\u00a0${number}`;
  return html`
    <section class="rung" aria-labelledby=${`rung-${rung.id}`}>
      <h3 id=${`rung-${rung.id}`}>Rung ${number}: ${rung.title}</h3>
      <p>${write.line(rung.why)}</p>
      <p class="facts">${unbroken(factsOf(write, rung))}.</p>
      ${rung.blocked && html`<p class="blocked"><b>Not now:</b> ${write.line(rung.blocked)}</p>`}
      ${part("Fitted", write.lines(rung.fitted))} ${part("Know", write.lines(rung.notes))}
      <h4>Do</h4>
      ${write.steps(rung.steps, place)}
      <h4>Look at</h4>
      <div class="places">
        ${TickList({ items: rung.look.map(({ what, how }) => ({ text: what, note: how })) })}
      </div>
      ${part("Passes when", write.lines(rung.passes))}
      <h4>If not</h4>
      ${write.steps(rung.ifNot, place)}
      <div class="sign-off">
        ${part("What this test can and can't see", write.lines(rung.sees))}
        ${TickList({ items: [{ text: `Rung ${number} passed`, blanks: blanksOf(rung) }] })}
      </div>
    </section>
  `;
}

function factsOf(write: Writer, rung: Rung): string {
  const { where, medium, pressure_Pa, hold_s, volume_m3, energy_J } = rung;
  return [
    `Where: ${where === "bench" ? "on the bench" : "in the car"}`,
    `with ${medium}`,
    pressure_Pa !== undefined && `at ${write.say(pressure_Pa, "pressure")} gauge`,
    hold_s !== undefined && `held ${write.say(hold_s, "duration")}`,
    volume_m3 !== undefined && `volume ${write.say(volume_m3, "volume")}`,
    energy_J !== undefined && `stored energy ${write.say(energy_J, "energy")}`,
  ].filter(Boolean).join(", ");
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

function lists(write: Writer, context: ProofContext): VNode {
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
                note: noteOf(write, item),
                cautions: write.cautions(item.cautions, `list “${title}”`),
              })),
              defers: DEFERS,
            })}
          </section>
        `
      )}
    </section>
  `;
}

function noteOf(write: Writer, { with: tool, time_s }: ListItem): string {
  return time_s === undefined
    ? `with ${tool}`
    : unbroken(`with ${tool}, ${write.say(time_s, "duration")}`);
}
