import { assert, assertEquals, assertThrows } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import { flowAtSpread, railPressures, railSteady, railTwoEnds } from "@/lib/rail/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const rail = {
  bore_m: 8e-3,
  roughness_m: 20e-6,
  takeOffs_m: [0.05, 0.14, 0.23, 0.32],
  flow_m3_s: 6e-5,
  density_kg_m3: 745,
  viscosity_Pa_s: 4.1e-4,
  injectorDifferential_Pa: 3e5,
};

Deno.test("railSteady(), the estimate lies between both bounds at every injector", () => {
  for (const flow_m3_s of [1e-6, 1e-5, 6e-5, 2e-4]) {
    const found = railSteady(new Working(), "rail", { ...rail, flow_m3_s });
    found.estimate_Pa.forEach((estimate, i) => {
      assert(estimate > (found.noRecovery_Pa[i] ?? NaN));
      assert(estimate < (found.fullRecovery_Pa[i] ?? NaN));
    });
    assert(found.flowSpreadWorst >= found.flowSpread);
  }
});

Deno.test("railSteady(), the recorded march is the bare one", () => {
  for (const flow_m3_s of [3e-6, 7e-6, 6e-5]) {
    const bare = railPressures({ ...rail, flow_m3_s });
    const found = railSteady(new Working(), "rail", { ...rail, flow_m3_s });
    found.noRecovery_Pa.forEach((p, i) => assertClose(p, bare.noRecovery_Pa[i] ?? NaN, 1e-12));
    found.fullRecovery_Pa.forEach((p, i) => assertClose(p, bare.fullAfter_Pa[i] ?? NaN, 1e-9));
  }
});

Deno.test("railSteady(), every use is recorded under the section asked for", () => {
  const working = new Working();
  railSteady(working, "rail", rail);
  const results = working.uses.map((use) => use.result);

  assert(results.every((result) => result.startsWith("rail.")));
  assert(results.includes("rail.sections.0.velocity_m_s"));
  assert(results.includes("rail.flowSpread"));
  assertEquals(results.length, new Set(results).size, "no result twice");
});

Deno.test("railSteady(), a single injector has no one to differ from", () => {
  const alone = { ...rail, takeOffs_m: [0.1] };
  assertEquals(railSteady(new Working(), "rail", alone).flowSpreadWorst, 0);
  assertEquals(flowAtSpread(alone, 0.01), undefined);
});

Deno.test("railSteady(), flow that runs on to a regulator adds friction between injectors", () => {
  const deadEnded = railSteady(new Working(), "rail", rail);
  const flowing = railSteady(new Working(), "rail", { ...rail, throughFlow_m3_s: 6e-5 });
  assert(flowing.flowSpreadNoRecovery > 2 * deadEnded.flowSpreadNoRecovery);
  assertClose(flowing.inletVelocity_m_s, 2 * deadEnded.inletVelocity_m_s, 1e-12);
});

Deno.test("railPressures(), injectors that share a place share a pressure", () => {
  const { noRecovery_Pa } = railPressures({ ...rail, takeOffs_m: [0.1, 0.1, 0.2, 0.2] });
  assertEquals(noRecovery_Pa[0], noRecovery_Pa[1]);
  assertEquals(noRecovery_Pa[2], noRecovery_Pa[3]);
});

Deno.test("railPressures(), take-offs out of order or missing are refused", () => {
  assertThrows(() => railPressures({ ...rail, takeOffs_m: [0.2, 0.1] }), RangeError, "takeOffs_m");
  assertThrows(() => railPressures({ ...rail, takeOffs_m: [] }), RangeError, "takeOffs_m");
});

Deno.test("flowAtSpread(), the spread at the flow found is the limit", () => {
  const cases: [name: string, spec: typeof rail & { throughFlow_m3_s?: number }][] = [
    ["8 mm", rail],
    ["16 mm", { ...rail, bore_m: 16e-3 }],
    ["5 mm, thick fuel", { ...rail, bore_m: 5e-3, viscosity_Pa_s: 1.5e-3 }],
    ["return through the rail", { ...rail, throughFlow_m3_s: 5e-5 }],
    ["started from far off", { ...rail, flow_m3_s: 1e-8 }],
    ["started from far above", { ...rail, flow_m3_s: 1e-2 }],
  ];
  for (const [name, spec] of cases) {
    for (const limit of [0.002, 0.01]) {
      const flow_m3_s = flowAtSpread(spec, limit);
      assert(flow_m3_s !== undefined, name);
      const { flowSpreadWorst } = railSteady(new Working(), "rail", { ...spec, flow_m3_s });
      assertClose(flowSpreadWorst, limit, 1e-4, name);
    }
  }
});

Deno.test("flowAtSpread(), nothing is left when what runs on passes the limit alone", () => {
  assertEquals(flowAtSpread({ ...rail, bore_m: 4e-3, throughFlow_m3_s: 2e-4 }, 0.002), 0);
});

Deno.test("railTwoEnds(), two ends lose less than one", () => {
  const both = railTwoEnds({
    ...rail,
    length_m: 0.37,
    feedA: { length_m: 0, bore_m: 8e-3 },
    feedB: { length_m: 0, bore_m: 8e-3 },
  });
  const one = railPressures(rail);
  assert(Math.min(...both.noRecovery_Pa) > Math.min(...one.noRecovery_Pa) / 3);
  assertClose(both.flowA_m3_s, rail.flow_m3_s / 2, 1e-9, "alike from both ends");
});
