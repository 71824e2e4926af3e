/** The tools that size a pocket's bore: what its ring seals in. */
import { flexibleHone, reamingAllowance, SHOP_PRACTICE } from "@/lib/thread/mod.ts";
import { type Bench, idsOf, titlesOf } from "./bench.ts";
import { between, isWithin, nearest } from "./equivalents.ts";
import { settingOf } from "./settings.ts";
import { NOT_DRILLED, type Served, type WorkshopTool } from "./tool.ts";

/** How deep the bore of the pockets goes [m]. */
function boreDepth({ pockets }: Bench): number {
  const depths = pockets.flatMap(({ profile }) =>
    profile.filter(({ cut }) => cut === "bore").map(({ to_m }) => to_m)
  );
  return Math.max(0, ...depths);
}

/** What sizes a sealing bore: nothing stands in for it that is not inside its limits. */
export function sealingBore(bench: Bench, diameter_m: number): Served {
  const { shop, pockets } = bench.values;
  const limits = bench.evaluation.results.drill.seal?.bore ??
    { least_m: diameter_m, most_m: diameter_m };
  const leave = reamingAllowance(diameter_m);
  const equivalents = nearest(shop.drills, diameter_m, limits)
    .filter((size) => isWithin(size.diameter_m, limits));
  const before = leave === undefined ? [] : between(shop.drills, {
    least_m: diameter_m - leave.to,
    most_m: diameter_m - leave.from,
  });
  const form = settingOf(bench, { kind: "port form tool", diameter_m, depthRatio: 1 });
  return {
    ...NOT_DRILLED,
    limits: { least_m: limits.least_m, most_m: limits.most_m },
    equivalents,
    noEquivalent: equivalents.length > 0
      ? undefined
      : `No size of your sets lies within ${pockets.tolerance}: buy or borrow this one.`,
    leave,
    before,
    notes: [
      "Reamer, boring head or form drill, never a common drill: that leaves a bore that is wide, rough and not round. Flat at its bottom.",
      SHOP_PRACTICE["form-drill"].says((length_m) => bench.size(length_m)) +
      (form === undefined ? "" : ` Set ${bench.say(form.speed_rev_s, "rotation")} for it.`),
    ],
  };
}

/** The hone that finishes the pockets; none without pockets. */
export function honeTool(bench: Bench): readonly WorkshopTool[] {
  const { pockets, values } = bench;
  if (pockets.length === 0) return [];
  const diameter_m = flexibleHone(values.rail.pocketBore);
  const deepest_m = boreDepth(bench);
  const depthRatio = deepest_m / diameter_m;
  const kind = "flexible hone";
  const setting = settingOf(bench, { kind, diameter_m, depthRatio });
  return [{
    ...NOT_DRILLED,
    id: "flexible-hone",
    kind,
    diameter_m,
    included_rad: undefined,
    holes: idsOf(pockets),
    serves: titlesOf(pockets),
    deepest_m,
    depthRatio,
    clearing: undefined,
    setting,
    notes: ["Sold by the bore's own size; it is made wider than that."],
    source: setting?.spindle.source ?? "common practice, no source",
  }];
}
