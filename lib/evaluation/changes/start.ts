/** The plan that changes begin from. */
import { fieldAt, type Plan, type PlanValues, resolvePlan, type Typed } from "@/lib/plan/mod.ts";
import { formatQuantity, type System } from "@/lib/units/mod.ts";
import type { Evaluation } from "../evaluation.ts";
import { answerAt } from "./answers.ts";

/** A plan, its numbers and what was found for it. */
export interface Start {
  /** As typed. */
  readonly plan: Plan;
  /** In SI. */
  readonly values: PlanValues;
  /** What was found for it. */
  readonly evaluation: Evaluation;
  /** The units that changes are written in. */
  readonly system: System;
}

/** Puts together what levers look at. */
export function startOf(plan: Plan, evaluation: Evaluation): Start {
  const { values } = resolvePlan(plan);
  return { plan, values, evaluation, system: values.sheet.units };
}

/** The number at a path, in SI. */
export function numberAt({ values }: Pick<Start, "values">, path: string): number | undefined {
  const value = path.split(".").reduce<unknown>(
    (within, key) => (within as Record<string, unknown> | undefined)?.[key],
    values,
  );
  return typeof value === "number" ? value : undefined;
}

/**
 * What stands at a path as typed, or what is assumed there, in the plan's units; the word of a
 * choice as the page says it.
 */
export function textAt(start: Start, path: string): string {
  const typed = typedAt(start, path);
  const text = typed ?? assumedAt(start, path);
  if (text === undefined) return "not given";
  const field = fieldAt(path);
  return field?.type === "choice" ? field.options[text] ?? text : text;
}

function typedAt({ plan }: Start, path: string): string | undefined {
  const typed = answerAt(plan, path);
  return typed === undefined || typed === "" ? undefined : String(typed);
}

/** Defaults are written in metric units. */
function assumedAt(start: Start, path: string): string | undefined {
  const field = fieldAt(path);
  const value = numberAt(start, path);
  return start.system === "inch" && field?.type === "quantity" && value !== undefined
    ? formatQuantity(value, field.kind, start.system)
    : start.evaluation.assumed.find((each) => each.path === path)?.text;
}

/** The units that a quantity was typed in, else the plan's: a change is read beside what it changes. */
export function systemAt(start: Start, path: string): System {
  return systemOf(typedAt(start, path)) ?? start.system;
}

/** The units of a text that is typed; undefined where both sheets have them. */
export function systemOf(text: string | undefined): System | undefined {
  if (text === undefined) return undefined;
  if (INCH.test(text)) return "inch";
  return METRIC.test(text) ? "metric" : undefined;
}

const INCH = /psi|[\d\s]in$|"|gal|lb|°F|ft/;
const METRIC = /bar|Pa|[\d\s][mcµ]?m$|L|°C|g\/kWh/;

/** The rows of a list with what leads to one of them: the list itself while its rows are assumed. */
export interface Rows {
  readonly rows: readonly Typed[];
  pathOf(row: number, name: string): string;
}

/** The rows of a list as typed, or those assumed. */
export function rowsAt({ plan, evaluation }: Start, path: string): Rows {
  const typed = answerAt(plan, path);
  if (Array.isArray(typed) && typed.length > 0) {
    return { rows: typed, pathOf: (row, name) => `${path}.${row}.${name}` };
  }
  const rows = evaluation.assumed.find((each) => each.path === path)?.rows ?? [];
  return { rows, pathOf: () => path };
}
