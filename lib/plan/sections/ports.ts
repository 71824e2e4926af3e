/** The ports of the rail besides the one of the pressure sensor. */
import { type Condition, section } from "../field.ts";
import { PLACE } from "../place.ts";
import { PORT_THREADS } from "../port_threads.ts";

const END_FACES: ReadonlySet<string> = new Set(["datum-end", "far-end"]);

/** True for a port in a long face, and for a row whose face is still blank. */
const isAlong: Condition = (_, row) => !END_FACES.has(row.word("face") ?? "");

/** The ports section of a plan. */
export const ports = section({
  title: "Ports of the rail",
  about: "Feed, return, gauge and whatever else is screwed into the rail.",
  fields: {
    holes: {
      type: "list",
      label: "Port",
      hint:
        "Without rows feed and return go through the plugs in the gallery's ends; the pressure sensor has its own section",
      max: 8,
      rows: 1,
      fields: {
        use: {
          type: "choice",
          label: "Use",
          hint: "What is screwed into it",
          options: {
            feed: "feed",
            return: "return",
            gauge: "gauge",
            crossover: "crossover to another rail",
            temperature: "temperature sensor",
            combined: "sensor of pressure and temperature",
            "sensor-2": "second pressure sensor",
          },
        },
        thread: {
          type: "choice",
          label: "Thread",
          hint: "And how it seals",
          options: PORT_THREADS,
        },
        face: {
          type: "choice",
          label: "Drilled from",
          hint: "Which face; at an end the port stands in place of the gallery's plug",
          options: {
            opposite: "the face opposite the injectors",
            front: "the front",
            back: "the back",
            injectors: "the injector face",
            "datum-end": "the datum end",
            "far-end": "the far end",
          },
        },
        at: {
          ...PLACE.at,
          when: isAlong,
          otherwise: "a port in an end has no place along the bar",
        },
        across: {
          ...PLACE.across,
          hint:
            "Towards the front, like 3 mm; in front and back, away from the injectors; blank is above the gallery",
        },
        depth: {
          type: "quantity",
          kind: "length",
          label: "Full thread",
          hint: "Its depth, like 9 mm; blank is what the thread asks for",
          optional: true,
          min: 0.003,
          max: 0.04,
          because: "3 to 40 mm",
        },
      },
    },
  },
});
