import { assertAlmostEquals, assertEquals } from "@std/assert";
import {
  carriedFuel,
  coilCurrent,
  deadTimeBetween,
  fuelPerInjection,
  injectorDifferential,
  injectorDuty,
  neededStaticFlow,
  openTime,
  overSmallestPulse,
  pulseWidth,
  railPressure,
  stageShare,
} from "@/lib/injector/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

/** Worked by hand on a measuring glass: an injector of 600 cm3/min gives 10 mm3 a millisecond. */
const GLASS = "By hand: 600 cm3/min is 10 mm3 in each millisecond, at 0.75 g/cm3 7.5 mg";
const exact = "exact-solution" as const;
const STATIC = 600e-6 / 60;
const DENSITY = 750;

/** Checks of lib/injector; the cases of orifice-leak.json on injectors stand in lib/flow's. */
export const checks: Check[] = [
  {
    name: "60 mg of fuel keeps the injector open for 8 ms",
    methods: [openTime],
    source: GLASS,
    provenance: exact,
    run: () =>
      assertClose(
        openTime({ fuelPerInjection: 60e-6, density: DENSITY, staticFlow: STATIC }),
        8e-3,
        1e-12,
      ),
  },
  {
    name:
      "8 ms open and 1.2 ms dead are 9.2 ms, which is 46 % of 20 ms (6000 rev/min, four-stroke)",
    methods: [pulseWidth, injectorDuty],
    source: GLASS,
    provenance: exact,
    run: () => {
      const pulse = pulseWidth({ openTime: 8e-3, deadTime: 1.2e-3 });
      assertClose(injectorDuty({ pulse, interval: 120 / 6000 }), 0.46, 1e-12);
    },
  },
  {
    name: "12 g/s by four injectors, fifty times a second each, is 60 mg",
    methods: [fuelPerInjection],
    source: "By hand: 12 g / (4 x 50)",
    provenance: exact,
    run: () =>
      assertClose(fuelPerInjection({ fuelFlow: 0.012, count: 4, interval: 0.02 }), 60e-6, 1e-12),
  },
  {
    name: "an injector that meets 46 % with 60 mg in 20 ms is the one of 600 cm3/min",
    methods: [neededStaticFlow],
    source: GLASS,
    provenance: exact,
    run: () =>
      assertClose(
        neededStaticFlow({
          fuelPerInjection: 60e-6,
          density: DENSITY,
          interval: 0.02,
          dutyAim: 0.46,
          deadTime: 1.2e-3,
        }),
        STATIC,
        1e-12,
      ),
  },
  {
    name: "four of them at 46 % carry 12 g/s",
    methods: [carriedFuel],
    source: GLASS,
    provenance: exact,
    run: () =>
      assertClose(
        carriedFuel({
          count: 4,
          staticFlow: STATIC,
          density: DENSITY,
          duty: 0.46,
          deadTime: 1.2e-3,
          interval: 0.02,
        }),
        0.012,
        1e-12,
      ),
  },
  {
    name: "no fuel is carried when dead time takes the whole duty",
    methods: [carriedFuel],
    source: "By hand: 4 ms of dead time in 10 % of 20 ms",
    provenance: exact,
    run: () =>
      assertEquals(
        carriedFuel({
          count: 4,
          staticFlow: STATIC,
          density: DENSITY,
          duty: 0.1,
          deadTime: 4e-3,
          interval: 0.02,
        }),
        0,
      ),
  },
  {
    name: "a regulator with a hose holds the differential, boost or vacuum, at any altitude",
    methods: [railPressure, injectorDifferential],
    source: "Purpose of the manifold reference: rail less manifold stays at the set pressure",
    provenance: exact,
    run: () => {
      for (const [manifold, ambient] of [[35e3, 101e3], [250e3, 101e3], [120e3, 70e3]] as const) {
        const railGauge = railPressure({ setPressure: 3e5, reference: 1, manifold, ambient });
        assertAlmostEquals(injectorDifferential({ railGauge, ambient, manifold }), 3e5, 1e-6);
      }
    },
  },
  {
    name: "a regulator open to air loses boost and gains with altitude nothing but what air lost",
    methods: [railPressure, injectorDifferential],
    source: "By hand: 4 bar gauge in air of 0.8 bar is 4.8 bar absolute; 2 bar in the manifold",
    provenance: exact,
    run: () => {
      const ambient = 80e3;
      const railGauge = railPressure({ setPressure: 4e5, reference: 0, manifold: 2e5, ambient });
      assertEquals(railGauge, 4e5);
      assertEquals(injectorDifferential({ railGauge, ambient, manifold: 2e5 }), 2.8e5);
    },
  },
  {
    name: "stages of 4 x 600 and 4 x 1800 cm3/min share one to three",
    methods: [stageShare],
    source: "By hand, at equal open time",
    provenance: exact,
    run: () => {
      assertClose(stageShare({ stageFlow: 0.03, allFlow: 0.12 }), 0.25, 1e-12);
    },
  },
  {
    name: "dead time half way between 1.3 and 1.1 ms is 1.2 ms, and each end is itself",
    methods: [deadTimeBetween],
    source: "By hand",
    provenance: exact,
    run: () => {
      const between = (share: number) => deadTimeBetween({ lower: 1.3e-3, upper: 1.1e-3, share });
      assertClose(between(0), 1.3e-3, 1e-12);
      assertClose(between(0.5), 1.2e-3, 1e-12);
      assertClose(between(1), 1.1e-3, 1e-12);
    },
  },
  {
    name: "0.9 ms open is one and a half times 0.6 ms",
    methods: [overSmallestPulse],
    source: "By hand",
    provenance: exact,
    run: () => assertClose(overSmallestPulse({ openTime: 0.9e-3, smallest: 0.6e-3 }), 1.5, 1e-12),
  },
  {
    name: "a volt across an ohm drives an ampere",
    methods: [coilCurrent],
    source: "Definition of the ohm, SI Brochure, 9th ed. (2019)",
    provenance: exact,
    run: () => assertEquals(coilCurrent({ voltage: 1, resistance: 1 }), 1),
  },
];
