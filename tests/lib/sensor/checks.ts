/** What the sensor room is held against. */
import { assert, assertEquals } from "@std/assert";
import { linearCurve } from "@/lib/basics/mod.ts";
import { proofPressure } from "@/lib/proof/mod.ts";
import {
  betaFromPoints,
  chooseRange,
  countAtShare,
  countsUsed,
  dividerResistance,
  dividerShare,
  EXAMPLE_NTC,
  ntcCoefficients,
  type NtcPoint,
  pressureFromCount,
  pressurePerCount,
  resistanceByBeta,
  sensorError,
  sensorPressure,
  sensorRange,
  sensorVoltage,
  signalState,
  temperatureByBeta,
  temperatureBySteinhartHart,
  USUAL_SIGNAL,
} from "@/lib/sensor/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Answers, type Check, fromReference } from "../../helpers/checks.ts";

const BAR = 1e5;
const ZERO_K = 273.15;

/** Points of the file as ours. */
function pointsOf(
  list: readonly (readonly [number, number])[],
): [NtcPoint, NtcPoint, NtcPoint] {
  const [p, q, r] = list.map(([celsius, resistance_ohm]) => ({
    temperature_K: celsius + ZERO_K,
    resistance_ohm,
  }));
  assert(p && q && r);
  return [p, q, r];
}

/** Beta of two points given in degrees Celsius. */
function beta(t1: number, r1: number, t2: number, r2: number): number {
  return betaFromPoints({
    coldTemperature: t1 + ZERO_K,
    coldResistance: r1,
    hotTemperature: t2 + ZERO_K,
    hotResistance: r2,
  });
}

const ANSWERS: Answers = {
  "pressure from a ratiometric output": {
    methods: [sensorPressure],
    run: (i) => ({
      bar: sensorPressure({
        voltage: i.V,
        supply: i.Vs,
        range: i.full_scale_bar * BAR,
        ...USUAL_SIGNAL,
      }) / BAR,
    }),
  },
  "output voltage at a pressure": {
    methods: [sensorVoltage],
    run: (i) => {
      const voltage = sensorVoltage({
        pressure: i.bar * BAR,
        supply: i.Vs,
        range: i.full_scale_bar * BAR,
        ...USUAL_SIGNAL,
      });
      return { V: voltage, ratio: voltage / i.Vs };
    },
  },
  "pressure per ADC count (reference = Vs)": {
    methods: [pressurePerCount, countsUsed],
    run: ({ bits, full_scale_bar }) => ({
      bar_per_count: pressurePerCount({ range: full_scale_bar * BAR, bits, ...USUAL_SIGNAL }) / BAR,
      counts_used: countsUsed({ bits, ...USUAL_SIGNAL }),
    }),
  },
  "pressure from a raw count": {
    methods: [pressureFromCount],
    run: ({ count, bits, full_scale_bar }) => ({
      bar: pressureFromCount({ count, bits, range: full_scale_bar * BAR, ...USUAL_SIGNAL }) / BAR,
    }),
  },
  "sensor range choice": {
    methods: [sensorRange],
    run: (i) => {
      const workingPressure = (i.base_bar + i.boost_bar) * BAR;
      const test = proofPressure({ workingPressure, faultPressure: 0 });
      assertClose(test, i.test_factor * workingPressure, 1e-12);
      const ranges = (i.standard_ranges_bar as number[]).map((bar) => bar * BAR);
      const range = chooseRange(test, ranges);
      assert(range);
      assertEquals(chooseRange(test), range, "our own list of ranges");
      return {
        test_bar: test / BAR,
        range_bar: range / BAR,
        use_fraction: 1 / sensorRange({ range, workingPressure }),
      };
    },
  },
  "plausibility bands": {
    methods: [],
    run: (i) => {
      const given = { low: i.low_fault_V / i.Vs, high: i.high_fault_V / i.Vs };
      const state = signalState(i.V, i.Vs);
      assertEquals(state, signalState(i.V, i.Vs, given), "the usual band is the file's");
      return { state: state === "valid" ? "valid" : "fault" };
    },
  },
  "zero offset seen at atmosphere": {
    methods: [sensorPressure],
    run: (i) => ({
      offset_bar: sensorPressure({
        voltage: i.V_at_0,
        supply: i.Vs,
        range: i.full_scale_bar * BAR,
        ...USUAL_SIGNAL,
      }) / BAR,
    }),
  },
  "accuracy in bar": {
    methods: [sensorError],
    run: (i) => ({
      bar: sensorError({ accuracy: i.accuracy_of_FS, range: i.full_scale_bar * BAR }) / BAR,
    }),
  },
  "generic NTC resistance": {
    methods: [resistanceByBeta],
    run: (i) => ({
      R_ohm: resistanceByBeta({ temperature: i.T_C + ZERO_K, ...EXAMPLE_NTC }),
    }),
  },
  "beta from two points": {
    methods: [betaFromPoints],
    run: (i) => ({ beta_K: beta(i.T1_C, i.R1_ohm, i.T2_C, i.R2_ohm) }),
  },
  "temperature by the beta equation": {
    methods: [temperatureByBeta],
    run: (i) => ({
      T_C: temperatureByBeta({
        resistance: i.R_ohm,
        reference: i.R25_ohm,
        referenceTemperature: 25 + ZERO_K,
        beta: i.beta_K,
      }) - ZERO_K,
    }),
  },
  "Steinhart-Hart coefficients from three points (numpy linear solve)": {
    methods: [],
    run: ({ points }) => {
      const { a, b, c } = ntcCoefficients(pointsOf(points));
      return { A: a, B: b, C: c };
    },
  },
  "temperature by Steinhart-Hart": {
    methods: [temperatureBySteinhartHart],
    run: ({ R_ohm: resistance, points }) => ({
      T_C: temperatureBySteinhartHart({ resistance, ...ntcCoefficients(pointsOf(points)) }) -
        ZERO_K,
    }),
  },
  "divider ratio with pull-up": {
    methods: [dividerShare, countAtShare],
    run: (i) => {
      const share = dividerShare({ resistance: i.R_ntc_ohm, pullUp: i.pullup_ohm });
      return { ratio: share, counts10: countAtShare({ share, bits: 10 }) };
    },
  },
};

