/** Why no change mends a check. */
import type { Check } from "../check.ts";
import { formatQuantity } from "@/lib/units/mod.ts";
import { criterionOf } from "./lever.ts";
import type { Start } from "./start.ts";

/** For a check whose number meets and whose verdict is held back: what to find out. */
export function heldBackBy(check: Check, { evaluation, values, system }: Start): string {
  const { pump, supply, wiring } = evaluation.results;
  const NUMBER = "Its number meets already; what it rests on is not certain.";
  switch (criterionOf(check.id)) {
    case "pump-margin":
      return pump?.scaled && pump.voltage_V !== undefined
        ? `${NUMBER} Enter figures of the pump at ${
          formatQuantity(pump.voltage_V, "voltage", system)
        }, or on both sides of it.`
        : pump?.scaled
        ? `${NUMBER} Enter figures of the pump at the speed it turns at.`
        : `${NUMBER} ${SEE_ABOVE}`;
    case "lift-margin":
      return `${NUMBER} Enter figures of the lift pump at the voltage that reaches it, and every loss of its run.`;
    case "pressure-held":
    case "cranking-held":
      return supply?.points.some(({ found }) => found !== undefined && found.within !== "within")
        ? `${NUMBER} Enter points of the pump's curve at the pressures and flows beyond those given.`
        : `${NUMBER} ${SEE_ABOVE}`;
    case "wire-loss":
      return wiring === undefined || supply?.isPumpKnown
        ? `${NUMBER} ${SEE_ABOVE}`
        : `${NUMBER} Enter at least two points of the pump's curve, or its current.`;
    case "proof-rating":
      return values.regulator.layout === "dead-ended"
        ? `${NUMBER} In a dead end, how far fuel rises that is shut in and warmed is not computed.`
        : `${NUMBER} Enter the pump's shut-off or relief pressure: a fault may reach it.`;
    case "port-thread":
      return `${NUMBER} Measure the sensor: its reach, its nose, and the flat its seal takes.`;
    default:
      return `${NUMBER} ${SEE_ABOVE}`;
  }
}

const SEE_ABOVE = "What is missing is said above.";

/** For a check that nothing tried mended. */
export function notMended(check: Check, tried: readonly string[], isSpent: boolean): string {
  if (isSpent) {
    return "So much is past its limit that not every change could be tried: mend the others first, and look again.";
  }
  const id = criterionOf(check.id);
  const own = OWN[id];
  const by = tried.length === 0
    ? ""
    : `Tried by itself, each to the end of its range, and not enough: ${tried.join("; ")}.`;
  return [own, by].filter(Boolean).join(" ") || "Nothing here is known that changes it.";
}

/** What to know of a check that levers seldom reach. */
const OWN: Readonly<Record<string, string>> = {
  "gauge-steps":
    "A gauge is the wrong tool for so small a leak: the bubbles of the test under water show it.",
  "cranking-held":
    "What a starter turns is slow and its battery low; many an engine starts all the same.",
};
