/** Checks of the conversions against an independent program. */
import { type Kind, parseQuantity, unitsReady } from "@/lib/units/mod.ts";
import { assert } from "@std/assert";
import { type Answer, type Check, fromReference } from "../../helpers/checks.ts";

await unitsReady();

/** The unit that a key of the file ends in, as someone would type it, and its kind. */
const TYPED: Readonly<Record<string, readonly [unit: string, kind: Kind]>> = {
  pressure_psi: ["psi", "pressure"],
  pressure_Pa: ["Pa", "pressure"],
  pressure_bar: ["bar", "pressure"],
  pressure_kgf_per_cm2: ["kgf/cm2", "pressure"],
  pressure_inHg: ["inHg", "pressure"],
  pressure_atm: ["atm", "pressure"],
  power_hp: ["hp", "power"],
  power_PS: ["PS", "power"],
  power_kW: ["kW", "power"],
  power_W: ["W", "power"],
  bsfc_lb_per_hp_h: ["lb/(hp h)", "bsfc"],
  bsfc_g_per_kWh: ["g/kWh", "bsfc"],
  bsfc_g_per_PS_h: ["g/(PS h)", "bsfc"],
  bsfc_kg_per_J: ["kg/J", "bsfc"],
  mass_flow_lb_per_h: ["lb/h", "massFlow"],
  mass_flow_kg_per_s: ["kg/s", "massFlow"],
  volume_flow_m3_per_s: ["m³/s", "flow"],
  volume_flow_cm3_per_min: ["cm3/min", "flow"],
  volume_flow_US_gal_per_h: ["US gal/h", "flow"],
  volume_flow_L_per_h: ["L/h", "flow"],
  volume_flow_L_per_min: ["L/min", "flow"],
  length_in: ["in", "length"],
  length_thou: ["thou", "length"],
  length_mm: ["mm", "length"],
  length_m: ["m", "length"],
  temperature_degF: ["°F", "temperature"],
  temperature_degC: ["°C", "temperature"],
  temperature_K: ["K", "temperature"],
  heating_value_Btu_per_lb: ["Btu/lb", "heatingValue"],
  heating_value_J_per_kg: ["J/kg", "heatingValue"],
  density_lb_per_US_gal: ["lb/US gal", "density"],
  density_kg_per_m3: ["kg/m³", "density"],
};

/** The value of a text in SI, whatever its size; a failed reading fails the test. */
function si(text: string, kind: Kind, density_kg_m3?: number): number {
  const density = density_kg_m3 === undefined ? {} : { density_kg_m3 };
  const parsed = parseQuantity(text, kind, { min: -Infinity, max: Infinity, ...density });
  assert(parsed.ok, parsed.ok ? "" : parsed.message);
  return parsed.value;
}

/** A value in each unit of its kind that the file names. */
function inUnits(value: number, kind: Kind): Record<string, number> {
  const answer: Record<string, number> = {};
  for (const [key, [unit, its]] of Object.entries(TYPED)) {
    if (its !== kind) continue;
    const zero = si(`0 ${unit}`, kind);
    answer[key] = (value - zero) / (si(`1 ${unit}`, kind) - zero);
  }
  return answer;
}

const convert: Answer = {
  methods: [],
  run: (inputs: Record<string, number>) => {
    const [key = "", number = NaN] = Object.entries(inputs)[0] ?? [];
    const [unit = "", kind = "ratio"] = TYPED[key] ?? [];
    return inUnits(si(`${number} ${unit}`, kind), kind);
  },
};

/** All cases of the file. */
export const checks: Check[] = fromReference("units.json", {
  "petrol mass flow lb/h to volume flow at density": {
    methods: [],
    run: ({ mass_flow_lb_per_h: flow, density_kg_per_m3: density }) =>
      inUnits(si(`${flow} lb/h`, "flow", density), "flow"),
  },
  "volume flow cm3/min to petrol mass flow lb/h": {
    methods: [],
    run: ({ volume_flow_cm3_per_min: flow, density_kg_per_m3: density }) =>
      inUnits(si(`${flow} cm3/min`, "flow") * density, "massFlow"),
  },
  "*": convert,
});
