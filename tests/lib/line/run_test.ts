import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { frictionLoss } from "@/lib/flow/mod.ts";
import { CORRUGATED_FRICTION, type Piece, ROUGHNESS_M, Run, stepLoss } from "@/lib/line/mod.ts";
import { anyPieces, piece } from "../../helpers/any_run.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { lawAt, quotientAt } from "../../helpers/law_at.ts";
import { Seeded } from "../../helpers/seeded.ts";

const petrol = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };
const ethanol = { density_kg_m3: 789, viscosity_Pa_s: 1.2e-3 };

/** Calls with random runs, their liquid and a flow. */
function each(count: number, test: (by: Seeded, pieces: Piece[], flow_m3_s: number) => void): void {
  const by = new Seeded(3);
  for (let i = 0; i < count; i++) test(by, anyPieces(by), by.decades(1e-7, 4e-4));
}

function checked(pieces: readonly Piece[]): Run {
  return new Run([...pieces, piece("check-valve")], petrol);
}

Deno.test("Run, what its pieces cost adds up to what it loses", () => {
  each(400, (by, pieces, flow_m3_s) => {
    const run = by.chance(0.3) ? checked(pieces) : new Run(pieces, by.oneOf([petrol, ethanol]));
    const costs = run.costs(flow_m3_s);
    const sum_Pa = costs.reduce((sum, { lost_Pa, height_Pa }) => sum + lost_Pa + height_Pa, 0);
    const parts_Pa = costs.reduce((sum, c) => sum + c.lost_Pa + Math.abs(c.height_Pa), 0);
    assert(Math.abs(sum_Pa - run.drop_Pa(flow_m3_s)) <= 1e-12 * parts_Pa);
    assertEquals(costs.map((cost) => cost.piece), [...run.pieces]);
    assert(costs.every(({ lost_Pa }) => lost_Pa >= 0));
  });
});

Deno.test("Run, more flow never loses less", () => {
  each(400, (by, pieces, flow_m3_s) => {
    const run = by.chance(0.3) ? checked(pieces) : new Run(pieces, by.oneOf([petrol, ethanol]));
    const more_m3_s = flow_m3_s * by.decades(1.0001, 10);
    assert(run.drop_Pa(more_m3_s) >= run.drop_Pa(flow_m3_s));
    assert(run.drop_Pa(flow_m3_s) >= run.drop_Pa(0));
    assert(run.drop_Pa(0) >= run.drop_Pa(-flow_m3_s));
  });
});

Deno.test("Run, bigger bores throughout never lose more", () => {
  each(400, (by, pieces, flow_m3_s) => {
    const times = by.between(1.0001, 1.6);
    const bigger = pieces.map((small) => ({ ...small, bore_m: small.bore_m * times }));
    const [lost, less] = [new Run(pieces, petrol), new Run(bigger, petrol)]
      .map((run) => run.drop_Pa(flow_m3_s)) as [number, number];
    assert(less <= lost, `${less} after ${lost}: ${JSON.stringify(pieces)}`);
  });
});

Deno.test("Run, its slope is the difference quotient", () => {
  each(400, (_, pieces, flow_m3_s) => {
    const { law } = new Run(pieces, petrol);
    const height_Pa = Math.abs(lawAt(law, 0).drop_Pa);
    const { drop_Pa, slope_Pa_s_m3 } = lawAt(law, flow_m3_s);
    // The quotient takes a small difference of drops: what height adds is lost from its digits.
    const rounding = 1e-10 * (height_Pa + Math.abs(drop_Pa)) / flow_m3_s;
    const off = Math.abs(slope_Pa_s_m3 - quotientAt(law, flow_m3_s));
    assert(off <= 1e-6 * slope_Pa_s_m3 + rounding, `${off} of ${slope_Pa_s_m3}`);
  });
});

