/** The set pressure, the regulator and where it stands. */
import type { CheckId, Lever } from "../lever.ts";
import { chosen } from "../chosen.ts";
import { type Direction, type Step, stepped } from "../stepped.ts";
import type { System } from "@/lib/units/mod.ts";

const SET: Readonly<Record<System, Step>> = {
  metric: { size: 0.5, unit: "bar" },
  inch: { size: 5, unit: "psi" },
};

const setPressure = (to: Direction, name: string, mends: readonly CheckId[]): Lever =>
  stepped({
    id: `set-pressure-${to}`,
    name,
    mends,
    path: "regulator.setPressure",
    to,
    steps: SET,
    most: 18,
  });

/** Everything about pressure. */
export const PRESSURE_LEVERS: readonly Lever[] = [
  setPressure("up", "a higher set pressure", [
    "duty-peak",
    "duty-maximum",
    "pressure-held",
    "return-back-pressure",
    "soak-vapour",
  ]),
  setPressure("down", "a lower set pressure", [
    "pump-margin",
    "pressure-held",
    "idle-pulse",
    "sensor-range",
    "proof-rating",
    "yield",
  ]),
  stepped({
    id: "regulator-least-drop",
    name: "a regulator that loses less wide open",
    mends: ["return-back-pressure", "pressure-held"],
    path: "regulator.leastDrop",
    to: "down",
    steps: { metric: { size: 0.05, unit: "bar" }, inch: { size: 1, unit: "psi" } },
  }),
  stepped({
    id: "regulator-flow",
    name: "a regulator for more return flow",
    mends: ["return-back-pressure", "pressure-held"],
    path: "regulator.dropFlow",
    to: "up",
    steps: { metric: { size: 25, unit: "L/h" }, inch: { size: 5, unit: "US gal/h" } },
  }),
  stepped({
    id: "regulator-droop",
    name: "a regulator that rises less with flow",
    mends: ["pressure-held"],
    path: "regulator.droop",
    to: "down",
    steps: { metric: { size: 0.02, unit: "bar" }, inch: { size: 0.5, unit: "psi" } },
  }),
  chosen({
    id: "regulator-place",
    name: "the regulator in the feed near the rail",
    mends: ["pressure-held", "cranking-held", "duty-peak", "duty-maximum"],
    path: "regulator.place",
    words: ({ values }) => values.regulator.place === "tank" ? ["feed"] : [],
  }),
  chosen({
    id: "regulator-layout",
    name: "a return from the rail",
    mends: ["pressure-held", "cranking-held", "duty-peak", "duty-maximum"],
    path: "regulator.layout",
    words: ({ values }) => values.regulator.layout === "dead-ended" ? ["return"] : [],
  }),
];
