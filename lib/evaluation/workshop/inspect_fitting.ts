/** Inspection as the rail is fitted: torques, marks, once more after heat. */
import { torqueWindow } from "@/lib/inspect/mod.ts";
import type { Bench } from "./bench.ts";
import { pointOf } from "./inspect_bar.ts";
import { type Inspection, within } from "./inspection.ts";

/** Wrench, torques, marks. */
export function fittingPoints(bench: Bench): readonly Inspection[] {
  const { holdDown, sensor } = bench.values;
  const { held } = bench.evaluation.results.drill;
  const window = (name: string, torque_Nm: number) => {
    const { least_Nm, most_Nm } = torqueWindow(torque_Nm);
    return within(`${name}, set to ${bench.say(torque_Nm, "torque")}`, "torque", [
      least_Nm,
      most_Nm,
    ]);
  };
  const { most_Nm } = torqueWindow(holdDown.torque);
  return [
    pointOf("wrench", {
      time: "fitting",
      notes: ["What a wrench within its standard really gives stands at the next point."],
    }),
    pointOf("two-steps", {
      time: "fitting",
      figures: [
        window(`${holdDown.thread} hold-down screws`, holdDown.torque),
        window("Pressure sensor", sensor.torque),
      ],
      notes: [
        ...(held === undefined ? [] : [
          `The screws need ${bench.say(held.leastTorque_Nm, "torque")} at least and bear ${
            bench.say(held.mostTorque_Nm, "torque")
          } at most, by the verdicts${
            most_Nm > held.mostTorque_Nm ? ": the wrench may give more than they bear" : ""
          }.`,
        ]),
        "The sensor's own data come before this torque.",
      ],
    }),
    pointOf("paint-mark", { time: "fitting" }),
    pointOf("check-again", { time: "fitting" }),
  ];
}
