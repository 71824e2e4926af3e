/** Where the injectors sit, as the manifold has them. */
import { section } from "../field.ts";
import { PLACE } from "../place.ts";

const EDGE = {
  type: "quantity",
  kind: "length",
  optional: true,
  min: 0,
  max: 2,
  because: "0 to 2 m from the datum",
} as const;

/** The stations section of a plan. */
export const stations = section({
  title: "Injector stations",
  about: "Where each injector sits, and what you measured on the manifold.",
  fields: {
    places: {
      type: "list",
      label: "Injector",
      title: "Places of the injectors",
      ordered: true,
      hint:
        "Every injector of one rail, from the datum end on; without rows they stand at the pitch",
      max: 16,
      rows: 1,
      fields: {
        at: PLACE.at,
        across: PLACE.across,
        tilt: {
          type: "quantity",
          kind: "angle",
          label: "Tilt along the bar",
          hint: "Of its axis, foot towards the far end, like 5°; blank is square to the bar",
          optional: true,
          min: -Math.PI / 6,
          max: Math.PI / 6,
          because: "-30 to 30 degrees; beyond that the pocket runs along the bar",
        },
        seatHeight: {
          type: "quantity",
          kind: "length",
          label: "Height of its seat in the manifold",
          hint: "Above the lowest seat, like 1.5 mm; blank is level with it",
          optional: true,
          min: -0.03,
          max: 0.06,
          because: "-30 to 60 mm",
        },
        injectorLength: {
          type: "quantity",
          kind: "length",
          label: "Length of the injector",
          hint: "Its seat to the middle of its upper O-ring, like 60.5 mm",
          optional: true,
          min: 0.02,
          max: 0.12,
          because: "20 to 120 mm",
        },
      },
    },
    readings: {
      type: "list",
      label: "Boss",
      title: "Readings from the manifold",
      ordered: true,
      hint: "Every boss from one datum: both edges of its bore, or over a pin that fits it",
      max: 16,
      rows: 1,
      fields: {
        left: {
          ...EDGE,
          label: "Near edge of the bore",
          hint: "Datum to the edge nearer to it, like 41.2 mm",
        },
        right: {
          ...EDGE,
          label: "Far edge of the bore",
          hint: "Datum to the edge farther from it, like 55.1 mm",
        },
        over: {
          ...EDGE,
          label: "Over a pin in the bore",
          hint: "Datum to the pin's far side, like 55 mm; instead of the edges",
        },
        pin: {
          ...EDGE,
          label: "Diameter of the pin",
          hint: "One that fits the bore, like 13.5 mm",
          min: 0.002,
          max: 0.06,
          because: "2 to 60 mm",
        },
      },
    },
    placeTolerance: {
      type: "quantity",
      kind: "length",
      label: "Place tolerance of your holes",
      hint: "Either way from the place on the sheet, like 0.1 mm",
      why: "Injectors take up only so much between pocket and boss",
      min: 1e-5,
      max: 2e-3,
      because: "0.01 to 2 mm",
      default: {
        text: "0.1 mm",
        because: "What careful marking out and centre drilling holds",
        source: "ours",
      },
    },
  },
});
