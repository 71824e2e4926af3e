/** The workshop sheet of an evaluated plan. */
import type { PlanValues } from "@/lib/plan/mod.ts";
import type { Evaluation } from "../evaluation.ts";
import { Bench } from "./bench.ts";
import { barPoints } from "./inspect_bar.ts";
import { fittingPoints } from "./inspect_fitting.ts";
import { holePoints } from "./inspect_holes.ts";
import type { Inspection } from "./inspection.ts";
import type { Operation } from "./operation.ts";
import { inOrder, operationsOf } from "./operations.ts";
import type { WorkshopTool } from "./tool.ts";
import { workshopTools } from "./tools.ts";

/** What goes to the drill press. */
export interface Workshop {
  /** Why there is no sheet yet; undefined where there is one. The lists are empty then. */
  readonly missing: string | undefined;
  /** What to do, in order. */
  readonly operations: readonly Operation[];
  /** The tools, in the order in which they are first needed. */
  readonly tools: readonly WorkshopTool[];
  /** What to measure. */
  readonly inspection: readonly Inspection[];
}

/**
 * Puts together the order of work, the tools and the inspection points of a rail.
 *
 * The sheet follows the plan as it stands, failing checks included; an operation that must not be
 * done as planned says so in its `blocked`. Speeds stay within what the plan's press turns.
 * A drill of another size is never named for a bore that a ring seals in, unless it is within the
 * bore's own tolerance. Ways of working that no handbook prints say `common practice, no source`.
 *
 * @param evaluation The evaluated plan.
 * @param values The same plan in numbers.
 * @returns Operations, tools and inspection points; what is missing where the rail can't be laid out.
 *
 * @example Gallery before pockets, burrs after all holes
 * ```ts
 * import { assert } from "@std/assert";
 * import { planReady, readPlan, resolvePlan } from "@/lib/plan/mod.ts";
 * import { evaluate } from "../evaluate.ts";
 *
 * await planReady();
 * const reading = readPlan({
 *   version: 1,
 *   engine: {
 *     cycle: "four-stroke", cylinders: 4, power: "200 hp", powerSpeed: "7000 rpm",
 *     aspiration: "natural",
 *   },
 *   fuel: { name: "petrol" },
 *   rail: { bore: "12 mm", height: "35 mm" },
 * });
 * assert(reading.ok);
 * const sheet = workshopOf(evaluate(reading.plan), resolvePlan(reading.plan).values);
 *
 * const order = sheet.operations.map(({ id }) => id);
 * assert(order.indexOf("gallery") < order.indexOf("pocket-bores"));
 * assert(order.indexOf("screw-holes") < order.indexOf("deburr"));
 * ```
 */
export function workshopOf(evaluation: Evaluation, values: PlanValues): Workshop {
  const { layout, noLayout } = evaluation.results.drill;
  if (layout === undefined) {
    const missing = noLayout ?? "Enter the bore of the gallery and the size of the bar.";
    return { missing, operations: [], tools: [], inspection: [] };
  }
  const bench = new Bench(evaluation, values, layout);
  const tools = workshopTools(bench);
  const operations = operationsOf(bench, tools);
  return {
    missing: undefined,
    operations,
    tools: inOrder(tools, operations),
    inspection: [...barPoints(bench), ...holePoints(bench), ...fittingPoints(bench)],
  };
}
