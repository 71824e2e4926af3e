/** The order of the work, with its tools. */
import type { Bench } from "./bench.ts";
import type { Operation, OperationId, TypedOperation } from "./operation.ts";
import { beforeTheBar } from "./order_bar.ts";
import { afterTheHoles } from "./order_finish.ts";
import { galleryOrder, plugOrder } from "./order_gallery.ts";
import { pocketOrder } from "./order_pockets.ts";
import { portOrder } from "./order_ports.ts";
import type { WorkshopTool, WorkshopToolKind } from "./tool.ts";

/** Which kinds of tool an operation takes, of those that serve its holes; none where it names none. */
const KINDS: Readonly<Partial<Record<OperationId, readonly WorkshopToolKind[]>>> = {
  gallery: ["drill", "reamer"],
  "plug-threads": [
    "drill",
    "port form tool",
    "taper reamer",
    "tap",
    "bore",
    "countersink",
    "counterbore",
  ],
  "pocket-pilots": ["drill"],
  "pocket-bores": ["bore", "countersink"],
  "pocket-hones": ["flexible hone"],
  "sensor-port": [
    "drill",
    "spotting drill",
    "port form tool",
    "taper reamer",
    "tap",
    "counterbore",
  ],
  "other-ports": [
    "drill",
    "spotting drill",
    "port form tool",
    "taper reamer",
    "tap",
    "counterbore",
  ],
  "screw-holes": ["drill", "counterbore", "tap"],
};

/** Within an operation, the kinds of tool in the order in which they are taken up. */
const RANK: readonly WorkshopToolKind[] = [
  "drill",
  "spotting drill",
  "counterbore",
  "bore",
  "reamer",
  "taper reamer",
  "port form tool",
  "countersink",
  "tap",
  "flexible hone",
];

/**
 * Puts tools in the order in which they are first needed: a narrow drill before a wide one, a tap
 * after its drill.
 *
 * @param tools The tools.
 * @param operations What takes them.
 * @returns The tools in order.
 */
export function inOrder(
  tools: readonly WorkshopTool[],
  operations: readonly Operation[],
): readonly WorkshopTool[] {
  const first = (tool: WorkshopTool): number =>
    operations.findIndex(({ tools }) => tools.includes(tool.id));
  return tools.toSorted((a, b) =>
    first(a) - first(b) || RANK.indexOf(a.kind) - RANK.indexOf(b.kind) ||
    a.diameter_m - b.diameter_m
  );
}

/** All operations in order. */
export function operationsOf(bench: Bench, tools: readonly WorkshopTool[]): readonly Operation[] {
  const gallery = tools.filter(({ holes }) => bench.gallery && holes.includes(bench.gallery.id));
  return [
    ...beforeTheBar(bench),
    ...galleryOrder(bench, gallery),
    ...plugOrder(bench),
    ...pocketOrder(bench, tools),
    ...portOrder(bench),
    ...afterTheHoles(bench),
  ].map((typed) => operation(typed, tools));
}

function operation(typed: TypedOperation, tools: readonly WorkshopTool[]): Operation {
  const { holes = [] } = typed;
  const kinds = KINDS[typed.id] ?? [];
  return {
    why: undefined,
    blocked: undefined,
    cautions: [],
    source: "common practice, no source",
    ...typed,
    holes,
    tools: tools
      .filter((tool) => kinds.includes(tool.kind) && tool.holes.some((id) => holes.includes(id)))
      .map(({ id }) => id),
  };
}
