/** The sections of a plan, in the order of the work: a field sees what stands before it. */
import type { Field, ListField, RowOf } from "./field.ts";
import type { RunName } from "./runs.ts";
import { demand } from "./sections/demand.ts";
import { engine } from "./sections/engine.ts";
import { fuel } from "./sections/fuel.ts";
import { holdDown } from "./sections/hold_down.ts";
import { injectors } from "./sections/injectors.ts";
import { lift } from "./sections/lift.ts";
import { operating } from "./sections/operating.ts";
import { pockets } from "./sections/pockets.ts";
import { ports } from "./sections/ports.ts";
import { proof } from "./sections/proof.ts";
import { pump } from "./sections/pump.ts";
import { rail } from "./sections/rail.ts";
import { regulator } from "./sections/regulator.ts";
import { sensor } from "./sections/sensor.ts";
import { sheet } from "./sections/sheet.ts";
import { shop } from "./sections/shop.ts";
import { stations } from "./sections/stations.ts";
import { supply } from "./sections/supply.ts";
import { wiring } from "./sections/wiring.ts";

/**
 * Every field of a plan, by section. The schema, the form, the defaults and the
 * API's description are made from this table; nothing else lists fields.
 */
export const SECTIONS = {
  engine,
  fuel,
  demand,
  injectors,
  regulator,
  rail,
  stations,
  pockets,
  ports,
  holdDown,
  pump,
  wiring,
  lift,
  supply,
  operating,
  sensor,
  proof,
  shop,
  sheet,
} as const;

/** The name of a section. */
export type SectionName = keyof typeof SECTIONS;

/** The values of a plan, in SI, with what is assumed filled in. */
export type PlanValues = {
  readonly [S in SectionName]: RowOf<(typeof SECTIONS)[S]["fields"]>;
};

/** One row of a run, in SI. */
export type Piece = PlanValues["supply"][RunName][number];

/** A field with the path it has in a plan. */
export interface FieldAt {
  /** Dotted: `engine.power`, `injectors.stages.0.flow`. */
  readonly path: string;
  /** Its declaration. */
  readonly field: Field;
}

/**
 * Finds the field that a path leads to.
 *
 * @param path Dotted, rows by number.
 * @returns The field or list, or undefined when there is none.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * assertEquals(fieldAt("injectors.stages.1.flow")?.label, "Static flow of one injector");
 * assertEquals(fieldAt("engine.colour"), undefined);
 * ```
 */
export function fieldAt(path: string): Field | ListField | undefined {
  const [sectionName = "", name = "", row, inner] = path.split(".");
  if (!Object.hasOwn(SECTIONS, sectionName)) return undefined;
  const fields: Readonly<Record<string, Field | ListField>> =
    SECTIONS[sectionName as SectionName].fields;
  const field = Object.hasOwn(fields, name) ? fields[name] : undefined;
  if (field === undefined || row === undefined) return field;
  if (field.type !== "list" || inner === undefined || !/^\d+$/.test(row)) return undefined;
  return Object.hasOwn(field.fields, inner) ? field.fields[inner] : undefined;
}
