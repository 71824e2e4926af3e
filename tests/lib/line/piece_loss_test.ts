import { assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import { FITTINGS, isDuct, isStated, pieceLoss } from "@/lib/line/mod.ts";
import { piece } from "../../helpers/any_run.ts";
import { assertClose } from "../../helpers/assert_close.ts";

const petrol = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };
const at = (flow_m3_s: number, loss_Pa: number) => ({ flow_m3_s, loss_Pa });

Deno.test("pieceLoss(), hose and tube lose by friction alone, which is reckoned elsewhere", () => {
  for (const kind of ["hose", "corrugated", "tube"] as const) {
    assertEquals(pieceLoss(piece(kind), petrol), { cracking_Pa: 0, linear: 0, square: 0 });
    assertEquals([isDuct(kind), isStated(kind)], [true, false]);
  }
});

Deno.test("pieceLoss(), a fitting's two constants on the dynamic pressure of its bore", () => {
  const kind = "elbow-90-forged";
  const { laminar, turbulent } = FITTINGS[kind];
  const loss = pieceLoss(piece(kind, { bore_m: 9e-3, count: 3 }), petrol);
  for (const flow_m3_s of [1e-6, 5e-5, 2e-4]) {
    const velocity_m_s = flow_m3_s / (Math.PI / 4 * 9e-3 ** 2);
    const reynolds = 745 * velocity_m_s * 9e-3 / 4.1e-4;
    const byHand_Pa = 3 * (laminar / reynolds + turbulent) * 745 / 2 * velocity_m_s ** 2;
    const ours_Pa = (loss?.linear ?? NaN) * flow_m3_s + (loss?.square ?? NaN) * flow_m3_s ** 2;
    assertClose(ours_Pa, byHand_Pa, 1e-12, `${flow_m3_s}`);
  }
});

Deno.test("pieceLoss(), one point of a filter goes with flow, of an opening with its square", () => {
  const exponentOf = (kind: "filter" | "quick-connector" | "ethanol-sensor" | "other") =>
    pieceLoss(piece(kind, { stated: [at(1e-4, 2e4)] }), petrol)?.power?.exponent;
  assertEquals(exponentOf("filter"), 1);
  assertEquals(exponentOf("quick-connector"), 2);
  assertEquals(exponentOf("ethanol-sensor"), 2);
  assertEquals(exponentOf("other"), 2);
});

Deno.test("pieceLoss(), two points tell the exponent, in either order, from 1 to 2", () => {
  const cases: [what: string, ratio: number, exponent: number][] = [
    ["twice the loss at twice the flow", 2, 1],
    ["2.83 times", 2 ** 1.5, 1.5],
    ["four times", 4, 2],
    ["less than a medium's", 1.3, 1],
    ["more than an opening's", 9, 2],
  ];
  for (const [what, ratio, exponent] of cases) {
    const points = [at(6e-5, 1e4), at(12e-5, 1e4 * ratio)];
    for (const stated of [points, points.toReversed()]) {
      const power = pieceLoss(piece("filter", { stated, count: 2 }), petrol)?.power;
      assertAlmostEquals(power?.exponent ?? NaN, exponent, 1e-12, what);
      assertEquals(power?.flow_m3_s, stated[0]?.flow_m3_s, "it passes through the first point");
      assertEquals(power?.loss_Pa, 2 * (stated[0]?.loss_Pa ?? NaN), "two filters in a row");
    }
  }
});

Deno.test("pieceLoss(), points that do not rise are refused, under the piece's name", () => {
  const falling = piece("filter", { name: "pump filter", stated: [at(6e-5, 2e4), at(9e-5, 1e4)] });
  assertThrows(() => pieceLoss(falling, petrol), RangeError, "loss of the pump filter");
  const level = piece("other", { stated: [at(6e-5, 2e4), at(9e-5, 2e4)] });
  assertThrows(() => pieceLoss(level, petrol), RangeError, "must rise with flow");
  const twice = piece("other", { stated: [at(6e-5, 2e4), at(6e-5, 3e4)] });
  assertThrows(() => pieceLoss(twice, petrol), RangeError, "must rise with flow");
});

Deno.test("pieceLoss(), what has to be stated and is not has no loss; a check valve has its spring", () => {
  for (const kind of ["filter", "quick-connector", "ethanol-sensor", "other"] as const) {
    assertEquals(pieceLoss(piece(kind), petrol), undefined);
    assertEquals([isDuct(kind), isStated(kind)], [false, true]);
  }
  assertEquals(pieceLoss(piece("check-valve", { count: 2 }), petrol)?.cracking_Pa, 30e3);
});

Deno.test("pieceLoss(), a check valve loses what is stated, spring included", () => {
  for (const loss_Pa of [5e3, 15e3, 40e3]) {
    const loss = pieceLoss(piece("check-valve", { stated: [at(1e-4, loss_Pa)] }), petrol);
    const { cracking_Pa = NaN, square = NaN } = loss ?? {};
    assertClose(cracking_Pa + square * 1e-8, loss_Pa, 1e-12, `${loss_Pa}`);
  }
});
