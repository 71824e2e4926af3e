/** What a ceiling says comes true when the plan asks for that power. */
import { assert, assertAlmostEquals } from "@std/assert";
import { evaluate } from "@/lib/evaluation/mod.ts";
import { planReady, readPlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";

await planReady();

/** The smallest rated flow of a filter in each demo's feed, as its seed has it [m^3/s]. */
const RATED_m3_s: Readonly<Record<string, number>> = {
  "hillclimb-four-e85": 0.6 / 3600,
  "tourer-six-e10": 40 * 231 * 0.0254 ** 3 / 3600,
  "twin-rotor-staged": 0.5 / 3600,
  "dragster-vee-methanol": 1.2 / 3600,
};

for (const { name, plan } of demos) {
  const document = plan as { readonly engine: object };
  const at = (power_W: number | undefined) => {
    const engine = power_W === undefined
      ? document.engine
      : { ...document.engine, power: `${power_W} W`, powerAt: "crank" };
    const reading = readPlan({ ...document, engine });
    assert(reading.ok, JSON.stringify(reading));
    return evaluate(reading.plan);
  };
  const { ceilings } = at(undefined);
  const powerOf = (id: string): number => {
    const power = ceilings.find((ceiling) => ceiling.id === id)?.power_W;
    assert(power !== undefined, `${name} has no ceiling for ${id}`);
    return power;
  };

  Deno.test(`${name}: at the pump's ceiling nothing is over, and the pressure is just held`, () => {
    const { results } = at(powerOf("pump"));
    // Power moves what is burnt; losses on the way are carried by the square meanwhile.
    assertAlmostEquals(results.pump?.margin ?? NaN, 0, 5e-3);
  });

  Deno.test(`${name}: at the filter's ceiling the engine burns the flow that it is rated for`, () => {
    const { results } = at(powerOf("filter"));
    assertAlmostEquals(
      (results.demand?.fuelVolume_m3_s ?? NaN) / (RATED_m3_s[name] ?? NaN),
      1,
      1e-6,
    );
  });
}
