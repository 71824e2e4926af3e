/** How deep the injectors stand in their pockets, and the spacers they take. */
import { firstTouch, type StackUp, stackUp } from "@/lib/layout/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";
import type { Laid, LaidOrNot } from "./laid.ts";
import type { SealResults } from "./pocket_seal.ts";
import { stationPlaces } from "./places.ts";

/** What was found for the injectors' heights. */
export interface StackResults extends StackUp {
  /** Height of the rail's injector face over the lowest seat [m]; undefined while no injector is measured. */
  readonly standHeight_m: number | undefined;
  /** How far the rail's face is below the middle of the upper rings [m]. */
  readonly ringDepth_m: number;
  /** Depth to which the pocket's bore is whole: to its bottom, or where the gallery opens it [m]. */
  readonly wholeTo_m: number;
  /** Whether the gallery cuts into the bore of the pockets. */
  readonly isCut: boolean;
  /** Bore left below each ring before its end or the gallery, at worst [m]. */
  readonly below_m: readonly number[];
}

/** What may be off, plus or minus [m]; ours: careful garage work with a caliper. */
const TOLERANCES = {
  seat_m: 0.1e-3,
  injector_m: 0.1e-3,
  spacer_m: 0.05e-3,
  railFace_m: 0.2e-3,
  leadIn_m: 0.1e-3,
  depth_m: 0.1e-3,
} as const;

/** The injector above its upper groove [m]; ours, measure yours. */
const LIP_m = 1.5e-3;

/** Stands in for the length of injectors that were not measured, where only differences count [m]. */
const ANY_LENGTH_m = 0.06;

const OWED = [CRITERIA.ringEntered, CRITERIA.ringBelow, CRITERIA.injectorRoom] as const;

/** Works out spacers and stand height, and judges how the rings stand in the bore. */
export function judgeStack(
  context: Context,
  rail: LaidOrNot,
  seal: SealResults | undefined,
): StackResults | undefined {
  return context.subject(OWED, () => {
    const { pockets } = context.values;
    const groove_m = pockets.grooveWidth;
    const places = stationPlaces(context.values);
    const lengths = places.map(({ injectorLength_m }) => injectorLength_m);
    const isMeasured = lengths.every((length) => length !== undefined);
    const isPartly = !isMeasured && lengths.some((length) => length !== undefined);
    const { laid } = rail;
    if (laid === undefined || seal === undefined || groove_m === undefined || isPartly) {
      const because = isPartly
        ? "Enter the length of every injector, or of none while all are alike."
        : groove_m === undefined
        ? "Measure the width of the injector's groove."
        : rail.because;
      for (const criterion of OWED) context.check(criterion, { value: undefined, because });
      return undefined;
    }
    const wholeTo_m = wholeTo(laid, pockets.depth);
    const isCut = wholeTo_m < pockets.depth;
    // Equal room above and below the ring, whatever stands lowest.
    const wholeFrom_m = Math.max(seal.leadLength_m, dipOf(laid.spec));
    const ringDepth_m = (wholeFrom_m + wholeTo_m) / 2;
    const stations = places.map(({ seat_m, injectorLength_m = ANY_LENGTH_m }) => ({
      seat_m,
      injectorLength_m,
    }));
    const plane_m = Math.max(...stations.map((one) => one.seat_m + one.injectorLength_m));
    const railFace_m = plane_m - ringDepth_m;
    const found = stackUp(context.working, "stack", {
      stations,
      railFace_m,
      pocket: { leadIn_m: wholeFrom_m, depth_m: pockets.depth },
      ring: { width_m: groove_m, beyond_m: groove_m / 2 + LIP_m },
      tolerances: TOLERANCES,
    });
    // What a ring stands too high it has less bore below: the same tolerances the other way.
    const below_m = found.injectors.map(({ insertion }) =>
      wholeTo_m - wholeFrom_m - groove_m - insertion.nominal_m -
      (insertion.nominal_m - insertion.worst_m)
    );
    const lowest_m = Math.min(...stations.map(({ seat_m }) => seat_m));
    const results = {
      ...found,
      standHeight_m: isMeasured ? railFace_m - lowest_m : undefined,
      ringDepth_m,
      wholeTo_m,
      isCut,
      below_m,
    };
    judgeRings(context, results, wholeFrom_m, groove_m);
    return results;
  });
}

/** How much lower than its middle the edge of a pocket's bore lies in the side of a round bar [m]. */
function dipOf({ bar, stations }: Laid["spec"]): number {
  if (bar.shape !== "round") return 0;
  const radius_m = bar.height_m / 2;
  const height = (aside_m: number): number => Math.sqrt(Math.max(0, radius_m ** 2 - aside_m ** 2));
  return Math.max(
    0,
    ...stations.map(({ across_m, pocket }) =>
      height(Math.abs(across_m)) - height(Math.abs(across_m) + pocket.bore_m / 2)
    ),
  );
}

/** Where the first pocket's bore ends: at its bottom, or where a wandered gallery cuts into it. */
function wholeTo({ layout, gallery, drift }: Laid, depth_m: number): number {
  const depths = layout.holes.filter(({ feature }) => feature === "pocket").map((pocket) => {
    const bore = pocket.profile.find(({ cut }) => cut === "bore");
    return Math.max(0, firstTouch(pocket, gallery, bore?.fromDiameter_m ?? 0, drift) ?? depth_m);
  });
  return Math.min(depth_m, ...depths);
}

function judgeRings(
  context: Context,
  { injectors, below_m, wholeTo_m, isCut }: StackResults,
  wholeFrom_m: number,
  groove_m: number,
): void {
  const say = (length_m: number): string => context.say(length_m, "length");
  const short_m = groove_m + wholeFrom_m - wholeTo_m;
  const noRoom = short_m > 0
    ? ` Lead-in and groove take ${say(wholeFrom_m + groove_m)}${
      isCut ? "; set the gallery higher in a taller bar" : "; deepen the pocket"
    }.`
    : "";
  const ends = isCut
    ? `The gallery cuts into the bore at ${say(wholeTo_m)} from the face, its drill wandered`
    : `The bore ends ${say(wholeTo_m)} from the face`;
  const insertion = injectors.map((one) => one.insertion);
  const entered = Math.min(...insertion.map(({ worst_m }) => worst_m));
  context.check(CRITERIA.ringEntered, {
    value: entered,
    because: `The bore is whole from ${say(wholeFrom_m)} on. As drawn the ring stands ${
      say(Math.min(...insertion.map(({ nominal_m }) => nominal_m)))
    } past it; tolerances may take the difference.${noRoom}`,
  });
  context.check(CRITERIA.ringBelow, {
    value: Math.min(...below_m),
    because: `${ends}. An edge in the ring's way cuts it.${noRoom}`,
  });
  const room = injectors.map((one) => one.room);
  context.check(CRITERIA.injectorRoom, {
    value: Math.min(...room.map(({ worst_m }) => worst_m)),
    because: `To the pocket's bottom, with ${
      say(LIP_m)
    } of injector above its groove; measure yours.`,
  });
}
