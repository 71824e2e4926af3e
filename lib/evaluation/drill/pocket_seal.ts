/** Whether the injectors' upper O-rings seal in their pockets. */
import {
  holeTolerance,
  type LeadIn,
  leadIn,
  leadInLength,
  type OringGland,
  oringGland,
  ringOfSize,
  type Size,
  sizeOf,
} from "@/lib/seal/mod.ts";
import type { Context } from "../context.ts";
import { CRITERIA } from "../criteria.ts";

/** What was found for the rings. */
export interface SealResults {
  /** Limits of the pocket's bore. */
  readonly bore: Size;
  /** Squeeze, stretch and fill; undefined until injector and ring are measured. */
  readonly gland: OringGland | undefined;
  /** What the ring asks of its lead-in; undefined likewise. */
  readonly leadInNeeded: LeadIn | undefined;
  /** Mouth of the lead-in that is drilled [m]. */
  readonly leadMouth_m: number;
  /** Its length [m]. */
  readonly leadLength_m: number;
}

/** How far an injector's own sizes may be off, below and above [m]; ours, measure yours. */
const INJECTOR_m = { groove: [-60e-6, 0], land: [-50e-6, 0], width: [0, 100e-6] } as const;

/** What a lead-in's mouth is to be wider than the fitted ring [m]; ours. */
const MOUTH_SPARE_m = 0.2e-3;

/** Mouth over the bore where the ring is not known [m]; ours. */
const USUAL_MOUTH_m = 1.6e-3;

const OWED = [
  CRITERIA.ringSqueeze,
  CRITERIA.ringSqueezeLeast,
  CRITERIA.ringStretch,
  CRITERIA.ringFill,
  CRITERIA.leadIn,
] as const;

/** Judges squeeze, stretch and fill of the ring, and its lead-in. */
export function judgeSeal(context: Context): SealResults | undefined {
  return context.subject(OWED, () => {
    const { rail, pockets } = context.values;
    const bore = holeTolerance(pockets.tolerance, rail.pocketBore);
    const gland = glandOf(context, bore);
    const needed = gland && leadIn(context.working, "seal.leadIn", {
      bore_m: bore.least_m,
      fittedOutside_m: gland.fittedOutsideMost_m,
      angle_rad: pockets.leadAngle,
      clearance_m: MOUTH_SPARE_m,
    });
    const leadMouth_m = pockets.leadMouth ??
      Math.max(needed?.mouth_m ?? rail.pocketBore + USUAL_MOUTH_m, rail.pocketBore + 1e-4);
    const leadLength_m = context.working.run("seal.leadLength_m", leadInLength, {
      mouth: leadMouth_m,
      bore: rail.pocketBore,
      angle: pockets.leadAngle,
    });
    judgeGland(context, gland);
    judgeLeadIn(context, gland, leadMouth_m);
    return { bore, gland, leadInNeeded: needed, leadMouth_m, leadLength_m };
  });
}

function glandOf({ values, working }: Context, bore: Size): OringGland | undefined {
  const { land, groove, grooveWidth, ringInside, ringSection } = values.pockets;
  if (
    land === undefined || groove === undefined || grooveWidth === undefined ||
    ringInside === undefined || ringSection === undefined
  ) return undefined;
  const ring = ringOfSize(ringInside, ringSection);
  return oringGland(working, "seal", {
    bore,
    groove: sizeOf(groove, ...INJECTOR_m.groove),
    grooveWidth: sizeOf(grooveWidth, ...INJECTOR_m.width),
    land: sizeOf(land, ...INJECTOR_m.land),
    insideDiameter: ring.insideDiameter,
    section: ring.section,
  });
}

function judgeGland(context: Context, gland: OringGland | undefined): void {
  if (gland === undefined) {
    const because = "Measure the injector's upper end and its O-ring, and enter all five sizes.";
    for (const criterion of OWED.slice(0, 4)) {
      context.check(criterion, { value: undefined, because });
    }
    return;
  }
  const share = (value: number): string => context.say(value, "ratio");
  const length = (value: number): string => context.say(value, "length");
  context.check(CRITERIA.ringSqueeze, {
    value: gland.squeezeNominal,
    because: `A section of ${length(gland.section_m)}, as stretched, in a gland ${
      length(gland.depth_m)
    } deep.`,
    result: "seal.squeezeNominal",
  });
  context.check(CRITERIA.ringSqueezeLeast, {
    value: gland.squeezeLeast,
    because:
      `All sizes at their limits, the injector lying against one side; on the other side it reaches ${
        share(gland.squeezeMost)
      }.${
        gland.squeezeLeast < CRITERIA.ringSqueezeLeast.aim
          ? " A closer bore, a wider groove's bottom or a thicker ring squeezes more."
          : ""
      }`,
    result: "seal.squeezeLeast",
  });
  context.check(CRITERIA.ringStretch, {
    value: gland.stretch,
    because: `On its groove; up to ${share(gland.stretchMost)} over the limits of size.`,
    result: "seal.stretchMost",
  });
  context.check(CRITERIA.ringFill, {
    value: gland.fillMost,
    because: `At worst over the limits of size, before fuel swells the ring; ${
      share(gland.fillNominal)
    } as drawn.`,
    result: "seal.fillMost",
  });
}

function judgeLeadIn(context: Context, gland: OringGland | undefined, mouth_m: number): void {
  const value = gland && mouth_m - gland.fittedOutsideMost_m;
  context.check(CRITERIA.leadIn, {
    value,
    because: gland === undefined
      ? "It has to be wider than the ring on its groove, whose sizes are not known yet."
      : `${context.say(mouth_m, "length")} at the face; the ring on its groove measures up to ${
        context.say(gland.fittedOutsideMost_m, "length")
      }.`,
    ...(gland && { result: "seal.leadIn.mouth_m" }),
  });
}
