/** How the fuel system runs at each operating point. */
import type { VNode } from "preact";
import { displayUnit, type Kind, type System } from "@/lib/units/mod.ts";
import { figureIn } from "./figure_in.ts";
import { type Column, HoleTable } from "./hole_table.ts";
import { html } from "./html.ts";

/** One operating point. */
export interface OperatingRow {
  readonly name: string;
  /** At the pump's terminals. */
  readonly voltage_V?: number;
  /** What the engine burns. */
  readonly burnt_m3_s?: number;
  readonly pumped_m3_s?: number;
  /** What the regulator sends back. */
  readonly returned_m3_s?: number;
  /** Gauge. */
  readonly rail_Pa?: number;
  /** Rail less manifold. */
  readonly differential_Pa?: number;
  /** What happens there in words; empty where nothing can be said. */
  readonly says: string;
}

/** What {@linkcode OperatingTable} shows. */
export interface OperatingTableProps {
  readonly rows: readonly OperatingRow[];
  readonly system: System;
}

type Quantity = Exclude<keyof OperatingRow, "name" | "says">;

const QUANTITIES: readonly (readonly [of: Quantity, title: string, kind: Kind])[] = [
  ["voltage_V", "Voltage", "voltage"],
  ["burnt_m3_s", "Burnt", "pumpFlow"],
  ["pumped_m3_s", "Pumped", "pumpFlow"],
  ["returned_m3_s", "Returned", "pumpFlow"],
  ["rail_Pa", "Rail", "pressure"],
  ["differential_Pa", "Across injectors", "pressure"],
];

/** One row for each point; a column that none of them fills is left out. */
export function OperatingTable({ rows, system }: OperatingTableProps): VNode {
  const shown = QUANTITIES.filter(([of]) => rows.some((row) => row[of] !== undefined));
  const isSaid = rows.some(({ says }) => says !== "");
  const columns: Column[] = [
    { title: "Operating point" },
    ...shown.map(([, title, kind]) => ({
      title: `${title}, ${displayUnit(kind, system).symbol}`,
      isNumber: true,
    })),
    ...(isSaid ? [{ title: "What happens" }] : []),
  ];
  const table = HoleTable({
    caption:
      "How the fuel system runs at each operating point. Voltage is at the pump, rail pressure gauge; across injectors is rail less manifold",
    columns,
    rows: rows.map((row) => [
      row.name,
      ...shown.map(([of, , kind]) => {
        const value = row[of];
        return value === undefined
          ? "not known"
          : figureIn(value, kind, displayUnit(kind, system).symbol);
      }),
      ...(isSaid ? [row.says === "" ? "none" : row.says] : []),
    ]),
  });
  return html`<div class="operating">${table}</div>`;
}
