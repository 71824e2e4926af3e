/** The supply at each operating point, in numbers that can be shown and sent. */
import type { PieceCost, Run } from "@/lib/line/mod.ts";
import type { InjectorState, RegulatorState, RunningPump, SupplyState } from "@/lib/supply/mod.ts";
import type { Context } from "../context.ts";
import type { PointId } from "../supply/points_of.ts";
import {
  askedAtPeak,
  pointOf,
  railOf,
  type SolvedPoint,
  type SolvedSupply,
} from "../supply/solved.ts";
import { branchesOf } from "../supply/ways.ts";

/** One operating point. Pressures gauge. */
export interface SupplyPoint {
  /** Which. */
  readonly id: PointId;
  /** What it is called. */
  readonly name: string;
  /** Fuel that the engine asks for [m^3/s]. */
  readonly burnt_m3_s: number;
  /** Manifold over the outside air [Pa]. */
  readonly manifold_Pa: number;
  /** Rail pressure that there should be [Pa]. */
  readonly should_Pa: number;
  /** The supply at work; undefined where it can't be said. */
  readonly found: SupplyFound | undefined;
  /** Why not. */
  readonly problem: string | undefined;
}

/** The supply at work. Pressures gauge. */
export interface SupplyFound {
  /** Voltage at the pump's terminals [V]; undefined when the engine drives it or it is not known. */
  readonly terminal_V: number | undefined;
  /** Current of one pump [A]. */
  readonly current_A: number | undefined;
  /** What the pumps deliver [m^3/s]. */
  readonly pumped_m3_s: number;
  /** What the injectors take [m^3/s]. */
  readonly injected_m3_s: number;
  /** What goes back [m^3/s]. */
  readonly returned_m3_s: number;
  /** Before the pumps [Pa]. */
  readonly inlet_Pa: number;
  /** After the pumps [Pa]. */
  readonly outlet_Pa: number;
  /** In the rail, mean over the injectors [Pa]. */
  readonly rail_Pa: number;
  /** Behind the regulator [Pa]. */
  readonly back_Pa: number;
  /** What the regulator does. */
  readonly regulator: RegulatorState;
  /** Each injector. */
  readonly injectors: readonly InjectorState[];
  /** The most by which a law is missed [Pa]. */
  readonly residual_Pa: number;
  /** Whether the pump's figures reach so far. */
  readonly within: "within" | "below" | "above" | "unknown";
}

/** A stretch of the way from the tank to the injectors and back. */
export interface WayStretch {
  /** What it is called. */
  readonly name: string;
  /** Pressure at its start, then after each piece [Pa, gauge]; places run on from the tank [m]. */
  readonly points: readonly {
    readonly at_m: number;
    readonly pressure_Pa: number;
    readonly label?: string;
  }[];
}

/** A pump's curve as it runs. */
export interface CurveShown {
  /** The operating point it runs at. */
  readonly name: string;
  /** Voltage at its terminals in the middle of the curve [V]; undefined when the engine drives it. */
  readonly voltage_V: number | undefined;
  /** Flow and pressure. */
  readonly points: readonly { readonly flow_m3_s: number; readonly pressure_Pa: number }[];
}

/** What was found for the supply. */
export interface SupplyResults {
  /** True when the pump's figures make a curve; else one that gives what to shop for stands in. */
  readonly isPumpKnown: boolean;
  /** The operating points, in the order in which a driver meets them. */
  readonly points: readonly SupplyPoint[];
  /** Pressures on the way at the power peak. */
  readonly wayPeak: readonly WayStretch[];
  /** The same at idle. */
  readonly wayIdle: readonly WayStretch[];
  /** The pumps' curves, lowest and highest voltage. */
  readonly curves: readonly CurveShown[];
  /** What the system asks of the pumps, all of it burnt. */
  readonly asked: readonly { readonly flow_m3_s: number; readonly pressure_Pa: number }[];
}

/** Puts the solved supply into numbers. */
export function supplyResults(context: Context, solved: SolvedSupply): SupplyResults {
  return {
    isPumpKnown: solved.isPumpKnown,
    points: solved.points.map((each) => pointResults(context, each)),
    wayPeak: wayOf(context, solved, pointOf(solved, "peak")),
    wayIdle: wayOf(context, solved, pointOf(solved, "idle")),
    curves: curvesOf(context, solved),
    asked: askedBy(solved),
  };
}

function pointResults({ values }: Context, solved: SolvedPoint): SupplyPoint {
  const { point, reference_Pa, state, problem } = solved;
  return {
    id: point.id,
    name: point.name,
    burnt_m3_s: point.burnt_m3_s,
    manifold_Pa: point.manifold_Pa,
    should_Pa: values.regulator.setPressure + reference_Pa,
    found: state && foundOf(state, values.pump.drive === "engine"),
    problem,
  };
}

