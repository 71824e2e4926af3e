/** Where an injector's upper ring sits in its pocket, and how far tolerances may shift it. */
import { type Method, method, type MethodInput, type MethodOutput } from "@/lib/method/mod.ts";
import { height, tolerance } from "./limits.ts";

const LOOP = "Sum of the heights from the datum plane to the ring";

const SEAT = height("Height of the injector's seat over the datum plane", "h_s");
const INJECTOR = height("Seat to the middle of the upper ring", "L");
const SPACER = height("Spacer under the injector", "s");
const RAIL = height("Height of the rail's face over the datum plane", "h_r");

const OUT: MethodOutput = { name: "length", unit: "m", min: -5, max: 5, says: "Length" };

/**
 * Spacer [m] that lifts an injector's ring to a common plane. Below nought the ring stands
 * higher already.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(spacerForPlane({ plane: 0.061, seat: 0.01, injector: 0.05 }), 0.001, 1e-12);
 * ```
 */
export const spacerForPlane: Method<Record<"plane" | "seat" | "injector", MethodInput>> = method({
  id: "spacer-for-plane",
  title: "Spacer under an injector",
  inputs: {
    plane: height("Height of the plane that the rings are to lie in", "h_p"),
    seat: SEAT,
    injector: INJECTOR,
  },
  output: { ...OUT, name: "spacer", says: "Thickness of the spacer" },
  formula: "plane - seat - injector",
  source: LOOP,
  compute: ({ plane, seat, injector }) => plane - seat - injector,
});

/**
 * How far [m] the ring stands in the pocket's bore: from the end of the lead-in to the ring's
 * nearer side. Below nought a part of it is still in the lead-in.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const past_m = ringPastLeadIn({
 *   seat: 0.01,
 *   injector: 0.05,
 *   spacer: 0.001,
 *   rail: 0.055,
 *   ring: 0.004,
 *   leadIn: 0.002,
 * });
 *
 * assertAlmostEquals(past_m, 0.002, 1e-12);
 * ```
 */
export const ringPastLeadIn: Method<
  Record<"seat" | "injector" | "spacer" | "rail" | "ring" | "leadIn", MethodInput>
> = method({
  id: "ring-past-lead-in",
  title: "Insertion of a ring past its lead-in",
  inputs: {
    seat: SEAT,
    injector: INJECTOR,
    spacer: SPACER,
    rail: RAIL,
    ring: height("Width of the ring along the injector", "w"),
    leadIn: height("Length of the lead-in", "l"),
  },
  output: { ...OUT, name: "insertion", says: "Ring's nearer side past the lead-in" },
  formula: "seat + injector + spacer - rail - ring / 2 - leadIn",
  source: LOOP,
  compute: ({ seat, injector, spacer, rail, ring, leadIn }) =>
    seat + injector + spacer - rail - ring / 2 - leadIn,
});

/**
 * Room [m] between the injector's upper end and the bottom of its pocket. Below nought the
 * injector bottoms before its seat does.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const room_m = roomAboveInjector({
 *   seat: 0.01,
 *   injector: 0.05,
 *   spacer: 0.001,
 *   rail: 0.055,
 *   beyond: 0.003,
 *   depth: 0.01,
 * });
 *
 * assertAlmostEquals(room_m, 0.001, 1e-12);
 * ```
 */
export const roomAboveInjector: Method<
  Record<"seat" | "injector" | "spacer" | "rail" | "beyond" | "depth", MethodInput>
> = method({
  id: "room-above-injector",
  title: "Room above an injector in its pocket",
  inputs: {
    seat: SEAT,
    injector: INJECTOR,
    spacer: SPACER,
    rail: RAIL,
    beyond: height("Middle of the upper ring to the injector's end", "b"),
    depth: height("Depth of the pocket", "d"),
  },
  output: { ...OUT, name: "room", says: "Room to the bottom of the pocket" },
  formula: "depth - (seat + injector + spacer - rail) - beyond",
  source: LOOP,
  compute: ({ seat, injector, spacer, rail, beyond, depth }) =>
    depth - (seat + injector + spacer - rail) - beyond,
});

const TOLERANCES = {
  seat: tolerance("Tolerance of the seat's height", "t_1"),
  injector: tolerance("Tolerance of the injector's length", "t_2"),
  spacer: tolerance("Tolerance of the spacer", "t_3"),
  rail: tolerance("Tolerance of the rail's height", "t_4"),
  pocket: tolerance("Tolerance of the lead-in's length or the pocket's depth", "t_5"),
} as const;

const SHIFT: MethodOutput = { name: "shift", unit: "m", min: 0, max: 0.05, says: "Most shift" };

/**
 * How far [m] tolerances shift a ring when all lie at their worst.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const shift_m = shiftAtWorst({
 *   seat: 1e-4,
 *   injector: 2e-4,
 *   spacer: 0,
 *   rail: 2e-4,
 *   pocket: 1e-4,
 * });
 *
 * assertAlmostEquals(shift_m, 6e-4, 1e-12);
 * ```
 */
export const shiftAtWorst: Method<
  Record<"seat" | "injector" | "spacer" | "rail" | "pocket", MethodInput>
> = method({
  id: "shift-at-worst",
  title: "Shift of a ring, all tolerances at their worst",
  inputs: TOLERANCES,
  output: SHIFT,
  formula: "seat + injector + spacer + rail + pocket",
  source: "Worst-case arithmetic of a tolerance stack",
  compute: ({ seat, injector, spacer, rail, pocket }) => seat + injector + spacer + rail + pocket,
});

/**
 * How far [m] tolerances shift a ring when they fall by chance: the root of the sum of squares,
 * which few rails exceed when each part is as likely long as short.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const shift_m = shiftByChance({ seat: 3e-4, injector: 4e-4, spacer: 0, rail: 0, pocket: 0 });
 *
 * assertAlmostEquals(shift_m, 5e-4, 1e-12);
 * ```
 */
export const shiftByChance: Method<
  Record<"seat" | "injector" | "spacer" | "rail" | "pocket", MethodInput>
> = method({
  id: "shift-by-chance",
  title: "Shift of a ring, tolerances by chance",
  inputs: TOLERANCES,
  output: SHIFT,
  formula: "sqrt(seat^2 + injector^2 + spacer^2 + rail^2 + pocket^2)",
  source: "Root sum square of a tolerance stack",
  compute: ({ seat, injector, spacer, rail, pocket }) =>
    Math.sqrt(seat ** 2 + injector ** 2 + spacer ** 2 + rail ** 2 + pocket ** 2),
});
