/** The tools of the workshop sheet, each with what to set and what of the shop's drills does instead. */
import { type Hole, type Stretch, type Tool, tools } from "@/lib/layout/mod.ts";
import { type Bench, titlesOf } from "./bench.ts";
import { galleryTools } from "./gallery_tools.ts";
import { clearingOf, settingOf } from "./settings.ts";
import { servedBy } from "./served.ts";
import { honeTool } from "./pocket_tools.ts";
import type { WorkshopTool, WorkshopToolKind } from "./tool.ts";

/** All tools, in the order in which they are first needed. */
export function workshopTools(bench: Bench): readonly WorkshopTool[] {
  const { layout } = bench;
  const others = layout.holes.filter(({ feature }) => feature !== "gallery");
  const cut = tools({ bar: layout.bar, holes: others.map(asDrilled) });
  return [
    // The gallery's drill is a long one: another tool than one of its size for a short hole.
    ...galleryTools(bench),
    ...cut.map((tool) => toolOf(bench, tool)),
    ...others.flatMap(taper).reduce(together, []).map((tool) => toolOf(bench, tool)),
    ...honeTool(bench),
  ];
}

/** A hole without its taper, which belongs to reamer or tap. */
function asDrilled(hole: Hole): Hole {
  return { ...hole, profile: hole.profile.filter((stretch) => !isTaper(stretch)) };
}

function isTaper({ cut, fromDiameter_m, toDiameter_m }: Stretch): boolean {
  return cut === "thread" && fromDiameter_m !== toDiameter_m;
}

/** A tool as the layout has it, or as it is found here. */
type Cutter = Omit<Tool, "kind"> & { readonly kind: WorkshopToolKind };

function taper({ id, profile, thread }: Hole): readonly Cutter[] {
  return profile.filter(isTaper).map(({ fromDiameter_m, to_m }) => ({
    kind: "taper reamer",
    diameter_m: fromDiameter_m,
    holes: [id],
    deepest_m: to_m,
    ...(thread && { thread: thread.name }),
  }));
}

function together(found: readonly Cutter[], tool: Cutter): readonly Cutter[] {
  const same = found.find(({ thread }) => thread === tool.thread);
  if (same === undefined) return [...found, tool];
  const both = {
    ...same,
    holes: [...same.holes, ...tool.holes],
    deepest_m: Math.max(same.deepest_m, tool.deepest_m),
  };
  return found.map((one) => one === same ? both : one);
}

function toolOf(bench: Bench, tool: Tool | Cutter): WorkshopTool {
  const { diameter_m, included_rad, holes, deepest_m } = tool;
  const kind = kindOf(bench, tool);
  const depthRatio = deepest_m / diameter_m;
  const served = servedBy(bench, { ...tool, kind });
  const setting = settingOf(bench, { kind, diameter_m, depthRatio });
  return {
    id: toolId(kind, diameter_m, tool.thread, included_rad),
    kind,
    diameter_m,
    included_rad,
    holes,
    serves: titlesOf(bench.layout.holes.filter(({ id }) => holes.includes(id))),
    deepest_m,
    depthRatio,
    clearing: kind === "drill" ? clearingOf(depthRatio) : undefined,
    ...served,
    setting,
    source: setting?.spindle.source ?? "common practice, no source",
  };
}

/** A cone that begins at the face is the mouth of a port, which a form tool cuts with the rest of it. */
function kindOf(bench: Bench, { kind, holes }: Tool | Cutter): WorkshopToolKind {
  if (kind !== "spotting drill") return kind;
  const isMouth = bench.layout.holes.some(({ id, profile }) =>
    holes.includes(id) && profile.some(({ cut, from_m }) => cut === "seat" && from_m === 0)
  );
  return isMouth ? "port form tool" : kind;
}

function toolId(
  kind: string,
  diameter_m: number,
  thread: string | undefined,
  included_rad: number | undefined,
): string {
  const degrees = included_rad === undefined ? "" : ` ${Math.round(included_rad / Math.PI * 180)}`;
  return `${kind} ${Math.round(diameter_m * 1e6)}${degrees} ${thread ?? ""}`
    .toLowerCase().replaceAll(/[^a-z0-9]+/g, "-").replace(/-$/, "");
}
