/** The distance of two convex pieces that stand in any way to each other. */
import { endOf, farthest, type Frustum, reach } from "./frustum.ts";
import type { Vec3 } from "./model.ts";
import { nearestOnSimplex } from "./nearest_on_simplex.ts";
import { along, cross, dot, minus, norm, scaled, squareTo, unit } from "./vector.ts";

/** How closely a distance is found [m]: a nanometre. */
const TOLERANCE_m = 1e-9;

/** Round pieces take ten to thirty steps; what takes more has come as near as numbers allow. */
const MOST_STEPS = 200;

/**
 * Finds the distance [m] of two pieces; nought when they meet. What is given is never more
 * than the true distance, and less by a nanometre at most.
 *
 * Source: E. G. Gilbert, D. W. Johnson, S. S. Keerthi, IEEE Journal of Robotics and Automation
 * 4 (1988) 193-203: the point nearest to the origin of all differences between the two.
 *
 * @param a One piece.
 * @param b The other.
 * @param enough_m A distance from which on the exact number doesn't matter [m].
 * @returns The distance [m], or a number from `enough_m` on that is no more than it.
 */
export function convexDistance(a: Frustum, b: Frustum, enough_m: number): number {
  let point = minus(middleOf(a), middleOf(b));
  let corners: readonly Vec3[] = [];
  let sure_m = 0;
  let upper_m = Infinity;
  for (let step = 0; step < MOST_STEPS; step++) {
    const length = norm(point);
    // Rounding has the last word once a step leads no nearer.
    if (length <= TOLERANCE_m) return 0;
    if (!(length < upper_m) && step > 1) return sure_m;
    upper_m = step > 0 ? length : Infinity;
    const corner = minus(farthest(a, scaled(point, -1)), farthest(b, point));
    sure_m = Math.max(sure_m, dot(point, corner) / length);
    if (upper_m - sure_m <= TOLERANCE_m || sure_m >= enough_m) return sure_m;
    ({ point, corners } = nearestOnSimplex(corner, corners));
    if (corners.length > 3) return 0;
  }
  return sure_m;
}

function middleOf(piece: Frustum): Vec3 {
  return along(piece.from, piece.axis, piece.length_m / 2);
}

/** How far apart two pieces are when seen square to a direction of length one [m]. */
function apart(a: Frustum, b: Frustum, direction: Vec3): number {
  return -reach(a, direction) - reach(b, scaled(direction, -1));
}

/** Directions spread evenly over a sphere, that the search for the shallowest begins from. */
const DIRECTIONS: readonly Vec3[] = Array.from({ length: 200 }, (_, i) => {
  const z = 1 - (2 * i + 1) / 200;
  const turn = i * Math.PI * (3 - Math.sqrt(5));
  const flat = Math.sqrt(1 - z * z);
  return [flat * Math.cos(turn), flat * Math.sin(turn), z];
});

/** How many of the best directions are followed to their peak. */
const FOLLOWED = 4;

/**
 * Finds how deep [m] two pieces that meet stand in each other: the shortest way that one would
 * have to be moved to come free. A search over directions that ends within a micrometre of a
 * peak; another peak may be shallower by little.
 *
 * @param a One piece.
 * @param b The other.
 * @returns The depth [m], above or at nought.
 */
export function convexDepth(a: Frustum, b: Frustum): number {
  const between = unit(minus(middleOf(a), middleOf(b)));
  const square = unit(cross(a.axis, b.axis));
  const likely = [a.axis, b.axis, square, between, unit(minus(endOf(a), endOf(b)))];
  const best = [...likely, ...likely.map((d) => scaled(d, -1)), ...DIRECTIONS]
    .map((direction) => ({ direction, apart_m: apart(a, b, direction) }))
    .sort((one, other) => other.apart_m - one.apart_m)
    .slice(0, FOLLOWED)
    .map(({ direction }) => climb(a, b, direction));
  return Math.max(0, -Math.max(...best));
}

/** Follows the way up to a peak of how far apart two pieces look, turning ever less. */
function climb(a: Frustum, b: Frustum, from: Vec3): number {
  let best = from;
  let apart_m = apart(a, b, from);
  for (let turn = 0.2; turn > 1e-5;) {
    const [first, second] = squareTo(best);
    const tries = Array.from({ length: 8 }, (_, i) => {
      const side = along(
        scaled(first, Math.cos(i * Math.PI / 4)),
        second,
        Math.sin(i * Math.PI / 4),
      );
      return unit(along(best, side, turn));
    }).map((direction) => ({ direction, apart_m: apart(a, b, direction) }));
    const top = tries.reduce((x, y) => y.apart_m > x.apart_m ? y : x);
    if (top.apart_m > apart_m + TOLERANCE_m) {
      best = top.direction;
      apart_m = top.apart_m;
    } else {
      turn /= 2;
    }
  }
  return apart_m;
}
