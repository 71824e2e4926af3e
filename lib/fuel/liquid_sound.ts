/** How fast sound runs in a pure liquid. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { SOUND_SPEED, TEMPERATURE } from "./limits.ts";

/**
 * Speed of sound [m/s] in a pure liquid at 1 atm, with the coefficients of {@linkcode PURE_FLUIDS}.
 *
 * Source: least squares on CoolProp 8.0.0, 0 to 60 °C, within 0.05 %; down to -10 °C within 0.15 %.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Methanol at 20 °C
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 * import { PURE_FLUIDS } from "./fluids.ts";
 *
 * const speed_m_s = liquidSoundSpeed({ temperature: 293.15, ...PURE_FLUIDS.methanol.soundSpeed });
 *
 * assertAlmostEquals(speed_m_s, 1116, 1);
 * ```
 */
export const liquidSoundSpeed: Method<
  Record<"temperature" | "a0" | "a1" | "a2" | "a3", MethodInput>
> = method({
  id: "liquid-sound-speed",
  title: "Speed of sound in a pure liquid",
  inputs: {
    temperature: TEMPERATURE,
    a0: { unit: "m/s", min: 1100, max: 1450, says: "Speed at 0 °C", symbol: "a_0" },
    a1: { unit: "m/(s K)", min: -5, max: 5, says: "Change with each degree", symbol: "a_1" },
    a2: {
      unit: "m/(s K^2)",
      min: -0.06,
      max: 0.01,
      says: "Coefficient of the square",
      symbol: "a_2",
    },
    a3: {
      unit: "m/(s K^3)",
      min: 0,
      max: 2e-4,
      says: "Coefficient of the cube; only water needs it",
      symbol: "a_3",
    },
  },
  output: { ...SOUND_SPEED, name: "soundSpeed" },
  formula: "a0 + a1 * (temperature - 273.15) + a2 * (temperature - 273.15)^2" +
    " + a3 * (temperature - 273.15)^3",
  fit: true,
  source: "Least squares on CoolProp 8.0.0; isooctane Blackham and Lemmon 2011",
  compute: ({ temperature, a0, a1, a2, a3 }) => {
    const t = temperature - 273.15;
    return a0 + t * (a1 + t * (a2 + t * a3));
  },
});
