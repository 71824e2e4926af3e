/** Air that carries vapour away. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";

/**
 * Flow of fresh air [m^3/s] that keeps vapour below a share of the lower
 * flammable limit, well mixed. Heavy vapour pools low: more is needed, down there.
 *
 * Source: IEC 60079-10-1:2008 annex B.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const flow_m3_s = freshAirFlow({
 *   release: 1e-5,
 *   share: 0.25,
 *   lowerLimitMass: 0.058,
 *   temperature: 293.15,
 *   reference: 293.15,
 * });
 *
 * assertAlmostEquals(flow_m3_s * 3600, 2.48, 0.01);
 * ```
 */
export const freshAirFlow: Method<
  Record<"release" | "share" | "lowerLimitMass" | "temperature" | "reference", MethodInput>
> = method({
  id: "fresh-air-flow",
  title: "Fresh air that thins vapour out",
  inputs: {
    release: {
      unit: "kg/s",
      min: 0,
      max: 0.1,
      says: "Fuel that evaporates per time",
      symbol: "\\dot G",
    },
    share: {
      unit: "-",
      min: 0.05,
      max: 1,
      says: "Share of the lower limit allowed: 0.25 for a steady source, 0.5 for a rare one",
      symbol: "k",
    },
    lowerLimitMass: {
      unit: "kg/m^3",
      min: 0.01,
      max: 3,
      says: "Lower flammable limit as mass in air",
      symbol: "\\text{LFL}_m",
    },
    temperature: {
      unit: "K",
      min: 230,
      max: 400,
      says: "Temperature of the air",
      symbol: "T",
    },
    reference: {
      unit: "K",
      min: 273,
      max: 300,
      says: "Temperature the limit is stated at; 293.15",
      symbol: "T_0",
    },
  },
  output: {
    name: "airFlow",
    unit: "m^3/s",
    min: 0,
    max: 1e4,
    says: "Fresh air needed",
    symbol: "\\dot V",
  },
  formula: "release / (share * lowerLimitMass) * temperature / reference",
  source: "IEC 60079-10-1:2008 annex B",
  compute: ({ release, share, lowerLimitMass, temperature, reference }) =>
    release / (share * lowerLimitMass) * temperature / reference,
});

/**
 * Time [s] to thin vapour in a room down to a share of what it was, well mixed.
 *
 * Source: mass balance of a stirred room, c = c0 exp(-n t).
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example Six changes an hour, down to a tenth
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(purgeTime({ room: 60, airFlow: 0.1, left: 0.1 }) / 60, 23, 0.1);
 * ```
 */
export const purgeTime: Method<Record<"room" | "airFlow" | "left", MethodInput>> = method({
  id: "purge-time",
  title: "Time to air a room",
  inputs: {
    room: { unit: "m^3", min: 0.1, max: 1e4, says: "Volume of the room", symbol: "V" },
    airFlow: { unit: "m^3/s", min: 1e-4, max: 100, says: "Fresh air", symbol: "\\dot V" },
    left: {
      unit: "-",
      min: 1e-4,
      max: 1,
      says: "Vapour left, as a share of what there was",
      symbol: "x",
    },
  },
  output: { name: "time", unit: "s", min: 0, max: 1e9, says: "Time needed", symbol: "t" },
  formula: "room / airFlow * log(1 / left)",
  source: "Mass balance of a stirred room",
  compute: ({ room, airFlow, left }) => room / airFlow * Math.log(1 / left),
});
