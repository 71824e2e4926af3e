/** Examples of methods and their working. */
import { Formula, mathmlReady, MathSymbol } from "@/components/mathml.ts";
import { MethodPage } from "@/components/method_page.ts";
import { MethodsPage } from "@/components/methods_page.ts";
import { Working as WorkingShown } from "@/components/working.ts";
import { type AnyMethod, method, Working } from "@/lib/method/mod.ts";
import type { Examples } from "./example.ts";

await mathmlReady();

const velocity = method({
  id: "velocity",
  title: "Mean velocity in a round pipe",
  inputs: {
    flow: { unit: "m^3/s", min: 0, max: 0.01, says: "Volume flow", symbol: "\\dot V" },
    bore: { unit: "m", min: 0, open: true, max: 0.1, says: "Inside diameter", symbol: "d" },
  },
  output: { name: "velocity", unit: "m/s", min: 0, max: 1e4, says: "Mean velocity", symbol: "v" },
  formula: "4 * flow / (pi * bore^2)",
  words: "What flows in, flows on",
  source: "Continuity, exact",
  compute: ({ flow, bore }) => 4 * flow / (Math.PI * bore ** 2),
});
const factor = method({
  id: "friction-factor",
  title: "Darcy friction factor",
  inputs: { reynolds: { unit: "-", min: 0, open: true, max: 1e8, says: "Reynolds number" } },
  output: { name: "factor", unit: "-", min: 0, max: Infinity, says: "Friction factor" },
  formula: "reynolds < 2300 ? 64 / reynolds : 0.3164 / reynolds^0.25",
  fit: true,
  source: "H. Blasius (1913)",
  compute: ({ reynolds }) => reynolds < 2300 ? 64 / reynolds : 0.3164 / reynolds ** 0.25,
});
const march = method({
  id: "march",
  title: "Pressure along a rail",
  inputs: { pressure_Pa: { unit: "Pa", min: -1e5, max: 1e6, says: "Pressure at the inlet" } },
  output: { name: "last", unit: "Pa", min: -1e5, max: 1e6, says: "Pressure at the last injector" },
  formula: null,
  words: "From one injector to the next, the loss between them is taken off",
  source: "ours",
  compute: ({ pressure_Pa }) => pressure_Pa,
});
const methods: readonly AnyMethod[] = [velocity, factor, march];

const working = new Working();
working.run("supply.feedVelocity_m_s", velocity, { flow: 6e-5, bore: 0.0087 });
working.run("rail.friction", factor, { reynolds: 12400 });
working.run("rail.0.last_Pa", march, { pressure_Pa: 3e5 });
working.run("rail.0.last_Pa", march, { pressure_Pa: 2.999e5 });

/** The examples. */
export const methodExamples: Examples = {
  Formula: {
    fraction: () => Formula(velocity),
    cases: () => Formula(factor),
    words: () => Formula(march),
  },
  MathSymbol: {
    "with a symbol": () => MathSymbol("density", "\\rho"),
    "a name": () => MathSymbol("inlet_Pa", undefined),
  },
  MethodPage: {
    "a formula": () => MethodPage({ method: velocity, subject: "Flow" }),
    "a fit": () => MethodPage({ method: factor, subject: "Flow" }),
    "no closed form": () => MethodPage({ method: march, subject: "The rail" }),
  },
  MethodsPage: {
    "two subjects": () =>
      MethodsPage({
        chapters: [
          { id: "flow", title: "Flow", methods: methods.slice(0, 2) },
          { id: "rail", title: "The rail", methods: methods.slice(2) },
        ],
      }),
  },
  Working: {
    "three methods, one used twice": () =>
      WorkingShown({
        uses: working.uses,
        methodOf: (id) => methods.find((each) => each.id === id),
        system: "metric",
      }),
    "a method that is not in the book": () =>
      WorkingShown({ uses: working.uses.slice(0, 1), methodOf: () => undefined, system: "inch" }),
    none: () => WorkingShown({ uses: [], methodOf: () => undefined, system: "metric" }),
  },
};
