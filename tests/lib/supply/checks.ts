import { assertEquals } from "@std/assert";
import { type Piece, Run } from "@/lib/line/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import {
  affinityFlow,
  affinityPressure,
  electricalPower,
  electricPump,
  heldFlow,
  hydraulicPower,
  neededPressure,
  operatingPoint,
  parallelFlow,
  pumpAt,
  pumpCurrent,
  pumpFlowBetween,
  pumpFlowBetweenVoltages,
  pumpFlowToAskFor,
  pumpMargin,
  type PumpPoint,
  pumpsTogether,
  pumpWarming,
  pumpWork,
  readPump,
  returnFlow,
  seriesPressure,
  STANDARD_GRAVITY_m_s2,
  Supply,
  type SystemCurve,
} from "@/lib/supply/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Check, fromReference } from "../../helpers/checks.ts";
import { heatChecks } from "./heat_checks.ts";

/** Checks of lib/supply. */
export const checks: Check[] = [
  ...heatChecks,
  ...fromReference("pump-system.json", {
    "operating point: pump table against p = p_static + k Q^n": {
      methods: [hydraulicPower],
      run: (i) => {
        const linear = metBy(i);
        const cubic = operatingPoint(pointsOf(i), systemOf(i), "monotone-cubic");
        return {
          flow_linear_m3_per_s: linear?.flow_m3_s,
          pressure_linear_Pa: linear?.pressure_Pa,
          flow_monotone_cubic_m3_per_s: cubic?.flow_m3_s,
          pressure_monotone_cubic_Pa: cubic?.pressure_Pa,
          hydraulic_power_W: linear &&
            hydraulicPower({ flow: linear.flow_m3_s, pressureRise: linear.pressure_Pa }),
        };
      },
    },
    "no operating point inside the table*": {
      methods: [],
      run: (i) => ({
        operating_point_in_table: metBy(i) !== undefined ||
          operatingPoint(pointsOf(i), systemOf(i), "monotone-cubic") !== undefined,
      }),
    },
    "pump margin at required pressure (linear interpolation)": {
      methods: [pumpFlowBetween, pumpMargin, returnFlow],
      run: (i) => {
        const { available_m3_s: available = NaN } = pumpAt(new Working(), "pump", {
          curves: [{ voltage_V: 13.5, points: pointsOf(i) }],
          count: 1,
          arrangement: "parallel",
        }, { pressure_Pa: i.required_pressure_Pa, voltage_V: 13.5 });
        const flows = { available, required: i.required_flow_m3_per_s };
        return {
          available_flow_m3_per_s: available,
          margin_fraction: pumpMargin(flows),
          return_flow_m3_per_s: returnFlow(flows),
        };
      },
    },
    "two identical pumps in parallel*": {
      methods: [],
      run: (i) => {
        const met = metBy(i, i.pumps_parallel);
        return { flow_total_m3_per_s: met?.flow_m3_s, pressure_Pa: met?.pressure_Pa };
      },
    },
    "hydraulic power, electrical current and fuel heating": {
      methods: [hydraulicPower, electricalPower, pumpCurrent, pumpWarming],
      run: (i) => {
        const work = pumpWork(new Working(), "pump", {
          flow_m3_s: i.flow_m3_per_s,
          pressure_Pa: i.pressure_rise_Pa,
          voltage_V: i.supply_voltage_V,
          efficiency: i.overall_efficiency,
          density_kg_m3: i.density_kg_per_m3,
          heatCapacity_J_kg_K: i.specific_heat_J_per_kg_K,
        });
        return {
          hydraulic_power_W: work.hydraulicPower_W,
          electrical_power_W: work.electricalPower_W,
          current_A: work.current_A,
          temperature_rise_per_pass_K: work.warming_K,
        };
      },
    },
    "textbook: brake horsepower of a pump*": {
      methods: [hydraulicPower, electricalPower],
      run: (i) => ({
        shaft_power_W: electricalPower({
          hydraulicPower: hydraulicPower({
            flow: i.flow_m3_per_s,
            pressureRise: i.density_kg_per_m3 * i.gravity_m_per_s2 * i.head_m,
          }),
          efficiency: i.efficiency,
        }),
      }),
    },
  }),
  {
    name: "a pump at three quarters of its voltage: the table is met at 9/16 of its pressure",
    methods: [affinityFlow, affinityPressure],
    source: "Affinity laws by hand: (3/4)^2 = 9/16, flow 3/4; hydraulic power falls as the cube",
    provenance: "exact-solution",
    run: () => {
      const to = { voltage: 9, statedVoltage: 12 };
      assertClose(affinityPressure({ pressure: 9e4, ...to }), 16e4, 1e-12);
      assertClose(affinityFlow({ flow: 8e-5, ...to }), 6e-5, 1e-12);
    },
  },
  {
    name: "half way between tables at 12 and 14 V lies half way between their flows",
    methods: [pumpFlowBetweenVoltages],
    source: "By hand",
    provenance: "exact-solution",
    run: () => {
      const known = { lowerVoltage: 12, lowerFlow: 7e-5, upperVoltage: 14, upperFlow: 9e-5 };
      for (const [voltage, flow] of [[12, 7e-5], [13, 8e-5], [14, 9e-5]] as const) {
        assertClose(pumpFlowBetweenVoltages({ voltage, ...known }), flow, 1e-12);
      }
    },
  },
  {
    name: "two pumps side by side double the flow, two in a row halve the pressure of each",
    methods: [parallelFlow, seriesPressure],
    source: "Continuity; pressures add",
    provenance: "exact-solution",
    run: () => {
      assertEquals(parallelFlow({ flow: 4e-5, count: 2 }), 8e-5);
      assertEquals(seriesPressure({ pressure: 6e5, count: 2 }), 3e5);
    },
  },
  {
    name: "a pump bought with 20 % has a margin of 20 %",
    methods: [pumpFlowToAskFor],
    source: "Round trip through the definition of the margin",
    provenance: "exact-solution",
    run: () => {
      const available = pumpFlowToAskFor({ required: 5e-5, margin: 0.2 });
      assertClose(available, 6e-5, 1e-12);
      assertClose(pumpMargin({ available, required: 5e-5 }), 0.2, 1e-12);
    },
  },
  {
    name: "a rail two metres above water needs two metres of water more",
    methods: [neededPressure],
    source: "ISO 80000-4: conventional metre of water, 9806.65 Pa",
    provenance: "exact-solution",
    run: () => {
      const column = { railPressure: 3e5, losses: 1e4, density: 1000 };
      const pressure = neededPressure({ ...column, gravity: STANDARD_GRAVITY_m_s2, height: 2 });
      assertClose(pressure, 3.1e5 + 2 * 9806.65, 1e-12);
    },
  },
];

