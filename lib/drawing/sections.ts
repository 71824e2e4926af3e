/** Which sections a rail needs: one through each kind of hole. */
import type { Vec3 } from "@/lib/layout/mod.ts";
import type { Body, Bored } from "./body.ts";
import type { Plane } from "./section_marks.ts";
import { along, cross, dot, unit } from "./vector.ts";

/** A section. */
export interface Section {
  /** Its letter where its plane is marked in a view; an end's section goes by its name. */
  readonly letter?: string;
  readonly title: string;
  readonly plane: Plane;
  /** The holes it is there to show, which its figures belong to. */
  readonly shows: readonly Bored[];
  /** All holes of that kind. */
  readonly alike: readonly Bored[];
  /** From where to where along the bar it goes, where it is a piece of a long one [mm]. */
  readonly piece?: readonly [from: number, to: number];
}

/** Letters that can't be taken for figures. */
const LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

/** The sections, first those across the bar, then one through each end. */
export function sectionsOf(body: Body, scale: number): Section[] {
  const across = body.holes.filter(({ into }) => Math.abs(into[0]) < 0.9);
  const kinds = new Map<string, Bored[]>();
  for (const hole of across) {
    const kind = kindOf(hole);
    kinds.set(kind, [...kinds.get(kind) ?? [], hole]);
  }
  const lettered = [...kinds.values()].map((alike, i): Section => {
    const letter = LETTERS[i % LETTERS.length]?.repeat(1 + Math.floor(i / LETTERS.length)) ?? "";
    const [first] = alike as [Bored, ...Bored[]];
    return {
      letter,
      title: `${letter}–${letter}`,
      plane: planeAcross(first, scale),
      shows: [first],
      alike,
    };
  });
  return [...lettered, ...ends(body, scale)];
}

/** Holes that one section stands for: same shape from the same face, same place across, same lean. */
function kindOf({ hole, entry, into, steps, thread }: Bored): string {
  const near = (value: number) => Math.round(value * 1e3);
  return [
    hole.feature,
    hole.face,
    entry.slice(1).map(near),
    into.map(near),
    steps.map((
      { cut, to, fromRadius, toRadius },
    ) => [cut, ...[to, fromRadius, toRadius].map(near)]),
    thread?.name,
  ].join(" ");
}

/** A plane through the hole's axis, across the bar; the axis stands upright or lies level on paper. */
function planeAcross({ entry, into }: Bored, scale: number): Plane {
  const isUpright = Math.abs(into[2]) >= Math.abs(into[1]);
  const axis = along([0, 0, 0], into, isUpright ? Math.sign(into[2]) : -Math.sign(into[1]));
  // What of the other direction is square to the axis.
  const other: Vec3 = isUpright ? [0, -1, 0] : [0, 0, 1];
  const square = unit(along(other, axis, -dot(other, axis)));
  const [right, up] = isUpright ? [square, axis] : [axis, square];
  return { right, up, toward: cross(right, up), scale, through: entry };
}

/** What is shown of the gallery beyond an end's other holes [mm]. */
const BEYOND = 14;

function ends(body: Body, scale: number): Section[] {
  return (["datum-end", "far-end"] as const).flatMap((face): Section[] => {
    const shows = body.holes.filter(({ hole }) => hole.face === face);
    const exits = body.holes.filter(({ hole }) => hole.exit === face);
    const [first] = shows;
    if (first === undefined) return [];
    const deep = Math.max(
      ...shows.filter(({ hole }) => hole.feature !== "gallery").map(({ depth }) => depth),
      ...shows.concat(exits).map(({ widest }) => widest),
    );
    const length = Math.min(body.length, deep + BEYOND);
    return [{
      title: `${face === "datum-end" ? "Datum" : "Far"} end, cut along the gallery`,
      plane: {
        right: [1, 0, 0],
        up: [0, 0, 1],
        toward: [0, -1, 0],
        scale,
        through: first.entry,
      },
      shows,
      alike: shows,
      piece: face === "datum-end" ? [0, length] : [body.length - length, body.length],
    }];
  });
}
