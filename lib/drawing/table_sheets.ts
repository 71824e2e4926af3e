/** Sheets with the table of holes. */
import {
  rowHeight,
  TABLE_HEAD_mm,
  tableNote,
  type TableRow,
  tableRows,
  tableShapes,
} from "./hole_rows.ts";
import { text } from "./ink.ts";
import { TEXT_mm } from "./line_types.ts";
import type { Scene } from "./scene.ts";
import { type Draft, roomOn } from "./sheet.ts";

/** The sheets. */
export function tableSheets(scene: Scene): Draft[] {
  const room = roomOn(scene.options.paper, "landscape");
  const width = room.right - room.left;
  const most = room.top - room.bottom - TABLE_HEAD_mm - 3 * TEXT_mm;
  const pages: TableRow[][] = [[]];
  let used = 0;
  for (const row of tableRows(scene, width)) {
    const height = rowHeight(row);
    if (used + height > most) {
      pages.push([]);
      used = 0;
    }
    pages.at(-1)?.push(row);
    used += height;
  }
  return pages.map((rows, i): Draft => {
    const tall = rows.reduce((sum, row) => sum + rowHeight(row), TABLE_HEAD_mm);
    return {
      kind: "holes",
      name: pages.length === 1 ? "Table of holes" : `Table of holes, ${i + 1} of ${pages.length}`,
      scale: "none",
      orientation: "landscape",
      shapes: [
        ...tableShapes(rows, { left: room.left, top: room.top, width }),
        text(tableNote(scene), [room.left + 1, room.top - tall - 2 * TEXT_mm]),
      ],
    };
  });
}
