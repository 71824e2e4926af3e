/** The order of the work at the drill press, and what to beware of there. */
import { CRITERIA } from "@/lib/evaluation/mod.ts";
import { MATERIALS } from "@/lib/strength/mod.ts";
import { PORTS } from "@/lib/thread/mod.ts";
import { formatIn } from "@/lib/units/mod.ts";
import type { CautionShown } from "./caution_box.ts";
import type { PlanShown } from "./plan_shown.ts";
import { failingPortChecks, portFits, seatOf } from "./port_shown.ts";
import type { StepItem } from "./step_list.ts";

const PRACTICE = "common practice, no source";

const ATTACKING: ReadonlySet<string> = new Set(["methanol", "E85", "E100"]);

/**
 * Cautions of drilling and of the bar.
 *
 * @param shown The plan: its fuel and the bar's material decide.
 */
export function drillCautions({ values }: PlanShown): CautionShown[] {
  const always: CautionShown = {
    title: "drill press, chips and edges",
    points: [
      "Clamp the bar; never hold it by hand. Eye protection on; no gloves or loose sleeves near the spindle.",
      "Deep holes pack with chips: clear them often, with the drill out, by brush, not by hand or mouth.",
      "Local rules for machine work and the judgement of qualified people come first.",
    ],
    source: PRACTICE,
  };
  return ATTACKING.has(values.fuel.name) ? [always, attack(values.rail.material)] : [always];
}

/** What alcohol does to the metal that it touches. */
function attack(material: keyof typeof MATERIALS): CautionShown {
  const { title } = MATERIALS[material];
  const source = "U.S. DOE handbook on E85, from memory";
  if (title.startsWith("Aluminium")) {
    return {
      title: "alcohol and the bare aluminium of this bar",
      points: [
        "Methanol and wet ethanol attack bare aluminium, zinc and brass: coat or flush, and look inside every season.",
      ],
      source,
    };
  }
  if (title.startsWith("Brass")) {
    return {
      title: "alcohol and the brass of this bar",
      points: [
        "Methanol and wet ethanol attack brass, zinc and bare aluminium: plate or flush, and look inside every season.",
      ],
      source,
    };
  }
  return {
    title: "alcohol and bare fittings",
    points: [
      `The bar is ${title.charAt(0).toLowerCase()}${
        title.slice(1)
      }; but methanol and wet ethanol attack fittings, plugs and parts of bare aluminium, zinc and brass: take plated or stainless ones, and look at them every season.`,
    ],
    source,
  };
}

/** The steps, with what to measure at each. */
export function drillSteps(shown: PlanShown): StepItem[] {
  const { values, evaluation, system } = shown;
  const { bar } = evaluation.results;
  const unit = system === "metric" ? "mm" : "in";
  const long = (value: number): string => formatIn(value, "length", unit);
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
          long(Math.max(CRITERIA.wall.limit, bar.strengthWall_m))
        } of wall must be left on every side, better ${long(CRITERIA.wall.aim)}.`
        : undefined,
    },
    {
      text: "Mark all pockets from the datum, not from one another; drill, bore or ream them.",
      detail: `Ø ${long(values.rail.pocketBore)}, finish and lead-in by the O-ring's maker.`,
    },
    portStep(shown, long),
    {
      text: "Take the burr off every edge where holes meet; look inside with a light.",
      detail: "A flake of swarf stops an injector open.",
    },
    {
      text: "Flush both ways with a clean liquid, dry, and look again. Then go on to Prove.",
    },
  ];
}

function portStep(shown: PlanShown, long: (value: number) => string): StepItem {
  const { port } = shown.evaluation.results;
  if (port === undefined) return { text: "Port: see its tapping drill when the bar is entered." };
  if (!portFits(shown)) {
    const failing = failingPortChecks(shown).map(({ title }) => title);
    return {
      text: "Port: it does not fit as planned. Do not drill it.",
      detail: port.changeFirst ?? `See what fails: ${failing.join("; ")}.`,
    };
  }
  const { thread } = PORTS[shown.values.sensor.port];
  const drill = long(port.drill_m);
  const seat = seatOf(port);
  if (seat === undefined) {
    return {
      text: `Port: drill ${drill} on into the gallery; then tap ${thread}.`,
      detail: "All depths as in the table, from the face.",
    };
  }
  return {
    text: `Port: first the pilot, ${
      long(seat.pilot_m)
    }, through into the gallery; then ${drill} with a 90-degree spotting drill down to the 45-degree seat; then tap ${thread} with a bottoming tap.`,
    detail: `The seat begins at ${
      long(seat.from_m)
    }; zeroed on its tip, the spotting drill stops at ${
      long(seat.tip_m)
    }. All depths from the face.`,
  };
}
