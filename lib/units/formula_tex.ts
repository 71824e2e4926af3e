/** Formulas of the method book as TeX. */
import type {
  ConditionalNode,
  ConstantNode,
  FunctionNode,
  MathNode,
  OperatorNode,
  ParenthesisNode,
  SymbolNode,
} from "mathjs";
import { formulaTree } from "./formula.ts";

/** TeX and how strongly its parts hold together. */
interface Piece {
  readonly tex: string;
  readonly binds: number;
}

const CHOICE = 0;
const LOGIC = 1;
const COMPARISON = 2;
const SUM = 3;
const SIGN = 4;
const PRODUCT = 5;
const POWER = 6;
const ATOM = 7;

const COMPARISONS: Readonly<Record<string, string>> = {
  "<": "<",
  ">": ">",
  "<=": "\\le",
  ">=": "\\ge",
  "==": "=",
  "!=": "\\ne",
};
const LOGICS: Readonly<Record<string, string>> = { and: "and", or: "or" };
/** Functions written as a name before brackets. */
const NAMED: Readonly<Record<string, string>> = {
  log: "\\ln",
  ln: "\\ln",
  log10: "\\log_{10}",
  log2: "\\log_{2}",
  exp: "\\exp",
  min: "\\min",
  max: "\\max",
  sin: "\\sin",
  cos: "\\cos",
  tan: "\\tan",
  asin: "\\arcsin",
  acos: "\\arccos",
  atan: "\\arctan",
  sinh: "\\sinh",
  cosh: "\\cosh",
  tanh: "\\tanh",
};

/**
 * Gives the TeX of a formula: fractions upright, choices as cases, each name by
 * its symbol.
 *
 * @param expression The formula, as mathjs reads it.
 * @param symbols TeX by name; a name without is set upright as it stands.
 * @returns TeX for display, without delimiters.
 * @throws {Error} When the formula cannot be read or holds what has no TeX here;
 * and before {@linkcode unitsReady}.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { unitsReady } from "./units_ready.ts";
 *
 * await unitsReady();
 * assertEquals(
 *   formulaToTex("sqrt(2 * drop / density)", { drop: "\\Delta p", density: "\\rho" }),
 *   "\\sqrt{\\frac{2 \\, \\Delta p}{\\rho}}",
 * );
 * ```
 */
export function formulaToTex(
  expression: string,
  symbols: Readonly<Record<string, string>>,
): string {
  return new TexWriter(symbols).write(formulaTree(expression)).tex;
}

class TexWriter {
  readonly #symbols: Readonly<Record<string, string>>;

  constructor(symbols: Readonly<Record<string, string>>) {
    this.#symbols = symbols;
  }

  write(node: MathNode): Piece {
    switch (node.type) {
      case "ConstantNode":
        return constant(node as ConstantNode);
      case "SymbolNode":
        return this.#symbol((node as SymbolNode).name);
      case "ParenthesisNode":
        return this.write((node as ParenthesisNode).content);
      case "FunctionNode":
        return this.#function(node as FunctionNode);
      case "ConditionalNode":
        return this.#choice(node as ConditionalNode);
      case "OperatorNode":
        return this.#operator(node as OperatorNode);
      default:
        throw new Error(`Cannot write the formula in TeX, as it holds a ${node.type}`);
    }
  }

  #symbol(name: string): Piece {
    const own = Object.hasOwn(this.#symbols, name) ? this.#symbols[name] : undefined;
    if (own !== undefined) return atom(own);
    return atom(name === "pi" ? "\\pi" : upright(name));
  }

