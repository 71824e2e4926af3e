/** Which pressure is given to what, and who forbids it. */
import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  comesOff,
  faultPressure,
  proofPressures,
  type ProofPressuresInput,
  trappedLiquidRise,
} from "@/lib/proof/mod.ts";

const BOOSTED: ProofPressuresInput = {
  setPressure_Pa: 3e5,
  boost_Pa: 1e5,
  reference: "manifold",
};

Deno.test("proofPressures() adds boost only where the regulator sees the manifold", () => {
  const byManifold = proofPressures(new Working(), BOOSTED);
  const byAir = proofPressures(new Working(), { ...BOOSTED, reference: "atmosphere" });
  assertEquals(byManifold.workingPressure_Pa, 4.3e5);
  assertEquals(byAir.workingPressure_Pa, 3.3e5);
});

Deno.test("proofPressures() allows a tenth of the set pressure for waves until they are known", () => {
  assertEquals(proofPressures(new Working(), BOOSTED).swing_Pa, 3e4);
  assertEquals(
    proofPressures(new Working(), { ...BOOSTED, swing_Pa: 7e4 }).workingPressure_Pa,
    4.7e5,
  );
});

const RATINGS: [
  says: string,
  fault_Pa: number | undefined,
  rating_Pa: number | undefined,
  proof_Pa: number,
  conflict: string | undefined,
][] = [
  ["nothing known", undefined, undefined, 6.45e5, undefined],
  ["a fault below 1.5 times working", 5e5, undefined, 6.45e5, undefined],
  ["a fault above it", 9e5, undefined, 9e5, undefined],
  ["a part that may be given just that", 9e5, 9e5, 9e5, undefined],
  ["a part too weak for the fault", 9e5, 7e5, 7e5, "relief valve"],
  ["a part too weak for 1.5 times working", undefined, 6e5, 6e5, "lower the set pressure"],
  ["a part too weak for working", 9e5, 4e5, 4e5, "before anything else"],
];

for (const [says, fault_Pa, rating_Pa, proof_Pa, conflict] of RATINGS) {
  Deno.test(`proofPressures() with ${says} proves at ${proof_Pa} Pa`, () => {
    const found = proofPressures(new Working(), {
      ...BOOSTED,
      fault: fault_Pa === undefined
        ? undefined
        : { pressure_Pa: fault_Pa, cause: "pump", isLeast: false },
      weakest: rating_Pa === undefined ? undefined : { part: "feed hose", rating_Pa },
    });
    assertEquals(Math.round(found.proofPressure_Pa), proof_Pa);
    assertEquals(found.conflict === undefined, conflict === undefined);
    if (conflict === undefined) return;
    assertStringIncludes(found.conflict?.change ?? "", conflict);
    assertStringIncludes(found.conflict?.change ?? "", "feed hose");
  });
}

const TRAPPED = {
  start_Pa: 3e5,
  expansion_1_K: 9.5e-4,
  wallExpansion_1_K: 2.3e-5,
  temperatureRise_K: 20,
  bulkModulus_Pa: 1e9,
  compliance_1_Pa: 2e-8,
};

Deno.test("faultPressure() is the larger of pump and trapped fuel, and says which", () => {
  const rise_Pa = trappedLiquidRise({
    expansion: 9.5e-4,
    wallExpansion: 2.3e-5,
    temperatureRise: 20,
    bulkModulus: 1e9,
    compliance: 2e-8,
  });
  const trapped = faultPressure(new Working(), { pumpShutOff_Pa: 4e5, trapped: TRAPPED });
  assertEquals(trapped, { pressure_Pa: 3e5 + rise_Pa, cause: "trapped fuel", isLeast: false });
  const pump = faultPressure(new Working(), { pumpShutOff_Pa: 2e6, trapped: TRAPPED });
  assertEquals(pump, { pressure_Pa: 2e6, cause: "pump", isLeast: false });
});

Deno.test("faultPressure() takes what the pump reaches until its shut-off is known", () => {
  const reaches = { pumpReaches_Pa: 9.5e5 };
  const least = { pressure_Pa: 9.5e5, cause: "pump", isLeast: true } as const;
  assertEquals(faultPressure(new Working(), reaches), least);
  // A relief valve may well open below the highest point of the curve.
  const known = faultPressure(new Working(), { ...reaches, pumpShutOff_Pa: 7e5 });
  assertEquals(known, { pressure_Pa: 7e5, cause: "pump", isLeast: false });
  assertEquals(faultPressure(new Working(), { trapped: TRAPPED })?.isLeast, true);
});

const PARTS: [part: string, off: boolean][] = [
  ["regulator", true],
  ["Pressure sensors ", true],
  ["damper", true],
  ["injector", true],
  ["feed hose", false],
  ["regulator hose", false],
  ["bioregulator", false],
];
for (const [part, off] of PARTS) {
  Deno.test(`comesOff() of ${part} is ${off}`, () => assertEquals(comesOff(part), off));
}

Deno.test("faultPressure() of fuel that cools is where it began", () => {
  const cooled = faultPressure(new Working(), { trapped: { ...TRAPPED, temperatureRise_K: -20 } });
  assertEquals(cooled?.pressure_Pa, 3e5);
});

Deno.test("trapped fuel in a stiff rail rises by bars per kelvin", () => {
  const working = new Working();
  const stiff = { ...TRAPPED, temperatureRise_K: 1, compliance_1_Pa: 0 };
  const fault = faultPressure(working, { trapped: stiff });
  assert(fault !== undefined && fault.pressure_Pa - 3e5 > 5e5);
  assertEquals(working.uses.map((use) => use.result), ["proof.trapped_Pa"]);
});
