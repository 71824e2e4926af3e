/**
 * O-rings in their glands, and materials against fuel.
 *
 * @module
 */
export { type AgainstFuel, type FuelFitness } from "./against_fuel.ts";
export { type Elastomer } from "./elastomers.ts";
export { type FuelGroup, fuelGroup } from "./fuel_group.ts";
export { gapAllowed, type Hardness, widestGap } from "./gap.ts";
export { glandDepth, glandDepthNarrow, glandDepthWide, glandFill, oringSqueeze } from "./gland.ts";
export { type Band, GLAND_PRACTICE, RADIAL_GLANDS, type RadialGland } from "./gland_practice.ts";
export { type OringGlandSpec } from "./gland_spec.ts";
export { type HoleGrade, holeTolerance } from "./hole_tolerance.ts";
export { INCH_RINGS, inchRing } from "./inch_rings.ts";
export { type LeadIn, leadIn, leadInLength, leadInMouth, type LeadInSpec } from "./lead_in.ts";
export { type Liner } from "./liners.ts";
export { type BarAlloy, MATERIALS_AGAINST_FUEL } from "./materials_against_fuel.ts";
export { type FuelMetal } from "./metals.ts";
export { METRIC_RINGS, metricRing } from "./metric_rings.ts";
export { type OringGland, oringGland, type SectionLaw, type SqueezeByLaw } from "./oring_gland.ts";
export { insideTolerance, type Ring, ringOfSize, sectionLimits } from "./rings.ts";
export { sectionByCurve, sectionByInside, sectionByVolume } from "./section_laws.ts";
export { type Size, sizeOf } from "./size.ts";
export { fittedOutside, oringStretch } from "./stretch.ts";
