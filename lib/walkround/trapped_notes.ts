/** What is said of fuel that is shut in and warms. */
import type { ProofContext } from "./context.ts";
import { type Line, line } from "./line.ts";

/**
 * Gives the note on trapped fuel where the layout may trap it. How far its
 * pressure rises hangs on how much the hose yields, which a plan does not say
 * yet; so no number is given.
 *
 * @param context The plan.
 * @returns One note for a rail that is a dead end, else none.
 */
export function trappedNotes({ layout }: ProofContext): Line[] {
  return layout === "dead-ended"
    ? [
      line(
        "The rail is a dead end: fuel shut in behind a check valve, and not let by at the regulator, rises as it warms. How far is not " +
          "computed, as that needs how much the hose yields. Watch the gauge after switching off.",
      ),
    ]
    : [];
}
