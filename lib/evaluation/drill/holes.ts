/** What is left between the holes of a rail, and around them. */
import { clashes, type Face, nearestThatFits, openingMargin, wallOf } from "@/lib/layout/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { type Laid, type LaidOrNot, WANTED } from "./laid.ts";

/** What is left around one hole. */
export interface HoleResults {
  /** The hole's id. */
  readonly hole: string;
  /** Its name. */
  readonly title: string;
  /** The face where the wall is least. */
  readonly face: Face;
  /** That wall, the gallery's drill having wandered [m]. */
  readonly wall_m: number;
  /** The name of the hole nearest to it that it isn't meant to meet. */
  readonly nearest: string | undefined;
  /** Metal between them [m]; below 0 they run into each other. */
  readonly gap_m: number | undefined;
  /** How far the drill that opens the gallery keeps inside its width [m]; undefined for others. */
  readonly opening_m: number | undefined;
}

/** Metal between holes beyond which nobody asks [m]: nothing is searched out there. */
const GAP_SHOWN_m = 0.006;

const OWED = [CRITERIA.holeGap, CRITERIA.holeWall, CRITERIA.galleryOpening] as const;

/** Judges walls, ligaments and how holes open into the gallery. */
export function judgeHoles(context: Context, rail: LaidOrNot): readonly HoleResults[] | undefined {
  return context.subject(OWED, () => {
    const { laid, because } = rail;
    if (laid === undefined) {
      for (const criterion of OWED) context.check(criterion, { value: undefined, because });
      return undefined;
    }
    const { layout, wandered, gallery, drift } = laid;
    const near = clashes(wandered, { ligament_m: GAP_SHOWN_m, shareOfSmaller: 0.5 });
    const titleOf = (id: string): string =>
      layout.holes.find((hole) => hole.id === id)?.title ?? id;
    const holes = wandered.holes.map((hole, i): HoleResults => {
      const drawn = layout.holes[i] ?? hole;
      const wall = wallOf(hole, layout.bar);
      const gap = least(
        near.filter(({ a, b }) => a === hole.id || b === hole.id),
        ({ distance_m }) => distance_m,
      );
      return {
        hole: hole.id,
        title: hole.title,
        face: wall.face,
        wall_m: wall.distance_m,
        nearest: gap && titleOf(gap.a === hole.id ? gap.b : gap.a),
        gap_m: gap?.distance_m,
        opening_m: drawn.opensInto.includes(gallery.id) && drawn.feature !== "plug"
          ? openingMargin(drawn, gallery, drift)
          : undefined,
      };
    });
    judgeGap(context, laid, holes);
    judgeHoleWall(context, holes);
    judgeOpening(context, laid, holes);
    return holes;
  });
}

function least<T>(list: readonly T[], of: (one: T) => number): T | undefined {
  return list.reduce<T | undefined>(
    (best, one) => best === undefined || of(one) < of(best) ? one : best,
    undefined,
  );
}

/** Half of the smaller hole is wanted between two, where that is more than the aim for all. */
function judgeGap(context: Context, laid: Laid, holes: readonly HoleResults[]): void {
  const tight = clashes(laid.wandered, WANTED);
  const short = least(tight, ({ distance_m, wanted_m }) => distance_m / wanted_m);
  const nearest = least(
    holes.filter(({ gap_m }) => gap_m !== undefined),
    ({ gap_m = 0 }) => gap_m,
  );
  const worst = holes.find(({ hole }) => hole === short?.a) ?? nearest;
  const gap_m = short?.distance_m ?? nearest?.gap_m;
  if (worst === undefined || gap_m === undefined) {
    context.check(CRITERIA.holeGap, {
      value: GAP_SHOWN_m,
      because: "No two holes come nearer to each other than this.",
    });
    return;
  }
  const other = short === undefined
    ? worst.nearest ?? "another"
    : laid.layout.holes.find(({ id }) => id === short.b)?.title ?? "another";
  const meets = gap_m <= 0
    ? `${worst.title} and ${lower(other)} run into each other, by ${context.say(-gap_m, "length")}.`
    : `Nearest are ${lower(worst.title)} and ${lower(other)}: ${context.say(gap_m, "length")}.`;
  const isHalf = short !== undefined && short.wanted_m > CRITERIA.holeGap.aim;
  context.check(CRITERIA.holeGap, {
    value: gap_m,
    ...(isHalf && { aim: short.wanted_m }),
    because: short === undefined
      ? meets
      : `${meets}${isHalf ? " Half of the smaller hole is wanted." : ""}${
        whereItFits(context, laid, { ...worst, nearest: other })
      }`,
  });
}

