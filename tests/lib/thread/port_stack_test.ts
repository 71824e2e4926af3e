import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import fc from "fast-check";
import { Working } from "@/lib/method/mod.ts";
import {
  type PortId,
  PORTS,
  type SensorPort,
  sensorPort,
  type SensorPortSpec,
} from "@/lib/thread/mod.ts";

const BAR: SensorPortSpec = {
  port: "M10x1-cone",
  torque_Nm: 12,
  shearStrength_Pa: 186e6,
  faceToAxis_m: 0.0225,
  galleryBore_m: 0.014,
  faceWidth_m: 0.03,
  pilot_m: 0.004,
  reach_m: 0.012,
  nose_m: 0.0065,
};

const lay = (change: Partial<SensorPortSpec> = {}): SensorPort =>
  sensorPort(new Working(), { ...BAR, ...change });

Deno.test("stack: depths are never negative and each layer begins where the last one ended", () => {
  const mm = (min: number, max: number) =>
    fc.double({ min, max, noNaN: true }).map((n) => n / 1000);
  fc.assert(fc.property(
    fc.constantFrom(...Object.keys(PORTS) as PortId[]),
    fc.record({
      faceToAxis_m: mm(3, 60),
      galleryBore_m: mm(3, 40),
      faceWidth_m: mm(5, 100),
      isRound: fc.boolean(),
      pilot_m: mm(1, 8),
      drill_m: mm(4, 20),
      reach_m: mm(3, 40),
      nose_m: mm(2, 12),
    }),
    (port, change) => {
      const faceWidth_m = change.isRound ? 2 * change.faceToAxis_m : change.faceWidth_m;
      let depth = 0;
      for (const { from_m, to_m, what } of lay({ port, ...change, faceWidth_m }).stack) {
        assert(from_m >= depth - 1e-12 && to_m > from_m, `${port}: ${what}`);
        depth = to_m;
      }
    },
  ));
});

Deno.test("stack: the wide drill goes no deeper than the seat, the pilot on into the gallery", () => {
  const port = lay();
  const deepest = (tool: string): number =>
    Math.max(...port.stack.filter((layer) => layer.tool.includes(tool)).map(({ to_m }) => to_m));
  // 12 mm of reach less 0.5 of gap and 1.25 of cone above the nose; 2.5 mm of cone below.
  assertAlmostEquals(deepest("spotting"), 0.01275, 1e-9);
  // 22.5 - sqrt(7^2 - 2^2) mm.
  assertAlmostEquals(deepest("pilot drill"), 0.0225 - Math.sqrt(45) / 1000, 1e-9);
});

Deno.test("stack: zeroed on its tip, the spotting drill stops half its diameter below the seat's start", () => {
  const { stack, seatDepth_m } = lay();
  const tips = stack.flatMap(({ tip_m }) => tip_m === undefined ? [] : [tip_m]);
  assertEquals(tips.length, 1);
  assertAlmostEquals(tips[0] ?? 0, seatDepth_m + 0.009 / 2, 1e-12);
  assert(stack.some(({ tool }) => tool.includes("tip at 14.75 mm")));
});

Deno.test("advice: a shallower seat is offered only where its thread holds twice the pull", () => {
  const offered = (faceToAxis_m: number): SensorPort =>
    lay({ faceToAxis_m, reach_m: 0.02, torque_Nm: 18, shearStrength_Pa: 156e6 });
  const has = ({ says }: SensorPort): boolean => says.some((text) => text.startsWith("Or begin"));
  const { fullThreadForTorque_m = NaN } = offered(0.02);
  // Above the cone and 2 mm of metal, the tap leaves 3 mm without full thread.
  const least = fullThreadForTorque_m * 2 / 3 + 0.003 + 0.002 + 0.0025 + 0.007;
  assertEquals([has(offered(least - 1e-5)), has(offered(least + 1e-5))], [false, true]);
});

Deno.test("advice: one sentence says how much more the bar takes", () => {
  for (const faceToAxis_m of [0.009, 0.011, 0.0125, 0.015]) {
    for (const change of [{}, { reach_m: 0.02 }]) {
      const { says } = lay({ faceToAxis_m, ...change });
      assertEquals(says.filter((text) => text.startsWith("It takes")).length, 1);
    }
  }
});

Deno.test("advice: what to change first is another port that fits, else the bar; nothing where it fits", () => {
  assertEquals(lay().changeFirst, undefined);
  assert(lay({ faceToAxis_m: 0.0155 }).changeFirst?.includes("G 1/8, washer on the face"));
  assert(lay({ faceToAxis_m: 0.0075 }).changeFirst?.includes("It takes") ?? false);
  const thin = lay({ port: "M12x1.5-face", faceToAxis_m: 0.009, torque_Nm: 40 });
  assert(!thin.changeFirst?.includes("M12x1.5"));
});

Deno.test("advice: on a round bar the port offered stands on its spotted flat", () => {
  const round = lay({
    faceToAxis_m: 0.014,
    faceWidth_m: 0.028,
    galleryBore_m: 0.012,
    isRound: true,
  });
  // sqrt(14^2 - 9^2) - 6 mm, where a rectangular bar has 14 - 6.
  assert(round.changeFirst?.includes("4.72 mm of full thread"), round.changeFirst);
});
