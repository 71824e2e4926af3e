/** The threads that plugs and ports are tapped with. */
import { G_THREADS, NPT_THREADS, PORT_SHAPES, threadOf } from "@/lib/thread/mod.ts";

/** Threads that a plug or an adapter in the gallery's end may have, each with how the page says it. */
export const PLUG_THREADS = {
  "M12x1.5-oring": "M12x1.5 straight thread with O-ring",
  "M14x1.5-oring": "M14x1.5 straight thread with O-ring",
  "M16x1.5-oring": "M16x1.5 straight thread with O-ring",
  "M18x1.5-oring": "M18x1.5 straight thread with O-ring",
  "M22x1.5-oring": "M22x1.5 straight thread with O-ring",
  "9/16-18-oring": "9/16-18 straight thread with O-ring",
  "3/4-16-oring": "3/4-16 straight thread with O-ring",
  "7/8-14-oring": "7/8-14 straight thread with O-ring",
  "1/4-NPT": "1/4 NPT taper thread",
  "3/8-NPT": "3/8 NPT taper thread",
  "G1/4-face": "G 1/4 parallel, washer on the face",
  "G3/8-face": "G 3/8 parallel, washer on the face",
} as const;

/** Threads that a port in a face may have. */
export const PORT_THREADS = {
  "M10x1-oring": "M10x1 straight thread with O-ring",
  "7/16-20-oring": "7/16-20 straight thread with O-ring",
  "1/8-NPT": "1/8 NPT taper thread",
  "G1/8-face": "G 1/8 parallel, washer on the face",
  "M10x1-cone": "M10x1, cone seat at the bottom",
  ...PLUG_THREADS,
} as const;

/** The word of a plug's thread. */
export type PlugThread = keyof typeof PLUG_THREADS;

/** The word of a port's thread. */
export type PortThread = keyof typeof PORT_THREADS;

/** Plugs with an O-ring, the narrowest tapping drill first. */
const O_RING_PLUGS = (Object.keys(PLUG_THREADS) as PlugThread[])
  .filter((word) => word.endsWith("-oring"))
  .map((word) => ({ word, drill_m: threadOf(bare(word)).tappingDrill_m }))
  .toSorted((a, b) => a.drill_m - b.drill_m);

/** A drill as wide as the bore passes it, whatever unit the bore was typed in. */
const SAME_m = 1e-9;

/**
 * Gives the smallest plug with an O-ring that a gallery can be tapped for: its tapping drill is
 * at least as wide as the gallery. Taper threads are left out, as they wedge a thin bar apart.
 *
 * @param bore_m Bore of the gallery [m].
 * @returns The thread's word, or undefined for a gallery wider than any.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(plugFor(0.0127), "9/16-18-oring");
 * assertEquals(plugFor(0.03), undefined);
 * ```
 */
export function plugFor(bore_m: number): PlugThread | undefined {
  return O_RING_PLUGS.find(({ drill_m }) => drill_m >= bore_m - SAME_m)?.word;
}

/**
 * Gives the outside diameter of a port's thread, which is what has to have room in its face.
 *
 * @param word The thread's word in a plan.
 * @returns The diameter [m].
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(threadWidth("M10x1-cone"), 0.01);
 * assertAlmostEquals(threadWidth("1/8-NPT"), 0.010287, 1e-9);
 * ```
 */
export function threadWidth(word: PortThread): number {
  const size = bare(word);
  if (isSizeOf(NPT_THREADS, size) && word.endsWith("-NPT")) return NPT_THREADS[size].outside_m;
  const pipe = size.replace(/^G/, "");
  if (isSizeOf(G_THREADS, pipe) && word.startsWith("G")) return G_THREADS[pipe].nominal_m;
  return threadOf(size).nominal_m;
}

/**
 * Gives the least full thread that the standard of a port asks for.
 *
 * @param word The thread's word in a plan.
 * @returns Its length [m].
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(threadAsked("M14x1.5-oring"), 0.0115);
 * ```
 */
export function threadAsked(word: PortThread): number {
  return PORT_SHAPES[word].fullThread_m;
}

/** The thread's size alone: `M10x1` of `M10x1-cone`. */
function bare(word: PortThread): string {
  return word.slice(0, word.lastIndexOf("-"));
}

function isSizeOf<T extends object>(table: T, size: string): size is Extract<keyof T, string> {
  return Object.hasOwn(table, size);
}
