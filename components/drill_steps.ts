/** The order of the work at the drill press, and what to beware of there. */
import { CRITERIA } from "@/lib/evaluation/mod.ts";
import { PORTS } from "@/lib/thread/mod.ts";
import { formatIn } from "@/lib/units/mod.ts";
import type { CautionShown } from "./caution_box.ts";
import type { PlanShown } from "./plan_shown.ts";
import type { StepItem } from "./step_list.ts";

const PRACTICE = "common practice, no source";

/**
 * Cautions of drilling and of the bar.
 *
 * @param fuel The fuel's name in the plan.
 */
export function drillCautions(fuel: string): CautionShown[] {
  const always: CautionShown = {
    title: "drill press, chips and edges",
    points: [
      "Clamp the bar; never hold it by hand. Eye protection on; no gloves or loose sleeves near the spindle.",
      "Deep holes pack with chips: clear them often, with the drill out, by brush, not by hand or mouth.",
      "Local rules for machine work and the judgement of qualified people come first.",
    ],
    source: PRACTICE,
  };
  const aluminium: CautionShown = {
    title: "alcohol and bare aluminium",
    points: [
      "Methanol and wet ethanol attack bare aluminium, zinc and brass: coat or flush, and look inside every season.",
    ],
    source: "U.S. DOE handbook on E85, from memory",
  };
  return ["methanol", "E85", "E100"].includes(fuel) ? [always, aluminium] : [always];
}

/** The steps, with what to measure at each. */
export function drillSteps(shown: PlanShown): StepItem[] {
  const { values, evaluation, system } = shown;
  const { bar, port } = evaluation.results;
  const unit = system === "metric" ? "mm" : "in";
  const long = (value: number): string => formatIn(value, "length", unit);
  const declared = PORTS[values.sensor.port];
  const cone = declared.seal === "cone";
  return [
    {
      text: "Measure the manifold: each boss from one datum, twice, from both bore edges.",
      detail: "Write the pitch into the plan before anything is marked out.",
    },
    {
      text:
        "Cut the bar, square its ends, mark one end as the datum and coat the faces with marking-out dye.",
    },
    {
      text:
        "Drill a trial pocket and a trial port in an offcut of the same bar; fit injector and sensor.",
      detail: "A wrong seat costs an offcut here, and a bar later.",
    },
    {
      text: values.rail.drilledFrom === "both"
        ? "Drill the gallery half from each end, pecking; start with a smaller drill."
        : "Drill the gallery from one end, pecking; start with a smaller drill.",
      detail: bar
        ? `Then measure where it comes out: at least ${
          long(CRITERIA.wall.limit)
        } of wall must be left on every side, better ${long(CRITERIA.wall.aim)}.`
        : undefined,
    },
    {
      text: "Mark all pockets from the datum, not from one another; drill, bore or ream them.",
      detail: `Ø ${long(values.rail.pocketBore)}, finish and lead-in by the O-ring's maker.`,
    },
    {
      text: port
        ? `Port: drill ${long(port.drill_m)}${
          cone
            ? " with a 90-degree spotting drill, so that a 45-degree seat is left at the bottom"
            : ""
        }; then tap ${declared.thread}.`
        : "Port: see its tapping drill when the bar is entered.",
      detail: cone && values.sensor.pilot !== undefined
        ? `First the pilot, ${
          long(values.sensor.pilot)
        }, on into the gallery. All depths as in the table, from the face.`
        : "All depths as in the table, from the face.",
    },
    {
      text: "Take the burr off every edge where holes meet; look inside with a light.",
      detail: "A flake of swarf stops an injector open.",
    },
    {
      text: "Flush both ways with a clean liquid, dry, and look again. Then go on to Prove.",
    },
  ];
}
