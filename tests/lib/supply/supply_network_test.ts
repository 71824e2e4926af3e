import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { type Piece, Run } from "@/lib/line/mod.ts";
import { railPressures, railTwoEnds } from "@/lib/rail/mod.ts";
import {
  pumpsTogether,
  type RailsSpec,
  readPump,
  type RegulatorSpec,
  type Running,
  type RunningPump,
  Supply,
  type SupplyState,
  type SupplySystem,
} from "@/lib/supply/mod.ts";
import { piece } from "../../helpers/any_run.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { notFinite } from "../../helpers/finite.ts";
import { anySupply } from "./any_supply.ts";

const liquid = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };
const PLACES = ["rail", "tank", "feed"] as const;

const pump: RunningPump = {
  isScaled: false,
  points: [
    { flow_m3_s: 0, pressure_Pa: 9e5, current_A: 18, at: 12.4 },
    { flow_m3_s: 6e-5, pressure_Pa: 6e5, current_A: 14, at: 12.7 },
    { flow_m3_s: 1e-4, pressure_Pa: 1e5, current_A: 7, at: 13.1 },
  ],
};

const rails: RailsSpec = {
  count: 1,
  length_m: 0.4,
  bore_m: 8e-3,
  roughness_m: 20e-6,
  stations_m: [0.05, 0.14, 0.23, 0.32],
  feed: "one-end",
  connection: "parallel",
};

const running: Running = {
  pump,
  demand_m3_s: 3e-5,
  // Enough for 1e-4 at 3 bar.
  injectors: 1e-4 / Math.sqrt(3e5),
  manifold_Pa: 0,
  reference_Pa: 0,
};

function runOf(...pieces: Piece[]): Run {
  return new Run(pieces, liquid);
}

function hose(length_m: number, rise_m = 0): Piece {
  return piece("hose", { bore_m: 8.7e-3, length_m, rise_m });
}

/** A supply with its regulator somewhere, and what else is different. */
function supplyOf(
  place: RegulatorSpec["place"],
  rest: Partial<SupplySystem> = {},
  regulator: Partial<RegulatorSpec> = {},
): Supply {
  return new Supply({
    liquid,
    tank_Pa: 1500,
    head_Pa: -2000,
    suction: runOf(piece("hose", { bore_m: 11.1e-3, length_m: 0.8, rise_m: 0.2 })),
    feed: runOf(piece("check-valve"), hose(3, 0.4)),
    branch: undefined,
    crossover: undefined,
    back: place === "tank" ? undefined : runOf(hose(2.5, -0.4)),
    regulator: { place, opens_Pa: 3e5, droop_Pa_s_m3: 0, wideOpen: undefined, ...regulator },
    rails,
    ...rest,
  });
}

function solve(supply: Supply, rest: Partial<Running> = {}, near?: SupplyState): SupplyState {
  const found = supply.solve({ ...running, ...rest }, near);
  assert(found.ok, `unsolved: ${JSON.stringify(found)}`);
  return found.state;
}

/** Pressures before the injectors over that at the junction. */
function overJunction({ injectors, junction_Pa }: SupplyState): number[] {
  return injectors.map(({ pressure_Pa }) => pressure_Pa - junction_Pa);
}

function assertAllClose(actual: readonly number[], expected: readonly number[], within: number) {
  assertEquals(actual.length, expected.length);
  actual.forEach((value, i) => assertClose(value, expected[i] ?? NaN, within, `injector ${i}`));
}

