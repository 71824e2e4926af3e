/** What must hold between the answers about blends and operating points. */
import { asTyped, fault, type Rule } from "./rule.ts";

/** What must hold between the answers about blends and operating points. */
export const SUPPLY_RULES: readonly Rule[] = [
  {
    of: ["fuel.blends"],
    find: ({ fuel }) => {
      const shares = fuel.blends.map(({ ethanolShare: share }) => share && asTyped(share));
      return shares.flatMap((share, row) =>
        share !== undefined && shares.indexOf(share) < row
          ? [fault(
            `fuel.blends.${row}.ethanolShare`,
            "Ethanol share: it stands twice. Enter each share once.",
          )]
          : []
      );
    },
  },
  {
    of: ["operating.cruiseSpeed", "engine.maximumSpeed", "engine.powerSpeed"],
    find: ({ operating, engine }, say) => {
      const most = engine.maximumSpeed ?? engine.powerSpeed;
      return operating.cruiseSpeed === undefined || operating.cruiseSpeed <= most
        ? undefined
        : fault(
          "operating.cruiseSpeed",
          `Engine speed at cruise: it lies above the engine's maximum speed. Enter at most ${
            say(most, "rotation")
          }.`,
        );
    },
  },
];
