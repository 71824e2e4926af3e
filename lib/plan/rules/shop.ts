/** What must hold between the answers about the drill press. */
import { fault, type Rule } from "./rule.ts";

/** What must hold between the answers about the drill press. */
export const SHOP_RULES: readonly Rule[] = [
  {
    of: ["shop.leastSpeed", "shop.mostSpeed"],
    find: ({ shop }, say) =>
      shop.leastSpeed < shop.mostSpeed ? undefined : fault(
        "shop.leastSpeed",
        `Lowest speed of the press: it must lie below the highest, ${
          say(shop.mostSpeed, "rotation")
        }.`,
      ),
  },
];
