/** The sensor port as the Drill sheet needs it. */
import { type Check, CRITERIA, type PortResults } from "@/lib/evaluation/mod.ts";
import type { PlanShown } from "./plan_shown.ts";

const OF_PORT: ReadonlySet<string> = new Set([
  CRITERIA.portHole.id,
  CRITERIA.portThread.id,
  CRITERIA.portTaper.id,
  CRITERIA.seatRing.id,
  CRITERIA.seatGallery.id,
  CRITERIA.sensorReach.id,
]);

/** The port's checks that fail. */
export function failingPortChecks({ evaluation }: PlanShown): Check[] {
  return evaluation.checks.filter(({ id, verdict }) => verdict === "fails" && OF_PORT.has(id));
}

/** Whether the port can be drilled as planned; what is still open does not speak against it. */
export function portFits(shown: PlanShown): boolean {
  const { port } = shown.evaluation.results;
  return port !== undefined && port.stack.length > 0 && failingPortChecks(shown).length === 0;
}

/** Where the cone lies. Depths from the face. */
export interface SeatShown {
  /** Start of the cone [m]. */
  readonly from_m: number;
  /** End of the cone, at the pilot [m]. */
  readonly to_m: number;
  /** Where the spotting drill's tip is when the seat is cut [m]. */
  readonly tip_m: number;
  /** Diameter of the pilot [m]. */
  readonly pilot_m: number;
}

/** The cone at the port's bottom; undefined for a port without. */
export function seatOf(
  { seatDepth_m, coneDepth_m, spotPoint_m, pilot_m }: PortResults,
): SeatShown | undefined {
  if (coneDepth_m === undefined || spotPoint_m === undefined || pilot_m === undefined) {
    return undefined;
  }
  return {
    from_m: seatDepth_m,
    to_m: seatDepth_m + coneDepth_m,
    tip_m: seatDepth_m + spotPoint_m,
    pilot_m,
  };
}

/** Where the port goes along the bar: midway between the first two injectors [m]. */
export function portPlace({ evaluation }: PlanShown): number | undefined {
  const [first, second] = evaluation.results.rail?.stations_m ?? [];
  return first === undefined || second === undefined ? undefined : (first + second) / 2;
}
