/** Where a line and the gallery come nearest. */
import type { Hole, Vec3 } from "./model.ts";
import { along, dot, minus, norm } from "./vector.ts";

/** The gallery as a round tunnel along its axis, its ends and its tip left aside. */
export interface Tunnel {
  /** A point of its axis. */
  readonly from: Vec3;
  /** Direction of its axis, of length one. */
  readonly axis: Vec3;
  /** Radius [m]. */
  readonly radius_m: number;
  /** Where the full bore begins, along the axis from that point [m]. */
  readonly begins_m: number;
  /** Where it ends [m]. */
  readonly ends_m: number;
}

/** Makes the tunnel of a gallery; undefined when it has no bore. */
export function tunnelOf(gallery: Hole): Tunnel | undefined {
  const bores = gallery.profile.filter(({ cut }) => cut === "bore");
  const [first] = bores;
  const last = bores.at(-1);
  if (first === undefined || last === undefined) return undefined;
  return {
    from: gallery.entry,
    axis: gallery.into,
    radius_m: first.fromDiameter_m / 2,
    begins_m: first.from_m,
    ends_m: last.to_m,
  };
}

/** Where a line comes nearest to the axis of a tunnel. */
export interface Meeting {
  /** How far along the line [m]. */
  readonly depth_m: number;
  /** How far along the tunnel's axis [m]. */
  readonly at_m: number;
  /** How far the line passes from the axis [m]. */
  readonly aside_m: number;
}

/**
 * Finds where a line comes nearest to the axis of a tunnel.
 *
 * @param line A point and a direction of length one.
 * @param tunnel The tunnel.
 * @returns The place, or undefined when the line runs along the tunnel.
 */
export function meeting(
  line: Pick<Hole, "entry" | "into">,
  tunnel: Tunnel,
): Meeting | undefined {
  const { entry, into } = line;
  const cosine = dot(into, tunnel.axis);
  const sine2 = 1 - cosine * cosine;
  if (sine2 < 1e-6) return undefined;
  const start = minus(entry, tunnel.from);
  const depth_m = (cosine * dot(tunnel.axis, start) - dot(into, start)) / sine2;
  const point = along(entry, into, depth_m);
  const at_m = dot(minus(point, tunnel.from), tunnel.axis);
  return { depth_m, at_m, aside_m: norm(minus(point, along(tunnel.from, tunnel.axis, at_m))) };
}
