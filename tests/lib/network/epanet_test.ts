/** Our solver against EPANET's on pipes as fuel systems have them. */
import { assert } from "@std/assert";
import type { FrictionLaw } from "@/lib/line/mod.ts";
import { solveNetwork } from "@/lib/network/mod.ts";
import { EPANET_FRICTION, EPANET_GRAVITY_m_s2, solveWithEpanet } from "../../helpers/epanet.ts";
import { networkOf, type PipeNetwork, type PipeSolution, reynoldsOf } from "../../helpers/pipes.ts";
import { fuelNetwork } from "./fuel_networks.ts";

/** With one friction law. EPANET rounds its constant of minor losses by 0.012 %. */
const SAME_LAW = 2e-4;

/** Colebrook against Swamee and Jain, who state 1 to 3 % between them. */
const OTHER_LAW = 0.03;

Deno.test("solveNetwork(), with EPANET's friction it is EPANET's answer on 100 networks", async () => {
  let looped = 0;
  const regimes = { laminar: 0, transitional: 0, turbulent: 0 };
  for (let seed = 1; seed <= 100; seed++) {
    const pipes = fuelNetwork(seed, { reynolds: [300, 60e3], isLooped: seed % 3 > 0 });
    const ours = solveWithOurs(pipes, EPANET_FRICTION);
    assertSame(pipes, ours, { theirs: await solveWithEpanet(pipes), within: SAME_LAW, seed });
    if (isLooped(pipes)) looped++;
    for (const reynolds of reynoldsOfAll(pipes, ours)) {
      regimes[reynolds <= 2000 ? "laminar" : reynolds < 4000 ? "transitional" : "turbulent"]++;
    }
  }
  assert(looped > 50 && looped < 90, `${looped} with loops`);
  assert(Math.min(...Object.values(regimes)) > 100, `pipes by regime: ${JSON.stringify(regimes)}`);
});

Deno.test("solveNetwork(), with our friction it is within 3 % of EPANET where all is turbulent", async () => {
  let compared = 0;
  let looped = 0;
  for (let seed = 1; seed <= 2000 && compared < 40; seed++) {
    const pipes = fuelNetwork(seed, { reynolds: [30e3, 300e3], isLooped: seed % 3 > 0 });
    const ours = solveWithOurs(pipes);
    // What needs suction at its take-offs is no fuel system, and EPANET complains of it.
    const isFit = Math.min(...ours.pressures_Pa) > 0;
    if (!isFit || Math.min(...reynoldsOfAll(pipes, ours)) < 4000) continue;
    assertSame(pipes, ours, { theirs: await solveWithEpanet(pipes), within: OTHER_LAW, seed });
    compared++;
    if (isLooped(pipes)) looped++;
  }
  assert(compared === 40, `only ${compared} compared`);
  assert(looped >= 10, `only ${looped} with loops`);
});

function solveWithOurs(pipes: PipeNetwork, friction?: FrictionLaw): PipeSolution {
  const network = networkOf(pipes, EPANET_GRAVITY_m_s2, friction);
  const found = solveNetwork(network, { tolerance_Pa: 1e-4 });
  assert(found.ok, "unsolved");
  return { pressures_Pa: [...found.pressures_Pa], flows_m3_s: [...found.flows_m3_s] };
}

/**
 * Compares pressures, as a share of the largest loss from the tank to any node, and flows, as
 * a share of all that is taken off. A single small loss or flow in a loop may differ by more.
 */
function assertSame(
  pipes: PipeNetwork,
  ours: PipeSolution,
  { theirs, within, seed }: { theirs: PipeSolution; within: number; seed: number },
): void {
  const weight = pipes.liquid.density_kg_m3 * EPANET_GRAVITY_m_s2;
  const lost_Pa = pipes.nodes.map(({ height_m }, i) =>
    pipes.source_Pa - weight * height_m - (theirs.pressures_Pa[i] ?? NaN)
  );
  const taken_m3_s = pipes.nodes.reduce((sum, node) => sum + node.taken_m3_s, 0);
  const pressure = widest(ours.pressures_Pa, theirs.pressures_Pa) / Math.max(...lost_Pa);
  const flow = widest(ours.flows_m3_s, theirs.flows_m3_s) / taken_m3_s;
  assert(pressure < within, `network ${seed}: pressures off by ${pressure}`);
  assert(flow < within, `network ${seed}: flows off by ${flow}`);
}

function widest(a: readonly number[], b: readonly number[]): number {
  return Math.max(...a.map((value, i) => Math.abs(value - (b[i] ?? NaN))));
}

function isLooped({ nodes, pipes }: PipeNetwork): boolean {
  return pipes.length >= nodes.length;
}

function reynoldsOfAll({ pipes, liquid }: PipeNetwork, { flows_m3_s }: PipeSolution): number[] {
  return pipes.map((pipe, i) => reynoldsOf(pipe, liquid, flows_m3_s[i] ?? NaN));
}