Deno.test("Supply, from the tank's pressure by pump and losses to the regulator's, step by step", () => {
  for (const place of PLACES) {
    for (const demand_m3_s of [1e-6, 3e-5, 6e-5]) {
      const supply = supplyOf(place, {}, { droop_Pa_s_m3: 2e8 });
      const { suction, feed, tank_Pa, head_Pa } = supply.system;
      const s = solve(supply, { demand_m3_s, reference_Pa: -4e4 });
      assertEquals(s.state, "holds");
      assertClose(s.injected_m3_s, demand_m3_s, 1e-3);
      assertAlmostEquals(s.pumped_m3_s, s.injected_m3_s + s.returned_m3_s, 1e-12);

      const inlet_Pa = tank_Pa + head_Pa - (suction?.drop_Pa(s.pumped_m3_s) ?? NaN);
      assertAlmostEquals(s.inlet_Pa, inlet_Pa, 1e-6, place);
      const outlet_Pa = inlet_Pa + readPump(pump, s.pumped_m3_s).pressure_Pa;
      assertAlmostEquals(s.outlet_Pa, outlet_Pa, 0.1, place);
      const inFeed_m3_s = place === "tank" ? s.injected_m3_s : s.pumped_m3_s;
      assertAlmostEquals(s.junction_Pa, outlet_Pa - feed.drop_Pa(inFeed_m3_s), 0.1, place);
      const held_Pa = 3e5 - 4e4 + 2e8 * s.returned_m3_s;
      assertAlmostEquals(s.regulator_Pa, held_Pa, 0.1, place);
      if (place === "tank") assertAlmostEquals(s.regulator_Pa, s.outlet_Pa, 0.1);
      if (place === "feed") assertAlmostEquals(s.regulator_Pa, s.junction_Pa, 0.1);
      if (place === "rail") {
        const { noRecovery_Pa } = railPressures({
          ...rails,
          ...liquid,
          takeOffs_m: [...rails.stations_m, rails.length_m],
          flow_m3_s: 0,
          throughFlow_m3_s: s.returned_m3_s,
        });
        const least_Pa = -(noRecovery_Pa.at(-1) ?? NaN);
        assert(
          s.junction_Pa - s.regulator_Pa > least_Pa,
          "what is burnt flows part of the way too",
        );
      }
    }
  }
});

Deno.test("Supply, whatever is not burnt goes back, and the way back is its own pressure", () => {
  for (const place of PLACES) {
    const supply = supplyOf(place);
    const s = solve(supply);
    const { back, tank_Pa } = supply.system;
    assertAlmostEquals(s.back_Pa, tank_Pa + (back?.drop_Pa(s.returned_m3_s) ?? 0), 1e-6);
    assert(s.back_Pa < s.regulator_Pa);
    assertEquals(s.pump?.within, "within");
    assertAlmostEquals(s.pump?.current_A ?? NaN, readPump(pump, s.pumped_m3_s).current_A, 1e-9);
  }
});

Deno.test("Supply, what the spring side sees shifts the rail by as much", () => {
  for (const place of PLACES) {
    const supply = supplyOf(place);
    const [low, high] = [-6e4, 8e4].map((reference_Pa) => solve(supply, { reference_Pa }));
    assertAlmostEquals((high?.regulator_Pa ?? NaN) - (low?.regulator_Pa ?? NaN), 1.4e5, 0.1);
  }
});

Deno.test("Supply, when all is burnt the regulator is shut, below its pressure, and pumped is injected", () => {
  for (const place of PLACES) {
    const s = solve(supplyOf(place), { demand_m3_s: 9e-5, injectors: 3e-7 });
    assertEquals(s.state, "shut", place);
    assertEquals(s.returned_m3_s, 0);
    assert(s.regulator_Pa < 3e5 - 1e4, `${s.regulator_Pa}`);
    assertAlmostEquals(s.pumped_m3_s, s.injected_m3_s, 1e-10);
    assertClose(s.injected_m3_s, 9e-5, 1e-4);
  }
});

Deno.test("Supply, injectors held open at what pressure is left get less than they ask", () => {
  for (const place of PLACES) {
    const manifold_Pa = 4e4;
    const injectors = 1e-4 / Math.sqrt(3e5);
    const s = solve(supplyOf(place), { demand_m3_s: 2e-4, manifold_Pa, reference_Pa: manifold_Pa });
    assert(s.injected_m3_s < 1e-4, `${s.injected_m3_s}`);
    s.injectors.forEach(({ flow_m3_s, pressure_Pa }) =>
      assertClose(flow_m3_s, injectors / 4 * Math.sqrt(pressure_Pa - manifold_Pa), 1e-6)
    );
  }
});

