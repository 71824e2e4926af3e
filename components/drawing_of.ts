/** What a plan's drawing is made with. */
import type { DrawingOptions } from "@/lib/drawing/mod.ts";
import { troublesOf } from "@/lib/evaluation/mod.ts";
import { MATERIALS } from "@/lib/strength/mod.ts";
import type { PlanShown } from "./plan_shown.ts";

/** The papers that a rail is printed on. */
export const PRINT_PAPERS = ["A4", "Letter"] as const;

/** One of them. */
export type PrintPaper = (typeof PRINT_PAPERS)[number];

/** The paper that is at hand where a plan's units are used. */
export function usualPaper({ system }: PlanShown): PrintPaper {
  return system === "inch" ? "Letter" : "A4";
}

/** Title block, units and the holes in trouble. */
export function drawingOptions(shown: PlanShown, paper: PrintPaper): DrawingOptions {
  const { evaluation, values, system } = shown;
  const { sheet, rail } = values;
  const rails = rail.count > 1 ? `, ${rail.count} off` : "";
  return {
    paper,
    system,
    title: {
      title: `${sheet.title ?? "Fuel rail"}${rails}`,
      owner: sheet.owner,
      number: sheet.number,
      date: sheet.date,
      approver: sheet.approver,
      creator: sheet.creator,
      revision: sheet.revision,
      documentType: "Fuel rail",
      material: MATERIALS[rail.material].title,
      tolerance: "ISO 2768-m",
      assumedCount: evaluation.assumed.length,
    },
    troubles: troublesOf(evaluation, system),
  };
}
