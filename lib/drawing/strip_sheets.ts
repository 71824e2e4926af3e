/** Sheets with the marking-out strips. */
import { text } from "./ink.ts";
import { piecesOf, withHoles } from "./pieces.ts";
import type { Block, Scene } from "./scene.ts";
import { type Draft, flowed, roomOn } from "./sheet.ts";
import { LONG_FACES, strip } from "./strip.ts";

/** For the words at both ends of a strip [mm]. */
const ENDS_mm = 12;
const GAP_mm = 9;
/** For the line that says what to do [mm]. */
const NOTE_mm = 7;

/** The sheets: none for a bar with holes in its ends only. */
export function stripSheets(scene: Scene): Draft[] {
  const { body, options } = scene;
  const room = roomOn(options.paper, "landscape");
  const pieces = piecesOf(body, room.right - room.left - ENDS_mm);
  const faces = LONG_FACES.filter((face) => body.holes.some(({ hole }) => hole.face === face));
  const blocks = faces.flatMap((face) =>
    withHoles(pieces, body.holes.filter(({ hole }) => hole.face === face))
      .map((piece, i, drawn): Block =>
        strip(scene, {
          face,
          piece,
          isLast: i + 1 === drawn.length && drawn.length < pieces.length,
        })
      )
  );
  const pages = flowed(blocks, { ...room, top: room.top - NOTE_mm }, GAP_mm);
  return pages.map((shapes, i): Draft => ({
    kind: "strip",
    name: pages.length === 1
      ? "Marking-out strips"
      : `Marking-out strips, ${i + 1} of ${pages.length}`,
    scale: "1:1",
    orientation: "landscape",
    shapes: [
      ...shapes,
      text(
        "Cut out, glue to the bar with its edges in line, and prick through the crosses. Check with a rule first.",
        [room.left, room.top - 2.5],
      ),
    ],
  }));
}
