/** The plan's supply as the network takes it. */
import { EXIT_LOSS, SHARP_ENTRANCE, suddenExpansion } from "@/lib/flow/mod.ts";
import { type Liquid, type Piece, Run, type RunEnds } from "@/lib/line/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import {
  type RailsSpec,
  type RegulatorSpec,
  STANDARD_GRAVITY_m_s2,
  type SupplySystem,
} from "@/lib/supply/mod.ts";
import { ROUGHNESS_M, stationsOf } from "../subjects/gallery.ts";
import { type FilterState, piecesOf, type RunName } from "./pieces_of.ts";

/** A gallery so wide that it loses nothing, while the plan's bore is not known [m]. */
const NO_GALLERY_m = 0.04;

/** Builds the system for one liquid, with its filters clean or due for change. */
export function systemOf(
  values: PlanValues,
  liquid: Liquid,
  full_m3_s: number,
  filters: FilterState = "clean",
): SupplySystem {
  const { supply, pump } = values;
  const run = (name: RunName): Run | undefined => runOf(values, name, liquid, filters);
  return {
    liquid,
    // A surge tank overflows into the main tank: both stand at one pressure.
    tank_Pa: supply.tankPressure,
    head_Pa: liquid.density_kg_m3 * STANDARD_GRAVITY_m_s2 * supply.tankHead,
    suction: pump.place === "tank" ? undefined : run("suction"),
    feed: run("feed") ?? measuredFeed(values, liquid, full_m3_s),
    branch: run("branch"),
    crossover: run("crossover"),
    back: run("return"),
    regulator: regulatorOf(values),
    rails: railsOf(values),
  };
}

/** One run of the plan; undefined where it lists no piece. */
export function runOf(
  values: PlanValues,
  name: RunName,
  liquid: Liquid,
  filters: FilterState = "clean",
): Run | undefined {
  const pieces = piecesOf(values, name, filters);
  return pieces.length === 0 ? undefined : new Run(pieces, liquid, endsOf(values, name, pieces));
}

/** A tank is left by a sharp edge and entered with all speed lost; a gallery is entered by its end. */
function endsOf(values: PlanValues, run: RunName, pieces: readonly Piece[]): RunEnds {
  const fromTank = run === "suction" ? SHARP_ENTRANCE.rennels : 0;
  if (run === "return" || run === "lift") return { entrance: 0, exit: EXIT_LOSS };
  const { bore } = values.rail;
  const last_m = pieces.at(-1)?.bore_m;
  const isAtRail = run === "branch" || run === "crossover" ||
    (run === "feed" && values.supply.branch.length === 0);
  const exit = isAtRail && bore !== undefined && last_m !== undefined
    ? suddenExpansion.compute({ boreRatio: Math.min(1, last_m / bore) })
    : 0;
  return { entrance: fromTank, exit };
}

/** A feed of which the plan only tells what it loses at full flow: that goes with the square. */
function measuredFeed({ supply }: PlanValues, liquid: Liquid, full_m3_s: number): Run {
  const stated = supply.feedLoss === undefined
    ? []
    : [{ flow_m3_s: full_m3_s, loss_Pa: supply.feedLoss }];
  return new Run([{
    kind: "other",
    name: "feed, as measured",
    bore_m: supply.feedBore,
    length_m: 0,
    rise_m: 0,
    count: 1,
    stated,
  }], liquid);
}

function regulatorOf({ regulator }: PlanValues): RegulatorSpec {
  const { droop, leastDrop, dropFlow, setPressure } = regulator;
  return {
    place: regulator.layout === "return" ? "rail" : regulator.place ?? "tank",
    // It is set with the pump running and nothing burnt: so the set pressure holds at full return.
    opens_Pa: Math.max(0, setPressure - (droop ?? 0)),
    droop_Pa_s_m3: droop === undefined || dropFlow === undefined ? 0 : droop / dropFlow,
    wideOpen: leastDrop === undefined || dropFlow === undefined
      ? undefined
      : { flow_m3_s: dropFlow, loss_Pa: leastDrop },
  };
}

function railsOf(values: PlanValues): RailsSpec {
  const { rail } = values;
  return {
    count: rail.count,
    length_m: rail.length,
    bore_m: rail.bore ?? NO_GALLERY_m,
    roughness_m: ROUGHNESS_M[rail.finish],
    stations_m: stationsOf(values),
    feed: rail.feed,
    connection: rail.connection ?? "parallel",
  };
}
