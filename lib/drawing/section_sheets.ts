/** Sheets with the ends of the bar and the sections. */
import { endView } from "./end_view.ts";
import type { Orientation, Paper } from "./options.ts";
import { largestScale } from "./scale.ts";
import type { Block, Scene } from "./scene.ts";
import { sectionView } from "./section_view.ts";
import { sectionsOf } from "./sections.ts";
import { type Draft, fits, flowed, roomOn } from "./sheet.ts";

/** Twice the size, so that a lead-in of half a millimetre can be seen; of a large bar its own size. */
const SECTION_SCALE = 2;
const LARGE_mm = 32;
const GAP_mm = 8;

/** The sheets, upright or level, whichever takes fewer; ends at true scale. */
export function sectionSheets(scene: Scene): Draft[] {
  const { width, height } = scene.body;
  const { paper } = scene.options;
  const rooms = ORIENTATIONS.map((each) => roomOn(paper, each));
  let blocks: Block[] = [];
  largestScale((scale) => {
    blocks = views(scene, scale);
    return rooms.some((room) => blocks.every((each) => fits(each, room)));
  }, Math.max(width, height) > LARGE_mm ? 1 : SECTION_SCALE);
  const ways = ORIENTATIONS
    .filter((_, i) => blocks.every((each) => fits(each, rooms[i] ?? each.box)))
    .map((orientation) => drafted(blocks, paper, orientation))
    .sort((a, b) => a.length - b.length);
  return ways[0] ?? drafted(blocks, paper, "landscape");
}

const ORIENTATIONS = ["landscape", "portrait"] as const;

function drafted(blocks: readonly Block[], paper: Paper, orientation: Orientation): Draft[] {
  const pages = flowed(blocks, roomOn(paper, orientation), GAP_mm);
  return pages.map((shapes, i): Draft => ({
    kind: "sections",
    name: pages.length === 1
      ? "Ends and sections"
      : `Ends and sections, ${i + 1} of ${pages.length}`,
    scale: "1:1",
    orientation,
    shapes,
  }));
}

function views(scene: Scene, scale: number): Block[] {
  const { body } = scene;
  const ends = (["datum-end", "far-end"] as const)
    .filter((face) => face === "datum-end" || body.holes.some(({ hole }) => hole.face === face))
    .map((face) => endView(scene, face, Math.min(1, scale)));
  return [...ends, ...sectionsOf(body, scale).map((each) => sectionView(scene, each))];
}