/** A sensor of 7 bar, from its two points: volts over pressure. */
const TWO_POINTS = [[0, 0.5], [7e5, 4.5]] as const;
const SEVEN_BAR = { supply: 5, range: 7e5, ...USUAL_SIGNAL };

/** What a converter does: it weighs the signal against halves of the supply, the greatest first. */
function convert(voltage: number, supply: number, bits: number): number {
  let [count, weighed] = [0, 0];
  for (let bit = 1; bit <= bits; bit++) {
    const half = supply / 2 ** bit;
    const fits = weighed + half <= voltage;
    count = 2 * count + (fits ? 1 : 0);
    if (fits) weighed += half;
  }
  return count;
}

/** A 10 kilo-ohm sensor of beta(25/85) 3435 K as its published table has it [°C, ohm]. */
const TEN_KILO = [[0, 27_280], [25, 10_000], [50, 4161], [85, 1452]] as const;

const BY_HAND: readonly Check[] = [
  {
    name: "signal and pressure between the two points of a data sheet",
    methods: [sensorPressure, sensorVoltage],
    source: "Straight interpolation between 0.5 V at nothing and 4.5 V at full scale",
    provenance: "exact-solution",
    run: () => {
      const volts = linearCurve(TWO_POINTS);
      for (const pressure of [0, 1e5, 3e5, 6.9e5]) {
        const voltage = sensorVoltage({ pressure, ...SEVEN_BAR });
        assertClose(voltage, volts(pressure), 1e-12);
        assertClose(1e5 + sensorPressure({ voltage, ...SEVEN_BAR }), 1e5 + pressure, 1e-12);
      }
      // The supply sags, the signal with it: the pressure told stays.
      const sagged = sensorPressure({ voltage: 1.7 * 0.95, ...SEVEN_BAR, supply: 4.75 });
      assertClose(sagged, sensorPressure({ voltage: 1.7, ...SEVEN_BAR }), 1e-12);
    },
  },
  {
    name: "counts of a converter that weighs bit by bit",
    methods: [pressureFromCount, pressurePerCount, countsUsed, countAtShare],
    source: "Successive approximation, simulated",
    provenance: "exact-solution",
    run: () => {
      for (const bits of [10, 12]) {
        const sensor = { bits, range: 7e5, ...USUAL_SIGNAL };
        const step = pressurePerCount(sensor);
        for (const pressure of [0.3e5, 2e5, 3.33e5, 6.5e5]) {
          const voltage = sensorVoltage({ pressure, ...SEVEN_BAR });
          const count = convert(voltage, 5, bits);
          const told = pressureFromCount({ count, ...sensor });
          assert(told <= pressure + 1e-6 && pressure < told + step, `${pressure} told as ${told}`);
          assertEquals(Math.floor(countAtShare({ share: voltage / 5, bits })), count);
          const next = pressureFromCount({ count: count + 1, ...sensor });
          assertClose(next - told, step, 1e-9, "one step");
        }
        const used = convert(4.5, 5, bits) - convert(0.5, 5, bits);
        assert(Math.abs(used - countsUsed(sensor)) <= 1);
      }
    },
  },
  {
    name: "the signal at working pressure lies at one over the factor of its span",
    methods: [sensorRange],
    source: "Straight line of the sensor",
    provenance: "exact-solution",
    run: () => {
      for (const workingPressure of [3e5, 4.4e5, 6e5]) {
        const voltage = sensorVoltage({ pressure: workingPressure, ...SEVEN_BAR });
        const factor = sensorRange({ range: SEVEN_BAR.range, workingPressure });
        assertClose((4.5 - 0.5) / (voltage - 0.5), factor, 1e-12);
      }
    },
  },
  {
    name: "a signal wrong by the accuracy of its span tells the error",
    methods: [sensorError],
    source: "Straight line of the sensor",
    provenance: "exact-solution",
    run: () => {
      const right = sensorPressure({ voltage: 2.5, ...SEVEN_BAR });
      const wrong = sensorPressure({ voltage: 2.5 + 0.01 * (4.5 - 0.5), ...SEVEN_BAR });
      assertClose(sensorError({ accuracy: 0.01, range: SEVEN_BAR.range }), wrong - right, 1e-9);
    },
  },
  {
    name: "a published sensor of 10 kilo-ohm: beta, then resistance and temperature between",
    methods: [betaFromPoints, resistanceByBeta, temperatureByBeta, temperatureBySteinhartHart],
    source: "Published table of a 10 kilo-ohm NTC with beta(25/85) 3435 K",
    provenance: "from-memory",
    run: () => {
      const [[t0, r0], [t1, r1], [t2, r2], [t3, r3]] = TEN_KILO;
      const found = beta(t1, r1, t3, r3);
      assertClose(found, 3435, 1e-3, "beta");
      const law = { reference: r1, referenceTemperature: t1 + ZERO_K, beta: found };
      assertClose(resistanceByBeta({ temperature: t2 + ZERO_K, ...law }), r2, 0.02, "at 50 °C");
      assertClose(temperatureByBeta({ resistance: r2, ...law }), t2 + ZERO_K, 2e-3, "50 °C");
      const ntc = ntcCoefficients(pointsOf([[t0, r0], [t1, r1], [t3, r3]]));
      const between = temperatureBySteinhartHart({ resistance: r2, ...ntc });
      assertClose(between, t2 + ZERO_K, 3e-4, "50 °C by three points, within 0.1 K");
    },
  },
  {
    name: "temperature by beta undoes resistance by beta",
    methods: [temperatureByBeta],
    source: "The same law, the other way round",
    provenance: "exact-solution",
    run: () => {
      for (const temperature of [253.15, 298.15, 363.15]) {
        const resistance = resistanceByBeta({ temperature, ...EXAMPLE_NTC });
        assertClose(temperatureByBeta({ resistance, ...EXAMPLE_NTC }), temperature, 1e-12);
      }
    },
  },
  {
    name: "a resistor with a pull-up by the current through both",
    methods: [dividerShare, dividerResistance],
    source: "Ohm's law: voltages over both add up to the supply",
    provenance: "exact-solution",
    run: () => {
      for (const [resistance, pullUp] of [[2500, 1000], [320, 1000], [2057, 2490]] as const) {
        const share = dividerShare({ resistance, pullUp });
        const current = 5 * share / resistance;
        assertClose(5 * share + current * pullUp, 5, 1e-12);
        assertClose(dividerResistance({ share, pullUp }), resistance, 1e-12);
      }
    },
  },
];

/** Every check of this room. */
export const checks: readonly Check[] = [
  ...fromReference("sensors.json", ANSWERS),
  ...BY_HAND,
];
