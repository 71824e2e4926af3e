import { assertEquals } from "@std/assert";
import { Working } from "@/lib/method/mod.ts";
import {
  awgDiameter,
  conductorResistance,
  COPPER_COEFFICIENT_1_K,
  COPPER_RESISTIVITY_ohm_m,
  leastFuse,
  loopResistance,
  pumpWiring,
  resistanceRatio,
  smallestArea,
  terminalVoltage,
  voltageLost,
  WIRE_REFERENCE_K,
  wireArea,
  wireDrop,
  wireHeat,
  wireHeatPerLength,
  WIRES,
} from "@/lib/wiring/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Check, fromReference } from "../../helpers/checks.ts";
import { heatChecks } from "./of_heat.ts";
import { tableChecks } from "./of_tables.ts";

/** Coefficient that the correction factors of IEC 60228 are rounded to [1/K]. */
const IEC_60228_COEFFICIENT_1_K = 0.004;

/** Checks of lib/wiring. */
export const checks: Check[] = [
  ...fromReference("wiring.json", {
    "solid round wire of an American gauge: diameter, area and copper resistance at 20 degC": {
      methods: [awgDiameter, wireArea, conductorResistance],
      run: (i) => solidGauge(i.awg, i.resistivity_ohm_m),
    },
    "published wire table value": {
      methods: [awgDiameter, wireArea, conductorResistance],
      run: (i) => solidGauge(i.awg, COPPER_RESISTIVITY_ohm_m),
    },
    "maximum conductor resistance at 20 degC, plain copper": {
      methods: [],
      run: (i) => ({
        class_5_ohm_per_m: Object.values(WIRES)
          .find((wire) => Math.abs(wire.area_m2 - i.nominal_area_m2) < 1e-12)
          ?.resistance20_ohm_m,
      }),
      leaves: { class_1_2_ohm_per_m: "solid and coarse strands break when shaken: not offered" },
    },
    "copper resistance ratio to 20 degC": {
      methods: [resistanceRatio],
      run: (i) => ({ ratio: ratioAt(i.temperature_K, i.temperature_coefficient_per_K) }),
    },
    "IEC 60228 temperature correction factors to 20 degC": {
      methods: [resistanceRatio],
      run: (i) => ({
        k_t: i.temperatures_degC.map((celsius: number) =>
          1 / ratioAt(celsius + 273.15, IEC_60228_COEFFICIENT_1_K)
        ),
      }),
    },
    "voltage drop, out and return*": {
      methods: [resistanceRatio, loopResistance, wireDrop, voltageLost, terminalVoltage, wireHeat],
      run: (i) => {
        assertEquals(i.temperature_coefficient_per_K, COPPER_COEFFICIENT_1_K);
        const wiring = pumpWiring(new Working(), "wiring", {
          battery_V: i.supply_voltage_V,
          current_A: i.current_A,
          wire: { resistance20_ohm_m: i.resistance_20C_ohm_per_m, outside_m: 3e-3 },
          outLength_m: i.one_way_length_m,
          returnLength_m: i.one_way_length_m,
          conductorTemperature_K: i.conductor_temperature_K,
          contacts_V: 0,
        });
        return {
          loop_resistance_ohm: wiring.loop_ohm,
          voltage_drop_V: wiring.drop_V,
          voltage_at_load_V: wiring.terminal_V,
          drop_fraction: wiring.lost_V / i.supply_voltage_V,
          heat_in_wire_W: wiring.heat_W,
        };
      },
    },
    "smallest copper area for an allowed drop (out and return)": {
      methods: [smallestArea],
      run: (i) => ({
        area_m2: smallestArea({
          resistivity: i.resistivity_20C_ohm_m,
          ratio: ratioAt(i.conductor_temperature_K, COPPER_COEFFICIENT_1_K),
          outLength: i.one_way_length_m,
          returnLength: i.one_way_length_m,
          current: i.current_A,
          allowedDrop: i.allowed_drop_V,
        }),
      }),
    },
  }),
  {
    name: "annealed copper conducts 58 metres of a square millimetre for each siemens",
    methods: [],
    source: "IEC 60028: 100 % IACS is 58 MS/m at 20 °C",
    provenance: "from-memory",
    run: () => assertClose(COPPER_RESISTIVITY_ohm_m, 1 / 58e6, 3e-5), // held to five figures
  },
  {
    name: "copper's resistance points to nothing at -234.5 °C",
    methods: [resistanceRatio],
    source: "NBS Handbook 100, Copper Wire Tables: inferred temperature of zero resistance",
    provenance: "from-memory",
    run: () => {
      for (const celsius of [-20, 0, 40, 60, 80, 105]) {
        const published = (234.5 + celsius) / (234.5 + 20);
        const ratio = ratioAt(celsius + 273.15, COPPER_COEFFICIENT_1_K);
        assertClose(ratio, published, 1e-4, `${celsius} °C`);
      }
    },
  },
  {
    name: "area for a drop agrees with the boat builders' formula in circular mils",
    methods: [smallestArea],
    source: "ABYC E-11: CM = 10.75 I L / E, L out and back in feet, copper of about 30 °C",
    provenance: "second-correlation",
    run: () => {
      const [current, feet, drop] = [15, 30, 0.4];
      const circularMil = Math.PI / 4 * 0.0254e-3 ** 2;
      const area = smallestArea({
        resistivity: COPPER_RESISTIVITY_ohm_m,
        ratio: ratioAt(303.15, COPPER_COEFFICIENT_1_K),
        outLength: feet * 0.3048 * 0.7,
        returnLength: feet * 0.3048 * 0.3,
        current,
        allowedDrop: drop,
      });
      assertClose(area, 10.75 * current * feet / drop * circularMil, 5e-3);
    },
  },
  {
    name: "what the battery gives and the pump doesn't get is heat in wires and contacts",
    methods: [voltageLost, terminalVoltage, wireHeat, wireHeatPerLength],
    source: "Conservation of energy",
    provenance: "exact-solution",
    run: () => {
      const [battery_V, current_A, contacts_V, outLength_m, returnLength_m] = [13, 12, 0.2, 5, 2];
      const wiring = pumpWiring(new Working(), "wiring", {
        battery_V,
        current_A,
        wire: WIRES["AWG 14"],
        outLength_m,
        returnLength_m,
        conductorTemperature_K: 340,
        contacts_V,
      });
      const missing_W = (battery_V - wiring.terminal_V) * current_A;
      assertClose(wiring.heat_W + contacts_V * current_A, missing_W, 1e-12);
      assertClose(wiring.heatPerMetre_W_m * (outLength_m + returnLength_m), wiring.heat_W, 1e-12);
    },
  },
  {
    name: "a lasting current loads an overcurrent device to 80 %: 12 A on 15 A, 24 A on 30 A",
    methods: [leastFuse],
    source: "NFPA 70 section 210.20(A): 125 % of the continuous load",
    provenance: "from-memory",
    run: () => {
      assertClose(leastFuse({ current: 12, factor: 1 / 0.8 }), 15, 1e-12);
      assertClose(leastFuse({ current: 24, factor: 1 / 0.8 }), 30, 1e-12);
    },
  },
  ...heatChecks,
  ...tableChecks,
];

function ratioAt(temperature: number, coefficient: number): number {
  return resistanceRatio({ temperature, reference: WIRE_REFERENCE_K, coefficient });
}

function solidGauge(gauge: number, resistivity: number): Record<string, number> {
  const diameter_m = awgDiameter({ gauge });
  const area_m2 = wireArea({ diameter: diameter_m });
  return {
    diameter_m,
    area_m2,
    resistance_ohm_per_m: conductorResistance({ resistivity, area: area_m2, stranding: 1 }),
  };
}
