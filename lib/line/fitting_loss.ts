/** Loss of a fitting on a fuel hose at any Reynolds number. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Loss coefficient [-] of a fitting: the laminar term of Hooper's two-constant form and the
 * turbulent coefficient of the fitting itself. Cautious: in turbulent flow the laminar term,
 * then small, comes on top.
 *
 * Source: ours; the form of W. B. Hooper, Chem. Eng. 88(17) (1981) 96-100, with the
 * coefficient computed for the fitting in the place of his for large pipe and its size term.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example A swept right angle at Re 500
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const loss = fittingLossCoefficient({ laminar: 800, turbulent: 0.33, reynolds: 500 });
 *
 * assertAlmostEquals(loss, 1.93, 1e-12);
 * ```
 */
export const fittingLossCoefficient: Method<
  Record<"laminar" | "turbulent" | "reynolds", MethodInput>
> = method({
  id: "fitting-loss-coefficient",
  title: "Loss coefficient of a fitting on a hose",
  inputs: {
    laminar: {
      unit: "-",
      min: 0,
      max: 5000,
      says: "Loss coefficient at Re 1",
      symbol: "K_1",
    },
    turbulent: {
      unit: "-",
      min: 0,
      max: 1000,
      says: "Loss coefficient in turbulent flow",
      symbol: "K_t",
    },
    reynolds: {
      unit: "-",
      min: 1e-3,
      max: 1e9,
      says: "Reynolds number on the bore of the hose",
      symbol: "Re",
    },
  },
  output: {
    name: "lossCoefficient",
    unit: "-",
    min: 0,
    max: 1e7,
    says: "Loss coefficient",
    symbol: "K",
  },
  formula: "laminar / reynolds + turbulent",
  words: "Hooper's laminar term, the turbulent coefficient of the fitting itself; cautious.",
  source: "Ours, in the form of W. B. Hooper, Chem. Eng. 88(17) (1981) 96-100",
  compute: ({ laminar, turbulent, reynolds }) => laminar / reynolds + turbulent,
});
