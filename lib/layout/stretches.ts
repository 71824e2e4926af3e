/** The stretches that holes are put together from. */
import { leadInLength } from "@/lib/seal/mod.ts";
import { coneDepth, pointLength } from "@/lib/thread/mod.ts";
import type { Cut, Stretch } from "./model.ts";

/** The point of a jobber drill, all of its angle [rad]: 118 degrees. */
export const DRILL_POINT_rad: number = 118 / 180 * Math.PI;

/** A cylinder between two depths; none when the second isn't deeper. */
export function cylinder(cut: Cut, from_m: number, to_m: number, d_m: number): Stretch[] {
  return to_m > from_m ? [{ cut, from_m, to_m, fromDiameter_m: d_m, toDiameter_m: d_m }] : [];
}

/** A lead-in from the face; none when the mouth isn't wider than the bore. */
export function leadIn(mouth_m: number, bore_m: number, angle_rad: number): Stretch[] {
  if (!(mouth_m > bore_m)) return [];
  const to_m = leadInLength({ mouth: mouth_m, bore: bore_m, angle: angle_rad });
  return [{ cut: "lead-in", from_m: 0, to_m, fromDiameter_m: mouth_m, toDiameter_m: bore_m }];
}

/** A cone from a depth on, between two diameters; none when the second isn't less. */
export function cone(
  cut: Cut,
  from_m: number,
  [wide, narrow]: readonly [wide_m: number, narrow_m: number],
  included_rad: number,
): Stretch[] {
  if (!(wide > narrow)) return [];
  const to_m = from_m + coneDepth({ wide, narrow, included: included_rad });
  return [{ cut, from_m, to_m, fromDiameter_m: wide, toDiameter_m: narrow }];
}

/** What a drill's point leaves below its full diameter. */
export function tip(from_m: number, drill_m: number): Stretch {
  const to_m = from_m + pointLength({ drill: drill_m, included: DRILL_POINT_rad });
  return { cut: "tip", from_m, to_m, fromDiameter_m: drill_m, toDiameter_m: 0 };
}

/** How deep stretches go [m]. */
export function depthOf(profile: readonly Stretch[]): number {
  return profile.at(-1)?.to_m ?? 0;
}

/** A pilot from the end of what is there down to a depth, with its point; none if it is there already. */
export function pilot(from_m: number, to_m: number, drill_m: number): Stretch[] {
  return to_m > from_m ? [...cylinder("pilot", from_m, to_m, drill_m), tip(to_m, drill_m)] : [];
}
