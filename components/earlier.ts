/** What a field's condition sees, from a resolved plan or from boxes that give none. */
import { type Boxes, type Earlier, fieldAt, type PlanValues } from "@/lib/plan/mod.ts";

/**
 * Lets conditions see the values of a plan.
 *
 * @param values The plan in SI.
 * @returns Values by path.
 */
export function earlierOf(values: PlanValues): Earlier {
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
 * Lets conditions see what was chosen in a form that is no plan yet. Conditions
 * ask for words only, so quantities stay unread.
 *
 * @param boxes The text of the boxes.
 * @returns Words by path, with what would be assumed where a box is blank.
 */
export function earlierOfBoxes(boxes: Boxes): Earlier {
  return {
    number: () => undefined,
    word(path) {
      const typed = boxes.get(path)?.trim();
      if (typed) return typed;
      const field = fieldAt(path);
      return field?.type === "choice" && typeof field.default === "object"
        ? field.default.text
        : undefined;
    },
  };
}
