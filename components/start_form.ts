/** The eight questions that are enough for a first verdict. */
import type { VNode } from "preact";
import { type Boxes, type Fault, type Field as Declared, fieldAt } from "@/lib/plan/mod.ts";
import { Field } from "./field.ts";
import { html } from "./html.ts";

/** One question and the boxes that answer it. */
export interface Question {
  readonly asks: string;
  /** What to leave blank, or what to know before answering. */
  readonly note?: string;
  /** The paths of its boxes. */
  readonly paths: readonly string[];
}

/** The questions in order. A test holds that they ask every field marked `first`, and no other. */
export const QUESTIONS: readonly Question[] = [
  { asks: "Which engine?", paths: ["engine.cycle", "engine.cylinders"] },
  { asks: "How much power?", paths: ["engine.power"] },
  { asks: "At which speed?", paths: ["engine.powerSpeed"] },
  {
    asks: "Which fuel?",
    note: "The ethanol share is asked for only with “another blend”.",
    paths: ["fuel.name", "fuel.ethanolShare"],
  },
  {
    asks: "Boost or none?",
    note: "Leave the boost blank when there is none.",
    paths: ["engine.aspiration", "engine.boost"],
  },
  {
    asks: "Which injectors?",
    note: "Leave blank if you have none yet: the flow to shop for is worked out.",
    paths: ["injectors.stages.0.flow", "injectors.stages.0.pressure"],
  },
  {
    asks: "Which pump?",
    note: "Leave blank if you have none yet: the flow to shop for is worked out.",
    paths: ["pump.points.0.flow", "pump.points.0.pressure", "pump.voltage"],
  },
  {
    asks: "Which rail?",
    note: "Leave blank what you don't know yet.",
    paths: ["rail.bore", "rail.shape", "rail.height", "rail.width"],
  },
];

/** What {@linkcode StartForm} shows. */
export interface StartFormProps {
  /** The text of each box, by path; empty at first. */
  readonly boxes: Boxes;
  /** What could not be taken. */
  readonly faults: readonly Fault[];
}

/** The form; it is sent to `/plan`, where every other answer is assumed and says so. */
export function StartForm({ boxes, faults }: StartFormProps): VNode {
  return html`
    <form class="start-form" method="post" action="/plan" novalidate autocomplete="off"
      spellcheck="false">
      <ol class="questions">
        ${QUESTIONS.map(({ asks, note, paths }) =>
          html`
            <li>
              <fieldset>
                <legend>${asks}</legend>
                ${note && html`<p class="hint">${note}</p>`} ${paths.map((path) =>
                  box(path, boxes.get(path) ?? "", faults)
                )}
              </fieldset>
            </li>
          `
        )}
      </ol>
      <p class="send"><button class="main">Work it out</button></p>
    </form>
  `;
}

function box(path: string, text: string, faults: readonly Fault[]): VNode {
  // The table of questions is held against the fields by a test.
  const field = fieldAt(path) as Declared;
  const fault = faults.find((each) => each.path === path)?.message;
  return Field({ path, field, text, fault });
}
