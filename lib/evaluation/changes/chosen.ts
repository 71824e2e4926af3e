/** Levers on one choice: other words for it, the smallest change first. */
import { fieldAt } from "@/lib/plan/mod.ts";
import { type Candidate, candidate, edited, type Lever } from "./lever.ts";
import type { Start } from "./start.ts";

/** What makes a lever of a choice. */
export interface Chosen extends Omit<Lever, "candidates"> {
  /** Where the choice is made. */
  readonly path: string;
  /** The words to try, the smallest change first; none where the choice has no place. */
  readonly words: (start: Start) => readonly string[];
}

/** Makes a lever of words. */
export function chosen({ path, words, ...lever }: Chosen): Lever {
  return {
    ...lever,
    tries: "each",
    candidates: (start) => words(start).map((word) => choose(start, path, word)),
  };
}

/** A change of one choice to another word. */
export function choose(start: Start, path: string, word: string): Candidate {
  const field = fieldAt(path);
  const to = field?.type === "choice" ? field.options[word] ?? word : word;
  return candidate(start, { answers: { [path]: word }, edits: [edited(start, path, to)] });
}
