/** The screws that hold the rail down on its injectors. */
import { type Default, type Earlier, section } from "../field.ts";
import { PLACE } from "../place.ts";
import { rail } from "./rail.ts";

/** What screws of class 8.8 into aluminium are usually tightened to [N m]. */
const USUAL_TORQUE_Nm = { M5: 5, M6: 9, M8: 20, M10: 40 } as const;

function torqueFor(v: Earlier): Default {
  const screw = (v.word("holdDown.thread") ?? "M6") as keyof typeof USUAL_TORQUE_Nm;
  return {
    text: `${USUAL_TORQUE_Nm[screw]} N m`,
    because: `What ${screw} into aluminium is usually tightened to`,
    source: "common practice, no source",
  };
}

/** The hold-down section of a plan. */
export const holdDown = section({
  title: "Hold-down",
  about: "The screws against which fuel pressure lifts the rail.",
  fields: {
    screws: {
      type: "list",
      label: "Screw",
      title: "Places of the screws",
      hint:
        "Without rows there are two, half way between the first two injectors and the last two, or beside a single one",
      max: 8,
      rows: 1,
      fields: { at: PLACE.at, across: PLACE.across },
    },
    thread: {
      type: "choice",
      label: "Screws",
      hint: "Their size",
      options: { M5: "M5", M6: "M6", M8: "M8", M10: "M10" },
      default: {
        text: "M6",
        because: "The usual screw of a small rail",
        source: "common practice, no source",
      },
    },
    strengthClass: {
      type: "choice",
      label: "Strength class",
      hint: "As stamped on the head",
      options: {
        "8.8": "8.8",
        "10.9": "10.9",
        "12.9": "12.9",
        "A2-70": "A2-70 (stainless)",
      },
      default: {
        text: "8.8",
        because: "The least that a hardware shop sells for machines",
        source: "common practice, no source",
      },
    },
    torque: {
      type: "quantity",
      kind: "torque",
      label: "Tightening torque of the screws",
      hint: "Like 9 N m or 80 lb in",
      why: "Clamps the rail, or strips the boss",
      min: 0.5,
      max: 100,
      because: "0.5 to 100 N m",
      default: torqueFor,
    },
    nutFactor: {
      type: "quantity",
      kind: "ratio",
      label: "Nut factor",
      hint: "Torque over load times diameter: 20 % dry, 12 to 18 % oiled",
      why: "How much of the torque becomes clamp load",
      min: 0.08,
      max: 0.4,
      because: "8 to 40 %",
      default: {
        text: "20 %",
        because: "Dry, as it comes: the least clamp load for the torque",
        source: "common practice, no source",
      },
    },
    engagement: {
      type: "quantity",
      kind: "length",
      label: "Thread in the manifold's boss",
      hint: "Length that the screw or stud is really in, like 12 mm",
      why: "Too little strips before the screw is tight",
      min: 0.003,
      max: 0.04,
      because: "3 to 40 mm",
      default: {
        text: "12 mm",
        because: "Twice the diameter of an M6; measure yours",
        source: "common practice, no source",
      },
    },
    bossMaterial: {
      type: "choice",
      label: "Material of the boss",
      hint: "What the screws are tapped into; castings may be weaker",
      options: rail.fields.material.options,
      default: {
        text: "6061-T6",
        because: "A bracket cut from bar",
        source: "common practice, no source",
      },
    },
  },
});
