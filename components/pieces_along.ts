/** The pieces between tank, injectors and tank again, out of the pressures along the way. */

/** A pressure at a place on the way. */
export interface PointAlong {
  /** From the tank, along the way [m]. */
  readonly at_m: number;
  /** Gauge. */
  readonly pressure_Pa: number;
  /** The piece that ends here; on the first point of a stretch, what stands before it. */
  readonly label?: string;
}

/** A part of the way without a pump or regulator in it. */
export interface Stretch {
  /** "Suction", "Feed", "Rail", "Return". */
  readonly name: string;
  readonly points: readonly PointAlong[];
}

/** One piece, a pump or regulator between two stretches among them. */
export interface PieceAlong {
  readonly name: string;
  /** The stretch that it lies in, or stands before. */
  readonly stretch: Stretch;
  /** Its end [m]. */
  readonly at_m: number;
  /** Gauge, at its end. */
  readonly after_Pa: number;
  /** Below zero where it adds pressure. */
  readonly lost_Pa: number;
  /** True for what parts two stretches. */
  readonly isJump: boolean;
}

/** A smaller step between two stretches, as a share of all pressures, is no pump or regulator. */
const LEAST_STEP = 1e-3;

/** Highest less lowest pressure [Pa]. */
function spanOf(stretches: readonly Stretch[]): number {
  const all = stretches.flatMap(({ points }) => points.map(({ pressure_Pa }) => pressure_Pa));
  return Math.max(...all) - Math.min(...all);
}

/**
 * Lists the pieces in the order that the fuel runs through them. Their losses add up to the
 * first pressure less the last.
 *
 * @param stretches In order, `at_m` running on; those without points are left out.
 * @returns The pieces; none where there are fewer than two points.
 */
export function piecesAlong(stretches: readonly Stretch[]): PieceAlong[] {
  const least_Pa = LEAST_STEP * spanOf(stretches);
  const pieces: PieceAlong[] = [];
  let before_Pa: number | undefined;
  for (const stretch of stretches) {
    const { points, name } = stretch;
    const end = (point: PointAlong, named: string, isJump: boolean): void => {
      const { at_m, pressure_Pa } = point;
      const lost_Pa = (before_Pa ?? pressure_Pa) - pressure_Pa;
      pieces.push({ name: named, stretch, at_m, after_Pa: pressure_Pa, lost_Pa, isJump });
      before_Pa = pressure_Pa;
    };
    points.forEach((point, i) => {
      if (i === 0) {
        before_Pa ??= point.pressure_Pa;
        const step_Pa = point.pressure_Pa - before_Pa;
        if (Math.abs(step_Pa) > least_Pa) {
          end(point, point.label ?? (step_Pa > 0 ? "Pump" : "Regulator"), true);
        }
      } else if (point.label !== undefined) end(point, point.label, false);
      else if (i === points.length - 1) {
        const isWhole = points.slice(1).every(({ label }) => label === undefined);
        end(point, isWhole ? name : `${name}, the rest`, false);
      }
    });
  }
  return pieces;
}

/** The stretches that end at a pump: there the fuel may boil. */
export function suctionsOf(
  pieces: readonly PieceAlong[],
  stretches: readonly Stretch[],
): Stretch[] {
  return stretches.filter((_, i) =>
    pieces.some(({ isJump, lost_Pa, stretch }) =>
      isJump && lost_Pa < 0 && stretch === stretches[i + 1]
    )
  );
}
