/** Runs of pieces by chance. */
import { FITTINGS, type Piece, type PieceKind } from "@/lib/line/mod.ts";
import type { Seeded } from "./seeded.ts";

const DUCTS: readonly PieceKind[] = ["hose", "corrugated", "tube"];
const PARTS: readonly PieceKind[] = [
  ...Object.keys(FITTINGS) as (keyof typeof FITTINGS)[],
  "filter",
  "quick-connector",
  "ethanol-sensor",
  "other",
];

/** A piece with nothing to it but what is given. */
export function piece(kind: PieceKind, rest: Partial<Piece> = {}): Piece {
  return { kind, name: kind, bore_m: 8e-3, length_m: 0, rise_m: 0, count: 1, stated: [], ...rest };
}

/** One to eight pieces without a check valve, every loss stated. */
export function anyPieces(by: Seeded): Piece[] {
  return Array.from({ length: by.whole(1, 8) }, () => {
    const bore_m = by.oneOf([5.6e-3, 8e-3, 8.7e-3, 11.1e-3, 16e-3]);
    const rise_m = by.between(-0.4, 0.4);
    if (by.chance(0.4)) {
      return piece(by.oneOf(DUCTS), { bore_m, rise_m, length_m: by.decades(0.1, 4) });
    }
    const first = { flow_m3_s: by.decades(2e-5, 2e-4), loss_Pa: by.decades(1e3, 4e4) };
    const second = {
      flow_m3_s: first.flow_m3_s * by.between(1.2, 2),
      loss_Pa: first.loss_Pa * by.between(1.1, 5),
    };
    const stated = by.chance(0.3) ? [first, second] : [first];
    return piece(by.oneOf(PARTS), { bore_m, rise_m, count: by.whole(1, 4), stated });
  });
}
