/** Networks of every shape with every kind of law, by chance. */
import {
  type FlowLaw,
  type Network,
  type NetworkLink,
  type NetworkNode,
  oneWay,
} from "@/lib/network/mod.ts";
import { Seeded } from "../../helpers/seeded.ts";

/** Lets through nothing below a pressure, then as much as comes. */
export function heldAt(pressure_Pa: number): FlowLaw {
  return oneWay((_flow_m3_s, into) => {
    into.drop_Pa = pressure_Pa;
    into.slope_Pa_s_m3 = 0;
  });
}

/** Loses with flow and its square. */
export function pipeLaw(linear: number, square: number): FlowLaw {
  return (flow_m3_s, into) => {
    const speed = Math.abs(flow_m3_s);
    into.drop_Pa = (linear + square * speed) * flow_m3_s;
    into.slope_Pa_s_m3 = linear + 2 * square * speed;
  };
}

/** Adds a pressure that falls with flow along two stretches. */
function pumpLaw(shut_Pa: number, most_m3_s: number): FlowLaw {
  const knee_m3_s = 0.7 * most_m3_s;
  const first = 0.3 * shut_Pa / knee_m3_s;
  const second = 0.7 * shut_Pa / (most_m3_s - knee_m3_s);
  return oneWay((flow_m3_s, into) => {
    const beyond = Math.max(0, flow_m3_s - knee_m3_s);
    into.drop_Pa = -shut_Pa + first * Math.min(flow_m3_s, knee_m3_s) + second * beyond;
    into.slope_Pa_s_m3 = flow_m3_s > knee_m3_s ? second : first;
  });
}

/** A law of any kind that bounds its flow by itself. */
function anyLaw(by: Seeded): FlowLaw {
  const pipe = by.chance(0.3)
    ? pipeLaw(by.decades(1e5, 1e10), 0)
    : pipeLaw(by.chance(0.5) ? 0 : by.decades(1e5, 1e10), by.decades(1e8, 1e15));
  const kind = by.next();
  if (kind < 0.6) return pipe;
  if (kind < 0.8) return oneWay(pipe);
  return pumpLaw(by.decades(5e4, 9e5), by.decades(2e-5, 3e-4));
}

/**
 * Draws a network of two to fifteen nodes: a tree of plain pipes that reaches all of them, so
 * that there is an answer, and links of any law across it.
 *
 * @param seed What tells it from others.
 */
export function anyNetwork(seed: number): Network {
  const by = new Seeded(seed);
  const count = by.whole(2, 15);
  const nodes = Array.from({ length: count }, (_, i): NetworkNode => {
    const name = `node ${i}`;
    if (i === 0 || by.chance(0.1)) return { name, pressure_Pa: by.between(-5e4, 6e5) };
    return by.chance(0.5) ? { name } : { name, taken_m3_s: by.between(-1e-4, 2e-4) };
  });
  const links: NetworkLink[] = [];
  const link = (from: number, to: number, law: FlowLaw): void => {
    links.push({ name: `link ${links.length}`, from, to, law });
  };
  for (let node = 1; node < count; node++) {
    const pipe = pipeLaw(by.decades(1e6, 1e10), by.decades(1e10, 1e15));
    const other = by.whole(0, node - 1);
    if (by.chance(0.5)) link(other, node, pipe);
    else link(node, other, pipe);
  }
  for (let i = by.whole(0, count); i > 0; i--) {
    const from = by.whole(0, count - 1);
    const to = (from + by.whole(1, count - 1)) % count;
    // Between two given pressures nothing would bound what such a valve passes.
    const isBounded = nodes[from]?.pressure_Pa === undefined;
    link(from, to, isBounded && by.chance(0.3) ? heldAt(by.between(1e5, 6e5)) : anyLaw(by));
  }
  return { nodes, links };
}
