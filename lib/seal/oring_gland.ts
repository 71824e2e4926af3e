/** A ring between a groove and a bore, at all limits of size. */
import type { Method, MethodInputs, NumbersFor, Working } from "@/lib/method/mod.ts";
import { widestGap } from "./gap.ts";
import { glandDepth, glandDepthNarrow, glandDepthWide, glandFill, oringSqueeze } from "./gland.ts";
import {
  type Corner,
  cornersOf,
  drawnOf,
  type OringGlandSpec,
  requireGland,
} from "./gland_spec.ts";
import { sectionByCurve, sectionByInside, sectionByVolume } from "./section_laws.ts";
import { fittedOutside, oringStretch } from "./stretch.ts";

/** How the section of a stretched ring is found: nominally, upper bound, lower bound. */
export type SectionLaw = "inside" | "volume" | "curve";

const LAWS: readonly SectionLaw[] = ["inside", "volume", "curve"];

/** Squeeze by one law, part and bore on one axis. */
export interface SqueezeByLaw {
  /** Squeeze, all as drawn [-]. */
  readonly nominal: number;
  /** Least squeeze over the limits of size [-]. */
  readonly least: number;
  /** Most squeeze over the limits of size [-]. */
  readonly most: number;
}

/** What a ring does in its gland. Squeeze below nought: it does not touch. */
export interface OringGland {
  /** Stretch, all as drawn [-]. */
  readonly stretch: number;
  /** Most stretch over the limits of size [-]. */
  readonly stretchMost: number;
  /** Section in the groove, all as drawn, nominal law [m]. */
  readonly section_m: number;
  /** Depth of the gland, all as drawn [m]. */
  readonly depth_m: number;
  /** Squeeze, all as drawn, on one axis, nominal law [-]. */
  readonly squeezeNominal: number;
  /** Least squeeze over limits and laws, on the wide side of a part that lies against the bore [-]. */
  readonly squeezeLeast: number;
  /** Most squeeze over limits and laws, on its narrow side [-]. */
  readonly squeezeMost: number;
  /** Fill, all as drawn, nominal law [-]. */
  readonly fillNominal: number;
  /** Most fill over limits and laws, on one axis, before fuel swells the ring [-]. */
  readonly fillMost: number;
  /** Widest gap beside the groove, all clearance on one side [m]. */
  readonly gapMost_m: number;
  /** Most outside diameter of the ring on its groove [m]: what a lead-in has to take. */
  readonly fittedOutsideMost_m: number;
  /** Squeeze on one axis by each law. */
  readonly laws: Readonly<Record<SectionLaw, SqueezeByLaw>>;
}

/** Where around the part: on one axis, or beside the widest or the narrowest clearance. */
type Side = "axis" | "wide" | "narrow";

/** Runs a method, and records it or not. */
type Run = <Inputs extends MethodInputs>(
  key: string,
  method: Method<Inputs>,
  inputs: NumbersFor<Inputs>,
) => number;

/** A corner with the law that its section is found by. */
interface Try {
  readonly corner: Corner;
  readonly law: SectionLaw;
}

/**
 * Computes stretch, squeeze, fill and gap of a ring as drawn and at every limit of size, by
 * three laws for the stretched section, with the part on one axis and lying against the
 * bore. The steps to each worst case are recorded, not all that were tried.
 *
 * @param working Takes the record.
 * @param section What the results stand under in the record.
 * @param spec Bore, groove, part and ring, each with its limits.
 * @returns What the ring does.
 * @throws {InputError} When limits are out of order, a dimension is outside the methods'
 * range, the groove is no smaller than the part or the part than the bore, or the ring
 * would be stretched by more than half.
 *
 * @example An injector's ring loses half of its squeeze to tolerances and clearance
 * ```ts
 * import { assert, assertAlmostEquals } from "@std/assert";
 * import { Working } from "@/lib/method/mod.ts";
 * import { sizeOf } from "./size.ts";
 *
 * const gland = oringGland(new Working(), "upper", {
 *   bore: sizeOf(14e-3, 0, 43e-6),
 *   groove: sizeOf(8.3e-3, -60e-6, 0),
 *   grooveWidth: sizeOf(4.8e-3, 0, 0.1e-3),
 *   land: sizeOf(13.8e-3, -0.1e-3, 0),
 *   insideDiameter: sizeOf(7.52e-3, -0.13e-3, 0.13e-3),
 *   section: sizeOf(3.53e-3, -0.1e-3, 0.1e-3),
 * });
 *
 * assertAlmostEquals(gland.squeezeNominal, 0.152, 1e-3);
 * assert(gland.squeezeLeast < 0.08 && gland.squeezeMost > 0.2);
 * ```
 */
