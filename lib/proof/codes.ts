/** What published rules say of tests and leaks. None of them is about a shop-made rail: they are cited, not applied. */

import { TEST_LIQUID_FLASH_K } from "./constants.ts";

/** How far a rule reaches. */
export interface CodeRule {
  /** The document and paragraph. */
  readonly document: string;
  /** What it asks, in our words. */
  readonly says: string;
  /** Why it is not a limit for the rail. */
  readonly reach: string;
  /** Its numbers by name, unit at the end. */
  readonly numbers: Readonly<Record<string, number>>;
  /** How the numbers were come by. */
  readonly provenance: "read-from-source" | "from-memory";
}

const PLANT = "Plant piping; a vehicle is outside its scope, so an analogy only";
const CRASH = "Whole vehicles after a crash; not a limit for a part";
const BUBBLES = "A limit of the method, not of the part";

/** The names of the rules cited. */
export type CodeName =
  | "liquidTest"
  | "airTest"
  | "airTestRelief"
  | "firstHalt"
  | "sensitiveTest"
  | "testLiquid"
  | "hold"
  | "bubbleTest"
  | "immersion"
  | "crashUnitedStates"
  | "tank";

const CODE_RULES: Readonly<Record<CodeName, CodeRule>> = {
  liquidTest: {
    document: "ASME B31.3-2016 para. 345.4.2",
    says: "Test with liquid at no less than 1.5 times the design pressure",
    reach: PLANT,
    numbers: { leastFactor: 1.5 },
    provenance: "read-from-source",
  },
  airTest: {
    document: "ASME B31.3-2016 para. 345.5.4",
    says:
      "Test with air at 1.1 to 1.33 times the design pressure; here air never goes above working",
    reach: PLANT,
    numbers: { leastFactor: 1.1, mostFactor: 1.33 },
    provenance: "from-memory",
  },
  airTestRelief: {
    document: "ASME B31.3-2016 para. 345.5.2",
    says: "Relief valve at most 10 % or 345 kPa above the test with air, whichever is less",
    reach: PLANT,
    numbers: { mostShare: 0.1, most_Pa: 345_000 },
    provenance: "read-from-source",
  },
  firstHalt: {
    document: "ASME B31.3-2016 para. 345.8",
    says: "First look at half the test pressure or 170 kPa, whichever is less",
    reach: PLANT,
    numbers: { share: 0.5, most_Pa: 170_000 },
    provenance: "read-from-source",
  },
  sensitiveTest: {
    document: "ASME B31.3-2016 para. 345.8",
    says:
      "A sensitive leak test shows 1e-3 std mL/s, at the lesser of 105 kPa gauge and 25 % of design",
    reach: PLANT,
    numbers: { sensitivity_std_mL_s: 1e-3, least_Pa: 105_000, leastShare: 0.25 },
    provenance: "read-from-source",
  },
  testLiquid: {
    document: "ASME B31.3-2016 para. 345.4.1",
    says: "A test liquid that can burn has a flash point of at least 49 °C; petrol never",
    reach: PLANT,
    numbers: { leastFlashPoint_K: TEST_LIQUID_FLASH_K },
    provenance: "read-from-source",
  },
  hold: {
    document: "ASME B31.3 para. 345.2.2",
    says: "Hold at least ten minutes and look at every joint",
    reach: PLANT,
    numbers: { least_s: 600 },
    provenance: "from-memory",
  },
  bubbleTest: {
    document: "ASTM E515-11",
    says:
      "Bubbles show 1e-5 std cm3/s at best and 1e-4 with confidence; they tell, they do not measure",
    reach: BUBBLES,
    numbers: { best_std_cm3_s: 1e-5, sure_std_cm3_s: 1e-4, standardTemperature_K: 273.15 },
    provenance: "read-from-source",
  },
  immersion: {
    document: "Public guidance to the European pressure equipment directive",
    says: "Air under water, watched 30 to 60 s, shows 1e-4 mbar L/s",
    reach: BUBBLES,
    numbers: { shown_Pa_m3_s: 1e-5 },
    provenance: "read-from-source",
  },
  crashUnitedStates: {
    document: "FMVSS 301, 49 CFR 571.301 S5.5 and S5.6",
    says:
      "28 g from impact to rest, 142 g in the five minutes after, 28 g in any one minute of the next 25",
    reach: CRASH,
    numbers: { toRest_kg: 0.028, fiveMinutes_kg: 0.142, anyMinute_kg: 0.028, then_min: 25 },
    provenance: "from-memory",
  },
  tank: {
    document: "UN Regulation 34, tank clause",
    says: "A tank holds twice its service pressure of liquid, at least 0.3 bar, for one minute",
    reach: "Tanks of series vehicles; not the rail",
    numbers: { factor: 2, least_Pa: 30_000, hold_s: 60 },
    provenance: "read-from-source",
  },
};

/**
 * Gives a published rule that is cited beside a test.
 *
 * @param name Which rule.
 * @returns What it asks, where it reaches and its numbers.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(codeRule("testLiquid").document, "ASME B31.3-2016 para. 345.4.1");
 * ```
 */
export function codeRule(name: CodeName): CodeRule {
  return CODE_RULES[name];
}

/** Standards cited on the sheets and what each is about, in our words. From memory of their titles, except J1681 and J2044. */
const STANDARDS: Readonly<Record<string, string>> = {
  "SAE J1681":
    "petrol (gasoline), alcohol and diesel fuel surrogates: test fuels for trying materials",
  "SAE J30": "fuel and oil hoses",
  "SAE J2044": "quick connect couplings for liquid fuel and vapour systems",
  "SAE J1832": "test methods for low pressure petrol (gasoline) fuel injectors",
  "ASTM E515": "leak testing by bubble emission",
  "ASTM E1003": "hydrostatic leak testing",
  "ASTM E2930": "pressure decay leak test",
  "EN 1779": "choice of leak-test method and technique",
  "EN 1593": "bubble emission technique of leak testing",
};

/**
 * Says what a standard cited on a sheet is about.
 *
 * @param name Its number, like "EN 1593".
 * @returns Its subject, or nothing when it is not one we cite.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(subjectOf("EN 1593"), "bubble emission technique of leak testing");
 * ```
 */
export function subjectOf(name: string): string | undefined {
  return STANDARDS[name];
}

/** A colloquial class of tightness. */
export type Tightness = "leaking" | "watertight" | "vapour-tight" | "gas-tight";

/** Upper end of each class [Pa m^3/s], tightest first. Source: public guidance to the European pressure equipment directive. */
const TIGHTNESS: readonly (readonly [most_Pa_m3_s: number, name: Tightness])[] = [
  [1e-8, "gas-tight"],
  [1e-5, "vapour-tight"],
  [1e-4, "watertight"],
];

/**
 * Puts a leak into words. The classes are colloquial and have no exact bounds.
 *
 * Source: public guidance to the European pressure equipment directive.
 *
 * @param leak_Pa_m3_s Leak of air, as pressure times volume per time.
 * @returns The class it falls in.
 *
 * @example 1e-4 mbar L/s
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(tightnessOf(1e-5), "vapour-tight");
 * ```
 */
export function tightnessOf(leak_Pa_m3_s: number): Tightness {
  // A leak that a change of units moved by its last bit stays in its class.
  const leak = leak_Pa_m3_s * (1 - 1e-9);
  return TIGHTNESS.find(([most]) => leak <= most)?.[1] ?? "leaking";
}