  #function(node: FunctionNode): Piece {
    const name = (node.fn as unknown as SymbolNode).name;
    const args = node.args.map((arg) => this.write(arg).tex);
    const [first = "", second] = args;
    if (name === "sqrt") return atom(`\\sqrt{${first}}`);
    if (name === "cbrt") return atom(`\\sqrt[3]{${first}}`);
    if (name === "abs") return atom(`\\left|${first}\\right|`);
    if (name === "pow" && second !== undefined) return this.#power(node.args);
    if (name === "log" && second !== undefined) {
      return { tex: `\\log_{${second}}${bracketed(first)}`, binds: PRODUCT };
    }
    const written = Object.hasOwn(NAMED, name) ? NAMED[name] : undefined;
    return { tex: `${written ?? upright(name)}${bracketed(args.join(", "))}`, binds: POWER };
  }

  /** A chain of conditions becomes one list of cases. */
  #choice(node: ConditionalNode): Piece {
    const rows: string[] = [];
    let rest: MathNode = node;
    while (rest.type === "ConditionalNode") {
      const { condition, trueExpr, falseExpr } = rest as ConditionalNode;
      rows.push(`${this.write(trueExpr).tex} & \\text{if } ${this.write(condition).tex}`);
      rest = unwrapped(falseExpr);
    }
    rows.push(`${this.write(rest).tex} & \\text{otherwise}`);
    return { tex: `\\begin{cases} ${rows.join(" \\\\ ")} \\end{cases}`, binds: CHOICE };
  }

  #operator(node: OperatorNode): Piece {
    const { op } = node;
    const [first, second] = node.args as MathNode[];
    if (first === undefined) throw new Error(`Cannot write "${op}" in TeX, as it stands alone`);
    if (second === undefined) return this.#sign(op, first);
    if (op === "+" || op === "-") {
      return { tex: `${this.#held(first, SUM)} ${op} ${this.#held(second, PRODUCT)}`, binds: SUM };
    }
    if (op === "*") return this.#product(first, second);
    if (op === "/") {
      return {
        tex: `\\frac{${this.write(first).tex}}{${this.write(second).tex}}`,
        binds: ATOM - 1,
      };
    }
    if (op === "^") return this.#power([first, second]);
    const comparison = COMPARISONS[op];
    if (comparison !== undefined) {
      const sides = [first, second].map((side) => this.#held(side, SUM));
      return { tex: sides.join(` ${comparison} `), binds: COMPARISON };
    }
    const logic = LOGICS[op];
    if (logic === undefined) throw new Error(`Cannot write the formula in TeX, as it holds ${op}`);
    const sides = [first, second].map((side) => this.#held(side, COMPARISON));
    return { tex: sides.join(` \\text{ ${logic} } `), binds: LOGIC };
  }

  #sign(op: string, of: MathNode): Piece {
    if (op === "not") return { tex: `\\text{not } ${this.#held(of, ATOM)}`, binds: LOGIC };
    if (op === "!") return { tex: `${this.#held(of, ATOM)}!`, binds: POWER };
    return { tex: `${op}${this.#held(of, PRODUCT)}`, binds: SIGN };
  }

  /** A thin space where letters follow, a dot before figures. */
  #product(first: MathNode, second: MathNode): Piece {
    // A sign may lead a product, but not stand within it.
    const left = this.#held(first, SIGN);
    const right = this.#held(second, PRODUCT);
    const joint = /^[\d.]/.test(right) ? "\\cdot" : "\\,";
    return { tex: `${left} ${joint} ${right}`, binds: left.startsWith("-") ? SIGN : PRODUCT };
  }

  #power([base, exponent]: readonly MathNode[]): Piece {
    if (base === undefined || exponent === undefined) {
      throw new Error("Cannot write a power in TeX without base and exponent");
    }
    const piece = this.write(base);
    const held = piece.binds >= ATOM ? `{${piece.tex}}` : `{${bracketed(piece.tex)}}`;
    return { tex: `${held}^{${this.write(exponent).tex}}`, binds: POWER };
  }

  /** In brackets unless it holds together at least so strongly. */
  #held(node: MathNode, binds: number): string {
    const piece = this.write(node);
    return piece.binds >= binds ? piece.tex : bracketed(piece.tex);
  }
}

function unwrapped(node: MathNode): MathNode {
  return node.type === "ParenthesisNode" ? unwrapped((node as ParenthesisNode).content) : node;
}

function constant(node: ConstantNode): Piece {
  const { value } = node;
  if (typeof value === "boolean") return atom(`\\text{${value}}`);
  if (typeof value !== "number") {
    throw new Error(`Cannot write the formula in TeX, as ${value} is not a number`);
  }
  const size = Math.abs(value);
  const text = size !== 0 && (size < 1e-3 || size >= 1e6) ? value.toExponential() : String(value);
  const [mantissa = "", exponent] = text.split("e");
  if (exponent === undefined) return atom(mantissa);
  const power = `10^{${Number(exponent)}}`;
  return { tex: mantissa === "1" ? power : `${mantissa} \\times ${power}`, binds: PRODUCT };
}

function atom(tex: string): Piece {
  return { tex, binds: ATOM };
}

/** A name as it stands; an underscore is a letter of it, not an index. */
function upright(name: string): string {
  return `\\mathrm{${name.replace(/[_%$&#{}]/g, "\\$&")}}`;
}

function bracketed(tex: string): string {
  return `\\left(${tex}\\right)`;
}
