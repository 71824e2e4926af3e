/** What a field's condition sees, from a resolved plan or from boxes that give none. */
import {
  type Boxes,
  type Earlier,
  fieldAt,
  type ListField,
  type PartOfValues,
  planFromBoxes,
  type Row,
  valuesWithoutFault,
} from "@/lib/plan/mod.ts";
import { numberIn } from "./echo.ts";

/**
 * Lets conditions see the values of a plan.
 *
 * @param values The plan in SI.
 * @returns Values by path.
 */
export function earlierOf(values: PartOfValues): Earlier {
  const at = (path: string): unknown => {
    const [section = "", name = ""] = path.split(".");
    return (values as unknown as Record<string, Record<string, unknown>>)[section]?.[name];
  };
  return {
    number(path) {
      const value = at(path);
      return typeof value === "number" ? value : undefined;
    },
    word(path) {
      const value = at(path);
      return typeof value === "string" ? value : undefined;
    },
  };
}

/**
 * Lets conditions see what was typed in a form that is no plan yet. What can't
 * be taken is left out, so that what it would decide is decided as if it were blank.
 *
 * @param boxes The text of the boxes.
 * @returns Values by path, with what would be assumed where a box is blank.
 * @throws {Error} Before `planReady`.
 */
export function earlierOfBoxes(boxes: Boxes): Earlier {
  return earlierOf(valuesWithoutFault(planFromBoxes(boxes)));
}

/**
 * Lets conditions count the rows that were typed; those that a plan assumes are none.
 *
 * @param earlier What conditions see of the single fields.
 * @param boxes The text of the boxes.
 * @returns The same, and for a list how many of its rows are filled.
 */
export function withRows(earlier: Earlier, boxes: Boxes): Earlier {
  return {
    word: (path) => earlier.word(path),
    number(path) {
      const field = fieldAt(path);
      if (field?.type !== "list") return earlier.number(path);
      return Array.from({ length: field.max }, (_, i) => isFilled(`${path}.${i}`, field, boxes))
        .filter(Boolean).length;
    },
  };
}

/** Whether anything stands in a row. */
export function isFilled(path: string, { fields }: ListField, boxes: Boxes): boolean {
  for (const key in fields) if (boxes.get(`${path}.${key}`)) return true;
  return false;
}

/**
 * Lets conditions see what was typed into a row.
 *
 * @param path Where the row stands: `supply.feed.0`.
 * @param list The list that it belongs to.
 * @param boxes The text of the boxes.
 * @returns Values by name; what can't be read is left out.
 */
export function rowOfBoxes(path: string, list: ListField, boxes: Boxes): Row {
  const typed = (name: string): string | undefined =>
    boxes.get(`${path}.${name}`)?.trim() || undefined;
  return {
    number(name) {
      const field = list.fields[name];
      const text = typed(name);
      return field && text !== undefined ? numberIn(field, text) : undefined;
    },
    word(name) {
      const field = list.fields[name];
      const text = typed(name);
      if (field?.type === "choice" && text !== undefined) {
        return Object.hasOwn(field.options, text) ? text : undefined;
      }
      return field?.type === "text" ? text : undefined;
    },
  };
}
