/** What the leak tests are made with. */
import { section } from "../field.ts";

/** The proof section of a plan. */
export const proof = section({
  title: "Proof test",
  about: "The gauge you own, and what the weakest part may take.",
  fields: {
    weakestPart: {
      type: "text",
      label: "Weakest part under test",
      hint: "Which part has the lowest rating, like feed hose",
      max: 40,
    },
    weakestRating: {
      type: "quantity",
      kind: "pressure",
      label: "Its rating",
      hint: "Highest pressure its maker allows, gauge, like 17 bar",
      why: "No test goes above it",
      min: 1e5,
      max: 5e7,
      because: "1 to 500 bar",
    },
    gaugeResolution: {
      type: "quantity",
      kind: "pressure",
      label: "Resolution of the gauge",
      hint: "The smallest change you can read, like 0.05 bar or 0.5 psi",
      why: "Decides which leak it could show, and how long to wait",
      min: 10,
      max: 1e5,
      because: "0.1 mbar to 1 bar",
      default: {
        text: "0.02 bar",
        because: "A 100 mm dial of 0 to 1.6 bar, read between its marks",
        source: "common practice, no source",
      },
    },
    airPressure: {
      type: "quantity",
      kind: "pressure",
      label: "Pressure of the air test",
      hint: "Gauge, like 0.5 bar",
      min: 5e3,
      max: 5e4,
      because: "more than 0.5 bar of air stores energy to no use: the liquid test proves strength",
      default: { text: "0.5 bar", because: "The most that this first test needs", source: "ours" },
    },
    pressurisedHose: {
      type: "quantity",
      kind: "volume",
      label: "Volume of hose and fittings under test",
      hint: "What is pressurised besides the rail, like 0.1 L",
      min: 0,
      max: 0.01,
      because: "0 to 10 L",
      default: { text: "0.1 L", because: "A short test hose and its gauge", source: "ours" },
    },
    temperature: {
      type: "quantity",
      kind: "temperature",
      label: "Shop temperature",
      hint: "Like 20 °C",
      min: 263.15,
      max: 323.15,
      because: "-10 to 50 °C",
      default: { text: "20 °C", because: "ISO 1 reference temperature", source: "ISO 1" },
    },
  },
});
