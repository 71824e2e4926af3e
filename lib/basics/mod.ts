/**
 * What every room may use: errors that name a field, limits, roots, curves.
 *
 * @module
 */
export { InputError } from "./input_error.ts";
export { isWithin, type Limit, type Limits, requireWithin } from "./limits.ts";
export { findRoot, type RootSearch } from "./find_root.ts";
export { linearCurve, monotoneCurve, type Point } from "./interpolate.ts";
