/** What a method of the trade is: a declaration and the function it declares. */
import { InputError, isWithin, type Limit, requireWithin } from "@/lib/basics/mod.ts";

/** One number that a method takes. Its limits are where the method is valid. */
export interface MethodInput extends Limit {
  /** What the number is, in the trade's words. */
  readonly says: string;
  /** How print shows it, in TeX, where the name alone would be clumsy: `\\rho`. */
  readonly symbol?: string;
}

/** The number that a method gives. */
export interface MethodOutput extends Limit {
  /** The name it is shown under, on the left of the formula. */
  readonly name: string;
  /** What the number is, in the trade's words. */
  readonly says: string;
  /** How print shows it, in TeX. */
  readonly symbol?: string;
}

/** The inputs of a method by name. */
export type MethodInputs = Readonly<Record<string, MethodInput>>;

/** The numbers that a method with these inputs takes, in SI. */
export type NumbersFor<Inputs extends MethodInputs> = { readonly [Name in keyof Inputs]: number };

/** What the declaration of a method holds. */
export interface MethodDeclaration<Inputs extends MethodInputs> {
  /** Unique, in lower case with hyphens; the address of its page. */
  readonly id: string;
  /** What it finds, as a noun phrase. */
  readonly title: string;
  /** Its inputs, each with unit, valid range and meaning. */
  readonly inputs: Inputs;
  /** Its one result, with unit, range and meaning. */
  readonly output: MethodOutput;
  /**
   * The formula as one mathjs expression in the names of the inputs. What is
   * shown is made from it, and a test holds it against `compute`.
   * `null` when there is no closed form; then `words` says what is done.
   */
  readonly formula: string | null;
  /** What is done, where a formula can't say it, or what the formula leaves unsaid. */
  readonly words?: string;
  /**
   * True for a fit: its constants carry units that are not written, so the
   * formula holds for plain numbers in the declared units only.
   */
  readonly fit?: boolean;
  /** Where it is published. */
  readonly source: string;
  /** The function, unchecked, for inner loops. Numbers in SI, as declared. */
  readonly compute: (input: NumbersFor<Inputs>) => number;
}

/** A method: call it to compute with its inputs checked, read it to show it. */
export interface Method<Inputs extends MethodInputs = MethodInputs>
  extends MethodDeclaration<Inputs> {
  /**
   * Computes with the inputs and the result checked against their ranges.
   *
   * @throws {InputError} When an input or the result lies outside its range.
   */
  (input: NumbersFor<Inputs>): number;
}

/** Any method, whatever its inputs. */
// deno-lint-ignore no-explicit-any
export type AnyMethod = Method<any>;

/**
 * Declares a method.
 *
 * @param declaration All that is to be said about it, and its function.
 * @returns The checked function, carrying its declaration.
 *
 * @example
 * ```ts
 * import { assertEquals, assertThrows } from "@std/assert";
 *
 * const pressureJump = method({
 *   id: "pressure-jump",
 *   title: "Pressure jump when flow stops at once",
 *   inputs: {
 *     density: { unit: "kg/m^3", min: 600, max: 1100, says: "Density of the fuel" },
 *     waveSpeed: { unit: "m/s", min: 50, max: 2000, says: "Speed of pressure waves" },
 *     velocityChange: { unit: "m/s", min: 0, max: 50, says: "Velocity that is stopped" },
 *   },
 *   output: { name: "pressureJump", unit: "Pa", min: 0, max: 1.1e8, says: "Pressure jump" },
 *   formula: "density * waveSpeed * velocityChange",
 *   source: "N. Joukowsky (1898)",
 *   compute: ({ density, waveSpeed, velocityChange }) => density * waveSpeed * velocityChange,
 * });
 *
 * assertEquals(pressureJump({ density: 700, waveSpeed: 1000, velocityChange: 2 }), 1.4e6);
 * assertThrows(
 *   () => pressureJump({ density: 1, waveSpeed: 1000, velocityChange: 2 }),
 *   RangeError,
 *   "as density must be >= 600 and <= 1100 kg/m^3",
 * );
 * ```
 */
export function method<const Inputs extends MethodInputs>(
  declaration: MethodDeclaration<Inputs>,
): Method<Inputs> {
  const { title, inputs, output, compute } = declaration;
  const what = title.charAt(0).toLowerCase() + title.slice(1);
  const inside = insideOf(inputs);
  const checked = (input: NumbersFor<Inputs>): number => {
    // The quick look first; who is out of bounds is found out only when somebody is.
    if (!inside(input)) requireWithin<NumbersFor<Inputs>>(what, input, inputs);
    const value = compute(input);
    if (isWithin(value, output)) return value;
    const unit = output.unit === "-" ? "" : ` ${output.unit}`;
    throw new InputError(
      what,
      output.name,
      `must come out from ${output.min} to ${output.max}${unit}`,
      value,
    );
  };
  return Object.assign(checked, declaration);
}

/**
 * Makes a check that reads flat lists instead of declarations, as it runs at each
 * call. An open lower bound becomes the next number above it.
 */
function insideOf<Inputs extends MethodInputs>(
  inputs: Inputs,
): (input: NumbersFor<Inputs>) => boolean {
  const names = Object.keys(inputs);
  const limits = Object.values<MethodInput>(inputs);
  const lowest = Float64Array.from(limits, ({ min, open }) => open ? nextAbove(min) : min);
  const highest = Float64Array.from(limits, ({ max }) => max);
  return (input) => {
    for (let i = 0; i < names.length; i++) {
      const value = input[names[i] as keyof Inputs];
      if (!(value >= (lowest[i] as number) && value <= (highest[i] as number))) return false;
    }
    return true;
  };
}

/** The smallest double above a number. */
function nextAbove(value: number): number {
  const bits = new BigInt64Array(Float64Array.of(value).buffer);
  bits[0] = (bits[0] ?? 0n) + (value < 0 ? -1n : 1n);
  return new Float64Array(bits.buffer)[0] as number;
}

/**
 * Tells a method from anything else that a room exports.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(isMethod(() => 1), false);
 * ```
 */
export function isMethod(value: unknown): value is AnyMethod {
  return typeof value === "function" && "id" in value && "formula" in value && "compute" in value;
}
