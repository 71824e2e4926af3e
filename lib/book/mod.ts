/**
 * The method book: every method of the trade, by subject.
 *
 * A room's methods are found by what it exports, so none can be forgotten.
 *
 * @module
 */
export { BOOK, type Chapter, methodById } from "./book.ts";
