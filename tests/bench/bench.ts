/**
 * `deno task bench`: how costly the service is, as ratios of things measured in
 * the same run, so that they mean the same on any machine.
 *
 * @module
 */
import { planReady } from "@/lib/plan/mod.ts";
import { coldStarts } from "./cold_start.ts";
import { evaluationCosts } from "./evaluation.ts";
import { pageCosts } from "./pages.ts";

let unmeasured = 0;

async function print(title: string, lines: () => Promise<string[]>): Promise<void> {
  console.log(title);
  try {
    for (const line of await lines()) console.log(`  ${line}`);
  } catch (error) {
    unmeasured++;
    console.log(`  not measured: ${error instanceof Error ? error.message : error}`);
  }
}

await print("Cold start to first answer, against a Hono app of one route", async () => {
  const { bare, ours } = await coldStarts();
  return Object.entries(ours).map(([name, time]) =>
    `${(time / bare).toFixed(2)} times (${time.toFixed(0)} ms, ${bare.toFixed(0)} ms): ${name}`
  );
});

await planReady();

await print(
  "An evaluation, in structuredClones of its plan",
  async () =>
    (await evaluationCosts()).map(({ name, clones, perSecond, changes }) =>
      `${clones.toFixed(1)} (${perSecond.toFixed(0)} a second; what would do: ${
        changes.toFixed(0)
      } evaluations): ${name}`
    ),
);

await print(
  "A plan's page, in servings of the same bytes from memory",
  async () =>
    (await pageCosts()).map(({ name, servings, perSecond, bytes }) =>
      `${servings.toFixed(1)} (${perSecond.toFixed(0)} a second, ${
        (bytes / 1024).toFixed(0)
      } KiB): ${name}`
    ),
);

if (unmeasured > 0) Deno.exit(1);
