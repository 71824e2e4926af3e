/** What a single piece loses at a flow, as numbers that a run adds up. */
import { InputError } from "@/lib/basics/mod.ts";
import { FITTINGS } from "./fittings.ts";
import type { Liquid } from "./friction_law.ts";
import { isDuct, type Piece, type StatedKind, type StatedLoss } from "./piece.ts";

/** Loss = least + linear Q + square Q^2 + the stated one carried to Q. */
export interface PieceLoss {
  /** Lost as soon as anything flows: a valve's cracking pressure [Pa]. */
  readonly cracking_Pa: number;
  /** Lost for each flow [Pa s/m^3]. */
  readonly linear: number;
  /** Lost for each square of flow [Pa s^2/m^6]. */
  readonly square: number;
  /** A loss that goes with a power of flow, where one is stated. */
  readonly power?: PowerLoss;
}

/** A stated loss: it goes with flow to the exponent. */
export interface PowerLoss extends StatedLoss {
  /** 1 through a filter's medium, 2 through openings, between where two points say so [-]. */
  readonly exponent: number;
}

/** Cracking pressure of a check valve whose own is not known [Pa]. Assumed. */
export const ASSUMED_CRACKING_Pa = 15e3;

/** How loss goes with flow where a single point is stated [-]: a medium, or an opening. */
const EXPONENT: Readonly<Record<StatedKind, number>> = {
  "filter": 1,
  "check-valve": 2,
  "quick-connector": 2,
  "ethanol-sensor": 2,
  "other": 2,
};

const NOTHING: PieceLoss = { cracking_Pa: 0, linear: 0, square: 0 };

/**
 * Finds how a piece loses pressure, besides friction along a straight piece and height.
 *
 * @param piece The piece.
 * @param liquid What runs through it.
 * @returns Its loss, or undefined when it has to be stated and is not.
 * @throws {InputError} When two stated points do not rise.
 *
 * @example Half the flow through a filter loses half
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const filter = {
 *   kind: "filter", name: "filter", bore_m: 0.01, length_m: 0, rise_m: 0, count: 1,
 *   stated: [{ flow_m3_s: 1e-4, loss_Pa: 2e4 }],
 * } as const;
 * const petrol = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };
 *
 * assertEquals(pieceLoss(filter, petrol)?.power?.exponent, 1);
 * assertEquals(pieceLoss({ ...filter, stated: [] }, petrol), undefined);
 * ```
 */
export function pieceLoss(piece: Piece, liquid: Liquid): PieceLoss | undefined {
  const { kind } = piece;
  if (isDuct(kind)) return NOTHING;
  switch (kind) {
    case "check-valve":
      return ofCheckValve(piece);
    case "filter":
    case "quick-connector":
    case "ethanol-sensor":
    case "other":
      return ofStated(piece, kind);
    default: {
      const { laminar, turbulent } = FITTINGS[kind];
      const { bore_m, count } = piece;
      const { density_kg_m3, viscosity_Pa_s } = liquid;
      return {
        cracking_Pa: 0,
        // K1 / Re on the dynamic pressure, Re and velocity written out in flow.
        linear: count * laminar * viscosity_Pa_s * 2 / (Math.PI * bore_m ** 3),
        square: count * turbulent * squareOf(bore_m, density_kg_m3),
      };
    }
  }
}

/** Dynamic pressure in a bore over the square of flow [Pa s^2/m^6]. */
export function squareOf(bore_m: number, density_kg_m3: number): number {
  return 8 * density_kg_m3 / (Math.PI ** 2 * bore_m ** 4);
}

/** A point stated below its cracking pressure is all that it loses: the valve hangs wide open. */
function ofCheckValve({ stated: [point], count }: Piece): PieceLoss {
  if (point === undefined) return { ...NOTHING, cracking_Pa: count * ASSUMED_CRACKING_Pa };
  const cracking_Pa = Math.min(ASSUMED_CRACKING_Pa, point.loss_Pa);
  const rest_Pa = point.loss_Pa - cracking_Pa;
  return {
    cracking_Pa: count * cracking_Pa,
    linear: 0,
    square: count * rest_Pa / point.flow_m3_s ** 2,
  };
}

function ofStated({ stated, count, name }: Piece, kind: StatedKind): PieceLoss | undefined {
  const [first, second] = stated;
  if (first === undefined) return undefined;
  const exponent = second === undefined ? EXPONENT[kind] : exponentOf(name, first, second);
  return { ...NOTHING, power: { ...first, loss_Pa: count * first.loss_Pa, exponent } };
}

/** Between a medium's and an opening's: outside of it a point is not what it says. */
function exponentOf(name: string, a: StatedLoss, b: StatedLoss): number {
  const exponent = Math.log(b.loss_Pa / a.loss_Pa) / Math.log(b.flow_m3_s / a.flow_m3_s);
  if (exponent > 0 && exponent < Infinity) return Math.min(2, Math.max(1, exponent));
  throw new InputError(`loss of the ${name}`, "stated", "must rise with flow", exponent);
}
