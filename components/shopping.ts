/** What to ask for in a shop, in short: the rest stands on the shopping sheet. */
import { type ShoppingItem, shoppingList } from "@/lib/evaluation/mod.ts";
import { formatQuantity } from "@/lib/units/mod.ts";
import type { NumberRow } from "./number_table.ts";
import type { PlanShown } from "./plan_shown.ts";
import { figureLine, figureWords } from "./shopping_words.ts";
import { unbroken } from "./unbroken.ts";

/** Shelves whose every item the short list names. */
const SHELVES: ReadonlySet<string> = new Set(["injectors", "pumps", "filters", "regulator"]);

/** Items of other shelves that it names too. */
const ITEMS: ReadonlySet<string> = new Set(["fuse", "pressure-sensor", "every-part"]);

/** The parts that decide, each with its first figure. */
export function shoppingRows(shown: PlanShown): NumberRow[] {
  return shoppingList(shown.evaluation, shown.values)
    .filter(({ part, id }) => SHELVES.has(part) || ITEMS.has(id))
    .map((item) => row(shown, item));
}

/** Figures that a row says; the sheet says them all. */
const MOST_FIGURES = 2;

function row(shown: PlanShown, item: ShoppingItem): NumberRow {
  const { what, figures, missing, quantity } = item;
  const [first, ...rest] = figureWords(figures, shown.system);
  if (first === undefined) return { label: what, value: "open", note: missing.join(" ") };
  const count = quantity?.unit === "pieces" && quantity.value > 1 ? `${quantity.value} × ` : "";
  const notes = [
    [first.sense, [first.name, first.where].filter(Boolean).join(" ")].filter(Boolean).join(", "),
    ...rest.slice(0, MOST_FIGURES - 1).map(figureLine),
    ...yours(shown, item),
    ...(missing.length > 0 ? ["not all of it is known yet"] : []),
  ];
  return { label: what, value: count + first.text, note: unbroken(notes.join("; ")) };
}

/** What the plan has in place of the injectors to shop for. */
function yours({ values, system, evaluation, boxes }: PlanShown, { id }: ShoppingItem): string[] {
  const stage = /^injectors(?:-(\d+))?$/.exec(id);
  if (stage === null) return [];
  const row = Number(stage[1] ?? 1) - 1;
  const flow = values.injectors.stages[row]?.flow;
  if (flow === undefined) return [];
  // The note on a mass flow stands under the table.
  const path = `injectors.stages.${row}.flow`;
  const typed = boxes.get(path);
  const byMass = typed === undefined || evaluation.notes[path] === undefined
    ? ""
    : `, from ${typed} by mass`;
  return [`yours: ${formatQuantity(flow, "flow", system)}${byMass}`];
}
