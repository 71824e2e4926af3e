/** What a part has to meet, in words. */
import {
  type ShoppingFigure,
  type ShoppingItem,
  shownFigure,
  shownLength,
} from "@/lib/evaluation/mod.ts";
import type { System } from "@/lib/units/mod.ts";

/** A figure in words: "flow", "at least", "312 L/h", "at 5.20 bar pressure rise and 13.2 V at its terminals". */
export interface FigureWords {
  readonly name: string;
  /** Which side of it is right; nothing for a size of a series. */
  readonly sense: string;
  readonly text: string;
  /** Where it has to hold; nothing where that is anywhere. */
  readonly where: string;
}

/** Figures in words; where one has to hold stands with it. */
export function figureWords(
  figures: readonly ShoppingFigure[],
  system: System,
): FigureWords[] {
  const words: FigureWords[] = [];
  for (const figure of figures) {
    const { name, sense } = figure;
    const { text } = shownFigure(figure, system);
    const before = words.at(-1);
    if (sense === "at" && before !== undefined) {
      const where = [before.where, before.where === "" ? "at" : "and", text, name]
        .filter(Boolean).join(" ");
      words[words.length - 1] = { ...before, where };
    } else {
      words.push({ name, sense: sense === "exactly" ? "" : sense, text, where: "" });
    }
  }
  return words;
}

/** A figure on one line. */
export function figureLine({ name, sense, text, where }: FigureWords): string {
  return [name, sense, text, where].filter(Boolean).join(" ");
}

/** Where an item goes and how much of it each place takes; nothing where that is one place of one. */
export function placesLine({ shares, quantity }: ShoppingItem, system: System): string | undefined {
  if (shares.length === 0) return undefined;
  const isLength = quantity?.unit === "length";
  const places = shares.map(({ place, times, each }) => {
    const one = isLength ? shownLength(each, system).text : String(each);
    return `${place} ${times > 1 ? `${times} × ` : ""}${one}`;
  });
  return `For: ${places.join("; ")}.`;
}
