/** What must hold of where a hole stands in the bar. */
import type { Fault } from "../fault.ts";
import type { PlanValues } from "../sections.ts";
import { asTyped, fault, type Say } from "./rule.ts";

/** A hole in one of the long faces. */
export interface HoleAt {
  /** Where its row stands: `ports.holes.0`. */
  readonly path: string;
  /** What it is, in a sentence: `the pocket`. */
  readonly what: string;
  /** From the datum end along the bar [m]. */
  readonly at: number | undefined;
  /** Off the middle of its face [m]. */
  readonly across: number | undefined;
  /** Diameter of what has to stand in the face [m]. */
  readonly width: number;
  /** Breadth of its face [m], if known. */
  readonly face: number | undefined;
}

/** The breadth of the faces that look along the injectors' axis [m]; of a round bar, its diameter. */
export function breadthOf({ shape, height, width }: PlanValues["rail"]): number | undefined {
  return shape === "round" ? height : width ?? height;
}

/** What is wrong with where a hole stands: missing, over an end, or over the side of its face. */
export function holeFaults(hole: HoleAt, length: number, say: Say): Fault[] {
  const { path, what, at, across, width, face } = hole;
  if (at === undefined) {
    return [fault(
      `${path}.at`,
      "Distance from the datum end: it is missing. Enter where the hole stands, or clear the row.",
    )];
  }
  const found: Fault[] = [];
  const radius = width / 2;
  const isOver = asTyped(at) < asTyped(radius) || asTyped(at) > asTyped(length - radius);
  if (isOver && length > width) {
    found.push(fault(
      `${path}.at`,
      `Distance from the datum end: ${what} would run out of the bar's end. Enter from ${
        say(radius, "length")
      } to ${say(length - radius, "length")}, or a longer bar.`,
    ));
  }
  const most = face === undefined ? Infinity : face / 2 - radius;
  if (across !== undefined && most > 0 && asTyped(Math.abs(across)) > asTyped(most)) {
    found.push(fault(
      `${path}.across`,
      `Off the middle: ${what} would run out of the bar's side. Enter at most ${
        say(most, "length")
      } either way.`,
    ));
  }
  return found;
}

/** Rows whose place another row before them has; `placeOf` gives what has to differ, or nothing. */
export function twice<T>(
  list: string,
  rows: readonly T[],
  placeOf: (row: T) => string | undefined,
): Fault[] {
  const places = rows.map(placeOf);
  return places.flatMap((place, i) =>
    place !== undefined && places.indexOf(place) < i
      ? [fault(
        `${list}.${i}.at`,
        "Distance from the datum end: another hole stands in the same place. Enter each once.",
      )]
      : []
  );
}

/** A place in words that are the same whatever unit it was typed in. */
export function placeInWords(...lengths: readonly (number | undefined)[]): string {
  return lengths.map((length) => asTyped(length ?? 0)).join(" ");
}
