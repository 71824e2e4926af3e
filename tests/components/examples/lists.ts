/** Examples of lists and tables for the workshop. */
import { CautionBox } from "@/components/caution_box.ts";
import { HoleTable } from "@/components/hole_table.ts";
import { NumberTable } from "@/components/number_table.ts";
import { StepList } from "@/components/step_list.ts";
import { TickList } from "@/components/tick_list.ts";
import type { Examples } from "./example.ts";

const shield = {
  title: "stored energy",
  points: [
    "Stand behind a shield while pressure rises.",
    "Let pressure off before touching a joint.",
  ],
  source: "common practice, no source",
};

/** The examples. */
export const listExamples: Examples = {
  CautionBox: {
    two: () => CautionBox({ cautions: [shield, { title: "eyes", points: ["Wear goggles."] }] }),
  },
  TickList: {
    "with blanks and cautions": () =>
      TickList({
        ordered: true,
        items: [
          {
            text: "Raise to 0.50 bar, wait 10 min.",
            note: "Let the temperature settle first.",
            blanks: ["Pressure at start", "Pressure after 10 min", "Temperature"],
            cautions: [shield],
          },
          { text: "Look for bubbles at every joint." },
        ],
      }),
    plain: () => TickList({ items: [{ text: "Tank cap on" }, { text: "Clamp <tight>" }] }),
  },
  StepList: {
    "with detail and caution": () =>
      StepList({
        steps: [
          { text: "Square the ends.", detail: "Datum end first." },
          { text: "Drill the gallery.", cautions: [shield] },
        ],
      }),
  },
  NumberTable: {
    "with notes": () =>
      NumberTable({
        caption: "For the tuner",
        rows: [
          { label: "Static flow", value: "1750 cc/min", note: "at 3.4 bar across" },
          { label: "Dead time", value: "1.15 ms" },
        ],
      }),
  },
  HoleTable: {
    holes: () =>
      HoleTable({
        caption: "Holes, places from the datum end",
        columns: [{ title: "Hole" }, { title: "Place", isNumber: true }, { title: "Tool" }],
        rows: [["A1", "57.00 mm", "14 mm drill"], ["A2", "149.00 mm", "14 mm drill <HSS>"]],
      }),
    none: () => HoleTable({ caption: "Holes", columns: [{ title: "Hole" }], rows: [] }),
  },
};
