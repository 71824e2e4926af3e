/** The checks of the sensor's port. */
import type { Check } from "../check.ts";
import { CRITERIA } from "../criteria.ts";
import type { Evaluation } from "../evaluation.ts";

const OF_PORT: ReadonlySet<string> = new Set([
  CRITERIA.portHole.id,
  CRITERIA.portThread.id,
  CRITERIA.portTaper.id,
  CRITERIA.seatRing.id,
  CRITERIA.seatGallery.id,
  CRITERIA.sensorReach.id,
]);

/** Those that fail, so that the port must not be drilled as planned. */
export function failingPortChecks({ checks }: Pick<Evaluation, "checks">): Check[] {
  return checks.filter(({ id, verdict }) => verdict === "fails" && OF_PORT.has(id));
}
