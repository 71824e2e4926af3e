/** A run of pieces, one after the other, as one law. */
import { statedLoss } from "@/lib/flow/mod.ts";
import { type FlowLaw, type LawPoint, oneWay } from "@/lib/network/mod.ts";
import { CORRUGATED_FRICTION, ROUGHNESS_M } from "./hose_wall.ts";
import { addFriction, type Duct, type Liquid } from "./friction_law.ts";
import { isDuct, type Piece, type PieceKind } from "./piece.ts";
import { type PieceLoss, pieceLoss, type PowerLoss, squareOf } from "./piece_loss.ts";
import { stepLoss } from "./step.ts";

/** Standard acceleration of free fall [m/s^2]. Source: ISO 80000-3; exact by definition. */
const GRAVITY_m_s2 = 9.80665;

/** One piece of a run, ready to be added up. */
interface Part {
  readonly piece: Piece;
  readonly loss: PieceLoss;
  /** Lost where the bore changes from the piece before, and at the run's ends [Pa s^2/m^6]. */
  readonly step: number;
  readonly height_Pa: number;
  readonly friction: ((flow_m3_s: number, into: LawPoint) => void) | undefined;
}

/** What a piece costs at a flow. */
export interface PieceCost {
  /** The piece. */
  readonly piece: Piece;
  /** Lost in it: friction, turns, valves, and the change of bore before it [Pa]. */
  readonly lost_Pa: number;
  /** Given to height; negative where it falls [Pa]. */
  readonly height_Pa: number;
}

/** How a run begins and ends: loss coefficients on its first and last bore [-]. */
export interface RunEnds {
  /** Where it leaves a tank; nought where it goes on from something else. */
  readonly entrance: number;
  /** Where it comes out into a tank or a gallery. */
  readonly exit: number;
}

/** A run that goes on from one part to the next, losing nothing at its ends. */
const JOINED: RunEnds = { entrance: 0, exit: 0 };

/** A run made ready for one liquid. */
export class Run {
  /** Pieces that have to state a loss and do not: their loss is not in the law. */
  readonly unstated: readonly Piece[];
  /** Loss from start to end, height included; against the flow a check valve shuts it. */
  readonly law: FlowLaw;
  /** The pieces in their order. */
  readonly pieces: readonly Piece[];
  /** What runs through them. */
  readonly liquid: Liquid;
  readonly #parts: readonly Part[];

  /**
   * Makes a run ready.
   *
   * @param pieces The pieces in the order of the flow.
   * @param liquid What runs through them.
   * @param ends How it begins and ends; joined to other parts unless said.
   * @throws {InputError} When a piece's stated losses don't rise with flow.
   *
   * @example 3 m of 8 mm tube that rises 0.3 m
   * ```ts
   * import { assertAlmostEquals } from "@std/assert";
   *
   * const tube = { kind: "tube", name: "tube", bore_m: 8e-3, length_m: 3, rise_m: 0.3, count: 1, stated: [] } as const;
   * const run = new Run([tube], { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 });
   *
   * assertAlmostEquals(run.drop_Pa(4e-3 / 60), 6516 + 2192, 1);
   * ```
   */
  constructor(pieces: readonly Piece[], liquid: Liquid, ends: RunEnds = JOINED) {
    const unstated: Piece[] = [];
    let before: Piece | undefined;
    this.#parts = pieces.map((piece, i): Part => {
      const loss = pieceLoss(piece, liquid);
      if (loss === undefined) unstated.push(piece);
      const onBore = squareOf(piece.bore_m, liquid.density_kg_m3);
      const entrance = before === undefined
        ? ends.entrance * onBore
        : stepLoss(before.bore_m, piece.bore_m) *
          squareOf(Math.min(before.bore_m, piece.bore_m), liquid.density_kg_m3);
      const exit = i === pieces.length - 1 ? ends.exit * onBore : 0;
      before = piece;
      return {
        piece,
        loss: loss ?? { cracking_Pa: 0, linear: 0, square: 0 },
        step: entrance + exit,
        height_Pa: liquid.density_kg_m3 * GRAVITY_m_s2 * piece.rise_m,
        friction: isDuct(piece.kind) && piece.length_m > 0
          ? addFriction(ductOf(piece), liquid)
          : undefined,
      };
    });
    this.pieces = pieces;
    this.liquid = liquid;
    this.unstated = unstated;
    const both = lawOf(this.#parts, liquid);
    this.law = pieces.some(({ kind }) => kind === "check-valve") ? oneWay(both) : both;
  }

  /**
   * Loss from start to end at a flow, height included.
   *
   * @param flow_m3_s The flow [m^3/s].
   * @returns The loss [Pa].
   */
  drop_Pa(flow_m3_s: number): number {
    const at = { drop_Pa: 0, slope_Pa_s_m3: 0 };
    this.law(flow_m3_s, at);
    return at.drop_Pa;
  }

  /**
   * What each piece costs at a flow.
   *
   * @param flow_m3_s The flow, not negative [m^3/s].
   * @returns The costs, in the order of the pieces; they add up to the run's loss.
   */
  costs(flow_m3_s: number): PieceCost[] {
    return this.#parts.map((part) => {
      const at = { drop_Pa: 0, slope_Pa_s_m3: 0 };
      part.friction?.(flow_m3_s, at);
      addParts([part], flow_m3_s, at);
      const cracking_Pa = flow_m3_s > 0 ? part.loss.cracking_Pa : 0;
      return {
        piece: part.piece,
        lost_Pa: at.drop_Pa + cracking_Pa,
        height_Pa: part.height_Pa,
      };
    });
  }
}

