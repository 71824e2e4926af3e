import { assert, assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import {
  type FlowLaw,
  type Network,
  type NetworkNode,
  type NetworkSolution,
  oneWay,
  solveNetwork,
} from "@/lib/network/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { lawAt } from "../../helpers/law_at.ts";
import { Seeded } from "../../helpers/seeded.ts";
import { anyNetwork, heldAt, pipeLaw } from "./random_networks.ts";

type Solved = Extract<NetworkSolution, { ok: true }>;

const tank: NetworkNode = { name: "tank", pressure_Pa: 4e5 };

function solve(network: Network, start_m3_s?: Float64Array): Solved {
  const found = solveNetwork(network, { tolerance_Pa: 0.01, start_m3_s });
  assert(found.ok, `unsolved: ${JSON.stringify(found)}`);
  return found;
}

/** The most that is lost at a node, as a share of the largest flow, or of a drop a second. */
function lostAtNodes(network: Network, { flows_m3_s }: Solved): number {
  const into = network.nodes.map((node) => -(node.taken_m3_s ?? 0));
  network.links.forEach(({ from, to }, i) => {
    into[from] = (into[from] ?? NaN) - (flows_m3_s[i] ?? NaN);
    into[to] = (into[to] ?? NaN) + (flows_m3_s[i] ?? NaN);
  });
  const lost = into.filter((_, i) => network.nodes[i]?.pressure_Pa === undefined);
  return Math.max(0, ...lost.map(Math.abs)) / Math.max(1e-5, ...flows_m3_s.map(Math.abs));
}

Deno.test("solveNetwork(), a bridge of straight laws is the answer of two linear equations", () => {
  // From 1 bar to nought over two arms of 1 and 3, 2 and 1 (1e9 Pa s/m^3), a bridge of 1 across:
  // (1 + 1/3 + 1) a - b = 1 and (1/2 + 1 + 1) b - a = 1/2, so a = 18/29 and b = 13/29 of a bar.
  const link = (from: number, to: number, times: number) => ({
    name: `${from} to ${to}`,
    from,
    to,
    law: pipeLaw(times * 1e9, 0),
  });
  const { pressures_Pa, flows_m3_s } = solve({
    nodes: [
      { name: "in", pressure_Pa: 1e5 },
      { name: "out", pressure_Pa: 0 },
      { name: "a" },
      { name: "b" },
    ],
    links: [link(0, 2, 1), link(2, 1, 3), link(0, 3, 2), link(3, 1, 1), link(2, 3, 1)],
  });
  assertClose(pressures_Pa[2] ?? NaN, 1e5 * 18 / 29, 1e-9);
  assertClose(pressures_Pa[3] ?? NaN, 1e5 * 13 / 29, 1e-9);
  assertClose(flows_m3_s[4] ?? NaN, 1e-4 * 5 / 29, 1e-9, "across the bridge");
});

Deno.test("solveNetwork(), two ways of a loop share a flow by the roots of their laws", () => {
  const { flows_m3_s, pressures_Pa } = solve({
    nodes: [tank, { name: "tap", taken_m3_s: 3e-4 }],
    links: [
      { name: "wide", from: 0, to: 1, law: pipeLaw(0, 1e12) },
      { name: "narrow, laid the other way", from: 1, to: 0, law: pipeLaw(0, 4e12) },
    ],
  });
  assertClose(flows_m3_s[0] ?? NaN, 2e-4, 1e-8);
  assertClose(flows_m3_s[1] ?? NaN, -1e-4, 1e-8);
  assertClose(pressures_Pa[1] ?? NaN, 4e5 - 4e4, 1e-7);
});

Deno.test("solveNetwork(), of two check valves the one from the higher pressure opens", () => {
  const valve = oneWay(pipeLaw(1e8, 1e12));
  const { flows_m3_s, pressures_Pa } = solve({
    nodes: [tank, { name: "weaker tank", pressure_Pa: 3e5 }, { name: "tap", taken_m3_s: 1e-4 }],
    links: [
      { name: "open", from: 0, to: 2, law: valve },
      { name: "shut", from: 1, to: 2, law: valve },
    ],
  });
  assertClose(flows_m3_s[0] ?? NaN, 1e-4, 1e-6);
  assertClose(pressures_Pa[2] ?? NaN, 4e5 - 2e4, 1e-6);
  const leaks_m3_s = flows_m3_s[1] ?? NaN;
  assert(leaks_m3_s < 0 && leaks_m3_s > -1e-10, `${leaks_m3_s} through the shut one`);
});

Deno.test("solveNetwork(), once the tap takes enough both check valves are open", () => {
  const valve = oneWay(pipeLaw(0, 1e12));
  // A drop of 1 bar more in one than in the other: Q1^2 - Q2^2 = 1e-7, Q1 + Q2 = 5e-4.
  const { flows_m3_s } = solve({
    nodes: [tank, { name: "weaker tank", pressure_Pa: 3e5 }, { name: "tap", taken_m3_s: 5e-4 }],
    links: [
      { name: "first", from: 0, to: 2, law: valve },
      { name: "second", from: 1, to: 2, law: valve },
    ],
  });
  assertClose(flows_m3_s[0] ?? NaN, 3.5e-4, 1e-7);
  assertClose(flows_m3_s[1] ?? NaN, 1.5e-4, 1e-7);
});

Deno.test("solveNetwork(), flow put in is held at a valve's pressure, and only what is over passes it", () => {
  const regulated = (taken_m3_s: number): Solved =>
    solve({
      nodes: [{ name: "tank", pressure_Pa: 0 }, { name: "rail", taken_m3_s: taken_m3_s - 1e-4 }, {
        name: "engine",
      }],
      links: [
        { name: "regulator", from: 1, to: 0, law: heldAt(3e5) },
        { name: "dead end", from: 1, to: 2, law: pipeLaw(1e9, 0) },
      ],
    });
  for (const taken_m3_s of [0, 5e-5, 0.999e-4]) {
    const { flows_m3_s, pressures_Pa } = regulated(taken_m3_s);
    assertAlmostEquals(flows_m3_s[0] ?? NaN, 1e-4 - taken_m3_s, 1e-13);
    assertClose(pressures_Pa[1] ?? NaN, 3e5, 1e-7);
    assertClose(pressures_Pa[2] ?? NaN, 3e5, 1e-7, "no flow, no loss");
  }
});

Deno.test("solveNetwork(), a law that bends by nine powers of ten at a flow", () => {
  const bend: FlowLaw = (flow_m3_s, into) => {
    const beyond = Math.max(0, flow_m3_s - 7e-5);
    into.drop_Pa = 1e6 * flow_m3_s + 1e15 * beyond;
    into.slope_Pa_s_m3 = beyond > 0 ? 1e15 : 1e6;
  };
  const network = (end_Pa: number): Network => ({
    nodes: [tank, { name: "middle" }, { name: "end", pressure_Pa: end_Pa }],
    links: [
      { name: "bend", from: 0, to: 1, law: bend },
      { name: "pipe", from: 1, to: 2, law: pipeLaw(0, 2e13) },
    ],
  });
  // 0.98 bar at 70 mL/s in the pipe: more than that and the bend takes the rest.
  for (const end_Pa of [3.9e5, 3.1e5, 3.01e5, 3e5, 1e5, -4e5]) {
    const { flows_m3_s, steps } = solve(network(end_Pa));
    const [flow = NaN] = flows_m3_s;
    const lost_Pa = lawAt(bend, flow).drop_Pa + 2e13 * flow * flow;
    assertClose(lost_Pa, 4e5 - end_Pa, 1e-6, `to ${end_Pa}`);
    assert(steps < 30, `${steps} steps to ${end_Pa}`);
  }
});

Deno.test("solveNetwork(), from wherever it starts it finds the same", () => {
  const by = new Seeded(5);
  for (let seed = 1; seed <= 300; seed++) {
    const network = anyNetwork(seed);
    const cold = solve(network);
    const warm = solve(network, cold.flows_m3_s);
    const astray = solve(network, cold.flows_m3_s.map(() => by.between(-1e-3, 1e-3)));
    assert(warm.steps <= 2, `${warm.steps} steps from the solution itself`);
    for (const other of [warm, astray]) {
      other.pressures_Pa.forEach((pressure_Pa, i) => {
        const off_Pa = Math.abs(pressure_Pa - (cold.pressures_Pa[i] ?? NaN));
        assert(off_Pa < 1, `network ${seed}, node ${i}: ${off_Pa} Pa`);
      });
    }
  }
});

Deno.test("solveNetwork(), flows to begin from that are another network's are left alone", () => {
  const network = anyNetwork(7);
  assertEquals(solve(network, new Float64Array(99)).flows_m3_s, solve(network).flows_m3_s);
});

Deno.test("solveNetwork(), what it begins from is not written to", () => {
  const network = anyNetwork(7);
  const start_m3_s = new Float64Array(network.links.length).fill(3e-5);
  solve(network, start_m3_s);
  assert(start_m3_s.every((flow_m3_s) => flow_m3_s === 3e-5));
});

Deno.test("solveNetwork(), no given pressure anywhere is refused", () => {
  const lonely: Network = {
    nodes: [{ name: "a" }, { name: "b", taken_m3_s: 0 }],
    links: [{ name: "pipe", from: 0, to: 1, law: pipeLaw(1e8, 0) }],
  };
  assertThrows(() => solve(lonely), RangeError, "must have a given pressure");
  assertThrows(() => solve({ nodes: [], links: [] }), RangeError, "must have a given pressure");
});

Deno.test("solveNetwork(), a node that is joined to nothing is refused", () => {
  const pipe = { name: "pipe", from: 0, to: 1, law: pipeLaw(1e8, 1e12) };
  const nodes = [tank, { name: "tap", taken_m3_s: 1e-4 }, { name: "nowhere" }];
  assertThrows(() => solve({ nodes, links: [pipe] }), RangeError, "nowhere");
});

Deno.test("solveNetwork(), nodes that are joined to one another alone are refused, always", () => {
  const by = new Seeded(6);
  for (let i = 0; i < 200; i++) {
    const count = by.whole(2, 6);
    const islands = Array.from({ length: count }, (_, k) => ({ name: `island ${k}` }));
    const bridges = islands.slice(1).map((_, k) => ({
      name: `bridge ${k}`,
      from: 2 + by.whole(0, k),
      to: 3 + k,
      law: pipeLaw(by.decades(1e6, 1e10), by.decades(1e9, 1e14)),
    }));
    const network = {
      nodes: [tank, { name: "tap", taken_m3_s: 1e-4 }, ...islands],
      links: [{ name: "pipe", from: 0, to: 1, law: pipeLaw(1e8, 1e12) }, ...bridges],
    };
    assertThrows(() => solve(network), RangeError, "must join every node", `islands ${i}`);
  }
});

Deno.test("solveNetwork(), a law that falls is given up by name, with no numbers", () => {
  const falls: FlowLaw = (flow_m3_s, into) => {
    into.drop_Pa = -1e9 * flow_m3_s;
    into.slope_Pa_s_m3 = 0;
  };
  const found = solveNetwork({
    nodes: [tank, { name: "end", pressure_Pa: 0 }],
    links: [
      { name: "pipe", from: 0, to: 1, law: pipeLaw(1e8, 0) },
      { name: "falling", from: 0, to: 1, law: falls },
    ],
  }, { tolerance_Pa: 0.01 });
  assert(!found.ok);
  assertEquals(found.worst, "falling");
  assertEquals(Object.keys(found).sort(), ["ok", "residual_Pa", "worst"]);
});

Deno.test("solveNetwork(), a law that gives no number is given up, and at once", () => {
  let asked = 0;
  const broken: FlowLaw = (_, into) => {
    asked++;
    into.drop_Pa = NaN;
    into.slope_Pa_s_m3 = 1e8;
  };
  const found = solveNetwork({
    nodes: [tank, { name: "middle" }, { name: "end", pressure_Pa: 0 }],
    links: [
      { name: "pipe", from: 0, to: 1, law: pipeLaw(1e8, 0) },
      { name: "broken", from: 1, to: 2, law: broken },
    ],
  }, { tolerance_Pa: 0.01 });
  assert(!found.ok);
  assert(asked < 10, `asked ${asked} times`);
});

Deno.test("solveNetwork(), 2000 random networks, every law met and no flow lost", () => {
  let valves = 0;
  for (let seed = 1; seed <= 2000; seed++) {
    const network = anyNetwork(seed);
    const found = solve(network);
    network.links.forEach(({ from, to, law }, i) => {
      const across_Pa = (found.pressures_Pa[from] ?? NaN) - (found.pressures_Pa[to] ?? NaN);
      const flow_m3_s = found.flows_m3_s[i] ?? NaN;
      const { drop_Pa, slope_Pa_s_m3 } = lawAt(law, flow_m3_s);
      assert(Math.abs(across_Pa - drop_Pa) <= 0.01, `network ${seed}, link ${i}`);
      if (slope_Pa_s_m3 > 1e15) valves++;
    });
    // Where a law is as flat as 1e4 Pa s/m^3, the last digit of a pressure is 1e-14 m^3/s.
    assert(lostAtNodes(network, found) < 1e-8, `network ${seed}: ${lostAtNodes(network, found)}`);
    assert(found.steps <= 40, `network ${seed}: ${found.steps} steps`);
  }
  assert(valves > 500, `${valves} shut valves in all`);
});
