/** The order of work before the first hole: manifold, bar, marking out, trial. */
import { generalTolerance } from "@/lib/inspect/mod.ts";
import { MATERIALS } from "@/lib/strength/mod.ts";
import type { Bench } from "./bench.ts";
import { COMMON_PRACTICE, type TypedOperation } from "./operation.ts";

/** From the manifold to the trial in an offcut. */
export function beforeTheBar(bench: Bench): readonly TypedOperation[] {
  return [measureBosses(bench), cutBar(bench), markOut(bench), trial(bench)];
}

function measureBosses({ values }: Bench): TypedOperation {
  const readings = values.stations.readings.length;
  return {
    id: "measure-bosses",
    title: "Measure the manifold",
    does: [
      "Measure every boss from one datum, by both edges of its bore or over a pin that fits it. Do it twice.",
      readings > 0
        ? "Hold the places of this sheet against the readings in the plan once more."
        : "Enter the readings into the plan before anything is marked out.",
    ],
    why: "Every pocket follows from them: an error here costs a bar.",
    source: COMMON_PRACTICE,
  };
}

function cutBar(bench: Bench): TypedOperation {
  const { bar } = bench.layout;
  const section = bar.shape === "round"
    ? `Ø ${bench.say(bar.height_m)}`
    : `${bench.say(bar.height_m)} × ${bench.say(bar.width_m)}`;
  const { count } = bench.values.rail;
  return {
    id: "cut-bar",
    title: "Cut the bar, square its ends, choose the datum",
    does: [
      `${count > 1 ? `${count} bars, each ` : ""}${section}, ${bench.say(bar.length_m)} long, ± ${
        bench.say(generalTolerance(bar.length_m))
      }. Keep an offcut of at least ${bench.say(OFFCUT_m)}.`,
      ...(bench.isPrinted ? [`Printed: ${MATERIALS[bench.values.rail.material].note}`] : []),
      "Square both ends and break every edge. Stamp one end as the datum, and mark the front and the injector face.",
    ],
    why:
      "All places count from the datum end; one that is out of square leans the bar on its stop.",
    cautions: ["drill-press"],
    source: "length: ISO 2768-1, class m; the rest common practice, no source",
  };
}

/** Enough for a pocket and a port side by side [m]; ours. */
const OFFCUT_m = 0.06;

function markOut({ layout, values }: Bench): TypedOperation {
  return {
    id: "mark-out",
    title: "Mark out",
    does: [
      "Coat the faces with marking-out dye and glue the marking-out strip of the drawing on, its datum line at the datum end.",
      "Check its printed scale with a caliper before a hole is punched through it: printers shrink, glue stretches. If it is off, scribe the places from the datum instead.",
      ...(layout.bar.shape === "round"
        ? [
          "A round bar has no face to lay it on: clamp it in two V-blocks, and scribe the line of the pockets with the bar never turned between.",
        ]
        : []),
      ...(values.rail.count > 1
        ? ["The sensor's port goes into one rail only; number the bars."]
        : []),
    ],
    why:
      "Every place from the datum, none from the hole before: from hole to hole the errors add up.",
    source: COMMON_PRACTICE,
  };
}

function trial({ sensor, pockets, isPrinted }: Bench): TypedOperation {
  const what = [
    ...(pockets.length > 0 ? ["one pocket"] : []),
    ...(sensor === undefined ? [] : ["one sensor port"]),
  ].join(" and ");
  return {
    id: "trial",
    title: "Trial in an offcut, before the bar",
    does: [
      `Make ${what === "" ? "one of each hole" : what} in an offcut of the same ${
        isPrinted ? "print" : "bar"
      }, with the very tools and stops of this sheet, to the end: honed, deburred, tapped.`,
      "Push an injector in with its oiled O-ring and pull it out again: the ring must come out whole. Screw the sensor in and look at the ring that its nose leaves in marking blue.",
    ],
    why:
      "A reamer that cuts wide, or a seat a little too deep, costs an offcut here and the bar later.",
    source: COMMON_PRACTICE,
  };
}
