/** Injectors whose seats don't lie in one plane. */
import { InputError } from "@/lib/basics/mod.ts";
import type { Working } from "@/lib/method/mod.ts";
import {
  ringPastLeadIn,
  roomAboveInjector,
  shiftAtWorst,
  shiftByChance,
  spacerForPlane,
} from "./ring_heights.ts";

/** An injector on its seat. */
export interface StackStation {
  /** Height of its seat over the datum plane [m]. */
  readonly seat_m: number;
  /** Seat to the middle of the upper ring [m]. */
  readonly injectorLength_m: number;
  /** The spacer under it [m]; left out, the one that is needed. */
  readonly spacer_m?: number;
}

/** What {@linkcode stackUp} needs. */
export interface StackSpec {
  /** The injectors, in order along the bar. */
  readonly stations: readonly StackStation[];
  /** Height of the rail's injector face over the datum plane [m]. */
  readonly railFace_m: number;
  /** The pocket. */
  readonly pocket: {
    /** Length of its lead-in [m]. */
    readonly leadIn_m: number;
    /** Depth of its bore [m]. */
    readonly depth_m: number;
  };
  /** The upper end of the injectors. */
  readonly ring: {
    /** Width of the ring along the injector [m]. */
    readonly width_m: number;
    /** Middle of the ring to the injector's end [m]. */
    readonly beyond_m: number;
  };
  /** Tolerances, plus or minus [m]. */
  readonly tolerances: {
    /** Of a seat's height. */
    readonly seat_m: number;
    /** Of an injector's length. */
    readonly injector_m: number;
    /** Of a spacer. */
    readonly spacer_m: number;
    /** Of the height of the rail's face. */
    readonly railFace_m: number;
    /** Of the length of a lead-in. */
    readonly leadIn_m: number;
    /** Of the depth of a pocket. */
    readonly depth_m: number;
  };
}

/** A length as drawn, and the least over the tolerances. */
export interface WithTolerance {
  /** As drawn [m]. */
  readonly nominal_m: number;
  /** All tolerances at their worst [m]. */
  readonly worst_m: number;
  /** Tolerances by chance, root sum square [m]. */
  readonly byChance_m: number;
}

/** How an injector stands in the rail. */
export interface StackedInjector {
  /** Spacer that puts its ring into the plane of the highest [m]. */
  readonly spacerNeeded_m: number;
  /** Spacer that the rest is worked out with [m]. */
  readonly spacer_m: number;
  /** Ring's nearer side past the lead-in; below 0 the ring doesn't seal all round. */
  readonly insertion: WithTolerance;
  /** Room to the pocket's bottom; below 0 the injector bottoms. */
  readonly room: WithTolerance;
}

/** All injectors of a rail. */
export interface StackUp {
  /** Height of the highest ring over the datum plane, without spacers [m]. */
  readonly plane_m: number;
  /** Each injector, in order. */
  readonly injectors: readonly StackedInjector[];
}

/**
 * Works out the spacers that put all rings into the plane of the highest, and how each ring
 * then stands in its pocket, at its worst over the tolerances.
 *
 * @param working Takes the record.
 * @param section What the results stand under in the record.
 * @param spec Seats, injectors, rail, pocket and tolerances.
 * @returns Spacers, insertion and room of each injector.
 * @throws {InputError} When there is no injector, or a number lies outside its range.
 *
 * @example Two seats, one 0.8 mm lower
 * ```ts
 * import { assertAlmostEquals, assertEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 *
 * const { injectors } = stackUp(new Working(), "stack", {
 *   stations: [
 *     { seat_m: 0.01, injectorLength_m: 0.05 },
 *     { seat_m: 0.0092, injectorLength_m: 0.05 },
 *   ],
 *   railFace_m: 0.054,
 *   pocket: { leadIn_m: 0.002, depth_m: 0.01 },
 *   ring: { width_m: 0.004, beyond_m: 0.003 },
 *   tolerances: {
 *     seat_m: 1e-4,
 *     injector_m: 2e-4,
 *     spacer_m: 0,
 *     railFace_m: 2e-4,
 *     leadIn_m: 1e-4,
 *     depth_m: 1e-4,
 *   },
 * });
 * const [, low] = injectors;
 *
 * assertEquals(injectors[0]?.spacerNeeded_m, 0);
 * assertAlmostEquals(low?.spacerNeeded_m ?? 0, 0.0008, 1e-12);
 * assertAlmostEquals(low?.insertion.nominal_m ?? 0, 0.002, 1e-12);
 * assertAlmostEquals(low?.insertion.worst_m ?? 0, 0.0014, 1e-12);
 * ```
 */
export function stackUp(working: Working, section: string, spec: StackSpec): StackUp {
  const { stations, tolerances: t, railFace_m: rail, pocket, ring } = spec;
  if (stations.length === 0) {
    throw new InputError("stack-up", "stations", "must have one injector at least", "none");
  }
  const plane_m = Math.max(...stations.map((s) => s.seat_m + s.injectorLength_m));
  const injectors = stations.map((station, i): StackedInjector => {
    const key = (name: string) => `${section}.injectors.${i}.${name}`;
    const { seat_m: seat, injectorLength_m: injector } = station;
    const spacerNeeded_m = working.run(key("spacerNeeded_m"), spacerForPlane, {
      plane: plane_m,
      seat,
      injector,
    });
    const spacer = station.spacer_m ?? spacerNeeded_m;
    // Where there is no spacer, none can be off.
    const spacerTolerance = spacer === 0 ? 0 : t.spacer_m;
    const stood = { seat, injector, spacer, rail };
    const insertion = working.run(key("insertion.nominal_m"), ringPastLeadIn, {
      ...stood,
      ring: ring.width_m,
      leadIn: pocket.leadIn_m,
    });
    const room = working.run(key("room.nominal_m"), roomAboveInjector, {
      ...stood,
      beyond: ring.beyond_m,
      depth: pocket.depth_m,
    });
    const shifted = (name: string, nominal_m: number, pocketTolerance: number): WithTolerance => {
      const tolerances = {
        seat: t.seat_m,
        injector: t.injector_m,
        spacer: spacerTolerance,
        rail: t.railFace_m,
        pocket: pocketTolerance,
      };
      const worst = working.run(key(`${name}.shiftWorst_m`), shiftAtWorst, tolerances);
      const chance = working.run(key(`${name}.shiftByChance_m`), shiftByChance, tolerances);
      return { nominal_m, worst_m: nominal_m - worst, byChance_m: nominal_m - chance };
    };
    return {
      spacerNeeded_m,
      spacer_m: spacer,
      insertion: shifted("insertion", insertion, t.leadIn_m),
      room: shifted("room", room, t.depth_m),
    };
  });
  return { plane_m, injectors };
}
