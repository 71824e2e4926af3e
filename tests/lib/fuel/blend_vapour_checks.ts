/** Vapour pressure of blends, against a model of molecules that knows nothing of our table. */
import { assert } from "@std/assert";
import {
  blendVapourPressure,
  ethanolActivity,
  ethanolVapourFactor,
  findEthanolVapourFactor,
} from "@/lib/fuel/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

const SHARES = [0.1, 0.3, 0.5, 0.7, 0.85] as const;

/**
 * Bubble pressures [Pa] of petrols of ten components, 2, 6 and 8 % of it n-butane, alone, of
 * ethanol alone, and of their blends with {@linkcode SHARES} of ethanol by volume.
 */
const BUBBLE_POINTS = [
  ["light summer petrol, 0 °C", 10936, 1602, [11687, 11292, 10248, 8067, 5400]],
  ["light summer petrol, 37.8 °C", 46876, 15930, [55434, 53944, 49965, 41536, 31046]],
  ["light summer petrol, 60 °C", 94138, 46734, [119582, 117655, 110465, 94924, 75291]],
  ["summer petrol, 0 °C", 15444, 1602, [15932, 15201, 13568, 10421, 6728]],
  ["summer petrol, 37.8 °C", 61871, 15930, [69283, 66502, 60547, 48991, 35230]],
  ["summer petrol, 60 °C", 120496, 46734, [143661, 139254, 128575, 107631, 82401]],
  ["winter petrol, 0 °C", 17539, 1602, [17908, 17029, 15125, 11529, 7354]],
  ["winter petrol, 37.8 °C", 68841, 15930, [75734, 72377, 65515, 52500, 37201]],
  ["winter petrol, 60 °C", 132751, 46734, [154877, 149360, 137077, 113611, 85751]],
] as const;

/** Activity of ethanol at 37.8 °C in such a petrol. */
const ACTIVITIES = [[0.05, 0.63], [0.1, 0.723], [0.2, 0.755], [0.3, 0.769], [0.5, 0.813], [
  0.7,
  0.877,
], [0.85, 0.935]] as const;

const UNIFAC = "UNIFAC (thermo 0.6.1, original groups) with vapour pressures of CoolProp 8.0.0";

function factorAt(ethanolShare: number): number {
  return findEthanolVapourFactor(new Working(), "factor", ethanolShare);
}

/** What the vapour pressure of blends is held against. */
export const blendVapourChecks: readonly Check[] = [
  ...BUBBLE_POINTS.map(([name, petrolPressure, ethanolPressure, blends]): Check => ({
    name: `blends of ${name}`,
    methods: [blendVapourPressure, ethanolVapourFactor, ethanolActivity],
    source: UNIFAC,
    provenance: "computed-with-library",
    run: () =>
      SHARES.forEach((ethanolShare, i) => {
        const ours = blendVapourPressure({
          factor: factorAt(ethanolShare),
          activity: ethanolActivity({ ethanolShare }),
          petrolPressure,
          ethanolPressure,
        });
        assertClose(ours, blends[i] ?? NaN, 0.065, `${ethanolShare}`);
      }),
  })),
  {
    name: "activity of ethanol in a petrol",
    methods: [ethanolActivity],
    source: UNIFAC,
    provenance: "computed-with-library",
    run: () => {
      for (const [ethanolShare, activity] of ACTIVITIES) {
        assertClose(ethanolActivity({ ethanolShare }), activity, 0.08, `${ethanolShare}`);
      }
    },
  },
  {
    name: "15 and 20 % of ethanol press like 10 %",
    methods: [ethanolVapourFactor],
    source: "R. L. McCormick and J. Yanowitz, Effect of Ethanol Blending on Gasoline RVP (2012): " +
      "E15 indistinguishable from E10",
    provenance: "read-from-source",
    run: () => {
      assertClose(factorAt(0.15), factorAt(0.1), 0.02);
      assertClose(factorAt(0.2), factorAt(0.1), 0.03);
    },
  },
  {
    name: "no blend presses less than the less volatile of its parts",
    methods: [blendVapourPressure, ethanolActivity],
    source: "Positive deviation from Raoult's law: every blend lies above the lower of the two",
    provenance: "exact-solution",
    run: () => {
      for (const petrolPressure of [30e3, 60e3, 130e3]) {
        for (let percent = 0; percent <= 100; percent++) {
          const ethanolShare = percent / 100;
          const ethanolPressure = 46.7e3;
          const ours = blendVapourPressure({
            factor: factorAt(ethanolShare),
            activity: ethanolActivity({ ethanolShare }),
            petrolPressure,
            ethanolPressure,
          });
          const least = Math.min(petrolPressure, ethanolPressure);
          assert(ours > least * (1 - 1e-6), `${percent} % in petrol of ${petrolPressure} Pa`);
        }
      }
    },
  },
];
