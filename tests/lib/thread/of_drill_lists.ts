/** The whole sets of number and letter drills against a published list. */
import { assertAlmostEquals, assertEquals } from "@std/assert";
import { DRILLS } from "@/lib/thread/mod.ts";
import type { Check } from "../../helpers/checks.ts";
import { INCH } from "./shorthand.ts";

const SOURCE = "GNU units 2.22, definitions.units: drillgauge and drillA to drillZ";

/** Gauge and inches; the gauges left out lie on the line between their neighbours. */
const GAUGES: readonly (readonly [gauge: number, inches: number])[] = [
  [1, 0.2280],
  [2, 0.2210],
  [3, 0.2130],
  [4, 0.2090],
  [5, 0.2055],
  [6, 0.2040],
  [7, 0.2010],
  [8, 0.1990],
  [9, 0.1960],
  [10, 0.1935],
  [11, 0.1910],
  [12, 0.1890],
  [13, 0.1850],
  [14, 0.1820],
  [15, 0.1800],
  [16, 0.1770],
  [17, 0.1730],
  [18, 0.1695],
  [19, 0.1660],
  [20, 0.1610],
  [22, 0.1570],
  [23, 0.1540],
  [24, 0.1520],
  [25, 0.1495],
  [26, 0.1470],
  [27, 0.1440],
  [28, 0.1405],
  [29, 0.1360],
  [30, 0.1285],
  [31, 0.1200],
  [32, 0.1160],
  [33, 0.1130],
  [34, 0.1110],
  [35, 0.1100],
  [36, 0.1065],
  [38, 0.1015],
  [39, 0.0995],
  [40, 0.0980],
  [41, 0.0960],
  [42, 0.0935],
  [43, 0.0890],
  [44, 0.0860],
  [45, 0.0820],
  [46, 0.0810],
  [48, 0.0760],
  [51, 0.0670],
  [52, 0.0635],
  [53, 0.0595],
  [54, 0.0550],
  [55, 0.0520],
  [56, 0.0465],
  [57, 0.0430],
  [65, 0.0350],
  [66, 0.0330],
  [68, 0.0310],
  [69, 0.0292],
  [70, 0.0280],
  [71, 0.0260],
  [73, 0.0240],
  [74, 0.0225],
  [75, 0.0210],
  [76, 0.0200],
  [78, 0.0160],
  [79, 0.0145],
  [80, 0.0135],
];

const LETTERS = [
  0.234,
  0.238,
  0.242,
  0.246,
  0.250,
  0.257,
  0.261,
  0.266,
  0.272,
  0.277,
  0.281,
  0.290,
  0.295,
  0.302,
  0.316,
  0.323,
  0.332,
  0.339,
  0.348,
  0.358,
  0.368,
  0.377,
  0.386,
  0.397,
  0.404,
  0.413,
];

function gaugeInches(gauge: number): number {
  const after = GAUGES.findIndex(([g]) => g >= gauge);
  const [high, to] = GAUGES[after] ?? [NaN, NaN];
  if (high === gauge) return to;
  const [low, from] = GAUGES[after - 1] ?? [NaN, NaN];
  return from + (to - from) * (gauge - low) / (high - low);
}

/** The lists. */
export const drillLists: Check[] = [
  {
    name: "number drills 1 to 80",
    methods: [],
    source: SOURCE,
    provenance: "computed-with-library",
    run: () => {
      for (const { name, diameter_m } of DRILLS.number) {
        assertAlmostEquals(diameter_m / INCH, gaugeInches(Number(name.slice(1))), 1e-6, name);
      }
    },
  },
  {
    name: "letter drills A to Z",
    methods: [],
    source: SOURCE,
    provenance: "read-from-source",
    run: () => {
      assertEquals(DRILLS.letter.length, LETTERS.length);
      DRILLS.letter.forEach(({ name, diameter_m }, i) =>
        assertAlmostEquals(diameter_m / INCH, LETTERS[i] ?? NaN, 1e-9, name)
      );
    },
  },
];