function foundOf(state: SupplyState, isDriven: boolean): SupplyFound {
  const { pump } = state;
  return {
    terminal_V: isDriven ? undefined : pump?.at,
    current_A: isDriven ? undefined : pump?.current_A,
    pumped_m3_s: state.pumped_m3_s,
    injected_m3_s: state.injected_m3_s,
    returned_m3_s: state.returned_m3_s,
    inlet_Pa: state.inlet_Pa,
    outlet_Pa: state.outlet_Pa,
    rail_Pa: railOf(state),
    back_Pa: state.back_Pa,
    regulator: state.state,
    injectors: state.injectors,
    residual_Pa: state.residual_Pa,
    within: pump?.within ?? "unknown",
  };
}

/** From the tank through the pump and the first rail, and back. */
function wayOf(
  context: Context,
  { supply }: SolvedSupply,
  solved: SolvedPoint | undefined,
): WayStretch[] {
  const state = solved?.state;
  if (state === undefined) return [];
  const { system } = supply;
  const { regulator } = system;
  const way = new Way();
  const start_Pa = system.tank_Pa + system.head_Pa;
  way.stretch("Suction", start_Pa, "tank");
  if (system.suction) way.run(system.suction, state.pumped_m3_s);
  else way.piece(0, start_Pa, "pump's inlet");
  const inFeed = regulator.place === "tank" ? state.injected_m3_s : state.pumped_m3_s;
  way.stretch(
    "Feed",
    state.outlet_Pa,
    regulator.place === "tank" ? "pump and regulator" : "pump",
  );
  way.run(system.feed, inFeed);
  if (system.branch) {
    const toRails = regulator.place === "rail" ? state.pumped_m3_s : state.injected_m3_s;
    way.run(system.branch, toRails / branchesOf(context.values));
  }
  const first = state.injectors.filter(({ rail }) => rail === 0);
  way.stretch("Rail", first[0]?.pressure_Pa ?? state.junction_Pa, "gallery, to injector 1");
  first.slice(1).forEach(({ at_m, pressure_Pa }, i) => {
    way.piece(at_m - (first[i]?.at_m ?? at_m), pressure_Pa, `injector ${i + 2}`);
  });
  if (system.back && state.returned_m3_s > 0) {
    way.stretch("Return", state.back_Pa, "regulator");
    way.run(system.back, state.returned_m3_s);
  }
  return way.stretches;
}

/** A way as it is put together. */
class Way {
  readonly stretches: { name: string; points: WayStretch["points"][number][] }[] = [];
  #at_m = 0;
  #pressure_Pa = 0;

  stretch(name: string, pressure_Pa: number, label: string): void {
    this.stretches.push({ name, points: [] });
    this.piece(0, pressure_Pa, label);
  }

  run(run: Run, flow_m3_s: number): void {
    for (const cost of run.costs(flow_m3_s)) {
      const { piece } = cost;
      this.piece(
        piece.length_m * piece.count,
        this.#pressure_Pa - cost.lost_Pa - cost.height_Pa,
        labelOf(cost),
      );
    }
  }

  piece(length_m: number, pressure_Pa: number, label: string): void {
    this.#at_m += length_m;
    this.#pressure_Pa = pressure_Pa;
    this.stretches.at(-1)?.points.push({ at_m: this.#at_m, pressure_Pa, label });
  }
}

function labelOf({ piece }: PieceCost): string {
  return piece.count > 1 ? `${piece.count} × ${piece.name}` : piece.name;
}

/** The curves of the points at which the pump runs slowest and fastest under load. */
function curvesOf({ values }: Context, { points, isPumpKnown }: SolvedSupply): CurveShown[] {
  if (!isPumpKnown) return [];
  return (["cranking", "idle", "peak"] as const).flatMap((id): CurveShown[] => {
    const at = points.find(({ point }) => point.id === id);
    return at?.pump ? [curveOf(at.point.name, at.pump, values.pump.drive === "engine")] : [];
  });
}

function curveOf(name: string, { points }: RunningPump, isDriven: boolean): CurveShown {
  return {
    name,
    voltage_V: isDriven ? undefined : points[Math.floor(points.length / 2)]?.at,
    points: points.filter((_, i) => i % CURVE_STEP === 0 || i === points.length - 1)
      .map(({ flow_m3_s, pressure_Pa }) => ({ flow_m3_s, pressure_Pa })),
  };
}

/** Every how many points a pump's curve is shown: about at the figures that it comes from. */
const CURVE_STEP = 3;

/** Stretches in which the system's curve is drawn. */
const ASKED = 6;

function askedBy(solved: SolvedSupply): { flow_m3_s: number; pressure_Pa: number }[] {
  const pumped_m3_s = pointOf(solved, "peak")?.state?.pumped_m3_s ?? 0;
  const most = 1.3 * Math.max(solved.shopFlow_m3_s, pumped_m3_s);
  return Array.from({ length: ASKED + 1 }, (_, i) => most * i / ASKED)
    .flatMap((flow_m3_s) => {
      const pressure_Pa = askedAtPeak(solved, flow_m3_s, flow_m3_s);
      return pressure_Pa === undefined ? [] : [{ flow_m3_s, pressure_Pa }];
    });
}
