/** What the leak tests are made with, and what their weakest part may take. */
import type { Lever } from "../lever.ts";
import { listed, stepped } from "../stepped.ts";

/** Steps of gauges: common practice, no source. */
const RESOLUTIONS = {
  metric: { unit: "bar", of: [0.1, 0.05, 0.02, 0.01, 0.005, 0.002, 0.001, 5e-4, 2e-4, 1e-4] },
  inch: { unit: "psi", of: [1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01, 0.005, 0.002] },
} as const;

/** Everything about the proof. */
export const PROOF_LEVERS: readonly Lever[] = [
  stepped({
    id: "part-rating",
    name: "a weakest part rated higher",
    mends: ["proof-rating"],
    path: "proof.weakestRating",
    what: "Rating of the weakest part",
    to: "up",
    steps: { metric: { size: 1, unit: "bar" }, inch: { size: 10, unit: "psi" } },
  }),
  listed({
    id: "gauge-resolution",
    name: "a finer gauge",
    mends: ["gauge-steps"],
    path: "proof.gaugeResolution",
    to: "down",
    figures: RESOLUTIONS,
  }),
  stepped({
    id: "air-pressure-up",
    name: "more pressure in the air test",
    mends: ["gauge-steps"],
    path: "proof.airPressure",
    to: "up",
    steps: { metric: { size: 0.05, unit: "bar" }, inch: { size: 1, unit: "psi" } },
  }),
  stepped({
    id: "air-pressure-down",
    name: "less pressure in the air test",
    mends: ["air-energy"],
    path: "proof.airPressure",
    to: "down",
    steps: { metric: { size: 0.05, unit: "bar" }, inch: { size: 1, unit: "psi" } },
  }),
  stepped({
    id: "test-hose",
    name: "less hose under test",
    mends: ["air-energy", "gauge-steps"],
    path: "proof.pressurisedHose",
    to: "down",
    steps: { metric: { size: 0.05, unit: "L" }, inch: { size: 0.01, unit: "US gal" } },
    most: 200,
  }),
];
