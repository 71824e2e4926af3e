/** The examples of every component. */
import { blendExamples } from "./blends.ts";
import { changesExamples } from "./changes.ts";
import { checkExamples } from "./checks.ts";
import { drawingExamples } from "./drawing.ts";
import { drillExamples } from "./drill.ts";
import type { Examples } from "./example.ts";
import { listExamples } from "./lists.ts";
import { methodExamples } from "./methods.ts";
import { pageExamples } from "./pages.ts";
import { planExamples } from "./plan.ts";
import { plotExamples } from "./plots.ts";
import { supplyExamples } from "./supply.ts";
import { shoppingExamples } from "./shopping.ts";
import { workshopExamples } from "./workshop.ts";

/** By component, then by what the example shows. */
export const EXAMPLES: Examples = {
  ...planExamples,
  ...checkExamples,
  ...changesExamples,
  ...plotExamples,
  ...supplyExamples,
  ...methodExamples,
  ...listExamples,
  ...pageExamples,
  ...shoppingExamples,
  ...workshopExamples,
  ...blendExamples,
  ...drawingExamples,
  ...drillExamples,
};
