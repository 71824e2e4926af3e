/** What a hole is, in the shorthand of drawings. */
import { type Bored, radiusAt, type Step } from "./body.ts";
import type { Say } from "./figures.ts";

/** The diameter sign that every letter has. */
export const DIAMETER = "Ø";

/**
 * A thread with the tolerance class that tapped holes get unless something else is said: 6H of
 * ISO 965-1, 2B of ASME B1.1. Pipe threads have none.
 */
export function threadCall(name: string): string {
  if (/^M[\d.]+(x[\d.]+)?$/.test(name)) return `${name}-6H`;
  if (/^#?[\d/]+-\d+ UN\w*$/.test(name)) return `${name}-2B`;
  return /^#?[\d/]+-\d+$/.test(name) ? `${name} class 2B` : name;
}

/** A part of a hole as a drawing calls it out, and where on its wall it is. */
export interface Call {
  readonly says: string;
  /** From where to where along the axis, from the entry [mm]. */
  readonly from: number;
  readonly to: number;
  /** Of its wall, or of its thread, at a depth [mm]. */
  readonly radius: (depth: number) => number;
}

/** The parts of a hole from its face on; a drill's point is left to the drill. */
export function callsOf(bored: Bored, say: Say): Call[] {
  const { steps, thread } = bored;
  const radius = (depth: number) => radiusAt(bored, depth);
  const calls: Call[] = [];
  for (let i = 0; i < steps.length; i++) {
    const step = steps[i] as Step;
    const { cut, from, to } = step;
    if (cut === "tip") continue;
    if (cut !== "thread" || !thread) {
      calls.push({ says: callOf(step, bored, say), from, to, radius });
      continue;
    }
    // A taper thread narrows on its way; below it one drill makes all that goes on with its diameter.
    while (steps[i + 1]?.cut === "thread" || isSameBore(steps[i], steps[i + 1])) i++;
    const last = steps[i] ?? step;
    const drill = `${round(last.toRadius, say)} x ${say(last.to)}`;
    calls.push({
      says: `${threadCall(thread.name)} x ${say(thread.to)} / ${drill}`,
      from: Math.max(from, thread.from),
      to: thread.to,
      radius,
    });
  }
  return calls;
}

function isSameBore(step: Step | undefined, next: Step | undefined): boolean {
  const radius = step?.toRadius ?? NaN;
  return [next?.fromRadius, next?.toRadius].every((each = NaN) => Math.abs(each - radius) < 1e-6);
}

/** A hole in one line. */
export function callOfHole(bored: Bored, say: Say): string {
  return callsOf(bored, say).map(({ says }) => says).join("; ");
}

function callOf(step: Step, { hole, depth }: Bored, say: Say): string {
  const { cut, from, to, fromRadius, toRadius } = step;
  if (fromRadius !== toRadius) {
    const degrees = Math.atan2(Math.abs(fromRadius - toRadius), to - from) * 180 / Math.PI;
    const wide = round(Math.max(fromRadius, toRadius), say);
    return cut === "lead-in"
      ? `lead-in ${wide} x ${angle(degrees)}`
      : `${cut === "bore" ? "cone" : cut} ${wide}, ${angle(2 * degrees)}`;
  }
  const size = round(fromRadius, say);
  if (cut === "spotface") return `spotface ${size} x ${say(to)}`;
  return hole.exit !== undefined && to >= depth ? `${size} through` : `${size} x ${say(to)}`;
}

function round(radius: number, say: Say): string {
  return DIAMETER + say(2 * radius);
}

function angle(degrees: number): string {
  return `${Number(degrees.toFixed(1))}°`;
}
