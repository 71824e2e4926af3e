/** A hole seen along a tunnel that it crosses: where its sides enter and leave. */
import type { Tunnel } from "./gallery_axis.ts";
import type { Hole, Vec3 } from "./model.ts";
import { dot, minus, squareTo } from "./vector.ts";

/** A hole's axis and two directions square to it, seen along a tunnel whose axis is the origin. */
export interface CrossSection {
  /** Radius of the tunnel [m]. */
  readonly tunnel_m: number;
  /** The hole's entry [m]. */
  readonly entry: Flat;
  /** Its direction, shortened by the view. */
  readonly into: Flat;
  /** Two directions square to it, shortened by the view. */
  readonly sides: readonly [Flat, Flat];
}

/** A place or direction in the view. */
export type Flat = readonly [number, number];

/** Looks at a hole along a tunnel. */
export function crossSection(hole: Pick<Hole, "entry" | "into">, tunnel: Tunnel): CrossSection {
  const [first, second] = squareTo(tunnel.axis);
  const flat = (v: Vec3): Flat => [dot(v, first), dot(v, second)];
  const [one, other] = squareTo(hole.into);
  return {
    tunnel_m: tunnel.radius_m,
    entry: flat(minus(hole.entry, tunnel.from)),
    into: flat(hole.into),
    sides: [flat(one), flat(other)],
  };
}

/** A line of a cylinder's or cone's side: its radius at the entry's depth and how it grows. */
export interface SideLine {
  /** Radius where the depth is nought [m]. */
  readonly radius_m: number;
  /** How the radius grows with depth [-]; nought for a cylinder. */
  readonly growth: number;
}

/**
 * Finds between which depths [m] a line on the side of a hole lies in the tunnel.
 *
 * @param view The hole seen along the tunnel.
 * @param side Its radius by depth.
 * @param turn_rad Where around the hole [rad].
 * @returns Where it enters and leaves; undefined when it passes by.
 */
export function insideTunnel(
  view: CrossSection,
  side: SideLine,
  turn_rad: number,
): Flat | undefined {
  const [c, s] = [Math.cos(turn_rad), Math.sin(turn_rad)];
  const [[ax, ay], [bx, by]] = view.sides;
  const [ox, oy] = [c * ax + s * bx, c * ay + s * by];
  const px = view.entry[0] + side.radius_m * ox;
  const py = view.entry[1] + side.radius_m * oy;
  const dx = view.into[0] + side.growth * ox;
  const dy = view.into[1] + side.growth * oy;
  const dd = dx * dx + dy * dy;
  const past = px * dy - py * dx;
  const left = view.tunnel_m * view.tunnel_m * dd - past * past;
  if (left < 0) return undefined;
  const middle = -(px * dx + py * dy) / dd;
  const half = Math.sqrt(left) / dd;
  return [middle - half, middle + half];
}

/** Between which depths a whole cylinder begins and ends to lie in a tunnel. */
export interface CylinderInside {
  /** Where it first touches the hollow [m]; undefined when it passes by. */
  readonly first_m?: number;
  /** From where its whole rim is inside [m]; undefined when it is too wide. */
  readonly last_m?: number;
  /** Where its rim first leaves again [m]; undefined when it is too wide. */
  readonly leaves_m?: number;
}

/**
 * Finds in closed form where a cylinder square to a tunnel enters and leaves it.
 *
 * @param view The hole seen along the tunnel.
 * @param radius_m Its radius [m].
 * @returns The depths; undefined when the hole isn't square to the tunnel.
 */
export function squareInside(view: CrossSection, radius_m: number): CylinderInside | undefined {
  const [[px, py], [dx, dy]] = [view.entry, view.into];
  if (Math.abs(dx * dx + dy * dy - 1) > 1e-12) return undefined;
  const depth_m = -(px * dx + py * dy);
  const aside_m = Math.abs(px * dy - py * dx);
  const half = (off_m: number): number | undefined =>
    off_m > view.tunnel_m ? undefined : Math.sqrt(view.tunnel_m ** 2 - off_m * off_m);
  const nearest = half(Math.max(0, aside_m - radius_m));
  const widest = half(aside_m + radius_m);
  return {
    ...(nearest === undefined ? {} : { first_m: depth_m - nearest }),
    ...(widest === undefined ? {} : { last_m: depth_m - widest, leaves_m: depth_m + widest }),
  };
}
