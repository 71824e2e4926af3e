/**
 * Quantities: typed text to SI and back, and formulas evaluated with units.
 *
 * Nothing else imports mathjs, and nothing here loads it before
 * {@linkcode unitsReady} is called.
 *
 * @module
 */
export { unitsReady } from "./units_ready.ts";
export type { DisplayUnit, Kind, KindInfo, System } from "./kind.ts";
export { KINDS } from "./kinds.ts";
export { type Parsed, type ParseOptions, parseQuantity } from "./parse_quantity.ts";
export { displayUnit, formatIn, formatQuantity, formatShare, inBoth } from "./format_quantity.ts";
export { formatNumber } from "./format_number.ts";
export { evaluateFormula, formulaNames, type QuantityInput } from "./formula.ts";
export { formulaToTex } from "./formula_tex.ts";
