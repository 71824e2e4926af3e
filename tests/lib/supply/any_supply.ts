/** Fuel supplies and operating points by chance. */
import { Run } from "@/lib/line/mod.ts";
import {
  pumpsTogether,
  type RailsSpec,
  type RegulatorSpec,
  type Running,
  type RunningPump,
  type SupplySystem,
} from "@/lib/supply/mod.ts";
import { anyPieces, piece } from "../../helpers/any_run.ts";
import { Seeded } from "../../helpers/seeded.ts";

/** A system and what it meets. */
export interface Drawn {
  readonly system: SupplySystem;
  readonly running: Running;
}

const LIQUIDS = [
  { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 },
  { density_kg_m3: 789, viscosity_Pa_s: 1.2e-3 },
  { density_kg_m3: 700, viscosity_Pa_s: 2.7e-4 },
];

/**
 * Draws a supply of any layout at an operating point: no demand to three times what its pump
 * gives, pumps that can't reach the set pressure, ways back that are too narrow, boost.
 *
 * @param seed What tells it from others.
 */
export function anySupply(seed: number): Drawn {
  const by = new Seeded(seed);
  const liquid = by.oneOf(LIQUIDS);
  const run = (checked = false): Run => {
    const pieces = anyPieces(by);
    return new Run(checked ? [piece("check-valve"), ...pieces] : pieces, liquid);
  };
  const maybe = (share: number): Run | undefined => by.chance(share) ? run() : undefined;
  const pump = anyPump(by);
  const most_m3_s = pump.points.at(-1)?.flow_m3_s ?? NaN;
  const demand_m3_s = by.chance(0.1) ? 0 : most_m3_s * by.decades(0.01, 3);
  const regulator = anyRegulator(by);
  const manifold_Pa = by.chance(0.5) ? 0 : by.between(-7e4, 2e5);
  return {
    system: {
      liquid,
      tank_Pa: by.oneOf([0, 0, by.between(-3e3, 1e4)]),
      head_Pa: by.between(-4e3, 4e3),
      suction: maybe(0.4),
      feed: run(by.chance(0.5)),
      branch: maybe(0.4),
      crossover: maybe(0.4),
      back: regulator.place === "tank" ? undefined : run(),
      regulator,
      rails: anyRails(by),
    },
    running: {
      pump: by.chance(0.1) ? most_m3_s * by.next() : pump,
      demand_m3_s,
      // From injectors that suffice at 0.3 bar to such that do at 6 bar alone.
      injectors: Math.max(demand_m3_s, 1e-5) / Math.sqrt(by.decades(3e4, 6e5)),
      manifold_Pa,
      reference_Pa: by.chance(0.5) ? 0 : manifold_Pa,
    },
  };
}

/** A curve of two to six points. */
export function anyPump(by: Seeded): RunningPump {
  const isScaled = by.chance(0.5);
  const most_m3_s = by.decades(2e-5, 3e-4);
  const shut_Pa = by.decades(1e5, 1.2e6);
  const stretches = by.whole(1, 5);
  const from = by.oneOf([0, by.between(0, 0.6)]);
  const points = Array.from({ length: stretches + 1 }, (_, i) => {
    const share = from + (1 - from) * i / stretches;
    return {
      flow_m3_s: most_m3_s * share,
      pressure_Pa: shut_Pa * (1 - share ** 1.5),
      current_A: 14 - 6 * share,
      at: 12 + share,
    };
  });
  const arrangement = by.oneOf(["parallel", "series"] as const);
  return pumpsTogether({ points, isScaled }, { count: by.whole(1, 3), arrangement });
}

function anyRegulator(by: Seeded): RegulatorSpec {
  return {
    place: by.oneOf(["rail", "tank", "feed"] as const),
    opens_Pa: by.between(2e5, 6e5),
    droop_Pa_s_m3: by.oneOf([0, by.decades(1e7, 1e9)]),
    wideOpen: by.chance(0.5)
      ? { flow_m3_s: by.decades(3e-5, 2e-4), loss_Pa: by.decades(1e4, 2e5) }
      : undefined,
  };
}

function anyRails(by: Seeded): RailsSpec {
  const length_m = by.between(0.2, 0.8);
  const stations = by.whole(1, 6);
  return {
    count: by.whole(1, 4),
    length_m,
    bore_m: by.between(6e-3, 18e-3),
    roughness_m: by.between(0, 20e-6),
    stations_m: Array.from({ length: stations }, () => by.between(0, length_m))
      .sort((a, b) => a - b),
    feed: by.oneOf(["one-end", "both-ends", "middle"] as const),
    connection: by.oneOf(["parallel", "series", "loop"] as const),
  };
}
