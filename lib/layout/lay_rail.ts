/** A rail laid out: every hole in its place. */
import { InputError } from "@/lib/basics/mod.ts";
import { layGallery, layPlugs } from "./lay_gallery.ts";
import { layPocket, layPort, layScrew } from "./lay_holes.ts";
import type { Bar, Hole, Layout } from "./model.ts";
import type { RailLayoutSpec } from "./spec.ts";

/**
 * Lays out a rail. What doesn't fit is laid out all the same, so that it can be drawn with the
 * trouble marked; {@linkcode clashes} and {@linkcode wallOf} find the trouble.
 *
 * A pocket's pilot goes to the gallery's axis with its full diameter, its point beyond.
 *
 * @param spec The bar and what is asked of it.
 * @returns The layout: gallery, plugs, pockets, ports, screws.
 * @throws {InputError} When a size isn't above nought, a hole begins beside the bar, stretches
 * don't follow each other, or two holes have one id.
 *
 * @example A bar with one pocket
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 *
 * const layout = layRail({
 *   bar: { shape: "rectangular", length_m: 0.1, height_m: 0.025, width_m: 0.025 },
 *   gallery: {
 *     bore_m: 0.01,
 *     across_m: 0,
 *     up_m: 0.016,
 *     drilledFrom: "both",
 *     ends: {},
 *   },
 *   stations: [{
 *     at_m: 0.05,
 *     across_m: 0,
 *     tilt_rad: 0,
 *     pocket: {
 *       bore_m: 0.014,
 *       depth_m: 0.009,
 *       leadMouth_m: 0.0152,
 *       leadAngle_rad: Math.PI / 12,
 *       pilot_m: 0.007,
 *       bottom: "flat",
 *     },
 *   }],
 *   ports: [],
 *   screws: [],
 * });
 * const [gallery, pocket] = layout.holes;
 *
 * assertEquals([gallery?.id, pocket?.id], ["gallery", "pocket-1"]);
 * assertEquals(pocket?.profile.map(({ cut }) => cut), ["lead-in", "bore", "pilot", "tip"]);
 * assertAlmostEquals(pocket?.profile[2]?.to_m ?? 0, 0.016, 1e-12);
 * ```
 */
export function layRail(spec: RailLayoutSpec): Layout {
  const { bar } = spec;
  requireBar(bar);
  const gallery = layGallery(bar, spec.gallery);
  const holes = [
    gallery,
    ...layPlugs(bar, spec.gallery),
    ...spec.stations.map((station, i) => layPocket(bar, gallery, station, i + 1)),
    ...spec.ports.map((port) => layPort(bar, gallery, port)),
    ...spec.screws.map((screw, i) => layScrew(bar, screw, i + 1)),
  ];
  holes.forEach(requireSound);
  const twice = holes.find(({ id }, i) => holes.findIndex((other) => other.id === id) < i);
  if (twice !== undefined) {
    throw new InputError("layout", "id", "must be unique in its rail", twice.id);
  }
  return { bar, holes };
}

function requireBar(bar: Bar): void {
  for (const field of ["length_m", "height_m", "width_m"] as const) {
    if (bar[field] > 0 && bar[field] < Infinity) continue;
    throw new InputError("layout", field, "must be > 0 m", bar[field]);
  }
  if (bar.shape === "round" && bar.width_m !== bar.height_m) {
    throw new InputError("layout", "width_m", "must be the diameter of a round bar", bar.width_m);
  }
}

/** Lengths add up with rounding, so stretches may miss each other by this [m]. */
const ROUNDING_m = 1e-12;

function requireSound({ id, profile, thread }: Hole): void {
  let at_m = 0;
  if (profile.length === 0) {
    throw new InputError("layout", id, "must have a depth above nought", "none");
  }
  for (const { from_m, to_m, fromDiameter_m, toDiameter_m } of profile) {
    const follows = Math.abs(from_m - at_m) <= ROUNDING_m && to_m > from_m;
    if (!follows) {
      throw new InputError(
        "layout",
        id,
        `must go on from ${at_m} m, deeper`,
        `${from_m} to ${to_m}`,
      );
    }
    if (!(fromDiameter_m > 0 && toDiameter_m >= 0 && fromDiameter_m < Infinity)) {
      throw new InputError("layout", id, "must have diameters > 0 m", fromDiameter_m);
    }
    at_m = to_m;
  }
  if (thread !== undefined && !(thread.major_m > 0 && thread.to_m > thread.from_m)) {
    throw new InputError("layout", id, "must have a thread with a length > 0 m", thread.to_m);
  }
}
