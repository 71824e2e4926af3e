/** What a place in a plan is called. */
import { fieldAt } from "@/lib/plan/mod.ts";

/** The label of a box, with the row's name before it in a list: "Stage 2, Rating pressure". */
export function labelOf(path: string): string {
  const [section, name, row] = path.split(".");
  const field = fieldAt(path);
  if (row === undefined && field?.type === "list") return field.title ?? field.label;
  const label = field?.label ?? path;
  if (row === undefined) return label;
  return `${fieldAt(`${section}.${name}`)?.label} ${Number(row) + 1}, ${label}`;
}

/** A message without the label that it begins with, for where the label stands already. */
export function withoutLabel(message: string, label: string): string {
  const prefix = `${label}: `;
  return message.startsWith(prefix) ? message.slice(prefix.length) : message;
}
