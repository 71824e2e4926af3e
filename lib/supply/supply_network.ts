/** Tank, pump, runs, rails and regulator solved together at one operating point. */
import type { Liquid, Run, StatedLoss } from "@/lib/line/mod.ts";
import {
  type FlowLaw,
  type LawPoint,
  type NetworkLink,
  oneWay,
  SHUT_Pa_s_m3,
  solveNetwork,
} from "@/lib/network/mod.ts";
import { type PumpReading, readPump, type RunningPump, subtractPump } from "./pump_law.ts";
import { JUNCTION, layRails, MANIFOLD, type RailNet, type RailsSpec, TANK } from "./rail_net.ts";

/** What holds the pressure. */
export interface RegulatorSpec {
  /** Behind the rails with the return through them; at the tank; or in the feed, with a return from there. */
  readonly place: "rail" | "tank" | "feed";
  /** Pressure at which it begins to open, over what its spring side sees [Pa]. */
  readonly opens_Pa: number;
  /** Rise of the pressure it holds with the flow through it [Pa s/m^3]. */
  readonly droop_Pa_s_m3: number;
  /** What it loses wide open at a flow; undefined when not known. */
  readonly wideOpen: StatedLoss | undefined;
}

/** A fuel supply, its runs made ready for one liquid. Pressures are gauge. */
export interface SupplySystem {
  /** What runs through it. */
  readonly liquid: Liquid;
  /** Pressure in the tank over the outside air [Pa]. */
  readonly tank_Pa: number;
  /** Height of the fuel's surface over the pump's inlet, as pressure [Pa]. */
  readonly head_Pa: number;
  /** From tank to pump; none for a pump that stands in the fuel. */
  readonly suction: Run | undefined;
  /** From pump to junction, or to a regulator in the feed. */
  readonly feed: Run;
  /** From junction to each rail. */
  readonly branch: Run | undefined;
  /** Between rails. */
  readonly crossover: Run | undefined;
  /** From regulator to tank; none where it sits in the tank. */
  readonly back: Run | undefined;
  /** The regulator. */
  readonly regulator: RegulatorSpec;
  /** The rails. */
  readonly rails: RailsSpec;
}

/** What the system meets at one operating point. */
export interface Running {
  /** The pumps as they run; or a flow, as of a pump still to be bought [m^3/s]. */
  readonly pump: RunningPump | number;
  /** Fuel that the engine asks for [m^3/s]. */
  readonly demand_m3_s: number;
  /** Flow of all injectors held open over the root of the pressure across them [m^3/s per Pa^0.5]. */
  readonly injectors: number;
  /** Pressure in the manifold, gauge [Pa]. */
  readonly manifold_Pa: number;
  /** Pressure that the regulator's spring side sees, gauge [Pa]. */
  readonly reference_Pa: number;
}

/** How the regulator works. */
export type RegulatorState =
  /** It lets so much by that the pressure is held. */
  | "holds"
  /** Everything is burnt: it is shut, and the pressure is below what it is set to. */
  | "shut"
  /** Wide open: the way back alone makes more pressure than it is set to. */
  | "wide-open";

/** One injector as it works. */
export interface InjectorState {
  /** Which rail, from nought. */
  readonly rail: number;
  /** Its place along the rail [m]. */
  readonly at_m: number;
  /** Pressure before it with nothing recovered, the lower bound [Pa]. */
  readonly pressure_Pa: number;
  /** The same with all dynamic pressure recovered, the upper bound [Pa]. */
  readonly recovered_Pa: number;
  /** What it injects [m^3/s]. */
  readonly flow_m3_s: number;
}

