/** The order of the work as data. */
import type { WorkshopCautionId } from "./cautions.ts";

/** The names of all operations; a sheet has those that its bar calls for. */
export type OperationId =
  | "measure-bosses"
  | "cut-bar"
  | "mark-out"
  | "trial"
  | "gallery"
  | "measure-gallery"
  | "plug-threads"
  | "spot"
  | "pocket-pilots"
  | "brush-gallery"
  | "weld-caps"
  | "measure-welded"
  | "pocket-bores"
  | "pocket-hones"
  | "sensor-port"
  | "other-ports"
  | "screw-holes"
  | "deburr"
  | "wash"
  | "inspect"
  | "prove";

/** One thing to do at the bench. */
export interface Operation {
  /** Its name. */
  readonly id: OperationId;
  /** What is done, in a few words. */
  readonly title: string;
  /** What to do, in order, with the plan's own sizes in its units. */
  readonly does: readonly string[];
  /** Why it comes here and not later or earlier; undefined where the order matters little. */
  readonly why: string | undefined;
  /** Why it must not be done as planned; undefined where it may. */
  readonly blocked: string | undefined;
  /** What to beware of. */
  readonly cautions: readonly WorkshopCautionId[];
  /** Ids of the holes that it works on, in the order of the layout. */
  readonly holes: readonly string[];
  /** Ids of the tools that it takes. */
  readonly tools: readonly string[];
  /** Where the way of working comes from. */
  readonly source: string;
}

/** An operation as it is typed: what it leaves out is empty. */
export type TypedOperation =
  & Pick<Operation, "id" | "title" | "does">
  & Partial<Omit<Operation, "id" | "title" | "does" | "tools">>;

/** Source of what the trade does and nobody has published. */
export const COMMON_PRACTICE = "common practice, no source";
