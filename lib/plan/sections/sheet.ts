/** What the title block says; the fields of ISO 7200 that the user knows. */
import { section } from "../field.ts";

/** The sheet section of a plan. */
export const sheet = section({
  title: "Sheet",
  about: "What the title block says, and the units that sheets are written in.",
  fields: {
    title: {
      type: "text",
      label: "Title",
      hint: "What the plan is for, like Blue hatchback, rail 2",
      max: 80,
    },
    number: { type: "text", label: "Drawing number", hint: "Your own number for it", max: 30 },
    revision: { type: "text", label: "Revision", hint: "Your letter or number, like A", max: 10 },
    date: { type: "text", label: "Date of issue", hint: "As you write dates", max: 20 },
    owner: { type: "text", label: "Owner", hint: "Whose drawing it is", max: 40 },
    creator: { type: "text", label: "Drawn by", hint: "Who made the plan", max: 40 },
    approver: {
      type: "text",
      label: "Approved by",
      hint: "Who read it before metal is cut",
      max: 40,
    },
    remarks: {
      type: "text",
      label: "Remarks",
      hint: "What whoever opens the plan should know first",
      max: 400,
    },
    units: {
      type: "choice",
      label: "Units on sheets",
      hint: "You may type any unit in any field; sheets are written in these",
      options: { metric: "metric (mm, bar, cc/min)", inch: "inch (in, psi, lb/h)" },
      default: {
        text: "metric",
        because: "Drawings follow ISO 129-1, in millimetres",
        source: "ours",
      },
    },
  },
});
