/** What is wrong with a plan, field by field. */

/** What is wrong with one field. */
export interface Fault {
  /** Where: `engine.power`; empty for the plan as a whole. */
  readonly path: string;
  /** What to do about it, in words. */
  readonly message: string;
}