/** The system at work. Pressures are gauge. */
export interface SupplyState {
  /** What the pumps deliver [m^3/s]. */
  readonly pumped_m3_s: number;
  /** What the injectors take [m^3/s]. */
  readonly injected_m3_s: number;
  /** What goes back through the regulator [m^3/s]. */
  readonly returned_m3_s: number;
  /** Before the pumps [Pa]. */
  readonly inlet_Pa: number;
  /** After the pumps [Pa]. */
  readonly outlet_Pa: number;
  /** Where the feed ends [Pa]. */
  readonly junction_Pa: number;
  /** Before the regulator [Pa]. */
  readonly regulator_Pa: number;
  /** Behind the regulator: what the way back makes [Pa]. */
  readonly back_Pa: number;
  /** What the regulator does. */
  readonly state: RegulatorState;
  /** The injectors, rail by rail. */
  readonly injectors: readonly InjectorState[];
  /** The most that flows in any stretch of gallery [m^3/s]. */
  readonly gallery_m3_s: number;
  /** The pumps' reading; undefined when a flow stood in for them. */
  readonly pump: PumpReading | undefined;
  /** The most by which a law is missed [Pa]. */
  readonly residual_Pa: number;
  /** Flow of each link, for a next solution to begin from [m^3/s]. */
  readonly flows_m3_s: Float64Array;
}

/** A solution, or the part that can't be brought to its law. */
export type SupplySolution =
  | { readonly ok: true; readonly state: SupplyState }
  | { readonly ok: false; readonly part: string };

/** Share of the working pressure within which a law must be met [-]. */
const CLOSENESS = 1e-7;

/** The lowest pressure that anybody injects at [Pa]. */
const LEAST_WORKING_Pa = 1e5;

/** Flow that a search begins from [m^3/s]: a tenth of a small pump's. */
const START_m3_s = 1e-5;

/** How far past what it is asked an injector's flow is begun, so that its law is read where it is steep [-]. */
const PAST = 1e-6;

/** Flow through the regulator, past its leak, below which it counts as shut [m^3/s]: a drop an hour. */
const SHUT_m3_s = 1e-11;

/**
 * A supply laid out once, to be solved at several operating points.
 *
 * @example A pump that stands in the tank, a return behind the rail
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { Run } from "@/lib/line/mod.ts";
 *
 * const liquid = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };
 * const hose = {
 *   kind: "hose", name: "hose", bore_m: 8.7e-3, length_m: 3, rise_m: 0, count: 1, stated: [],
 * } as const;
 * const supply = new Supply({
 *   liquid, tank_Pa: 0, head_Pa: 700, suction: undefined, feed: new Run([hose], liquid),
 *   branch: undefined, crossover: undefined, back: new Run([hose], liquid),
 *   regulator: { place: "rail", opens_Pa: 3e5, droop_Pa_s_m3: 0, wideOpen: undefined },
 *   rails: {
 *     count: 1, length_m: 0.4, bore_m: 0.012, roughness_m: 2e-5,
 *     stations_m: [0.05, 0.15, 0.25, 0.35], feed: "one-end", connection: "parallel",
 *   },
 * });
 * const found = supply.solve({
 *   pump: {
 *     isScaled: false,
 *     points: [
 *       { flow_m3_s: 5e-5, pressure_Pa: 6e5, current_A: 12, at: 13 },
 *       { flow_m3_s: 9e-5, pressure_Pa: 2e5, current_A: 8, at: 13 },
 *     ],
 *   },
 *   demand_m3_s: 3e-5, injectors: 1e-7, manifold_Pa: 0, reference_Pa: 0,
 * });
 *
 * assert(found.ok && found.state.state === "holds");
 * assertAlmostEquals(found.state.regulator_Pa, 3e5, 1);
 * ```
 */
export class Supply {
  /** The system. */
  readonly system: SupplySystem;
  readonly #net: RailNet;
  /** Node before the regulator. */
  readonly #before: number;

