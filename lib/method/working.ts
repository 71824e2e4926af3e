/** The record of which methods ran with which numbers. */
import type { Method, MethodInputs, NumbersFor } from "./method.ts";

/** One use of a method: what was put in and what came out. */
export interface Use {
  /** The result it explains, as a path into the evaluation: `demand.fuel_kg_s`. */
  readonly result: string;
  /** The id of the method. */
  readonly method: string;
  /** The numbers put in, in SI. */
  readonly inputs: Readonly<Record<string, number>>;
  /** The number that came out, in SI. */
  readonly value: number;
}

/**
 * Runs methods and keeps what ran, so that the working shown is the working done.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { method } from "./method.ts";
 *
 * const twice = method({
 *   id: "twice",
 *   title: "Twice a length",
 *   inputs: { length: { unit: "m", min: 0, max: 1, says: "A length" } },
 *   output: { name: "twice", unit: "m", min: 0, max: 2, says: "Twice the length" },
 *   formula: "2 * length",
 *   source: "Arithmetic",
 *   compute: ({ length }) => 2 * length,
 * });
 * const working = new Working();
 *
 * assertEquals(working.run("bar.length_m", twice, { length: 0.5 }), 1);
 * assertEquals(working.uses, [
 *   { result: "bar.length_m", method: "twice", inputs: { length: 0.5 }, value: 1 },
 * ]);
 * ```
 */
export class Working {
  /** What ran, in order. */
  readonly uses: Use[] = [];

  /**
   * Runs a method and records it.
   *
   * @param result The result that the number becomes, as a path into the evaluation.
   * @param method The method.
   * @param inputs Its inputs, in SI.
   * @returns What the method gives.
   * @throws {InputError} As the method does; then nothing is recorded.
   */
  run<Inputs extends MethodInputs>(
    result: string,
    method: Method<Inputs>,
    inputs: NumbersFor<Inputs>,
  ): number {
    const value = method(inputs);
    this.uses.push({ result, method: method.id, inputs, value });
    return value;
  }
}
