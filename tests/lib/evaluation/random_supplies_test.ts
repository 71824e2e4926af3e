/** Ten thousand plans by chance: every operating point is solved, or says what stands against it. */
import { assert, assertEquals } from "@std/assert";
import fc from "fast-check";
import { evaluate } from "@/lib/evaluation/mod.ts";
import { planReady, resolvePlan } from "@/lib/plan/mod.ts";
import { arbitraryPlan, mended } from "../../helpers/arbitrary_plan.ts";
import { notFinite } from "../../helpers/finite.ts";

await planReady();

const PLANS = 10_000;

/** Residual over the working pressure that the solver may leave [-]. */
const MOST_RESIDUAL = 1e-6;

/** What may stand against a solution: physics, or a voltage that leaves the pump none. */
const REASONS = [/turns too slowly to deliver/, /voltage must be >= 4 V/];

Deno.test(`the supply of ${PLANS} plans by chance is solved to a millionth of the working pressure, or says why not`, () => {
  let solved = 0;
  let stopped = 0;
  for (const document of fc.sample(arbitraryPlan, { numRuns: PLANS, seed: 3 })) {
    const plan = mended(document);
    if (plan === undefined) continue;
    const { results, checks } = evaluate(plan);
    const { setPressure } = resolvePlan(plan).values.regulator;
    if (results.supply === undefined) {
      const held = checks.find(({ id }) => id === "pressure-held");
      assertEquals(held?.verdict, "open", JSON.stringify(plan));
      assert((held?.because ?? "").length > 20, JSON.stringify(plan));
      continue;
    }
    for (const { found, problem, name } of results.supply.points) {
      if (found !== undefined) {
        assert(
          found.residual_Pa <= MOST_RESIDUAL * setPressure,
          `${name}: ${JSON.stringify(plan)}`,
        );
        assertEquals(notFinite(found), [], `${name}: ${JSON.stringify(plan)}`);
        solved++;
      } else {
        const isKnown = REASONS.some((reason) => reason.test(problem ?? ""));
        assert(isKnown, `${name}: ${problem} ${JSON.stringify(plan)}`);
        stopped++;
      }
    }
  }
  assert(solved > 5 * PLANS, `${solved} solved`);
  assert(stopped > 0, "no plan met a physical limit: the reasons were not tried");
});