  /**
   * Lays a system out.
   *
   * @param system The system.
   */
  constructor(system: SupplySystem) {
    const { rails, branch, crossover, liquid, regulator } = system;
    this.system = system;
    const net = layRails(rails, { branch, crossover }, liquid, regulator.place === "rail");
    if (regulator.place === "tank") {
      // Between pump and feed there is one node more.
      const before = net.nodes.length;
      this.#before = before;
      this.#net = {
        ...net,
        nodes: [...net.nodes, { name: "regulator" }],
        links: [...net.links, {
          name: "feed",
          from: before,
          to: JUNCTION,
          law: oneWay(system.feed.law),
        }],
      };
    } else {
      this.#before = regulator.place === "rail" ? net.outlet : JUNCTION;
      this.#net = net;
    }
  }

  /**
   * Solves the system at an operating point.
   *
   * @param running What it meets there.
   * @param near A state near by, to begin from.
   * @returns The state, or the part that could not be brought to its law.
   */
  solve(running: Running, near?: SupplyState): SupplySolution {
    const { system } = this;
    const net = this.#net;
    const enters = system.regulator.place === "tank" ? this.#before : JUNCTION;
    const links: NetworkLink[] = [...net.links];
    const regulatorAt = links.push({
      name: "regulator",
      from: this.#before,
      to: TANK,
      law: regulatorLaw(system, running.reference_Pa),
    }) - 1;
    const first = links.length;
    const perStation = running.demand_m3_s / net.stations.length;
    const eased = running.injectors / net.stations.length;
    for (const { node } of net.stations) {
      links.push({
        name: "injector",
        from: node,
        to: MANIFOLD,
        law: injectorLaw(perStation, eased),
      });
    }
    const { pump } = running;
    const isPump = typeof pump !== "number";
    if (isPump) {
      links.push({ name: "pump", from: TANK, to: enters, law: sourceLaw(system, pump) });
    }
    const nodes = net.nodes.map((node, i) =>
      i === TANK
        ? { ...node, pressure_Pa: system.tank_Pa }
        : i === MANIFOLD
        ? { ...node, pressure_Pa: running.manifold_Pa }
        : i === enters && !isPump
        ? { ...node, taken_m3_s: -pump }
        : node
    );
    const start_m3_s = near?.flows_m3_s.length === links.length
      ? near.flows_m3_s.slice()
      : new Float64Array(links.length).fill(Math.max(perStation, START_m3_s));
    // Injectors take what they are asked, unless the pressure turns out too low.
    start_m3_s.fill(perStation * (1 + PAST), first, first + net.stations.length);
    const found = solveNetwork({ nodes, links }, {
      tolerance_Pa: CLOSENESS * Math.max(LEAST_WORKING_Pa, system.regulator.opens_Pa),
      start_m3_s,
    });
    if (!found.ok) return { ok: false, part: found.worst };
    const { flows_m3_s, pressures_Pa } = found;
    const pumped_m3_s = isPump ? flows_m3_s[links.length - 1] as number : pump;
    const passed_m3_s = flows_m3_s[regulatorAt] as number;
    const regulator = stateOf(system, passed_m3_s, running.reference_Pa);
    const returned_m3_s = regulator === "shut" ? 0 : passed_m3_s;
    const injectors = injectorStates(net, system, pressures_Pa, flows_m3_s, first);
    const inlet_Pa = inletOf(system, pumped_m3_s);
    return {
      ok: true,
      state: {
        pumped_m3_s,
        returned_m3_s,
        injected_m3_s: injectors.reduce((sum, { flow_m3_s }) => sum + flow_m3_s, 0),
        inlet_Pa,
        outlet_Pa: outletOf(system, pressures_Pa, enters, pumped_m3_s),
        junction_Pa: pressures_Pa[JUNCTION] as number,
        regulator_Pa: pressures_Pa[this.#before] as number,
        back_Pa: system.tank_Pa + (system.back?.drop_Pa(returned_m3_s) ?? 0),
        state: regulator,
        injectors,
        gallery_m3_s: net.stretches.reduce(
          (most, { link }) => Math.max(most, Math.abs(flows_m3_s[link] as number)),
          0,
        ),
        pump: isPump ? readPump(pump, pumped_m3_s) : undefined,
        residual_Pa: found.residual_Pa,
        flows_m3_s,
      },
    };
  }

  /**
   * Pressure that the pumps have to add for a flow, of which a part is burnt, to be held at
   * the regulator's pressure.
   *
   * @param flow_m3_s What the pumps deliver [m^3/s].
   * @param burnt_m3_s What of it is burnt [m^3/s].
   * @param reference_Pa What the regulator's spring side sees, gauge [Pa].
   * @param near A solved state; what its rails lose is carried to the flow by the square.
   * @returns The pressure they have to add [Pa].
   */
  asked_Pa(
    flow_m3_s: number,
    burnt_m3_s: number,
    reference_Pa: number,
    near: SupplyState,
  ): number {
    const { system } = this;
    const { place } = system.regulator;
    const returned_m3_s = Math.max(0, flow_m3_s - burnt_m3_s);
    const held_Pa = regulatorDrop(system, reference_Pa, returned_m3_s) + system.tank_Pa;
    const inRails_Pa = place === "rail" && near.pumped_m3_s > 0
      ? (near.junction_Pa - near.regulator_Pa) * (flow_m3_s / near.pumped_m3_s) ** 2
      : 0;
    const inFeed_Pa = place === "tank" ? 0 : system.feed.drop_Pa(flow_m3_s);
    return held_Pa + inRails_Pa + inFeed_Pa - inletOf(system, flow_m3_s);
  }
}

