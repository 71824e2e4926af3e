/**
 * What a method is, and the record of methods used.
 *
 * @module
 */
export {
  type AnyMethod,
  isMethod,
  type Method,
  method,
  type MethodDeclaration,
  type MethodInput,
  type MethodInputs,
  type MethodOutput,
  type NumbersFor,
} from "./method.ts";
export { type Use, Working } from "./working.ts";