export function oringGland(working: Working, section: string, spec: OringGlandSpec): OringGland {
  requireGland(spec);
  const record: Run = (key, method, inputs) => working.run(`${section}.${key}`, method, inputs);
  const beneath = (chain: string): Run => (key, ...rest) => record(`${chain}.${key}`, ...rest);
  const drawn = drawnOf(spec);
  const corners = cornersOf(spec);
  const tries = corners.flatMap((corner) => LAWS.map((law): Try => ({ corner, law })));
  const width = spec.grooveWidth;

  const nominal = {
    section: fittedSection(record, drawn, "inside"),
    depth: depthAt(record, drawn, "axis"),
  };
  const squeezed = (chain: string, side: Side, worst: Try) => ({
    section: fittedSection(beneath(chain), worst.corner, worst.law),
    depth: depthAt(beneath(chain), worst.corner, side),
  });
  const least = largest(tries, (t) => -squeezeOf(t, "wide"));
  const most = largest(tries, (t) => squeezeOf(t, "narrow"));
  const fullest = largest(tries, (t) => fillOf(t, width.least_m));
  const widest = largest(tries, outsideOf);
  return {
    stretch: oringStretch({ insideDiameter: drawn.insideDiameter, groove: drawn.groove }),
    stretchMost: record("stretchMost", oringStretch, {
      groove: spec.groove.most_m,
      insideDiameter: spec.insideDiameter.least_m,
    }),
    section_m: nominal.section,
    depth_m: nominal.depth,
    squeezeNominal: record("squeezeNominal", oringSqueeze, nominal),
    squeezeLeast: record("squeezeLeast", oringSqueeze, squeezed("least", "wide", least)),
    squeezeMost: record("squeezeMost", oringSqueeze, squeezed("most", "narrow", most)),
    fillNominal: record("fillNominal", glandFill, { ...nominal, width: width.nominal_m }),
    fillMost: record("fillMost", glandFill, {
      ...squeezed("fullest", "axis", fullest),
      width: width.least_m,
    }),
    gapMost_m: record("gapMost_m", widestGap, {
      bore: spec.bore.most_m,
      land: spec.land.least_m,
    }),
    fittedOutsideMost_m: record("fittedOutsideMost_m", fittedOutside, {
      groove: widest.corner.groove,
      section: fittedSection(beneath("widest"), widest.corner, widest.law),
    }),
    laws: {
      inside: byLaw("inside", drawn, corners),
      volume: byLaw("volume", drawn, corners),
      curve: byLaw("curve", drawn, corners),
    },
  };
}

/** Computes only, for the search among corners, whose limits were checked before. */
const silently: Run = (_key, method, inputs) => method.compute(inputs);

/** Section of the ring on its groove. */
function fittedSection(run: Run, corner: Corner, law: SectionLaw): number {
  const { section, insideDiameter, groove } = corner;
  if (law === "volume") {
    return run("section_m", sectionByVolume, { section, insideDiameter, groove });
  }
  const stretch = run("stretch", oringStretch, { insideDiameter, groove });
  const by = law === "inside" ? sectionByInside : sectionByCurve;
  return run("section_m", by, { section, stretch });
}

/** Depth of the gland on a side. */
function depthAt(run: Run, { bore, groove, land }: Corner, side: Side): number {
  if (side === "wide") return run("depth_m", glandDepthWide, { bore, groove, land });
  if (side === "narrow") return run("depth_m", glandDepthNarrow, { groove, land });
  return run("depth_m", glandDepth, { bore, groove });
}

function squeezeOf({ corner, law }: Try, side: Side): number {
  const section = fittedSection(silently, corner, law);
  return oringSqueeze.compute({ section, depth: depthAt(silently, corner, side) });
}

function fillOf({ corner, law }: Try, width: number): number {
  const section = fittedSection(silently, corner, law);
  return glandFill.compute({ section, depth: depthAt(silently, corner, "axis"), width });
}

function outsideOf({ corner, law }: Try): number {
  const section = fittedSection(silently, corner, law);
  return fittedOutside.compute({ groove: corner.groove, section });
}

function byLaw(law: SectionLaw, drawn: Corner, corners: readonly Corner[]): SqueezeByLaw {
  const squeezes = corners.map((corner) => squeezeOf({ corner, law }, "axis"));
  return {
    nominal: squeezeOf({ corner: drawn, law }, "axis"),
    least: Math.min(...squeezes),
    most: Math.max(...squeezes),
  };
}

/** The member of a list, never empty, whose number is largest. */
function largest(tries: readonly Try[], numberOf: (t: Try) => number): Try {
  return tries.reduce((best, t) => numberOf(t) > numberOf(best) ? t : best);
}
