/** The drill press and the drills that the rail is made with. */
import { type Default, type Earlier, section } from "../field.ts";

/** The steps of a bench press, unless the highest speed is that of a slow machine. */
function slowest(v: Earlier): Default {
  const most_rpm = (v.number("shop.mostSpeed") ?? 2600 / 60) * 60;
  return {
    text: `${Math.min(300, Math.floor(most_rpm / 8))} rpm`,
    because: "A bench press on its slowest step",
    source: "common practice, no source",
  };
}

/** The shop section of a plan. */
export const shop = section({
  title: "Drill press",
  about: "What your press turns and which drills you buy; the shop sheet keeps to both.",
  fields: {
    mostSpeed: {
      type: "quantity",
      kind: "rotation",
      label: "Highest speed of the press",
      hint: "Of its spindle, like 2600 rpm",
      why: "Small drills in aluminium want more than most presses turn",
      min: 100 / 60,
      max: 20000 / 60,
      because: "100 to 20 000 rpm",
      default: {
        text: "2600 rpm",
        because: "A bench press on its fastest step",
        source: "common practice, no source",
      },
    },
    leastSpeed: {
      type: "quantity",
      kind: "rotation",
      label: "Lowest speed of the press",
      hint: "Of its spindle, like 300 rpm",
      why: "Taps, reamers and stainless steel want it slow",
      min: 10 / 60,
      max: 20000 / 60,
      because: "10 to 20 000 rpm, and less than the highest",
      default: slowest,
    },
    drills: {
      type: "choice",
      label: "Drills",
      hint: "Which your shop has or buys",
      why: "Where the drill of the list is not at hand, the nearest is named",
      options: {
        metric: "metric",
        inch: "inch: fractions, numbers, letters",
        both: "both",
      },
      default: { text: "both", because: "Names the nearest of either", source: "ours" },
    },
  },
});
