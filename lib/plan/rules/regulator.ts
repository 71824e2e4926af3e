/** What must hold between the answers about the regulator. */
import { fault, type Rule } from "./rule.ts";

/** Port injection as far as the methods and the scope go [Pa gauge]. */
const HIGHEST_PRESSURE_PA = 1e6;

/** What must hold between the answers about the regulator. */
export const REGULATOR_RULES: readonly Rule[] = [
  {
    of: ["regulator", "engine.aspiration", "engine.boost"],
    find: ({ regulator, engine }, say) => {
      const boost = regulator.reference === "manifold" ? engine.boost ?? 0 : 0;
      return regulator.setPressure + boost <= HIGHEST_PRESSURE_PA ? undefined : fault(
        "regulator.setPressure",
        `Set pressure: with the boost on top, rail pressure exceeds ${
          say(HIGHEST_PRESSURE_PA, "pressure")
        } gauge, which is as far as these methods go. Enter a lower set pressure.`,
      );
    },
  },
  {
    of: ["regulator", "engine.aspiration", "engine.boost"],
    find: ({ regulator, engine }, say) => {
      const boost = regulator.reference === "manifold" ? 0 : engine.boost ?? 0;
      return regulator.setPressure > boost ? undefined : fault(
        "regulator.setPressure",
        "Set pressure: an atmosphere-referenced regulator must be set above the highest boost, " +
          `${say(boost, "pressure")}, or nothing flows at full power.`,
      );
    },
  },
  {
    of: ["regulator.leastDrop", "regulator.setPressure"],
    find: ({ regulator }, say) =>
      regulator.leastDrop === undefined || regulator.leastDrop < regulator.setPressure
        ? undefined
        : fault(
          "regulator.leastDrop",
          `Least drop across the regulator: it exceeds the set pressure. Enter less than ${
            say(regulator.setPressure, "pressure")
          }.`,
        ),
  },
];
