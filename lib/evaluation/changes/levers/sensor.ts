/** The sensor's range, its port and how that is drilled. */
import { type PortId, PORTS } from "@/lib/thread/mod.ts";
import { formatQuantity } from "@/lib/units/mod.ts";
import { chosen } from "../chosen.ts";
import { candidate, edited, type Lever } from "../lever.ts";
import { listed, stepped } from "../stepped.ts";

/** Ranges that sensors are sold with: EN 837-1 and usual ones between, from memory; psi: common practice, no source. */
const RANGES = {
  metric: { unit: "bar", of: [1, 1.6, 2.5, 4, 6, 7, 10, 16, 25, 40] },
  inch: { unit: "psi", of: [15, 30, 60, 100, 150, 200, 300, 500] },
} as const;

/** Everything about the sensor. */
export const SENSOR_LEVERS: readonly Lever[] = [
  listed({
    id: "sensor-range",
    name: "a sensor with a larger range",
    mends: ["sensor-range"],
    path: "sensor.range",
    to: "up",
    figures: RANGES,
  }),
  {
    id: "port-drill",
    name: "the drill of the table",
    mends: ["port-hole", "port-thread", "seat-ring"],
    candidates(start) {
      const { drill, port } = start.values.sensor;
      if (drill === undefined) return [];
      const path = "sensor.drill";
      const table = formatQuantity(PORTS[port].tappingDrill_m, "length", start.system);
      return [candidate(start, {
        answers: { [path]: undefined },
        edits: [edited(start, path, `blank, which means the table's ${table}`, "Tapping drill")],
      })];
    },
  },
  stepped({
    id: "port-pilot",
    name: "a smaller pilot",
    mends: ["seat-ring", "sensor-reach"],
    path: "sensor.pilot",
    to: "down",
    steps: { metric: { size: 0.5, unit: "mm" }, inch: { size: 1 / 64, unit: "in" } },
    most: 16,
  }),
  chosen({
    id: "port-face",
    name: "the port in another face",
    mends: ["port-thread", "port-taper", "seat-gallery", "sensor-reach"],
    path: "sensor.face",
    words: ({ values }) =>
      values.rail.shape === "round" ? [] : [values.sensor.face === "side" ? "opposite" : "side"],
  }),
  {
    ...chosen({
      id: "port-kind",
      name: "a sensor with another port",
      mends: ["port-thread", "port-taper", "seat-ring", "seat-gallery", "sensor-reach"],
      path: "sensor.port",
      words: ({ values }) => {
        const now = PORTS[values.sensor.port].nominal_m;
        // A taper wedges a thin boss apart: only where nothing else does.
        const apart = (port: PortId): number =>
          PORTS[port].seal === "taper" ? 1 : Math.abs(PORTS[port].nominal_m - now);
        return (Object.keys(PORTS) as PortId[])
          .filter((port) => port !== values.sensor.port)
          .toSorted((a, b) => apart(a) - apart(b));
      },
    }),
    endsCheck: true,
  },
];
