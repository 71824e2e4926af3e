/** Whether the return lets the regulator work. */
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import { pointOf, type SolvedSupply } from "../supply/solved.ts";
import { unstatedIn } from "../supply/unstated.ts";

/** At idle nearly all of the pump's flow goes back, against the return's own pressure. */
export function judgeReturn(context: Context, solved: SolvedSupply): void {
  const { regulator } = context.values;
  if (regulator.layout === "dead-ended" && regulator.place !== "feed") return;
  const idle = pointOf(solved, "idle");
  const { state } = idle ?? {};
  if (idle === undefined || state === undefined || !solved.isPumpKnown) {
    context.check(CRITERIA.returnBack, {
      value: undefined,
      because: idle?.problem ??
        "Enter at least two points of the pump's curve: at idle nearly all of its flow goes back.",
    });
    return;
  }
  const { leastDrop, dropFlow } = regulator;
  const back = `At idle ${context.say(state.returned_m3_s, "pumpFlow")} go back and make ${
    context.say(state.back_Pa, "pressure")
  } before the return`;
  const set_Pa = regulator.setPressure + idle.reference_Pa;
  const least_Pa = leastDrop === undefined || dropFlow === undefined
    ? undefined
    : leastDrop * (state.returned_m3_s / dropFlow) ** 2;
  const room_Pa = set_Pa - (least_Pa ?? 0);
  const value = room_Pa <= 0 ? Infinity : Math.max(0, state.back_Pa) / room_Pa;
  const isHopeless = value >= CRITERIA.returnBack.limit;
  const unstated = unstatedIn([solved.supply.system.back]);
  context.check(CRITERIA.returnBack, {
    value: least_Pa === undefined && !isHopeless ? undefined : Math.min(value, MOST_SHOWN),
    because: [
      least_Pa === undefined
        ? `${back}, against ${
          context.say(set_Pa, "pressure")
        } that the rail should have then. Enter the regulator's least drop wide open: it comes on top.`
        : `${back}; wide open the regulator loses ${
          context.say(least_Pa, "pressure")
        } more, and the rail should have ${context.say(set_Pa, "pressure")}.`,
      unstated.says,
    ].filter(Boolean).join(" "),
    ...unstated.cap,
  });
}

/** A return that leaves the regulator no room at all is shown as this many times too much. */
const MOST_SHOWN = 99;
