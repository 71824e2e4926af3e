/** Short names that the checks of threads share. */
import {
  G_THREADS,
  heightShareIso,
  heightShareUs,
  NPT_THREADS,
  nptFace,
  nptSmallEnd,
  sharpHeight,
  type StraightThread,
  threadOf,
  type WhitworthPipeThread,
} from "@/lib/thread/mod.ts";

export const MM = 1e-3;
export const INCH = 0.0254;
export const DEGREE = Math.PI / 180;
export const METRE_A_MINUTE = 1 / 60;

/** Designation of a case: `7/16-20 UN/UNF` is `7/16-20` in the tables. */
export const find = (thread: string): StraightThread => threadOf(thread.replace(" UN/UNF", ""));

export const isoShare = (thread: string, drill: number): number => {
  const { nominal_m: nominal, pitch_m: pitch, flank_rad: flank } = find(thread);
  return heightShareIso({ nominal, drill, sharpHeight: sharpHeight({ pitch, flank }) });
};
export const usShare = (thread: string, drill: number): number => {
  const { nominal_m: nominal, pitch_m: pitch, flank_rad: flank } = find(thread);
  return heightShareUs({ nominal, drill, sharpHeight: sharpHeight({ pitch, flank }) });
};

export interface Pipe {
  readonly nps: keyof typeof NPT_THREADS;
}

export const gOf = (thread: string): WhitworthPipeThread =>
  G_THREADS[thread.slice(2) as keyof typeof G_THREADS];

export const nptNumbers = (
  nps: Pipe["nps"],
): Record<"outside" | "pitch" | "handTight" | "smallEnd" | "atFace", number> => {
  const { outside_m: outside, pitch_m: pitch, handTight_m: handTight } = NPT_THREADS[nps];
  const smallEnd = nptSmallEnd({ outside, pitch });
  const atFace = nptFace({ smallEnd, handTight });
  return { outside, pitch, handTight, smallEnd, atFace };
};

/** Threads of the screws and ports most used. */
export const STANDARD: readonly StraightThread[] = [
  "M6x1",
  "M8x1.25",
  "M10x1",
  "M12x1.5",
  "M14x1.5",
  "7/16-20",
  "9/16-18",
]
  .map(find);