Deno.test("Supply, a weak pump holds less pressure than a sound one, and no more flow", () => {
  const weak = {
    ...pump,
    points: pump.points.map((point) => ({ ...point, pressure_Pa: 0.4 * point.pressure_Pa })),
  };
  for (const place of PLACES) {
    const supply = supplyOf(place);
    const [sound, tired] = [pump, weak].map((one) => solve(supply, { pump: one })) as [
      SupplyState,
      SupplyState,
    ];
    assertEquals([sound.state, tired.state], ["holds", "shut"]);
    assert(tired.regulator_Pa < sound.regulator_Pa);
    assert(tired.injected_m3_s <= sound.injected_m3_s);
  }
});

Deno.test("Supply, one of two pumps stalled is one pump alone", () => {
  const two = pumpsTogether(pump, { count: 2, arrangement: "parallel" });
  for (const place of PLACES) {
    const supply = supplyOf(place);
    const demand = { demand_m3_s: 1.1e-4, injectors: 3e-7 };
    const [both, one] = [two, pump].map((p) => solve(supply, { pump: p, ...demand })) as [
      SupplyState,
      SupplyState,
    ];
    assertEquals([both.state, one.state], ["holds", "shut"]);
    assert(both.pumped_m3_s > one.pumped_m3_s);
    assert(one.injected_m3_s < 1e-4, "all that one pump gives at next to no pressure");
  }
});

Deno.test("Supply, a way back that is too narrow holds the regulator wide open", () => {
  for (const place of ["rail", "feed"] as const) {
    const narrow = runOf(piece("tube", { bore_m: 3e-3, length_m: 3 }));
    const supply = supplyOf(place, { back: narrow });
    const s = solve(supply, { demand_m3_s: 1e-6 });
    assertEquals(s.state, "wide-open", place);
    const { tank_Pa } = supply.system;
    assertAlmostEquals(s.regulator_Pa, tank_Pa + narrow.drop_Pa(s.returned_m3_s), 0.1);
    assert(s.regulator_Pa > 3e5, `${s.regulator_Pa}`);
  }
});

Deno.test("Supply, a regulator too small for the flow holds what it loses wide open", () => {
  const wideOpen = { flow_m3_s: 2e-5, loss_Pa: 1.5e5 };
  for (const place of PLACES) {
    const supply = supplyOf(place, {}, { wideOpen });
    const s = solve(supply, { demand_m3_s: 0 });
    assertEquals(s.state, "wide-open", place);
    const across_Pa = 1.5e5 * (s.returned_m3_s / 2e-5) ** 2;
    assertAlmostEquals(s.regulator_Pa - s.back_Pa, across_Pa, 1, place);
  }
});

Deno.test("Supply, no demand: all comes back, every injector sees the same and passes nothing", () => {
  for (const place of PLACES) {
    const s = solve(supplyOf(place), { demand_m3_s: 0 });
    assertEquals(s.state, "holds");
    assert(s.injected_m3_s < 1e-9);
    assertClose(s.returned_m3_s, s.pumped_m3_s, 1e-5);
    if (place !== "rail") overJunction(s).forEach((off) => assertAlmostEquals(off, 0, 0.1));
  }
});

Deno.test("Supply, a flow in the pump's place goes round as given", () => {
  for (const place of PLACES) {
    const s = solve(supplyOf(place), { pump: 7e-5 });
    assertEquals([s.pumped_m3_s, s.pump, s.state], [7e-5, undefined, "holds"]);
    assertAlmostEquals(s.returned_m3_s, 4e-5, 1e-9);
    const short = solve(supplyOf(place), { pump: 2e-5 });
    assertEquals(short.state, "shut");
    assertClose(short.injected_m3_s, 2e-5, 1e-5);
  }
});

Deno.test("Supply, a rail fed at one end is the march along it, with both bounds", () => {
  const spec = { ...rails, ...liquid, takeOffs_m: rails.stations_m };
  for (const demand_m3_s of [1e-6, 8e-6, 3e-5, 8e-5]) {
    const dead = solve(supplyOf("tank"), { demand_m3_s, injectors: 3e-7 });
    const { noRecovery_Pa, fullAfter_Pa } = railPressures({ ...spec, flow_m3_s: demand_m3_s });
    assertAllClose(overJunction(dead), noRecovery_Pa, 1e-3);
    const recovered_Pa = dead.injectors.map((i) => i.recovered_Pa - dead.junction_Pa);
    assertAllClose(recovered_Pa, fullAfter_Pa, 1e-3);
  }
  const through = solve(supplyOf("rail"));
  const { noRecovery_Pa, fullAfter_Pa } = railPressures({
    ...spec,
    flow_m3_s: through.injected_m3_s,
    throughFlow_m3_s: through.returned_m3_s,
  });
  assertAllClose(overJunction(through), noRecovery_Pa, 1e-3);
  const recovered_Pa = through.injectors.map((i) => i.recovered_Pa - through.junction_Pa);
  assertAllClose(recovered_Pa, fullAfter_Pa, 1e-3);
});

