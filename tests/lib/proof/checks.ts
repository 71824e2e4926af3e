/** What the proof room is held against. */
import { assert } from "@std/assert";
import {
  AIR_GAS_CONSTANT_J_kg_K,
  AIR_HEAT_RATIO,
  AIR_MOLAR_MASS_kg_mol,
  airEnergyByCode,
  airTestRelief,
  airThroughCapillary,
  airThroughHole,
  airViscosity,
  ALLOWED_LEAK_Pa_m3_s,
  ATMOSPHERE_Pa,
  bubbleFall,
  bubbleInterval,
  type CodeName,
  codeRule,
  convertLeak,
  criticalRatio,
  expectedFall,
  explosiveEquivalent,
  firstHalt,
  flammableVolume,
  freshAirFlow,
  fuelThroughCapillary,
  fuelThroughHole,
  gasEnergy,
  gasEnergyBound,
  headspaceShare,
  highestWorkingPressure,
  leakAmount,
  leakAtPressure,
  leakFromBubbles,
  leakFromDecay,
  leakFromStandardFlow,
  type LeakUnit,
  LEAST_STAND_OFF_m,
  liquidEnergy,
  liquidFall,
  lowerLimitMass,
  MOLAR_GAS_CONSTANT_J_mol_K,
  pressureAtStartTemperature,
  PROOF_HOLD_s,
  proofPressure,
  purgeTime,
  smallestLeakSeen,
  standOff,
  subjectOf,
  SWING_SHARE,
  testVolume,
  thermalChange,
  tightnessOf,
  timeToSee,
  trappedLiquidRise,
  vapourDensityRatio,
  vapourVolume,
  WATER_BULK_MODULUS_Pa,
} from "@/lib/proof/mod.ts";
import { parseQuantity, unitsReady } from "@/lib/units/mod.ts";
import { assertClose } from "../../helpers/assert_close.ts";
import { type Answer, type Answers, type Check, fromReference } from "../../helpers/checks.ts";

await unitsReady();

const MBAR_L_S = convertLeak(1, "mbar L/s", "Pa m3/s");
const R = MOLAR_GAS_CONSTANT_J_mol_K;
const ROOM_K = 293.15;

/** The unit names of the reference file. */
const UNIT_NAMES: Readonly<Record<string, LeakUnit>> = {
  "Pa m^3/s": "Pa m3/s",
  "millibar liter/second": "mbar L/s",
  "atm cm^3/second": "atm cm3/s",
  "atm cm^3/minute": "atm cm3/min",
};

/** Which rule the reference file asks about, and its numbers under the file's names. */
const RULES: Readonly<Record<string, readonly [CodeName, Readonly<Record<string, string>>]>> = {
  "ASME B31.3 345.4.2": ["liquidTest", { factor_min: "leastFactor" }],
  "ASME B31.3 345.5.4": ["airTest", { factor_min: "leastFactor", factor_max: "mostFactor" }],
  "FMVSS 301 (49 CFR 571.301)": ["crashUnitedStates", { period_after_min: "then_min" }],
  "UN R34 / same wording in UN ADR-type texts": ["tank", { factor_on_service: "factor" }],
};

function ruleNumbers(document: string): Record<string, number> {
  const [name, keys] = RULES[document] ?? ["hold", {}];
  const { numbers } = codeRule(name);
  return Object.fromEntries(Object.entries(keys).map(([k, v]) => [k, numbers[v] ?? NaN]));
}

/** A pressure as typed, in SI, by the units room. */
function pascal(text: string): number {
  const parsed = parseQuantity(text, "pressure");
  assert(parsed.ok, text);
  return parsed.value;
}

/** A test of the smallest leak or the time with one step of the gauge, as the file counts. */
function gaugeOf(i: { volume_cm3: number; gauge_step_mbar: number }) {
  return { steps: 1, resolution: i.gauge_step_mbar * 100, volume: i.volume_cm3 * 1e-6 };
}

const AIR = { heatRatio: AIR_HEAT_RATIO, gasConstant: AIR_GAS_CONSTANT_J_kg_K };

