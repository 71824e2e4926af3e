/** Suction, heat, surge tank and engine-driven pump, against worked examples and balances. */
import { assert, assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  absoluteFromGauge,
  drivenPumpFlow,
  inletPressure,
  missingFlow,
  primeTime,
  pumpDisplacement,
  pumpSpeedFromEngine,
  pumpWarming,
  slipOf,
  STANDARD_GRAVITY_m_s2,
  suctionHead,
  surgeSeconds,
  surgeTime,
  tankHeatingByPump,
  tankHeatingByReturn,
  vapourMargin,
} from "@/lib/supply/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import type { Check } from "../../helpers/checks.ts";

// Exact by the international yard and pound agreement and the standard acceleration.
const INCH = 0.0254;
const FOOT = 0.3048;
const POUND = 0.45359237;
const PSI = POUND * 9.80665 / INCH ** 2;
const GALLON = 231 * INCH ** 3;
const MINUTE = 60;
const HOUR = 3600;

const GRAVITY = { gravity: STANDARD_GRAVITY_m_s2 } as const;

/** Water at 60 °F, from memory within 0.1 %. */
const WATER = { density: 999, ...GRAVITY } as const;

/** One pound of water, the heat capacity by which the international table BTU is defined. */
const POUND_OF_WATER = { mass: POUND, heatCapacity: 4186.8 } as const;

/** Worked examples: heads in feet, pressures in psi, absolute. */
const SUCTION_EXAMPLES = [
  {
    name: "a vented tank 15 ft above the pump",
    source: "Handbook of water works, 10.2.12.1 Calculating NPSHA, example 10.10: 46 ft",
    atmosphere_psi: 14.7,
    head_ft: 15,
    losses_ft: 2.4,
    vapour_psi: 0.256,
    suction_ft: 46,
    // The example rounds to whole feet.
    tolerance: 0.005,
  },
  {
    name: "water lifted 20 ft from an open reservoir",
    source: "Handbook of water works, 10.2.12.1 Calculating NPSHA, example 10.11: 11 ft",
    atmosphere_psi: 14.7,
    head_ft: -20,
    losses_ft: 2.4,
    vapour_psi: 0.256,
    suction_ft: 11,
    tolerance: 0.01,
  },
] as const;

