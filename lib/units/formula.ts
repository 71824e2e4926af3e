/** Formulas of the method book, evaluated with their units. */
import type { EvalFunction, MathNode, Unit } from "mathjs";
import { BoundedMap } from "./bounded_map.ts";
import { mathjs } from "./units_ready.ts";

/** A number and the unit it stands in, as mathjs writes it; `-` for none. */
export interface QuantityInput {
  /** The number, in `unit`. */
  readonly value: number;
  /** Its unit: `kg/m^3`, `1/s`, `-`. */
  readonly unit: string;
}

interface Compiled {
  readonly tree: MathNode;
  readonly code: EvalFunction;
}

const formulas = new BoundedMap<Compiled>(1000);
const units = new BoundedMap<Unit>(1000);
/** Names that a formula may use without an input. */
const CONSTANTS: ReadonlySet<string> = new Set(["pi"]);

/**
 * Evaluates a formula with its units, so that a wrong dimension shows.
 *
 * Radians count as plain numbers, as angles do in formulas.
 *
 * @param expression The formula, in the names of the inputs.
 * @param inputs Number and unit of each.
 * @param output The unit that the result is wanted in.
 * @param plain True to put in bare numbers, for fits whose constants carry
 * units that are not written; then no dimension is checked.
 * @returns The result in the output's unit.
 * @throws {Error} When the formula cannot be read, names what is no input, is
 * dimensionally wrong, or gives no finite number; and before {@linkcode unitsReady}.
 *
 * @example
 * ```ts
 * import { assertEquals, assertThrows } from "@std/assert";
 * import { unitsReady } from "./units_ready.ts";
 *
 * await unitsReady();
 * const inputs = { length: { value: 6, unit: "m" }, time: { value: 2, unit: "s" } };
 * assertEquals(evaluateFormula("length / time", inputs, { unit: "m/s" }), 3);
 * assertThrows(() => evaluateFormula("length * time", inputs, { unit: "m/s" }), Error);
 * ```
 */
export function evaluateFormula(
  expression: string,
  inputs: Readonly<Record<string, QuantityInput>>,
  output: { readonly unit: string },
  plain: boolean = false,
): number {
  const { code, tree } = compiled(expression);
  for (const name of namesIn(tree)) {
    // Else mathjs would take "m" for a metre.
    if (!Object.hasOwn(inputs, name)) {
      throw new Error(`Cannot evaluate "${expression}", as ${name} is no input of it`);
    }
  }
  const scope = new Map<string, number | Unit>();
  for (const [name, { value, unit }] of Object.entries(inputs)) {
    scope.set(name, plain ? value : withUnit(value, unit));
  }
  const result: unknown = code.evaluate(scope);
  const number = plain ? result : numberIn(result, output.unit);
  if (typeof number === "number" && Number.isFinite(number)) return number;
  const wanted = output.unit === "-" || plain ? "a finite number" : `a number in ${output.unit}`;
  throw new Error(`Cannot evaluate "${expression}", as ${result} is not ${wanted}`);
}

/**
 * Lists the names that a formula leaves open: its inputs, not its functions or pi.
 *
 * @param expression The formula.
 * @returns Each name once, in order of appearance.
 * @throws {Error} When the formula cannot be read; and before {@linkcode unitsReady}.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { unitsReady } from "./units_ready.ts";
 *
 * await unitsReady();
 * assertEquals(formulaNames("pi / 4 * bore^2 * sqrt(speed * bore)"), ["bore", "speed"]);
 * ```
 */
export function formulaNames(expression: string): string[] {
  return namesIn(compiled(expression).tree);
}

/** The parse tree of a formula, kept. */
export function formulaTree(expression: string): MathNode {
  return compiled(expression).tree;
}

function compiled(expression: string): Compiled {
  const known = formulas.get(expression);
  if (known !== undefined) return known;
  const tree = mathjs().parse(expression);
  return formulas.set(expression, { tree, code: tree.compile() });
}

function namesIn(tree: MathNode): string[] {
  const names = new Set<string>();
  tree.traverse((node, path, parent) => {
    if (node.type !== "SymbolNode") return;
    // A function's name is a symbol too, under the path "fn".
    if (parent?.type === "FunctionNode" && path === "fn") return;
    const { name } = node as MathNode & { readonly name: string };
    if (!CONSTANTS.has(name)) names.add(name);
  });
  return [...names];
}

function withUnit(value: number, unit: string): number | Unit {
  if (unit === "-" || unit === "rad") return value;
  return mathjs().multiply(value, oneOf(unit)) as Unit;
}

function numberIn(result: unknown, unit: string): unknown {
  if (unit === "-" || unit === "rad") return result;
  if (typeof result !== "object" || result === null || !("equalBase" in result)) return undefined;
  const one = oneOf(unit);
  const quantity = result as Unit;
  if (!quantity.equalBase(one)) return undefined;
  return mathjs().divide(quantity, one);
}

/** One of a unit; "1/s" is a quantity to mathjs, "m/s" a unit. */
function oneOf(unit: string): Unit {
  const known = units.get(unit);
  if (known !== undefined) return known;
  const math = mathjs();
  return units.set(unit, /^\s*1\b/.test(unit) ? math.unit(unit) : math.unit(1, unit));
}
