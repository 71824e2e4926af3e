/** What must hold between the answers about engine, fuel and injectors. */
import { bsfcFloor } from "@/lib/engine/mod.ts";
import { fuelEnergy } from "@/lib/fuel/mod.ts";
import { fuelSpecOf } from "../fuel_choice.ts";
import { fault, type Rule } from "./rule.ts";

/** What must hold between the answers about engine, fuel and injectors. */
export const ENGINE_RULES: readonly Rule[] = [
  {
    of: ["engine.maximumSpeed", "engine.powerSpeed"],
    find: ({ engine }, say) =>
      engine.maximumSpeed !== undefined && engine.maximumSpeed < engine.powerSpeed
        ? fault(
          "engine.maximumSpeed",
          `Maximum speed: it lies below the speed of the power peak. Enter at least ${
            say(engine.powerSpeed, "rotation")
          }, as the engine must reach its power peak.`,
        )
        : undefined,
  },
  {
    of: ["engine.idleSpeed", "engine.powerSpeed"],
    find: ({ engine }, say) =>
      engine.idleSpeed !== undefined && engine.idleSpeed >= engine.powerSpeed
        ? fault(
          "engine.idleSpeed",
          `Idle speed: it must lie below the speed of the power peak, ${
            say(engine.powerSpeed, "rotation")
          }.`,
        )
        : undefined,
  },
  {
    of: ["demand.bsfc", "fuel"],
    find: ({ demand, fuel }, say) => {
      if (demand.bsfc === undefined) return undefined;
      const floor = bsfcFloor({ lowerHeatingValue: fuelEnergy(fuelSpecOf(fuel)) });
      return demand.bsfc >= floor ? undefined : fault(
        "demand.bsfc",
        `BSFC at full power: it lies below ${
          say(floor, "bsfc")
        }, which an engine that wasted nothing would burn: ` +
          "the fuel holds no more energy than its heating value. Check the figure and its unit.",
      );
    },
  },
  {
    of: ["injectors.stages"],
    find: ({ injectors }) => {
      const row = injectors.stages.findIndex((s) => s.flow === undefined);
      return row > 0
        ? fault(
          `injectors.stages.${row}.flow`,
          "Static flow of one injector: enter it for this stage, or clear the rest of the stage.",
        )
        : undefined;
    },
  },
];
