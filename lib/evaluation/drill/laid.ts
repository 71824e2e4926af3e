/** The rail laid out, and laid out as its drill may have wandered. */
import {
  type Drift,
  type Hole,
  type Layout,
  layRail,
  nearestThatFits,
  type PlaceLimits,
  type RailLayoutSpec,
  withDrift,
} from "@/lib/layout/mod.ts";
import type { PlanValues } from "@/lib/plan/mod.ts";
import { CRITERIA } from "../criteria.ts";
import { type FoundBefore, railLayoutSpec } from "./rail_spec.ts";

/** A rail with all its holes. */
export interface Laid {
  /** What it was laid out from, the sensor's port where it came to stand. */
  readonly spec: RailLayoutSpec;
  /** As drawn. */
  readonly layout: Layout;
  /** With a gallery that fills all the space that its drill may take. */
  readonly wandered: Layout;
  /** The gallery as drawn. */
  readonly gallery: Hole;
  /** How far the drill may wander. */
  readonly drift: Drift;
}

/** A rail, or why there is none. */
export interface LaidOrNot {
  /** The rail. */
  readonly laid: Laid | undefined;
  /** Why there is none; what is missing, or what does not fit. */
  readonly because: string;
}

/** What is wanted around a hole: the aims, so that a place found keeps them. */
export const WANTED: PlaceLimits = {
  wall_m: CRITERIA.holeWall.aim,
  ligament_m: CRITERIA.holeGap.aim,
  shareOfSmaller: 0.5,
};

/**
 * Lays the rail out. A sensor whose place the plan leaves blank goes to the nearest that
 * clears the other holes, beginning midway between the first two injectors.
 *
 * @param values The plan in numbers.
 * @param found What other subjects found.
 * @param drift_m How far the gallery's drill may wander [m].
 * @returns The rail; undefined until bar and gallery are known.
 * @throws {InputError} When the plan's numbers make no rail.
 */
export function layPlan(
  values: PlanValues,
  found: FoundBefore,
  drift_m: number,
): Laid | undefined {
  const asked = railLayoutSpec(values, found);
  if (asked === undefined) return undefined;
  const spec = values.sensor.at === undefined ? withSensorMoved(asked) : asked;
  const layout = layRail(spec);
  const [gallery] = layout.holes;
  if (gallery === undefined) return undefined;
  const drift = {
    drift_m,
    drilledFrom: spec.gallery.drilledFrom === "both" ? "both" : "one",
  } as const;
  return { spec, layout, wandered: withDrift(layout, drift), gallery, drift };
}

/** The id of the sensor's port. */
export const SENSOR_ID = "port-sensor";

function withSensorMoved(spec: RailLayoutSpec): RailLayoutSpec {
  if (!spec.ports.some(({ id }) => id === SENSOR_ID)) return spec;
  const at_m = nearestThatFits(layRail(spec), SENSOR_ID, WANTED);
  if (at_m === undefined) return spec;
  return {
    ...spec,
    ports: spec.ports.map((port) => port.id === SENSOR_ID ? { ...port, at_m } : port),
  };
}
