/** Reads what requests say of a plan. */
import { planReady, type Reading, readPlan, type SectionName, SECTIONS } from "@/lib/plan/mod.ts";

/** Reads a plan document once units can be read. */
export async function read(document: unknown): Promise<Reading> {
  await planReady();
  return readPlan(document);
}

/** The section that a path lies in, if it lies in any. */
export function sectionOf(path: string): SectionName | undefined {
  const [name = ""] = path.split(".");
  return Object.hasOwn(SECTIONS, name) ? name as SectionName : undefined;
}