/** A standard is compared in substance: every word of weight has to stand in our wording, by its stem. */
const SUBJECT: Answer = {
  methods: [],
  leaves: {
    scope: "compared in substance inside run",
    subject: "compared in substance inside run",
  },
  run: ({ standard }, c) => {
    const ours = subjectOf(standard)?.toLowerCase() ?? "";
    const { scope, subject } = c.expected as { scope?: string; subject?: string };
    const theirs = (scope ?? subject ?? "").toLowerCase().match(/[a-z]{4,}/g) ?? [];
    assert(theirs.length > 1);
    for (const word of theirs) {
      assert(ours.includes(word.slice(0, 4)), `${standard}: "${ours}" misses "${word}"`);
    }
    return {};
  },
};

const LEAK_TESTS: Answers = {
  "leak-rate unit conversion": {
    methods: [],
    run: ({ value, to }) => {
      const [number = "", ...unit] = value.split(" ");
      const from = UNIT_NAMES[unit.join(" ")];
      const wanted = UNIT_NAMES[to];
      assert(from && wanted);
      return convertLeak(Number(number), from, wanted);
    },
  },
  "pressure conversion": {
    methods: [],
    run: ({ value, unit, to }) => pascal(`${value} ${unit}`) / pascal(`1 ${to}`),
  },
  "hydrostatic test pressure factor": {
    methods: [proofPressure],
    run: ({ code }) => {
      const { leastFactor } = codeRule("liquidTest").numbers;
      assert(code.endsWith("345.4.2") && leastFactor);
      const factor = proofPressure({ workingPressure: 4e5, faultPressure: 0 }) / 4e5;
      assertClose(factor, leastFactor, 1e-12, "factor of the method against that of the rule");
      return { factor_min: factor };
    },
  },
  "pneumatic test pressure factors": { methods: [], run: ({ code }) => ruleNumbers(code) },
  "relief device set pressure for a pneumatic test": {
    methods: [airTestRelief],
    run: (i) => ({ max_set_kPa: airTestRelief({ testPressure: i.test_pressure_kPa * 1e3 }) / 1e3 }),
  },
  "preliminary check pressure in a sensitive leak test": {
    methods: [firstHalt],
    run: (i) => ({ check_kPa: firstHalt({ testPressure: i.test_pressure_kPa * 1e3 }) / 1e3 }),
  },
  "required sensitivity of the sensitive leak test": {
    methods: [],
    run: () => {
      const n = codeRule("sensitiveTest").numbers;
      const [kPa, percent] = [(n.least_Pa ?? NaN) / 1e3, (n.leastShare ?? NaN) * 100];
      return {
        std_ml_per_s: n.sensitivity_std_mL_s,
        test_pressure_at_least: `lesser of ${kPa} kPa gauge or ${percent} % of design`,
      };
    },
  },
  "test liquid flash point": {
    methods: [],
    run: () => ({
      min_flash_C: (codeRule("testLiquid").numbers.leastFlashPoint_K ?? NaN) - 273.15,
    }),
  },
  "hold time": { methods: [], run: () => ({ min_minutes: PROOF_HOLD_s / 60 }) },
  "test pressure": {
    methods: [proofPressure],
    run: ({ max_working_MPa, kind }) => ({
      test_MPa: kind === "hydrostatic"
        ? proofPressure({ workingPressure: max_working_MPa * 1e6, faultPressure: 0 }) / 1e6
        // Cited only: the ladder never gives air more than working pressure.
        : max_working_MPa * (codeRule("airTest").numbers.leastFactor ?? NaN),
    }),
  },
  "stored energy: air against water": {
    methods: [gasEnergy, liquidEnergy, explosiveEquivalent],
    run: ({ gauge_MPa, volume_cm3 }) => {
      const [gauge, volume] = [gauge_MPa * 1e6, volume_cm3 * 1e-6];
      const air = gasEnergy({ gauge, volume, ambient: ATMOSPHERE_Pa, heatRatio: AIR_HEAT_RATIO });
      const water = liquidEnergy({ gauge, volume, bulkModulus: WATER_BULK_MODULUS_Pa });
      const tnt_kg = explosiveEquivalent({ energy: air, heat: 4_266_920 });
      return { air_J: air, water_J: water, ratio: air / water, tnt_mg: tnt_kg * 1e6 };
    },
  },
  "smallest leak a gauge step can show": {
    methods: [smallestLeakSeen],
    run: (i) => ({
      Q_mbar_L_s: smallestLeakSeen({ ...gaugeOf(i), duration: i.time_s }) / MBAR_L_S,
    }),
  },
  "waiting time to resolve a leak class": {
    methods: [timeToSee],
    run: (i) => {
      const time_s = timeToSee({ ...gaugeOf(i), leak: i.Q_mbar_L_s * MBAR_L_S });
      return { time_s, time_min: time_s / 60 };
    },
  },
  "apparent pressure change from a temperature change at constant volume": {
    methods: [thermalChange],
    run: (i) => ({
      dp_mbar: thermalChange({
        pressure: i.gauge_bar * 1e5 + ATMOSPHERE_Pa,
        temperature: i.T_K,
        temperatureChange: i.dT_K,
      }) / 100,
    }),
  },
  "temperature-corrected leak from start/end absolute pressures": {
    methods: [leakFromDecay, pressureAtStartTemperature],
    run: (i) => ({
      p2_corrected_bar: pressureAtStartTemperature({
        endPressure: i.p2_bar_abs * 1e5,
        startTemperature: i.T1_K,
        endTemperature: i.T2_K,
      }) / 1e5,
      Q_mbar_L_s: leakFromDecay({
        volume: i.volume_cm3 * 1e-6,
        duration: i.time_s,
        startPressure: i.p1_bar_abs * 1e5,
        startTemperature: i.T1_K,
        endPressure: i.p2_bar_abs * 1e5,
        endTemperature: i.T2_K,
        reference: i.T1_K,
      }) / MBAR_L_S,
    }),
  },
  "leak rate from a bubble train": {
    methods: [leakFromBubbles],
    run: (i) => ({
      Q_mbar_L_s: leakFromBubbles({
        diameter: i.bubble_dia_mm / 1e3,
        frequency: i.per_s,
        ambient: ATMOSPHERE_Pa,
      }) / MBAR_L_S,
    }),
  },
  "seconds between bubbles": {
    methods: [bubbleInterval],
    run: (i) => ({
      seconds: bubbleInterval({
        diameter: i.bubble_dia_mm / 1e3,
        ambient: ATMOSPHERE_Pa,
        leak: i.Q_mbar_L_s * MBAR_L_S,
      }),
    }),
  },
  "normal sensitivity limit of bubble emission testing": {
    methods: [leakFromStandardFlow, leakAmount],
    run: () => {
      const n = codeRule("bubbleTest").numbers;
      const temperature = n.standardTemperature_K ?? NaN;
      const leak = leakFromStandardFlow({
        flow: (n.best_std_cm3_s ?? NaN) * 1e-6,
        standardPressure: ATMOSPHERE_Pa,
        standardTemperature: temperature,
        temperature,
      });
      return {
        std_cm3_s: n.best_std_cm3_s,
        mol_s: leakAmount({ leak, gasConstant: R, temperature }),
        reliable_std_cm3_s: n.sure_std_cm3_s,
      };
    },
  },
  "bubble immersion detectability in industrial practice": {
    methods: [],
    run: () => ({
      detectable_mbar_L_s: (codeRule("immersion").numbers.shown_Pa_m3_s ?? NaN) / MBAR_L_S,
    }),
  },
  "leak classes (colloquial)": {
    methods: [],
    run: (i) => ({ label: tightnessOf(i.Q_mbar_L_s * MBAR_L_S) }),
  },
  "sensible target for a shop-made port-injection rail": {
    methods: [],
    run: () => ({ value: ALLOWED_LEAK_Pa_m3_s * 10 }),
  },
  "liquid seep that corresponds to an air leak through the same fine laminar passage": {
    methods: [fuelThroughCapillary],
    run: (i) => {
      const leak_m3_s = fuelThroughCapillary({
        airLeak: i.Q_air_mbar_L_s * MBAR_L_S,
        airGauge: i.gauge_MPa * 1e6,
        fuelGauge: i.gauge_MPa * 1e6,
        ambient: ATMOSPHERE_Pa,
        airViscosity: i.air_viscosity_Pa_s,
        fuelViscosity: i.liquid_viscosity_Pa_s,
      });
      return { liquid_mm3_per_h: leak_m3_s * 3600e9, liquid_mL_per_day: leak_m3_s * 86_400e6 };
    },
  },
  "pressure lost when a liquid-full rail loses a small volume (stiff rail, no air)": {
    methods: [liquidFall],
    run: (i) => ({
      dp_bar: liquidFall({
        bulkModulus: i.bulk_GPa * 1e9,
        lost: i.lost_mL * 1e-6,
        volume: i.volume_mL * 1e-6,
      }) / 1e5,
    }),
  },
  "same with a trapped air bubble (volume at test pressure)": {
    methods: [bubbleFall],
    run: (i) => ({
      dp_bar: bubbleFall({
        pressure: i.gauge_bar * 1e5 + ATMOSPHERE_Pa,
        lost: i.lost_mL * 1e-6,
        air: i.air_mL * 1e-6,
      }) / 1e5,
    }),
  },
  "post-crash spillage limits": {
    methods: [],
    run: ({ standard }) => {
      const n = codeRule("crashUnitedStates").numbers;
      return {
        ...ruleNumbers(standard),
        impact_to_rest_g: (n.toRest_kg ?? NaN) * 1000,
        next_5min_g: (n.fiveMinutes_kg ?? NaN) * 1000,
        then_per_min_g: (n.anyMinute_kg ?? NaN) * 1000,
      };
    },
  },
  "tank hydraulic test": {
    methods: [],
    run: ({ standard }) => {
      const n = codeRule("tank").numbers;
      return {
        ...ruleNumbers(standard),
        min_bar: (n.least_Pa ?? NaN) / 1e5,
        hold_min: (n.hold_s ?? NaN) / 60,
      };
    },
  },
  "scope of a standard": SUBJECT,
  "subject of a leak-test standard": SUBJECT,
  "what a port-injection rail sees": {
    methods: [highestWorkingPressure],
    run: () => {
      const setPressure = 3e5;
      const swing = SWING_SHARE * setPressure;
      return { value: highestWorkingPressure({ setPressure, boost: 0, swing }) / 1e5 };
    },
  },
};

