/** What a run of hose is made of, piece by piece. */
import type { FittingKind } from "./fittings.ts";

/** A straight piece that the fuel runs along. */
export type DuctKind = "hose" | "corrugated" | "tube";

/** A part whose loss its maker states, or that has to be measured. */
export type StatedKind = "check-valve" | "filter" | "quick-connector" | "ethanol-sensor" | "other";

/** Any piece. */
export type PieceKind = DuctKind | FittingKind | StatedKind;

/** A loss as stated at a flow. */
export interface StatedLoss {
  /** The flow [m^3/s]. */
  readonly flow_m3_s: number;
  /** What is lost there [Pa]. */
  readonly loss_Pa: number;
}

/** One piece of a run. */
export interface Piece {
  /** What it is. */
  readonly kind: PieceKind;
  /** What it is called on a sheet: `hose`, `filter`. */
  readonly name: string;
  /** Inside diameter [m]. */
  readonly bore_m: number;
  /** Length; nought for a fitting [m]. */
  readonly length_m: number;
  /** Height of its outlet above its inlet [m]. */
  readonly rise_m: number;
  /** How many in a row. */
  readonly count: number;
  /** Losses as stated, none to two; a second one tells how the loss goes with flow. */
  readonly stated: readonly StatedLoss[];
}

/**
 * Tells a piece that loses by friction along its length.
 *
 * @param kind What the piece is.
 * @returns True for hose and tube.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals([isDuct("tube"), isDuct("filter")], [true, false]);
 * ```
 */
export function isDuct(kind: PieceKind): kind is DuctKind {
  return kind === "hose" || kind === "corrugated" || kind === "tube";
}

const STATED: readonly PieceKind[] = [
  "check-valve",
  "filter",
  "quick-connector",
  "ethanol-sensor",
  "other",
] satisfies StatedKind[];

/**
 * Tells a piece whose loss has to be stated.
 *
 * @param kind What the piece is.
 * @returns True for valves, filters and the like.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals([isStated("filter"), isStated("barb")], [true, false]);
 * ```
 */
export function isStated(kind: PieceKind): kind is StatedKind {
  return STATED.includes(kind);
}