Deno.test("Supply, a rail fed at both ends shares as the two ways to an injector lose the same", () => {
  const roughness_m = 1.5e-6;
  const stations_m = [0.05, 0.11, 0.23, 0.26];
  const both = { ...rails, roughness_m, stations_m, feed: "both-ends" } as const;
  const lines = { length_m: 0.7, bore_m: 6e-3 };
  for (const demand_m3_s of [3e-6, 3e-5, 8e-5]) {
    const branch = runOf(piece("tube", lines));
    const s = solve(supplyOf("tank", { rails: both, branch }), { demand_m3_s, injectors: 3e-7 });
    const expected = railTwoEnds({
      ...both,
      ...liquid,
      takeOffs_m: stations_m,
      flow_m3_s: demand_m3_s,
      feedA: lines,
      feedB: lines,
    });
    assertAllClose(overJunction(s), expected.noRecovery_Pa, 1e-3);
  }
});

Deno.test("Supply, a rail fed in its middle is the same to either side", () => {
  const stations_m = [0.05, 0.15, 0.25, 0.35];
  for (const place of PLACES) {
    const s = solve(supplyOf(place, { rails: { ...rails, stations_m, feed: "middle" } }));
    const [a, b, c, d] = overJunction(s) as [number, number, number, number];
    assertAlmostEquals(a, d, 0.05, place);
    assertAlmostEquals(b, c, 0.05, place);
    assert(a < b && b < 0, place);
  }
});

Deno.test("Supply, rails side by side are alike, and each is a rail with its share", () => {
  const branch = runOf(hose(0.5));
  const demand = { demand_m3_s: 6e-5, injectors: 3e-7 };
  const two = solve(supplyOf("tank", { branch, rails: { ...rails, count: 2 } }), demand);
  const [left, right] = [two.injectors.slice(0, 4), two.injectors.slice(4)];
  assertAllClose(
    right.map(({ pressure_Pa }) => pressure_Pa),
    left.map(({ pressure_Pa }) => pressure_Pa),
    1e-7,
  );
  const spec = { ...rails, ...liquid, takeOffs_m: rails.stations_m, flow_m3_s: 3e-5 };
  const march_Pa = railPressures(spec).noRecovery_Pa.map((p) => p - branch.drop_Pa(3e-5));
  assertAllClose(overJunction(two).slice(4), march_Pa, 1e-3);
});

Deno.test("Supply, rails one after the other: the first carries all, the second its half", () => {
  const crossover = runOf(hose(0.3));
  const series = { ...rails, count: 2, connection: "series" } as const;
  const demand = { demand_m3_s: 6e-5, injectors: 3e-7 };
  const s = solve(supplyOf("tank", { crossover, rails: series }), demand);
  const spec = { ...rails, ...liquid, flow_m3_s: 3e-5 };
  const first = railPressures({
    ...spec,
    takeOffs_m: rails.stations_m,
    throughFlow_m3_s: 3e-5,
  }).noRecovery_Pa;
  const end = railPressures({ ...spec, takeOffs_m: [0.4 - 0.32] }).noRecovery_Pa;
  const second = railPressures({ ...spec, takeOffs_m: rails.stations_m }).noRecovery_Pa;
  const before_Pa = (first.at(-1) ?? NaN) + (end[0] ?? NaN) - crossover.drop_Pa(3e-5);
  assertAllClose(overJunction(s), [...first, ...second.map((p) => before_Pa + p)], 1e-3);
});