const GAS_SAFETY: Answers = {
  "pressure-decay leak rate with temperature correction": {
    methods: [leakFromDecay, pressureAtStartTemperature],
    run: (i) => {
      const start = { startPressure: i.p1_abs_Pa, startTemperature: i.T1_K };
      const test = { volume: i.volume_m3, duration: i.duration_s, endPressure: i.p2_abs_Pa };
      const reference = i.reference_temperature_K;
      const leak = leakFromDecay({ ...test, ...start, endTemperature: i.T2_K, reference });
      const uncorrected = leakFromDecay({
        ...test,
        ...start,
        endTemperature: i.T1_K,
        reference: i.T1_K,
      });
      return {
        leak_rate_pV_Pa_m3_per_s_at_293K: leak,
        leak_rate_uncorrected_Pa_m3_per_s: uncorrected,
        leak_volume_rate_m3_per_s_at_1atm_20C: leak / ATMOSPHERE_Pa,
        pressure_2_at_T1_Pa: pressureAtStartTemperature({
          endPressure: i.p2_abs_Pa,
          startTemperature: i.T1_K,
          endTemperature: i.T2_K,
        }),
      };
    },
  },
  "false pressure change caused by temperature alone": {
    methods: [thermalChange],
    run: (i) => ({
      dp_Pa: thermalChange({
        pressure: i.p_abs_Pa,
        temperature: i.T_K,
        temperatureChange: i.dT_K,
      }),
    }),
  },
  "leak rate units": {
    methods: [],
    run: ({ leak_mbar_L_per_s: leak }) => ({
      Pa_m3_per_s: convertLeak(leak, "mbar L/s", "Pa m3/s"),
      atm_cm3_per_s: convertLeak(leak, "mbar L/s", "atm cm3/s"),
      atm_cm3_per_min: convertLeak(leak, "mbar L/s", "atm cm3/min"),
      torr_L_per_s: convertLeak(leak, "mbar L/s", "torr L/s"),
    }),
  },
  "sccm (0 degC, 1 atm) to Pa m3/s at 0 degC and at 20 degC, and to mol/s": {
    methods: [leakFromStandardFlow, leakAmount],
    run: (i) => {
      const standardTemperature = i.standard_temperature_K;
      const flow = {
        flow: i.flow_sccm * 1e-6 / 60,
        standardPressure: ATMOSPHERE_Pa,
        standardTemperature,
      };
      const leak = leakFromStandardFlow({ ...flow, temperature: standardTemperature });
      return {
        Pa_m3_per_s_at_273K: leak,
        Pa_m3_per_s_at_293K: leakFromStandardFlow({ ...flow, temperature: ROOM_K }),
        mol_per_s: leakAmount({ leak, gasConstant: R, temperature: standardTemperature }),
      };
    },
  },
  "leak rate from a bubble count": {
    methods: [leakFromBubbles],
    run: (i) => {
      const leak = leakFromBubbles({
        diameter: i.bubble_diameter_m,
        frequency: i.bubbles_per_s,
        ambient: i.ambient_pressure_Pa,
      });
      const volume_m3_s = leak / i.ambient_pressure_Pa;
      return {
        volume_rate_m3_per_s: volume_m3_s,
        leak_rate_Pa_m3_per_s: leak,
        leak_rate_mL_per_min: volume_m3_s * 60e6,
      };
    },
  },
  "energy stored in compressed gas": {
    methods: [gasEnergy, gasEnergyBound, airEnergyByCode, explosiveEquivalent],
    run: (i) => {
      const [gauge, volume] = [i.gauge_pressure_Pa, i.volume_m3];
      const [ambient, heatRatio] = [i.ambient_pressure_Pa, i.heat_capacity_ratio];
      const energy = gasEnergy({ gauge, ambient, volume, heatRatio });
      const byCode = airEnergyByCode({ gauge, ambient, volume });
      return {
        stored_energy_isentropic_J: energy,
        "tnt_equivalent_kg_at_4.184_MJ_per_kg": explosiveEquivalent({ energy, heat: 4.184e6 }),
        brode_energy_J: gasEnergyBound({ gauge, volume, heatRatio }),
        pcc2_energy_J: byCode,
        pcc2_tnt_kg: explosiveEquivalent({ energy: byCode, heat: 4_266_920 }),
      };
    },
  },
  "distance rule of the pneumatic-test article": {
    methods: [standOff],
    run: (i) => ({
      distance_m: standOff({
        explosive: i.tnt_kg,
        scaledDistance: i.scaled_factor_m_per_kg_1_3,
      }),
      "minimum_distance_m_below_135.5_MJ": LEAST_STAND_OFF_m,
    }),
  },
  "viscosity of air at 1 atm": {
    methods: [airViscosity],
    run: (i) => {
      const viscosity = airViscosity({ temperature: i.temperature_K });
      return { sutherland_Pa_s: viscosity, reference_Pa_s: viscosity };
    },
  },
  "gas test leak and fuel leak through the same laminar capillary": {
    methods: [airThroughCapillary, fuelThroughCapillary],
    run: (i) => {
      const ambient = i.ambient_pressure_Pa;
      const airLeak = airThroughCapillary({
        diameter: i.path_diameter_m,
        length: i.path_length_m,
        gauge: i.test_gauge_pressure_air_Pa,
        ambient,
        viscosity: i.viscosity_air_Pa_s,
      });
      const fuel_m3_s = fuelThroughCapillary({
        airLeak,
        airGauge: i.test_gauge_pressure_air_Pa,
        fuelGauge: i.service_gauge_pressure_liquid_Pa,
        ambient,
        airViscosity: i.viscosity_air_Pa_s,
        fuelViscosity: i.viscosity_fuel_Pa_s,
      });
      return {
        air_leak_pV_Pa_m3_per_s: airLeak,
        air_leak_mL_per_min_at_1atm: airLeak / ATMOSPHERE_Pa * 60e6,
        fuel_leak_m3_per_s: fuel_m3_s,
        fuel_leak_mL_per_min: fuel_m3_s * 60e6,
        ratio_liquid_volume_to_air_volume_at_1atm: fuel_m3_s * ATMOSPHERE_Pa / airLeak,
      };
    },
  },
  "gas test leak and fuel leak through the same orifice (choked gas)": {
    methods: [criticalRatio, airThroughHole, fuelThroughHole],
    run: (i) => {
      const ratio = criticalRatio({ heatRatio: i.heat_capacity_ratio });
      const air = {
        pressure: i.test_gauge_pressure_air_Pa + i.ambient_pressure_Pa,
        ratio,
        heatRatio: i.heat_capacity_ratio,
        gasConstant: i.gas_constant_air_J_per_kg_K,
        temperature: i.air_temperature_K,
      };
      const airFlow = airThroughHole({
        ...air,
        diameter: i.hole_diameter_m,
        dischargeCoefficient: i.discharge_coefficient,
      });
      const fuel_m3_s = fuelThroughHole({
        ...air,
        airFlow,
        fuelGauge: i.service_gauge_pressure_liquid_Pa,
        density: i.density_fuel_kg_per_m3,
      });
      const air_m3_s = airFlow * air.gasConstant * ROOM_K / ATMOSPHERE_Pa;
      return {
        critical_pressure_ratio: ratio,
        air_mass_flow_kg_per_s: airFlow,
        air_leak_mL_per_min_at_1atm_20C: air_m3_s * 60e6,
        fuel_leak_m3_per_s: fuel_m3_s,
        fuel_leak_mL_per_min: fuel_m3_s * 60e6,
      };
    },
  },
  "vapour volume of evaporated fuel and air volume brought to the lower flammable limit": {
    methods: [vapourVolume, flammableVolume, lowerLimitMass, vapourDensityRatio],
    run: (i) => {
      const gas = {
        molarMass: i.molar_mass_kg_per_mol,
        gasConstant: R,
        temperature: i.temperature_K,
        pressure: i.pressure_Pa,
      };
      const lowerLimit = i.lower_flammable_limit_vol_frac;
      const vapour = vapourVolume({
        ...gas,
        liquid: i.liquid_volume_m3,
        density: i.density_kg_per_m3,
      });
      return {
        vapour_volume_m3: vapour,
        mixture_volume_at_LFL_m3: flammableVolume({ vapour, lowerLimit }),
        lfl_mass_concentration_kg_per_m3: lowerLimitMass({ ...gas, lowerLimit }),
        vapour_density_relative_to_air: vapourDensityRatio({
          molarMass: gas.molarMass,
          airMolarMass: AIR_MOLAR_MASS_kg_mol,
        }),
      };
    },
    leaves: { mass_kg: "density times volume is no method of its own" },
  },
  "conversion of a lower flammable limit from vol % to kg/m3": {
    methods: [lowerLimitMass],
    run: (i) => ({
      lfl_mass_concentration_kg_per_m3: lowerLimitMass({
        lowerLimit: i.lower_flammable_limit_vol_pct / 100,
        molarMass: i.molar_mass_kg_per_mol,
        pressure: ATMOSPHERE_Pa,
        gasConstant: R,
        temperature: ROOM_K,
      }),
    }),
  },
  "fresh-air flow that keeps the mean concentration below k x LFL": {
    methods: [freshAirFlow, lowerLimitMass],
    run: (i) => {
      const limit = lowerLimitMass({
        lowerLimit: i.lower_flammable_limit_vol_frac,
        molarMass: i.molar_mass_kg_per_mol,
        pressure: ATMOSPHERE_Pa,
        gasConstant: R,
        temperature: ROOM_K,
      });
      const air_m3_s = freshAirFlow({
        release: i.release_rate_kg_per_s,
        share: i.fraction_of_LFL_allowed,
        lowerLimitMass: limit,
        temperature: i.ambient_temperature_K,
        reference: ROOM_K,
      });
      return {
        lfl_mass_concentration_kg_per_m3: limit,
        air_flow_m3_per_s: air_m3_s,
        air_flow_m3_per_h: air_m3_s * 3600,
      };
    },
  },
  "purge time of a well-mixed room from concentration c0 to c": {
    methods: [purgeTime],
    run: (i) => {
      const airFlow = i.room_volume_m3 * i.air_changes_per_h / 3600;
      return {
        time_s: purgeTime({ room: i.room_volume_m3, airFlow, left: i.concentration_ratio }),
        air_flow_m3_per_s: airFlow,
      };
    },
  },
};