/** Pressure at the pump's inlet, gauge [Pa]. */
function inletOf(system: SupplySystem, flow_m3_s: number): number {
  return system.tank_Pa + system.head_Pa - (system.suction?.drop_Pa(flow_m3_s) ?? 0);
}

function outletOf(
  system: SupplySystem,
  pressures_Pa: Float64Array,
  enters: number,
  pumped_m3_s: number,
): number {
  const end_Pa = pressures_Pa[enters] as number;
  return system.regulator.place === "tank" ? end_Pa : end_Pa + system.feed.drop_Pa(pumped_m3_s);
}

/** From the tank through suction, pumps and what lies before the node they feed. */
function sourceLaw(system: SupplySystem, pump: RunningPump): FlowLaw {
  const { suction, feed, head_Pa, regulator } = system;
  const part: LawPoint = { drop_Pa: 0, slope_Pa_s_m3: 0 };
  return oneWay((flow_m3_s, into) => {
    into.drop_Pa = -head_Pa;
    into.slope_Pa_s_m3 = 0;
    for (const run of [suction, regulator.place === "tank" ? undefined : feed]) {
      if (run === undefined) continue;
      run.law(flow_m3_s, part);
      into.drop_Pa += part.drop_Pa;
      into.slope_Pa_s_m3 += part.slope_Pa_s_m3;
    }
    subtractPump(pump, flow_m3_s, into);
  });
}

/** From before the regulator to the tank. */
function regulatorLaw(system: SupplySystem, reference_Pa: number): FlowLaw {
  const { regulator, back, tank_Pa } = system;
  const { opens_Pa, droop_Pa_s_m3, wideOpen } = regulator;
  const spring_Pa = opens_Pa + reference_Pa - tank_Pa;
  const square = wideOpen === undefined ? 0 : wideOpen.loss_Pa / wideOpen.flow_m3_s ** 2;
  const leaks_m3_s = leakOf(system, reference_Pa);
  return (flow_m3_s, into) => {
    if (flow_m3_s < leaks_m3_s) {
      // Shut: it leaks a trace towards where the pressure is lower, never against it.
      into.drop_Pa = SHUT_Pa_s_m3 * flow_m3_s;
      into.slope_Pa_s_m3 = SHUT_Pa_s_m3;
      return;
    }
    into.drop_Pa = 0;
    into.slope_Pa_s_m3 = 0;
    back?.law(flow_m3_s, into);
    into.drop_Pa += square * flow_m3_s * flow_m3_s;
    into.slope_Pa_s_m3 += 2 * square * flow_m3_s;
    const held_Pa = spring_Pa + droop_Pa_s_m3 * flow_m3_s;
    if (into.drop_Pa > held_Pa) return;
    into.drop_Pa = held_Pa;
    into.slope_Pa_s_m3 = droop_Pa_s_m3;
  };
}