function ductOf(piece: Piece): Duct {
  return {
    bore_m: piece.bore_m,
    length_m: piece.length_m * piece.count,
    roughness_m: roughnessOf(piece.kind),
    frictionTimes: piece.kind === "corrugated" ? CORRUGATED_FRICTION : 1,
  };
}

function roughnessOf(kind: PieceKind): number {
  return kind === "tube" ? ROUGHNESS_M.tube : ROUGHNESS_M.hose;
}

/** Adds the losses of parts that need no friction law. */
function addParts(parts: readonly Part[], flow_m3_s: number, into: LawPoint): void {
  const speed = Math.abs(flow_m3_s);
  for (const { loss, step } of parts) {
    const square = loss.square + step;
    into.drop_Pa += (loss.linear + square * speed) * flow_m3_s;
    into.slope_Pa_s_m3 += loss.linear + 2 * square * speed;
    if (loss.power) addPower(loss.power, flow_m3_s, into);
  }
}

function addPower(power: PowerLoss, flow_m3_s: number, into: LawPoint): void {
  const { flow_m3_s: flow, loss_Pa: loss, exponent } = power;
  const speed = Math.abs(flow_m3_s);
  const lost_Pa = speed === 0 ? 0 : statedLoss.compute({ loss, flow, newFlow: speed, exponent });
  into.drop_Pa += Math.sign(flow_m3_s) * lost_Pa;
  into.slope_Pa_s_m3 += speed === 0
    ? (exponent === 1 ? loss / flow : 0)
    : exponent * lost_Pa / speed;
}

/** The parts as one law: like terms put together, like ducts laid end to end. */
function lawOf(parts: readonly Part[], liquid: Liquid): FlowLaw {
  let constant = 0;
  let cracking = 0;
  let linear = 0;
  let square = 0;
  const powers: PowerLoss[] = [];
  const ducts = new Map<string, Duct>();
  for (const { piece, loss, step, height_Pa, friction } of parts) {
    constant += height_Pa;
    cracking += loss.cracking_Pa;
    linear += loss.linear;
    square += loss.square + step;
    if (loss.power) powers.push(loss.power);
    if (!friction) continue;
    const duct = ductOf(piece);
    const key = `${duct.bore_m} ${duct.roughness_m} ${duct.frictionTimes}`;
    const length_m = duct.length_m + (ducts.get(key)?.length_m ?? 0);
    ducts.set(key, { ...duct, length_m });
  }
  const frictions = Array.from(ducts.values(), (duct) => addFriction(duct, liquid));
  return (flow_m3_s, into) => {
    const speed = Math.abs(flow_m3_s);
    into.drop_Pa = constant + cracking + (linear + square * speed) * flow_m3_s;
    into.slope_Pa_s_m3 = linear + 2 * square * speed;
    for (const add of frictions) add(flow_m3_s, into);
    for (const power of powers) addPower(power, flow_m3_s, into);
  };
}
