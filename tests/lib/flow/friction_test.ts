import { assert, assertEquals, assertThrows } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  colebrookFriction,
  darcyFriction,
  frictionLoss,
  pipeFlow,
  regimeOf,
} from "@/lib/flow/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const pipe = {
  flow_m3_s: 1e-5,
  bore_m: 8e-3,
  roughness_m: 1e-5,
  length_m: 2,
  density_kg_m3: 745,
  viscosity_Pa_s: 4.1e-4,
};

Deno.test("colebrookFriction() solves Colebrook's equation to the last bits", () => {
  for (let i = 0; i <= 40; i++) {
    const reynolds = 2300 * (1e9 / 2300) ** (i / 40);
    for (const relativeRoughness of [0, 1e-7, 1e-5, 1e-4, 1e-3, 1e-2, 0.05]) {
      const x = 1 / Math.sqrt(colebrookFriction({ reynolds, relativeRoughness }));
      const inside = relativeRoughness / 3.7 + 2.51 * x / reynolds;
      assertClose(x, -2 * Math.log10(inside), 1e-13, `Re ${reynolds}, ${relativeRoughness}`);
    }
  }
});

Deno.test("darcyFriction() has no jump at the ends of the transition and rises through it", () => {
  for (const rough of [0, 1e-4, 1e-2]) {
    assertClose(darcyFriction(2300, rough), darcyFriction(2300.000001, rough), 1e-8);
    assertClose(darcyFriction(3999.999999, rough), darcyFriction(4000, rough), 1e-8);
    for (let reynolds = 2300; reynolds < 4000; reynolds += 100) {
      assert(darcyFriction(reynolds + 100, rough) > darcyFriction(reynolds, rough));
    }
  }
});

Deno.test("regimeOf() names the regime", () => {
  const cases: [reynolds: number, regime: string][] = [
    [1, "laminar"],
    [2300, "laminar"],
    [2301, "transitional"],
    [3999, "transitional"],
    [4000, "turbulent"],
  ];
  for (const [reynolds, regime] of cases) assertEquals(regimeOf(reynolds), regime, `${reynolds}`);
});

Deno.test("pipeFlow(), recorded and bare loss agree in every regime", () => {
  for (const flow_m3_s of [1e-7, 5e-6, 1e-5, 1.3e-5, 3e-5, 2e-4]) {
    const recorded = pipeFlow(new Working(), "pipe", { ...pipe, flow_m3_s });
    assertClose(recorded.pressureDrop_Pa, frictionLoss({ ...pipe, flow_m3_s }), 1e-12);
    assert(recorded.pressureDropLow_Pa <= recorded.pressureDrop_Pa);
    assert(recorded.pressureDropHigh_Pa >= recorded.pressureDrop_Pa);
  }
});

Deno.test("pipeFlow(), the band opens in the transition only", () => {
  const width = (flow_m3_s: number) => {
    const found = pipeFlow(new Working(), "pipe", { ...pipe, flow_m3_s });
    return [found.regime, found.pressureDropHigh_Pa > found.pressureDropLow_Pa];
  };
  assertEquals(width(5e-6), ["laminar", false]);
  assertEquals(width(1.1e-5), ["transitional", true]);
  assertEquals(width(3e-5), ["turbulent", false]);
});

Deno.test("pipeFlow(), no flow has no friction factor and is refused", () => {
  assertThrows(
    () => pipeFlow(new Working(), "pipe", { ...pipe, flow_m3_s: 0 }),
    RangeError,
    "reynolds must be",
  );
});
