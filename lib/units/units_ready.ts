/** The one place where mathjs is loaded. */
import type { MathJsInstance } from "mathjs";

let loading: Promise<void> | undefined;
let loaded: MathJsInstance | undefined;

/**
 * Units that mathjs lacks, or rounds: each with its exact value in SI; columns
 * of mercury and water are the conventional ones (NIST SP 811, appendix B.8).
 */
const DEFINITIONS: Readonly<Record<string, string>> = {
  lbf: "4.4482216152605 N",
  kgf: "9.80665 N",
  psi: "6894.757293168361 Pa",
  hp: "745.6998715822702 W",
  metrichp: "735.49875 W",
  mmHg: "133.322387415 Pa",
  inHg: "3386.389 Pa",
  impgal: "0.00454609 m^3",
  BTU: "1055.05585262 J",
  kcal: "4186.8 J",
  poise: "0.1 Pa s",
  cP: "0.001 Pa s",
  mmAq: "9.80665 Pa",
  cmAq: "98.0665 Pa",
  inAq: "249.08891 Pa",
};

/**
 * Loads mathjs, once. Call it right after the service listens; parsing,
 * formulas and TeX need it, showing quantities does not.
 *
 * @returns When parsing works.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 * import { parseQuantity } from "./parse_quantity.ts";
 *
 * await unitsReady();
 * assertEquals(parseQuantity("3 bar", "pressure"), { ok: true, value: 300000 });
 * ```
 */
export function unitsReady(): Promise<void> {
  loading ??= load();
  return loading;
}

/**
 * Gives mathjs to the files of this room.
 *
 * @throws {Error} Before {@linkcode unitsReady} is done.
 */
export function mathjs(): MathJsInstance {
  if (loaded === undefined) {
    throw new Error("Cannot read units yet, as mathjs is not loaded: await unitsReady() first");
  }
  return loaded;
}

async function load(): Promise<void> {
  // A UMD build: its namespace holds everything under `default` only.
  const { default: math } = await import("mathjs/single-file") as { default: MathJsInstance };
  const { Unit } = math as unknown as {
    Unit: { deleteUnit(name: string): void; UNITS: Readonly<Record<string, unknown>> };
  };
  for (const [name, definition] of Object.entries(DEFINITIONS)) {
    if (name in Unit.UNITS) Unit.deleteUnit(name);
    math.createUnit(name, { definition, prefixes: "none" });
  }
  loaded = math;
}