Deno.test("Run, a tube, a corrugated hose and a hose lose as the bare friction law says", () => {
  const flow_m3_s = 6e-5;
  const bare = (kind: "hose" | "tube" | "corrugated", bore_m: number, length_m: number): number => {
    const roughness_m = kind === "tube" ? ROUGHNESS_M.tube : ROUGHNESS_M.hose;
    const times = kind === "corrugated" ? CORRUGATED_FRICTION : 1;
    return times * frictionLoss({ flow_m3_s, bore_m, length_m, roughness_m, ...petrol });
  };
  const run = new Run([
    piece("hose", { bore_m: 8e-3, length_m: 2 }),
    piece("tube", { bore_m: 8e-3, length_m: 1.5, rise_m: 0.4 }),
    piece("hose", { bore_m: 8e-3, length_m: 0.5 }),
    piece("corrugated", { bore_m: 8e-3, length_m: 0.3 }),
  ], petrol);
  const byHand_Pa = bare("hose", 8e-3, 2.5) + bare("tube", 8e-3, 1.5) +
    bare("corrugated", 8e-3, 0.3) + 745 * 9.80665 * 0.4;
  assertClose(run.drop_Pa(flow_m3_s), byHand_Pa, 1e-9);
});

Deno.test("Run, bores that follow one another make a step, on the smaller one, to the later piece", () => {
  const flow_m3_s = 2e-4;
  const widens = new Run([
    piece("hose", { length_m: 1, bore_m: 8e-3 }),
    piece("hose", { length_m: 1, bore_m: 16e-3 }),
  ], petrol);
  const dynamic_Pa = 745 / 2 * (flow_m3_s / (Math.PI / 4 * 8e-3 ** 2)) ** 2;
  const [, wide] = widens.costs(flow_m3_s);
  const friction_Pa = frictionLoss({
    flow_m3_s,
    bore_m: 16e-3,
    length_m: 1,
    roughness_m: ROUGHNESS_M.hose,
    ...petrol,
  });
  assertClose(wide?.lost_Pa ?? NaN, friction_Pa + 0.5625 * dynamic_Pa, 1e-9, "Borda and Carnot");
  assert(stepLoss(16e-3, 8e-3) > 0.3 && stepLoss(16e-3, 8e-3) < 0.5, "out of 16 mm into 8 mm");
  assertEquals(stepLoss(8e-3, 8.1e-3), 0, "as good as the same");
});

Deno.test("Run, a check valve shuts against the flow, and is open to it", () => {
  const pieces = [piece("hose", { length_m: 2 })];
  const open = new Run(pieces, petrol);
  const valve = checked(pieces);
  assertClose(valve.drop_Pa(5e-5), open.drop_Pa(5e-5) + 15e3, 1e-12, "the spring on top");
  assert(valve.drop_Pa(-1e-9) < -1e6, "10 bar push back a microlitre a second at most");
  assert(open.drop_Pa(-1e-9) > -1);
});

Deno.test("Run, a piece without its figure is named and left out, never guessed", () => {
  const filter = piece("filter", { name: "filter without a figure" });
  const hose = piece("hose", { length_m: 2 });
  const run = new Run([hose, filter], petrol);
  assertEquals(run.unstated, [filter]);
  assertEquals(run.drop_Pa(5e-5), new Run([hose], petrol).drop_Pa(5e-5));
  assertEquals(new Run([hose], petrol).unstated, []);
});

Deno.test("Run, a filter loses what is stated at the flow it is stated for, and half at half", () => {
  const filter = piece("filter", { stated: [{ flow_m3_s: 8e-5, loss_Pa: 2e4 }] });
  const run = new Run([filter], petrol);
  assertClose(run.drop_Pa(8e-5), 2e4, 1e-12);
  assertClose(run.drop_Pa(4e-5), 1e4, 1e-12);
  assertEquals(run.drop_Pa(0), 0);
});

Deno.test("Run, nothing at all loses nothing", () => {
  const empty = new Run([], petrol);
  assertEquals([empty.drop_Pa(1e-4), empty.costs(1e-4)], [0, []]);
});

Deno.test("Run, out of one tank into another it loses entrance and exit besides friction", () => {
  const hose = piece("hose", { bore_m: 8e-3, length_m: 1 });
  const joined = new Run([hose], petrol);
  const between = new Run([hose], petrol, { entrance: 0.57, exit: 1 });
  const flow_m3_s = 6e-5;
  const velocity_m_s = flow_m3_s / (Math.PI / 4 * 8e-3 ** 2);
  const ends_Pa = 1.57 * petrol.density_kg_m3 * velocity_m_s ** 2 / 2;
  assertAlmostEquals(between.drop_Pa(flow_m3_s), joined.drop_Pa(flow_m3_s) + ends_Pa, 1e-6);
});