/** Where one of two holes that are too near would have room, along the bar. */
function whereItFits(context: Context, { wandered }: Laid, { hole, nearest }: HoleResults): string {
  const other = wandered.holes.find(({ title }) => title === nearest)?.id;
  const movable = [other, hole].find((id) => id !== undefined && /^(?:port|screw)/.test(id));
  if (movable === undefined) return " Move one of them, or take a bigger bar.";
  const moved = wandered.holes.find(({ id }) => id === movable);
  const at_m = nearestThatFits(wandered, movable, WANTED);
  return at_m === undefined
    ? ` ${moved?.title} has room nowhere along the bar: change its face or its size.`
    : ` The nearest place for ${lower(moved?.title ?? "it")} is ${
      context.say(at_m, "length")
    } from the datum end.`;
}

function judgeHoleWall(context: Context, holes: readonly HoleResults[]): void {
  const worst = least(
    holes.filter(({ hole }) => hole !== "gallery"),
    ({ wall_m }) => wall_m,
  );
  context.check(CRITERIA.holeWall, {
    value: worst?.wall_m ?? CRITERIA.holeWall.aim,
    because: worst === undefined
      ? "There is no hole besides the gallery."
      : worst.wall_m <= 0
      ? `${worst.title} breaks out of the bar at ${
        FACES[worst.face]
      }: move it, or take a bigger bar.`
      : `Least at ${lower(worst.title)}, towards ${FACES[worst.face]}.`,
  });
}

/** The faces in a sentence. */
export const FACES: Readonly<Record<Face, string>> = {
  "injectors": "the injector face",
  "opposite": "the face opposite the injectors",
  "front": "the front",
  "back": "the back",
  "datum-end": "the datum end",
  "far-end": "the far end",
};

function judgeOpening(context: Context, laid: Laid, holes: readonly HoleResults[]): void {
  const asked = laid.layout.holes.filter(({ opensInto, feature }) =>
    opensInto.includes("gallery") && feature !== "plug"
  );
  const missed = asked.find(({ id }) =>
    holes.find(({ hole }) => hole === id)?.opening_m === undefined
  );
  if (missed !== undefined) {
    context.check(CRITERIA.galleryOpening, {
      value: -laid.spec.gallery.bore_m,
      because:
        `${missed.title} does not reach the gallery: it lies beyond its depth or off its line. Move it, or the gallery.`,
    });
    return;
  }
  const worst = least(
    holes.filter(({ opening_m }) => opening_m !== undefined),
    ({ opening_m = 0 }) => opening_m,
  );
  const margin_m = worst?.opening_m;
  context.check(CRITERIA.galleryOpening, {
    value: margin_m ?? CRITERIA.galleryOpening.aim,
    because: worst === undefined || margin_m === undefined
      ? "No hole opens into the gallery."
      : margin_m < 0
      ? `${worst.title}: its drill stands out of the gallery by ${
        context.say(-margin_m, "length")
      } and leaves a lip. Take a smaller pilot, or one gallery and hole in line.`
      : `Tightest at ${
        lower(worst.title)
      }: its drill keeps that far inside the gallery, which may have wandered ${
        context.say(laid.drift.drift_m, "length")
      }.`,
  });
}

function lower(title: string): string {
  return title.charAt(0).toLowerCase() + title.slice(1);
}
