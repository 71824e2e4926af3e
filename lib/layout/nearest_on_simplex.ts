/** The point of a simplex that is nearest to the origin. */
import type { Vec3 } from "./model.ts";
import { along, cross, dot, minus } from "./vector.ts";

/** A simplex of one to four corners, and its point nearest to the origin. */
export interface Nearest {
  /** The point. */
  readonly point: Vec3;
  /** The corners that the point is made of. */
  readonly corners: readonly Vec3[];
}

/** Corners that span less than this share of what they could are taken to span nothing. */
const FLAT = 1e-14;

const ORIGIN: Vec3 = [0, 0, 0];

/**
 * Finds the nearest point of the simplex of a new corner and up to three old ones. As the new
 * corner was found in the direction of the origin, it always has a share in the point.
 *
 * @param corner The new corner.
 * @param old The other corners, three at most.
 * @returns The point, and the corners it is made of.
 */
export function nearestOnSimplex(corner: Vec3, old: readonly Vec3[]): Nearest {
  const found: Nearest[] = [{ point: corner, corners: [corner] }];
  const add = (nearest: Nearest | undefined) => {
    if (nearest !== undefined) found.push(nearest);
  };
  old.forEach((b, i) => {
    add(onEdge(corner, b));
    old.slice(i + 1).forEach((c, k) => {
      add(onFace(corner, b, c));
      old.slice(i + k + 2).forEach((d) => add(inside(corner, b, c, d)));
    });
  });
  return found.reduce((best, one) =>
    dot(one.point, one.point) < dot(best.point, best.point) ? one : best
  );
}

/** The foot of the origin on an edge, unless it lies outside. */
function onEdge(a: Vec3, b: Vec3): Nearest | undefined {
  const ab = minus(b, a);
  const share = -dot(a, ab) / dot(ab, ab);
  if (!(share > 0 && share < 1)) return undefined;
  return { point: along(a, ab, share), corners: [a, b] };
}

/** The foot of the origin on a face, unless it lies outside. */
function onFace(a: Vec3, b: Vec3, c: Vec3): Nearest | undefined {
  const ab = minus(b, a);
  const ac = minus(c, a);
  const bb = dot(ab, ab);
  const cc = dot(ac, ac);
  const bc = dot(ab, ac);
  const area = bb * cc - bc * bc;
  if (!(area > FLAT * bb * cc)) return undefined;
  const toB = -dot(a, ab);
  const toC = -dot(a, ac);
  const shareB = (toB * cc - toC * bc) / area;
  const shareC = (toC * bb - toB * bc) / area;
  if (!(shareB > 0 && shareC > 0 && shareB + shareC < 1)) return undefined;
  return { point: along(along(a, ab, shareB), ac, shareC), corners: [a, b, c] };
}

/** The origin itself, when it lies in the tetrahedron. */
function inside(a: Vec3, b: Vec3, c: Vec3, d: Vec3): Nearest | undefined {
  const [ab, ac, ad] = [minus(b, a), minus(c, a), minus(d, a)];
  const volume = dot(ab, cross(ac, ad));
  const all = dot(ab, ab) * dot(ac, ac) * dot(ad, ad);
  if (!(volume * volume > FLAT * all)) return undefined;
  const shareB = -dot(a, cross(ac, ad)) / volume;
  const shareC = -dot(ab, cross(a, ad)) / volume;
  const shareD = -dot(ab, cross(ac, a)) / volume;
  if (!(shareB > 0 && shareC > 0 && shareD > 0 && shareB + shareC + shareD < 1)) return undefined;
  return { point: ORIGIN, corners: [a, b, c, d] };
}
