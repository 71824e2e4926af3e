/** Numbers of holes in balloons, and troubles in words. */
import type { Bored } from "./body.ts";
import { widthOf } from "./boxes.ts";
import { reach } from "./centre_lines.ts";
import { line, text } from "./ink.ts";
import { TEXT_mm } from "./line_types.ts";
import { project, type Projection } from "./projection.ts";
import { numberOf, type Scene } from "./scene.ts";
import type { Arc, Mark, Point, Shape, Trouble } from "./shapes.ts";
import { rowsFor, spread } from "./spread.ts";

/** A hole whose number is to be shown. */
export interface Ballooned {
  /** Its centre on paper, and where the leader begins above it. */
  readonly at: Point;
  readonly from: number;
  /** On paper [mm]. */
  readonly radius: number;
  readonly id: string;
  readonly number: string;
  readonly trouble?: string | undefined;
}

/** A hole of a view, with its number and what is wrong with it. */
export function ballooned(scene: Scene, view: Projection, bored: Bored): Ballooned {
  const at = project(view, bored.entry);
  return {
    at,
    from: at[1] + reach(view, bored) + 0.5,
    radius: bored.widest * view.scale,
    id: bored.hole.id,
    number: numberOf(scene, bored),
    trouble: scene.troubles.get(bored.hole.id),
  };
}

/** Radius of a balloon [mm]. */
export const BALLOON_mm = 2.8;
/** Between rows of words above the balloons [mm]. */
const ROW_mm = 2 * TEXT_mm;

/**
 * A row of balloons above a view, each over its hole, and above them what is wrong with any.
 *
 * @param holes The holes.
 * @param base Where the balloons' lower edge may lie.
 * @param room From where to where they may reach.
 */
export function balloons(
  holes: readonly Ballooned[],
  base: number,
  room: readonly [number, number],
): Shape[] {
  const sorted = inColumns(holes);
  const size = 2 * BALLOON_mm + 1;
  const stands = spread(
    sorted.map(({ at }) => at[0]),
    sorted.map(({ number }) => Math.max(size, widthOf(number, TEXT_mm) + 1)),
    room,
  );
  const level = base + BALLOON_mm + 1.5;
  const shapes: Shape[] = sorted.flatMap(({ at, from, number }, i): Mark[] => {
    const stand = stands[i] ?? at[0];
    return [
      line([at[0], from], [at[0], base]),
      line([at[0], base], [stand, level - BALLOON_mm]),
      { kind: "circle", layer: "text", type: "01.1", centre: [stand, level], radius: BALLOON_mm },
      text(number, [stand, level - TEXT_mm / 2], { anchor: "middle" }),
    ];
  });
  return [...shapes, ...troubles(sorted, stands, level + BALLOON_mm, room)];
}

/** From left to right; of two in one column the upper comes second. */
function inColumns(holes: readonly Ballooned[]): Ballooned[] {
  return [...holes].sort((a, b) => a.at[0] - b.at[0] || a.at[1] - b.at[1]);
}

/** From a hole's edge to the cloud around it [mm]. */
export const CLOUD_mm = 1.6;

/** The word that no mark of trouble goes without. */
const TROUBLE = "TROUBLE";

function troubles(
  holes: readonly Ballooned[],
  stands: readonly number[],
  base: number,
  [least, most]: readonly [number, number],
): Trouble[] {
  const marked = holes.flatMap((hole, i) =>
    hole.trouble === undefined ? [] : [{ ...hole, stand: stands[i] ?? hole.at[0] }]
  );
  const spans = marked.map(({ stand, number, trouble }) => {
    const width = widthOf(troubleWords(number, trouble ?? ""), TEXT_mm) + 3;
    const middle = Math.max(least + width / 2, Math.min(most - width / 2, stand));
    return [middle - width / 2, middle + width / 2] as const;
  });
  // A leader passes through the rows below its words, so each gets a row of its own there too.
  const rows = rowsFor(spans);
  return marked.map((hole, i): Trouble => {
    const [left, right] = spans[i] ?? [0, 0];
    const level = base + 2 + (rows[i] ?? 0) * ROW_mm;
    const says = troubleWords(hole.number, hole.trouble ?? "");
    return {
      kind: "trouble",
      layer: "trouble",
      hole: hole.id,
      says,
      marks: [
        ...cloud(hole.at, hole.radius + CLOUD_mm),
        text(says, [(left + right) / 2, level], { anchor: "middle", layer: "trouble" }),
      ],
    };
  });
}

/** What is said of a hole in trouble, with its number, so that the words can stand anywhere. */
export function troubleWords(number: string, says: string): string {
  return says === "" ? `${TROUBLE} ${number}` : `${TROUBLE} ${number}: ${says}`;
}

/** A ring of bulges around a place, as revisions are marked. */
export function cloud([x, y]: Point, radius: number): Arc[] {
  const count = Math.max(8, Math.round(2 * Math.PI * radius / 3.2));
  const half = Math.PI / count;
  const bulge = radius * Math.sin(half);
  return Array.from({ length: count }, (_, i): Arc => {
    const angle = 2 * half * i;
    const middle = radius * Math.cos(half);
    const degrees = angle * 180 / Math.PI;
    return {
      kind: "arc",
      layer: "trouble",
      type: "01.2",
      centre: [x + middle * Math.cos(angle), y + middle * Math.sin(angle)],
      radius: bulge,
      from_deg: degrees - 90,
      to_deg: degrees + 90,
    };
  });
}
