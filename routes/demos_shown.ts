/** The demo plans as the start page lists them. */
import type { Demo } from "@/components/demo_list.ts";
import type { Verdict } from "@/lib/evaluation/mod.ts";
import { type Demo as DemoPlan, demos } from "./demos.ts";

/** By name, once they were evaluated. */
const verdicts = new Map<string, readonly Verdict[]>();

/**
 * Evaluates the demos, so that the start page can say how they come out. Not
 * done on the way to the first answer, as it needs mathjs: until then the
 * start page lists the demos without their verdicts.
 */
export async function judgeDemos(): Promise<void> {
  const [{ evaluate }, { planReady, readPlan }] = await Promise.all([
    import("@/lib/evaluation/mod.ts"),
    import("@/lib/plan/mod.ts"),
  ]);
  await planReady();
  for (const { name, plan } of demos) {
    const reading = readPlan(plan);
    if (!reading.ok) throw new Error(`The demo ${name} is no plan: ${reading.faults[0]?.message}`);
    verdicts.set(name, evaluate(reading.plan).checks.map((check) => check.verdict));
  }
}

/** The demos in order, with their verdicts once these are known. */
export function demosShown(): Demo[] {
  return demos.map((demo) => ({
    href: `/demo/${demo.name}`,
    ...sheetOf(demo),
    verdicts: verdicts.get(demo.name) ?? [],
  }));
}

function sheetOf({ name, plan }: DemoPlan): { readonly title: string; readonly story: string } {
  const { sheet } = plan as {
    readonly sheet?: { readonly title?: string; readonly remarks?: string };
  };
  return { title: sheet?.title ?? name, story: sheet?.remarks ?? "" };
}