const COOLPROP = "CoolProp 8.0.0, Water (IAPWS-95) and Air (Lemmon 2000), Python, values printed";
const TRADE = "The trade's round figures: 43.5 psi base and 14.5 psi boost make 58 psi";
const NACA = "NACA Report 1135 (1953), table I, subsonic: p/pt and A/A* at the Mach number";

/** Checks against what the reference files do not hold. */
const OTHERS: Check[] = [
  {
    name: "highestWorkingPressure(), manifold-referenced at 1 bar of boost",
    methods: [highestWorkingPressure],
    source: TRADE,
    provenance: "from-memory",
    run: () => {
      const psi = 6894.757;
      const found = highestWorkingPressure({
        setPressure: 43.5 * psi,
        boost: 14.5 * psi,
        swing: 0,
      });
      assertClose(found, 58 * psi, 1e-9);
    },
  },
  {
    name: "trappedLiquidRise(), water warmed from 20 to 25 °C in a vessel that does not yield",
    methods: [trappedLiquidRise],
    source: `${COOLPROP}: PropsSI('P','T',298.15,'D',rho(293.15 K, 1 atm)) less 1 atm; ` +
      "expansion and modulus from the same at the mean state",
    provenance: "computed-with-library",
    run: () => {
      const rise_Pa = trappedLiquidRise({
        expansion: 2.3265750e-4,
        wallExpansion: 0,
        temperatureRise: 5,
        bulkModulus: 2.2028612e9,
        compliance: 0,
      });
      assertClose(rise_Pa, 2.5772789e6, 0.01);
    },
  },
  {
    name: "trappedLiquidRise(), a wall that grows as the liquid does feels nothing",
    methods: [trappedLiquidRise],
    source: "Exact: with expansion three times the wall's, no volume is missing",
    provenance: "exact-solution",
    run: () => {
      const rise_Pa = trappedLiquidRise({
        expansion: 9e-5,
        wallExpansion: 3e-5,
        temperatureRise: 40,
        bulkModulus: 1e9,
        compliance: 1e-9,
      });
      assert(Math.abs(rise_Pa) < 1e-3, `${rise_Pa}`);
    },
  },
  {
    name: "trappedLiquidRise(), a vessel as soft as the liquid halves the rise",
    methods: [trappedLiquidRise],
    source: "Exact: two equal springs in series",
    provenance: "exact-solution",
    run: () => {
      const stiff = {
        expansion: 1e-3,
        wallExpansion: 2.3e-5,
        temperatureRise: 10,
        bulkModulus: 1e9,
      };
      const [soft_Pa, stiff_Pa] = [1e-9, 0].map((compliance) =>
        trappedLiquidRise({ ...stiff, compliance })
      );
      assertClose(soft_Pa ?? NaN, (stiff_Pa ?? NaN) / 2, 1e-12);
    },
  },
  {
    name: "liquidEnergy(), 60 mL of water at 20 °C let down from 10 bar",
    methods: [liquidEnergy],
    source: `${COOLPROP}: integral of (p - pa) dV along the isotherm, 20 000 steps; ` +
      "modulus from the same at half pressure",
    provenance: "computed-with-library",
    run: () => {
      const energy_J = liquidEnergy({ gauge: 1e6, volume: 60e-6, bulkModulus: 2.1818740e9 });
      assertClose(energy_J, 0.013745848, 1e-3);
    },
  },
  {
    name: "liquidFall(), 0.01 mL lost from 60 mL of water at 10 bar",
    methods: [liquidFall],
    source: `${COOLPROP}: PropsSI('P','T',293.15,'D',mass left / volume)`,
    provenance: "computed-with-library",
    run: () => {
      const fall_Pa = liquidFall({ bulkModulus: 2.1818740e9, lost: 1e-8, volume: 60e-6 });
      assertClose(fall_Pa, 363_974.07, 2e-3);
    },
  },
  {
    name: "bubbleFall(), 1 mL of air gives 0.05 mL at 10 bar",
    methods: [bubbleFall],
    source: `${COOLPROP}: PropsSI('P','T',293.15,'D',mass / 1.05 mL)`,
    provenance: "computed-with-library",
    run: () => {
      const fall_Pa = bubbleFall({ pressure: 1_101_325, lost: 5e-8, air: 1e-6 });
      assertClose(fall_Pa, 52_271.397, 5e-3);
    },
  },
  {
    name: "testVolume(), a half-inch hole a foot deep, and a litre of hose",
    methods: [testVolume],
    source: "Exact: 12 pi / 16 cubic inches, 1 in = 25.4 mm",
    provenance: "exact-solution",
    run: () => {
      const volume_m3 = testVolume({ bore: 0.0127, length: 0.3048, hose: 1e-3 });
      assertClose(volume_m3, 1e-3 + 0.75 * Math.PI * 16.387064e-6, 1e-12);
    },
  },
  {
    name: "expectedFall(), half a litre in five minutes",
    methods: [expectedFall],
    source: "gas-safety.json K-PD-1 read backwards: its leak makes its fall",
    provenance: "computed-with-library",
    run: () =>
      assertClose(
        expectedFall({ leak: 0.001666666667, duration: 300, volume: 0.0005 }),
        501_325 - 500_325,
        1e-8,
      ),
  },
  {
    name: "smallestLeakSeen(), two steps of 500 Pa in half a litre",
    methods: [smallestLeakSeen],
    source: "gas-safety.json K-PD-1: a fall of 1000 Pa in 300 s is its leak",
    provenance: "computed-with-library",
    run: () =>
      assertClose(
        smallestLeakSeen({ steps: 2, resolution: 500, volume: 0.0005, duration: 300 }),
        0.001666666667,
        1e-8,
      ),
  },
  {
    name: "timeToSee(), one litre that loses a millibar in a second",
    methods: [timeToSee],
    source: "The definition of the unit: 1 mbar L/s changes one litre by one millibar a second",
    provenance: "exact-solution",
    run: () =>
      assertClose(
        timeToSee({
          steps: 1,
          resolution: 100,
          volume: 1e-3,
          leak: convertLeak(1, "mbar L/s", "Pa m3/s"),
        }),
        1,
        1e-12,
      ),
  },
  {
    name: "bubbleInterval(), 4 mm bubbles",
    methods: [bubbleInterval],
    source: "gas-safety.json K-BU-1 read backwards: its leak gives one bubble a second",
    provenance: "computed-with-library",
    run: () =>
      assertClose(
        bubbleInterval({ diameter: 0.004, ambient: 101_325, leak: 0.00339543334 }),
        1,
        1e-8,
      ),
  },
  {
    name: "leakAtPressure(), the same capillary at 4 and at 5 bar",
    methods: [leakAtPressure],
    source: "gas-safety.json K-EQ-1 and K-EQ-3, one passage at two pressures",
    provenance: "computed-with-library",
    run: () =>
      assertClose(
        leakAtPressure({ leak: 0.005221403234, at: 4e5, gauge: 5e5, ambient: 101_325 }),
        0.007609763093,
        1e-8,
      ),
  },
  ...([[0.5, 0.8430, 1.340], [0.8, 0.6560, 1.038]] as const).map((
    [mach, ratio, area],
  ): Check => ({
    name: `airThroughHole(), below the speed of sound, at Mach ${mach}`,
    methods: [airThroughHole],
    source: NACA,
    provenance: "from-memory",
    run: () => {
      const hole = {
        ...AIR,
        dischargeCoefficient: 1,
        diameter: 1e-3,
        pressure: 2e5,
        temperature: ROOM_K,
      };
      const choked = airThroughHole({
        ...hole,
        ratio: criticalRatio({ heatRatio: AIR_HEAT_RATIO }),
      });
      assertClose(choked / airThroughHole({ ...hole, ratio }), area, 1e-3);
    },
  })),
  {
    name: "headspaceShare(), water vapour in saturated air at 20 °C",
    methods: [headspaceShare],
    source:
      "ASHRAE Handbook of Fundamentals, moist air at 1 atm: 14.758 g/kg saturated at 20 °C, " +
      "vapour pressure 2.3389 kPa",
    provenance: "from-memory",
    run: () => {
      const ratio = 0.014758;
      const published = ratio / (0.621945 + ratio);
      const found = headspaceShare({ vapourPressure: 2338.9, pressure: ATMOSPHERE_Pa });
      assertClose(found, published, 6e-3);
    },
  },
];

/** All checks of the room. */
export const checks: Check[] = [
  ...fromReference("leak-tests.json", LEAK_TESTS),
  ...fromReference("gas-safety.json", GAS_SAFETY),
  ...OTHERS,
];
