/** The American wire gauge, and the copper of a wire of given section. */
import { type Method, method, type MethodInput } from "@/lib/method/mod.ts";
import { AREA, RESISTANCE_PER_LENGTH, RESISTIVITY } from "./limits.ts";

/**
 * What the strands' twist adds to the resistance of a gauge's solid wire, as a factor [-].
 *
 * Source: ASTM B8, 2 % for a concentric lay, from memory; held against NFPA 70 chapter 9
 * table 8.
 */
export const STRANDING = 1.02;

const DIAMETER: MethodInput = {
  unit: "m",
  min: 1.2e-4,
  max: 0.02,
  says: "Diameter of the conductor",
  symbol: "d",
};

/**
 * Diameter [m] of a solid wire of an American gauge, No. 36 (0.127 mm) to No. 0.
 *
 * Source: ASTM B258. The ratio of 92 between No. 36 and No. 0000 is spread over 39 even steps.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(awgDiameter({ gauge: 12 }), 2.0525e-3, 1e-7);
 * ```
 */
export const awgDiameter: Method<Record<"gauge", MethodInput>> = method({
  id: "awg-diameter",
  title: "Diameter of an American wire gauge",
  inputs: {
    gauge: { unit: "-", min: 0, max: 36, says: "Number of the gauge", symbol: "n" },
  },
  output: { ...DIAMETER, name: "diameter" },
  formula: "0.127e-3 * 92^((36 - gauge) / 39)",
  fit: true,
  source: "ASTM B258",
  compute: ({ gauge }) => 0.127e-3 * 92 ** ((36 - gauge) / 39),
});

/**
 * Area [m^2] of a round conductor. Source: geometry of the circle.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * assertAlmostEquals(wireArea({ diameter: 2.0525e-3 }) * 1e6, 3.309, 1e-3);
 * ```
 */
export const wireArea: Method<Record<"diameter", MethodInput>> = method({
  id: "wire-area",
  title: "Area of a round conductor",
  inputs: { diameter: DIAMETER },
  output: { ...AREA, name: "area" },
  formula: "pi / 4 * diameter^2",
  source: "Geometry of the circle",
  compute: ({ diameter }) => Math.PI / 4 * diameter * diameter,
});

/**
 * Resistance [ohm/m] of a metre of a conductor at 20 °C.
 *
 * Source: definition of resistivity. What stranding adds is a factor: 1 for a solid wire,
 * {@linkcode STRANDING} for a gauge's stranded one.
 *
 * @throws {InputError} When a number lies outside its range.
 *
 * @example AWG 12, stranded
 * ```ts
 * import { assertAlmostEquals } from "@std/assert";
 *
 * const resistance_ohm_m = conductorResistance({
 *   resistivity: 1.7241e-8,
 *   area: 3.309e-6,
 *   stranding: STRANDING,
 * });
 *
 * assertAlmostEquals(resistance_ohm_m, 5.315e-3, 1e-6);
 * ```
 */
export const conductorResistance: Method<
  Record<"resistivity" | "area" | "stranding", MethodInput>
> = method({
  id: "conductor-resistance",
  title: "Resistance of a metre of a conductor",
  inputs: {
    resistivity: RESISTIVITY,
    area: AREA,
    stranding: {
      unit: "-",
      min: 1,
      max: 1.1,
      says: "What the strands' twist adds: 1 for a solid wire, 1.02 for strands",
      symbol: "s",
    },
  },
  output: { ...RESISTANCE_PER_LENGTH, name: "resistance", min: 1e-5 },
  formula: "resistivity * stranding / area",
  source: "Definition of resistivity; ASTM B8 for what stranding adds",
  compute: ({ resistivity, area, stranding }) => resistivity * stranding / area,
});
