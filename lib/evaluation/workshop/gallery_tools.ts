/** The tools of the gallery: a small drill that leads, the long drill, a reamer where one is planned. */
import { DRILLS, nearestDrill, reamingAllowance } from "@/lib/thread/mod.ts";
import { type Bench, idsOf, titlesOf } from "./bench.ts";
import { between, nearest } from "./equivalents.ts";
import { whyNone } from "./served.ts";
import { clearingOf, settingOf } from "./settings.ts";
import { NOT_DRILLED, type WorkshopTool, type WorkshopToolKind } from "./tool.ts";

/** Width of the drill that leads over that of the gallery [-]; ours. */
const LEADER_SHARE = 0.5;

/** A gallery no wider than this is drilled at once [m]; ours. */
const NO_LEADER_m = 0.006;

/** Drills of the gallery, the one that leads first. */
export function galleryTools(bench: Bench): readonly WorkshopTool[] {
  const { gallery } = bench;
  const bore_m = gallery?.profile[0]?.fromDiameter_m;
  if (gallery === undefined || bore_m === undefined) return [];
  const { drills } = bench.values.shop;
  const isReamed = bench.values.rail.finish === "reamed";
  const leave = isReamed ? reamingAllowance(bore_m) : undefined;
  const equivalents = nearest(drills, bore_m);
  return [
    ...leader(bench, bore_m),
    isReamed
      ? {
        ...along(bench, "gallery-reamer", "reamer", bore_m),
        leave,
        before: leave === undefined
          ? []
          : between(drills, { least_m: bore_m - leave.to, most_m: bore_m - leave.from }),
        notes: ["The drill before it is as long, and wanders as far: a reamer follows the hole."],
      }
      : {
        ...along(bench, "gallery-drill", "drill", bore_m),
        equivalents,
        noEquivalent: whyNone(bench, equivalents),
        notes: [
          "A wider drill takes half its difference off each wall: enter it in the plan before you use it.",
        ],
      },
  ];
}

function leader(bench: Bench, bore_m: number): readonly WorkshopTool[] {
  if (bore_m <= NO_LEADER_m) return [];
  const set = bench.values.shop.drills === "inch" ? DRILLS.fractional : DRILLS.metric;
  const { diameter_m } = nearestDrill(set, bore_m * LEADER_SHARE);
  return [{
    ...along(bench, "gallery-leader", "drill", diameter_m),
    equivalents: nearest(bench.values.shop.drills, diameter_m),
    notes: [
      "Leads: the wide one follows it. About half of the gallery, any near size will do.",
    ],
  }];
}

function along(
  bench: Bench,
  id: string,
  kind: WorkshopToolKind,
  diameter_m: number,
): WorkshopTool {
  const holes = bench.gallery === undefined ? [] : [bench.gallery];
  const deepest_m = bench.galleryDepth_m;
  const depthRatio = deepest_m / diameter_m;
  const setting = settingOf(bench, { kind, diameter_m, depthRatio });
  return {
    ...NOT_DRILLED,
    id,
    kind,
    diameter_m,
    included_rad: undefined,
    holes: idsOf(holes),
    serves: titlesOf(holes),
    deepest_m,
    depthRatio,
    clearing: kind === "drill" ? clearingOf(depthRatio) : undefined,
    setting,
    source: setting?.spindle.source ?? "common practice, no source",
  };
}
