import { assert, assertEquals } from "@std/assert";
import { partOf, subjectTitle } from "@/components/working_names.ts";
import { methodById } from "@/lib/book/mod.ts";
import { evaluate } from "@/lib/evaluation/mod.ts";
import { planReady, readPlan } from "@/lib/plan/mod.ts";
import { demos } from "@/routes/demos.ts";

await planReady();

const PARTS: [result: string, part: string][] = [
  ["rail.sections.1.velocity_m_s", "section 2"],
  ["rail.takeOffs.2.loss_Pa", "take-off 3"],
  ["injectors.peak.1.duty", "power peak, stage 2"],
  ["ceilings.injectorsMaximum.0.carried_kg_s", "maximum speed, stage 1"],
  ["pump.lowerVoltage.flowOfOne_m3_s", "lower voltage, one pump"],
  ["shopFuel.petrol.density_kg_m3", "petrol alone"],
  ["pump.margin", ""],
  ["odd.newPlace.thing_Pa", "new place"],
];

for (const [result, part] of PARTS) {
  Deno.test(`partOf() tells which ${result} is`, () => assertEquals(partOf(result), part));
}

Deno.test("subjectTitle() names every subject in words", () => {
  assertEquals(["shopFuel", "rail", "lines", "demand", "oddOne"].map(subjectTitle), [
    "Fuel at shop temperature",
    "Rail",
    "Hoses and fittings",
    "Fuel need",
    "Odd one",
  ]);
});

for (const { name, plan } of demos) {
  Deno.test(`no two different results of a subject have the same name: ${name}`, () => {
    const reading = readPlan(plan);
    assert(reading.ok);
    const resultOf = new Map<string, string>();
    for (const { result, method } of evaluate(reading.plan).working) {
      const subject = result.split(".")[0] ?? "";
      const shown = `${subject}: ${methodById(method)?.output.says} (${partOf(result)})`;
      assertEquals(resultOf.get(shown) ?? result, result, shown);
      resultOf.set(shown, result);
    }
  });
}