// deno-lint-ignore no-explicit-any
function pointsOf(i: any): PumpPoint[] {
  return i.pump_flow_m3_per_s.map((flow_m3_s: number, n: number) => ({
    flow_m3_s,
    pressure_Pa: i.pump_pressure_rise_Pa[n],
  }));
}

// deno-lint-ignore no-explicit-any
function systemOf(i: any): SystemCurve {
  return {
    static_Pa: i.system_static_Pa,
    coefficient: i.system_coefficient,
    exponent: i.system_exponent,
  };
}

/** Where pumps meet a system as an evaluation finds it: the supply solved, the pressure held, all burnt. */
// deno-lint-ignore no-explicit-any
function metBy(i: any, count = 1): PumpPoint | undefined {
  const { static_Pa, coefficient, exponent } = systemOf(i);
  const liquid = { density_kg_m3: 745, viscosity_Pa_s: 4.1e-4 };
  const stated = [2e-5, 8e-5].map((flow_m3_s) => ({
    flow_m3_s,
    loss_Pa: coefficient * flow_m3_s ** exponent,
  }));
  const loss: Piece = {
    kind: "filter",
    name: "loss",
    bore_m: 0.01,
    length_m: 0,
    rise_m: 0,
    count: 1,
    stated,
  };
  const supply = new Supply({
    liquid,
    tank_Pa: 0,
    head_Pa: 0,
    suction: undefined,
    feed: new Run([loss], liquid),
    branch: undefined,
    crossover: undefined,
    back: undefined,
    regulator: { place: "rail", opens_Pa: static_Pa, droop_Pa_s_m3: 0, wideOpen: undefined },
    rails: {
      count: 1,
      length_m: 0.1,
      bore_m: 0.04,
      roughness_m: 2e-5,
      stations_m: [0.05],
      feed: "one-end",
      connection: "parallel",
    },
  });
  const one = electricPump([{ at: 13.5, points: pointsOf(i) }], {
    battery_V: 13.5,
    wires_ohm: 0,
    contacts_V: 0,
    efficiency: 0.3,
  });
  const pump = pumpsTogether(one, { count, arrangement: "parallel" });
  const near = supply.solve({
    pump,
    demand_m3_s: 1e-6,
    injectors: 1,
    manifold_Pa: 0,
    reference_Pa: 0,
  });
  if (!near.ok) throw new Error(near.part);
  const { flow_m3_s } = heldFlow(supply, pump, 0, near.state);
  return flow_m3_s === undefined
    ? undefined
    : { flow_m3_s, pressure_Pa: readPump(pump, flow_m3_s).pressure_Pa };
}
