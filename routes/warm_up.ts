/** Loads what the first answer does not wait for. */
import { unitsReady } from "@/lib/units/mod.ts";
import { compressionReady } from "./compress.ts";
import { judgeDemos } from "./demos_shown.ts";

/**
 * Loads mathjs and zlib, zod with the demos that it judges, and the pages of a plan. None of
 * these lets anything else run while it starts, so this is called when the first answer is
 * out; what needs them awaits them itself.
 */
export async function warmUp(): Promise<void> {
  await unitsReady();
  await compressionReady();
  await judgeDemos();
  await import("./plan_pages.ts");
  await import("./take_form.ts");
}