Deno.test("Supply, rails in a loop carry nothing across when they are alike", () => {
  const loop = { ...rails, count: 2, connection: "loop" } as const;
  const demand = { demand_m3_s: 6e-5, injectors: 3e-7 };
  const branch = runOf(hose(0.5));
  const joined = solve(
    supplyOf("tank", { branch, crossover: runOf(hose(0.3)), rails: loop }),
    demand,
  );
  const apart = solve(supplyOf("tank", { branch, rails: { ...rails, count: 2 } }), demand);
  assertAllClose(overJunction(joined), overJunction(apart), 1e-3);
});

Deno.test("Supply, a return through rails in a loop takes the same out of each", () => {
  const loop = { ...rails, count: 2, connection: "loop" } as const;
  const branch = runOf(hose(0.5));
  const s = solve(supplyOf("rail", { branch, crossover: runOf(hose(0.3)), rails: loop }));
  const half_m3_s = s.pumped_m3_s / 2;
  const march = railPressures({
    ...rails,
    ...liquid,
    takeOffs_m: rails.stations_m,
    flow_m3_s: s.injected_m3_s / 2,
    throughFlow_m3_s: s.returned_m3_s / 2,
  }).noRecovery_Pa.map((p) => p - branch.drop_Pa(half_m3_s));
  assertAllClose(overJunction(s), [...march, ...march], 1e-3);
});

Deno.test("Supply, from a state near by it finds the same", () => {
  for (const place of PLACES) {
    const supply = supplyOf(place);
    const far = solve(supply, { demand_m3_s: 9e-5 });
    const cold = solve(supply);
    const warm = solve(supply, {}, far);
    assertAlmostEquals(warm.regulator_Pa, cold.regulator_Pa, 0.1);
    assertAllClose(overJunction(warm), overJunction(cold), 1e-3);
  }
});

Deno.test("Supply.asked_Pa(), the pressure asked for is what the pump makes where it is held", () => {
  for (const place of PLACES) {
    const supply = supplyOf(place);
    const s = solve(supply, { demand_m3_s: 2e-5, reference_Pa: 1e4 });
    assertEquals(s.state, "holds");
    const asked_Pa = supply.asked_Pa(s.pumped_m3_s, s.injected_m3_s, 1e4, s);
    assertAlmostEquals(s.pump?.pressure_Pa ?? NaN, asked_Pa, 1, place);
  }
});

Deno.test("Supply.asked_Pa(), at another flow it carries what the branch loses by the square", () => {
  const valve = piece("other", { stated: [{ flow_m3_s: 6e-5, loss_Pa: 8e4 }] });
  const supply = supplyOf("rail", { branch: runOf(valve) });
  const near = solve(supply, { pump: 4e-5, demand_m3_s: 1e-5 });
  for (const pump of [2e-5, 6e-5, 8e-5]) {
    const there = solve(supply, { pump, demand_m3_s: 1e-5 });
    const added_Pa = there.outlet_Pa - there.inlet_Pa;
    // The gallery's few pascals do not go quite by the square.
    assertAlmostEquals(supply.asked_Pa(pump, 1e-5, 0, near), added_Pa, 200, `${pump}`);
  }
});

Deno.test("Supply, 2000 random systems: none unsolved, nothing lost, every number a number", () => {
  const states = { "holds": 0, "shut": 0, "wide-open": 0 };
  for (let seed = 1; seed <= 2000; seed++) {
    const { system, running } = anySupply(seed);
    const found = new Supply(system).solve(running);
    assert(found.ok, `system ${seed}: ${JSON.stringify(found)}`);
    const { state } = found;
    states[state.state]++;
    assertEquals(notFinite(state), [], `system ${seed}`);
    assert(state.residual_Pa <= 1e-6 * system.regulator.opens_Pa, `system ${seed}`);
    const lost_m3_s = state.pumped_m3_s - state.injected_m3_s - state.returned_m3_s;
    // A shut valve is reckoned with as letting through some 1e-10.
    assert(Math.abs(lost_m3_s) < 2e-10, `system ${seed} loses ${lost_m3_s}`);
    assert(state.injected_m3_s < running.demand_m3_s + 2e-8, `system ${seed}`);
    assert(state.injectors.every((one) => one.recovered_Pa >= one.pressure_Pa), `system ${seed}`);
  }
  assert(Math.min(...Object.values(states)) > 40, JSON.stringify(states));
});