/** What lies across the regulator and the way back at a flow, once it is open [Pa]. */
function regulatorDrop(system: SupplySystem, reference_Pa: number, flow_m3_s: number): number {
  const at = { drop_Pa: 0, slope_Pa_s_m3: 0 };
  regulatorLaw(system, reference_Pa)(Math.max(flow_m3_s, leakOf(system, reference_Pa)), at);
  return at.drop_Pa;
}

/** What a shut regulator lets by when it is about to open [m^3/s]: a drop in hours. */
function leakOf({ regulator, tank_Pa }: SupplySystem, reference_Pa: number): number {
  return Math.max(0, regulator.opens_Pa + reference_Pa - tank_Pa) / SHUT_Pa_s_m3;
}

function stateOf(
  system: SupplySystem,
  returned_m3_s: number,
  reference_Pa: number,
): RegulatorState {
  const { opens_Pa, droop_Pa_s_m3 } = system.regulator;
  const spring_Pa = opens_Pa + reference_Pa - system.tank_Pa;
  if (returned_m3_s <= leakOf(system, reference_Pa) + SHUT_m3_s) return "shut";
  const held_Pa = spring_Pa + droop_Pa_s_m3 * returned_m3_s;
  return regulatorDrop(system, reference_Pa, returned_m3_s) > held_Pa ? "wide-open" : "holds";
}

/**
 * The control unit opens an injector just as long as the demand takes; held open it passes no
 * more than its orifice does. So it takes what is asked at any pressure that suffices.
 */
function injectorLaw(demand_m3_s: number, ease: number): FlowLaw {
  const square = demand_m3_s > 0 ? 1 / (ease * ease) : 0;
  return oneWay((flow_m3_s, into) => {
    const passed = Math.min(flow_m3_s, demand_m3_s);
    into.drop_Pa = square * passed * passed;
    into.slope_Pa_s_m3 = 2 * square * passed;
    if (flow_m3_s <= demand_m3_s) return;
    into.drop_Pa += SHUT_Pa_s_m3 * (flow_m3_s - demand_m3_s);
    into.slope_Pa_s_m3 = SHUT_Pa_s_m3;
  });
}

function injectorStates(
  net: RailNet,
  { rails, liquid }: SupplySystem,
  pressures_Pa: Float64Array,
  flows_m3_s: Float64Array,
  first: number,
): InjectorState[] {
  const area_m2 = Math.PI / 4 * rails.bore_m ** 2;
  const dynamic_Pa = (flow_m3_s: number): number =>
    liquid.density_kg_m3 / 2 * (flow_m3_s / area_m2) ** 2;
  const flowOf = (link: number): number => Math.abs(flows_m3_s[link] as number);
  return net.stations.map(({ rail, at_m, node }, i) => {
    const ofRail = net.stretches.filter((stretch) => stretch.rail === rail);
    const fastest = ofRail.filter(({ from, to }) => isInlet(net, from) || isInlet(net, to))
      .reduce((most, { link }) => Math.max(most, flowOf(link)), 0);
    const beside = ofRail.filter(({ from, to }) => from === node || to === node);
    // At a dead end the fuel stands still.
    const slowest = beside.length < 2 && !isInlet(net, node)
      ? 0
      : beside.reduce((least, { link }) => Math.min(least, flowOf(link)), Infinity);
    const pressure_Pa = pressures_Pa[node] as number;
    const slow = Number.isFinite(slowest) ? slowest : 0;
    return {
      rail,
      at_m,
      pressure_Pa,
      recovered_Pa: pressure_Pa + Math.max(0, dynamic_Pa(fastest) - dynamic_Pa(slow)),
      flow_m3_s: Math.max(0, flows_m3_s[first + i] as number),
    };
  });
}

function isInlet(net: RailNet, node: number): boolean {
  return net.inlets.includes(node);
}