/** What suction, heat, surge tank and engine-driven pump are held against. */
export const heatChecks: Check[] = [
  {
    name: "30 psi on the gauge at sea level is 44.696 psi against a vacuum",
    methods: [absoluteFromGauge],
    source: "NIST SP 811: a standard atmosphere is 101325 Pa exactly, 14.696 psi",
    provenance: "exact-solution",
    run: () => {
      const absolute = absoluteFromGauge({ gauge: 30 * PSI, ambient: 101_325 });
      assertClose(absolute / PSI, 44.696, 1e-5);
    },
  },
  ...SUCTION_EXAMPLES.map((x): Check => ({
    name: `net positive suction head of ${x.name}`,
    methods: [inletPressure, vapourMargin, suctionHead],
    source: x.source,
    provenance: "read-from-source",
    run: () => {
      const foot_Pa = WATER.density * WATER.gravity * FOOT;
      const pressure = inletPressure({
        ...WATER,
        tankPressure: x.atmosphere_psi * PSI,
        head: x.head_ft * FOOT,
        losses: x.losses_ft * foot_Pa,
      });
      const margin = vapourMargin({ pressure, vapourPressure: x.vapour_psi * PSI });
      assertClose(suctionHead({ margin, ...WATER }) / FOOT, x.suction_ft, x.tolerance);
    },
  })),
  {
    name: "net positive suction head from heads: 33.9 + 6 - 0.839 - 2 - 2 ft",
    methods: [inletPressure, vapourMargin, suctionHead],
    source: "Handbook of civil engineering, centrifugal pumps: NPSHa = 35.061 ft",
    provenance: "read-from-source",
    run: () => {
      const foot_Pa = WATER.density * WATER.gravity * FOOT;
      const pressure = inletPressure({
        ...WATER,
        tankPressure: 33.9 * foot_Pa,
        head: 6 * FOOT,
        losses: 4 * foot_Pa,
      });
      const margin = vapourMargin({ pressure, vapourPressure: 0.839 * foot_Pa });
      assertClose(suctionHead({ margin, ...WATER }) / FOOT, 35.061, 1e-6);
    },
  },
  {
    name: "water at rest boils under a barometer's height of it",
    methods: [inletPressure, vapourMargin, suctionHead],
    source: "Torricelli: 101325 Pa carry 10.332 m of water of 1000 kg/m^3 (ISO 80000-4)",
    provenance: "exact-solution",
    run: () => {
      const water = { density: 1000, ...GRAVITY };
      const still = { ...water, tankPressure: 101_325, losses: 0 };
      const pressure = inletPressure({ ...still, head: -10 });
      const margin = vapourMargin({ pressure, vapourPressure: 0 });
      assertClose(suctionHead({ margin, ...water }) + 10, 10.33227, 1e-6);
    },
  },
  {
    name: "a BTU an hour warms a pound of water by a degree Fahrenheit an hour",
    methods: [tankHeatingByPump],
    source: "Definition of the British thermal unit: 1055.05585262 J (international table)",
    provenance: "exact-solution",
    run: () => {
      const heating = tankHeatingByPump({ power: 1055.05585262 / HOUR, ...POUND_OF_WATER });
      assertClose(heating * HOUR, 5 / 9, 1e-9);
    },
  },
  {
    name: "all that a pump warms comes back: by its power and by what returns it is the same",
    methods: [tankHeatingByPump, tankHeatingByReturn],
    source: "Conservation of energy, through the warming at each pass (checked by its own case)",
    provenance: "exact-solution",
    run: () => {
      const fuel = { density: 745, heatCapacity: 2100 };
      const flow = 5e-5;
      for (const mass of [2, 30]) {
        const rise = pumpWarming({ electricalPower: 150, flow, ...fuel });
        const returned = flow * fuel.density;
        const { heatCapacity } = fuel;
        assertClose(
          tankHeatingByReturn({ returned, rise, mass }),
          tankHeatingByPump({ power: 150, mass, heatCapacity }),
          1e-12,
        );
      }
    },
  },
  {
    name: "a kilogram 5 K warmer, mixed into the other 39, warms the tank by an eighth of a kelvin",
    methods: [tankHeatingByReturn],
    source: "Rule of mixtures by hand: (39 * 20 + 1 * 25) / 40 = 20.125",
    provenance: "exact-solution",
    run: () => {
      const seconds = 25;
      const heating = tankHeatingByReturn({ returned: 1 / seconds, rise: 5, mass: 40 });
      assertClose(20 + heating * seconds, 20.125, 1e-12);
    },
  },
  {
    name: "a gallon lasts a minute at a gallon a minute, and is filled in one",
    methods: [surgeSeconds, primeTime],
    source: "Continuity; US gallon of 231 cubic inches",
    provenance: "exact-solution",
    run: () => {
      const flow = GALLON / MINUTE;
      assertClose(surgeSeconds({ usableVolume: GALLON, missing: flow }), MINUTE, 1e-12);
      assertClose(primeTime({ volume: GALLON, flow }), MINUTE, 1e-12);
    },
  },
  {
    name: "a surge tank that is emptied second by second lasts as long as is said",
    methods: [missingFlow, surgeSeconds],
    source: "Continuity, volume counted down in steps of 10 ms",
    provenance: "exact-solution",
    run: () => {
      const tank = { usableVolume_m3: 1.5e-3, demand_m3_s: 8e-5, lift_m3_s: 3e-5 };
      let [volume, steps] = [tank.usableVolume_m3, 0];
      for (; volume > 0; steps++) {
        volume += 0.01 * tank.lift_m3_s;
        volume -= 0.01 * tank.demand_m3_s;
      }
      const said = surgeTime(new Working(), "lift", tank);
      assertClose(said ?? NaN, steps * 0.01, 1e-3);
    },
  },
  {
    name: "a surge tank never runs empty while the lift pump keeps up",
    methods: [],
    source: "Continuity",
    provenance: "exact-solution",
    run: () => {
      const working = new Working();
      const tank = { usableVolume_m3: 1e-3, demand_m3_s: 5e-5 };
      for (const lift_m3_s of [5e-5, 9e-5]) {
        assertEquals(surgeTime(working, "lift", { ...tank, lift_m3_s }), undefined);
      }
      assertEquals(working.uses.map(({ method }) => method), ["missing-flow", "missing-flow"]);
    },
  },
  {
    name: "a gear pump of 3.93 cubic inches at 1800 rpm: 28 of 30.6 gallons a minute",
    methods: [pumpDisplacement, slipOf, drivenPumpFlow],
    source: "A. Esposito, Fluid Power with Applications, worked example of the gear pump: " +
      "gears of 3 and 2 in, 1 in wide",
    provenance: "from-memory",
    run: () => {
      const displacement = Math.PI / 4 * (3 ** 2 - 2 ** 2) * INCH ** 3;
      const pumpSpeed = 1800 / MINUTE;
      const gallons = GALLON / MINUTE;
      const displaced = drivenPumpFlow({ displacement, pumpSpeed, slip: 0 });
      assertClose(displaced / gallons, 30.6, 1e-3);
      const found = pumpDisplacement({ freeFlow: 30.6 * gallons, pumpSpeed });
      assertClose(found / INCH ** 3, 3.93, 2e-3);
      const slip = slipOf({ displacement, pumpSpeed, statedFlow: 28 * gallons });
      assertClose(slip / gallons, 30.6 - 28, 0.015);
      assertClose(drivenPumpFlow({ displacement, pumpSpeed, slip }), 28 * gallons, 1e-12);
    },
  },
  {
    name: "a pump that gives 92 % at full speed gives 80 % at two fifths of it",
    methods: [slipOf, drivenPumpFlow],
    source:
      "Article on the condition of hydraulic pumps: 920 of 1000 L/min, the loss of 80 L/min " +
      "stays at the same pressure; 320 of 400 L/min from memory",
    provenance: "from-memory",
    run: () => {
      const litres = 1e-3 / MINUTE;
      const displacement = 0.5e-3;
      const full = 1000 * litres / displacement;
      const slip = slipOf({ displacement, pumpSpeed: full, statedFlow: 920 * litres });
      const slower = drivenPumpFlow({ displacement, pumpSpeed: 0.4 * full, slip });
      assertClose(slower / litres, 320, 1e-9);
      assert(drivenPumpFlow({ displacement, pumpSpeed: 0.05 * full, slip }) < 0);
    },
  },
  {
    name: "a pump on the camshaft turns once for two turns of the crank",
    methods: [pumpSpeedFromEngine],
    source: "Four-stroke cycle: 6000 rpm at the crank, 3000 at the cam",
    provenance: "exact-solution",
    run: () => {
      const pumpSpeed = pumpSpeedFromEngine({ engineSpeed: 6000 / MINUTE, driveRatio: 1 / 2 });
      assertClose(pumpSpeed * MINUTE, 3000, 1e-12);
    },
  },
];
