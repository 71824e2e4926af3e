/** What a rule between fields is. */
import type { Kind } from "@/lib/units/mod.ts";
import type { Fault } from "../fault.ts";
import type { PlanValues } from "../sections.ts";

/** Writes a quantity in the plan's units, and in the others beside them. */
export type Say = (value: number, kind: Kind) => string;

/** A rule between fields. */
export interface Rule {
  /** The fields or sections that it looks at; it says nothing while one of them is at fault. */
  readonly of: readonly string[];
  /** The fault it finds, or one for each row that it finds one in. */
  readonly find: (values: PlanValues, say: Say) => Fault | readonly Fault[] | undefined;
}

/** A fault at a path. */
export function fault(path: string, message: string): Fault {
  return { path, message };
}

/** A value that the same quantity has in whatever unit it was typed: 5 L/min and 300 L/h differ in their last bits. */
export function asTyped(value: number): number {
  return Number(value.toPrecision(9));
}
