/** Loads what the first answer does not wait for. */
import { unitsReady } from "@/lib/units/mod.ts";
import { compressionReady } from "./compress.ts";
import { judgeDemos } from "./demos_shown.ts";

/**
 * Loads mathjs and zlib, then the pages of a plan, and evaluates the demos. None of these
 * lets anything else run while it starts, so this is called when the first answer
 * is on its way; what needs units awaits them itself.
 *
 * mathjs comes first: its file is read in the background, and meanwhile that answer gets out.
 */
export async function warmUp(): Promise<void> {
  await unitsReady();
  await compressionReady();
  await judgeDemos();
  await import("./plan_pages.ts");
}
