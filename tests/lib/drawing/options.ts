/** Options that the tests draw with. */
import type { DrawingOptions, Paper } from "@/lib/drawing/mod.ts";
import type { Layout } from "@/lib/layout/mod.ts";
import { randomLayout, randomTroubles } from "./random_layouts.ts";
import { SAMPLES } from "./sample_layouts.ts";

/** Millimetres on A4, a title block filled in. */
export const METRIC: DrawingOptions = {
  paper: "A4",
  system: "metric",
  title: {
    title: "Fuel rail",
    owner: "Shed 4",
    number: "R-12",
    date: "2024-05-01",
    approver: "K.",
    creator: "J.",
    documentType: "Part",
    revision: "B",
    material: "EN AW-6082 T6",
    tolerance: "ISO 2768-m",
    assumedCount: 12,
  },
};

/** Inches on Letter, nothing filled in but a long title. */
export const INCH: DrawingOptions = {
  paper: "Letter",
  system: "inch",
  title: {
    title: "Rail of a boosted six with a secondary stage, second bar, left bank, as measured",
  },
};

/** A rail and how to draw it. */
export interface Drawn {
  readonly name: string;
  readonly layout: Layout;
  readonly options: DrawingOptions;
}

/** The samples in both ways. */
export const DRAWN_SAMPLES: readonly Drawn[] = Object.entries(SAMPLES).flatMap(([name, make]) => [
  { name: `${name}, mm on A4`, layout: make(), options: METRIC },
  { name: `${name}, inches on Letter`, layout: make(), options: INCH },
]);

/** Rails by chance, on every paper, with troubles by chance. */
export function drawnByChance(count: number): Drawn[] {
  const papers: Paper[] = ["A4", "Letter", "A3"];
  return Array.from({ length: count }, (_, seed) => {
    const layout = randomLayout(seed);
    const base = seed % 2 === 0 ? METRIC : INCH;
    const troubles = randomTroubles(layout, seed);
    const paper = papers[seed % 3] ?? "A4";
    return { name: `by chance ${seed}`, layout, options: { ...base, paper, troubles } };
  });
}
