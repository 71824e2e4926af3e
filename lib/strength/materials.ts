/** What rails are made of. */

/** A material of the plan. */
export type MaterialName =
  | "6061-T6"
  | "6082-T6"
  | "AlSi10Mg"
  | "AlSi10Mg-as-built"
  | "304"
  | "brass"
  | "steel";

/** Strength and stiffness of a material: the least that its standard promises. */
export interface Material {
  /** The material in words, with temper and form. */
  readonly title: string;
  /** Yield strength, least [Pa]. */
  readonly yield_Pa: number;
  /** Tensile strength, least [Pa]. */
  readonly ultimate_Pa: number;
  /** Shear strength [Pa]. */
  readonly shear_Pa: number;
  /** Modulus of elasticity [Pa]. */
  readonly elasticModulus_Pa: number;
  /** Poisson's ratio [-]. */
  readonly poisson: number;
  /** The standard or table of yield and tensile strength. */
  readonly source: string;
  /** Where the shear strength comes from. */
  readonly shearSource: string;
  /** How yield and tensile strength were come by; modulus and Poisson's ratio are from memory. */
  readonly provenance: "read-from-source" | "from-memory" | "ours";
  /** What to mind. */
  readonly note: string;
}

/** Shear over tensile strength where no shear strength is published; ours, on the low side. */
const SHEAR_SHARE = 0.6;

const ESTIMATED = "0.6 of the tensile strength, ours: published ratios run from 0.6 to 0.75";

/** The materials of the plan, least values. */
export const MATERIALS: Readonly<Record<MaterialName, Material>> = {
  "6061-T6": {
    title: "Aluminium 6061-T6, extruded bar",
    yield_Pa: 240e6,
    ultimate_Pa: 260e6,
    shear_Pa: SHEAR_SHARE * 260e6,
    elasticModulus_Pa: 69e9,
    poisson: 0.33,
    source: "ASTM B221, least values",
    shearSource: ESTIMATED,
    provenance: "from-memory",
    note: "Catalogues print typical values, 276 and 310 MPa; the least ones count.",
  },
  "6082-T6": {
    title: "Aluminium 6082-T6, extruded bar over 20 mm",
    yield_Pa: 260e6,
    ultimate_Pa: 310e6,
    shear_Pa: SHEAR_SHARE * 310e6,
    elasticModulus_Pa: 70e9,
    poisson: 0.33,
    source: "EN 755-2, bar of 20 to 150 mm",
    shearSource: ESTIMATED,
    provenance: "read-from-source",
    note: "Bar up to 20 mm is promised 250 and 295 MPa.",
  },
  AlSi10Mg: {
    title: "Aluminium AlSi10Mg, laser powder bed, stress-relieved",
    yield_Pa: 160e6,
    ultimate_Pa: 269e6,
    shear_Pa: SHEAR_SHARE * 269e6,
    elasticModulus_Pa: 70e9,
    poisson: 0.33,
    source:
      "Yield: a floor of ours below the published spread (172 to 332 MPa as built); tensile: low end of a review, Materials 13 (2020) 4564",
    shearSource: ESTIMATED,
    provenance: "ours",
    note:
      "Strength depends on machine and direction, and pores may leak: a leak test decides, whatever the numbers.",
  },
  "AlSi10Mg-as-built": {
    title: "Aluminium AlSi10Mg, laser powder bed, as built",
    yield_Pa: 172e6,
    ultimate_Pa: 289e6,
    shear_Pa: SHEAR_SHARE * 289e6,
    elasticModulus_Pa: 70e9,
    poisson: 0.33,
    source:
      "Low ends of the published spread as built, Materials 13 (2020) 4564 and Metals 12 (2022) 1497",
    shearSource: ESTIMATED,
    provenance: "read-from-source",
    note:
      "Stresses of the building are still in it: it bends when cut free or drilled. Relieve it first. Pores may leak: a leak test decides, whatever the numbers.",
  },
  "304": {
    title: "Stainless steel 304, annealed bar",
    yield_Pa: 205e6,
    ultimate_Pa: 515e6,
    shear_Pa: SHEAR_SHARE * 515e6,
    elasticModulus_Pa: 193e9,
    poisson: 0.29,
    source: "ASTM A276 / A479, type 304 annealed",
    shearSource: ESTIMATED,
    provenance: "from-memory",
    note: "EN 10088-3 (1.4301) promises 190 and 500 MPa.",
  },
  brass: {
    title: "Free-cutting brass C36000, half-hard rod to 25 mm",
    yield_Pa: 170e6,
    ultimate_Pa: 380e6,
    shear_Pa: 234e6,
    elasticModulus_Pa: 97e9,
    poisson: 0.34,
    source: "ASTM B16, published table by temper and section",
    shearSource: "The same published table",
    provenance: "read-from-source",
    note: "Strength falls with section: 345 and 140 MPa at 38 mm.",
  },
  steel: {
    title: "Mild steel S235JR, to 16 mm",
    yield_Pa: 235e6,
    ultimate_Pa: 360e6,
    shear_Pa: SHEAR_SHARE * 360e6,
    elasticModulus_Pa: 210e9,
    poisson: 0.3,
    source: "EN 10025-2",
    shearSource: ESTIMATED,
    provenance: "read-from-source",
    note: "Over 16 mm yield is 225 MPa. It rusts: plate it, inside too.",
  },
};

/** Typical strength as catalogues print it: tensile tests in the middle of the spread. */
export interface TypicalStrength {
  /** Yield strength [Pa]. */
  readonly yield_Pa: number;
  /** Tensile strength [Pa]. */
  readonly ultimate_Pa: number;
  /** Shear strength [Pa]. */
  readonly shear_Pa: number;
  /** Why nothing is reckoned with it. */
  readonly note: string;
}

/**
 * What catalogues print of aluminium, to tell typical from least; nothing is reckoned with it.
 * Source: Aluminum Association and ASM typical values, from memory.
 */
export const TYPICAL_STRENGTH: Readonly<Record<"6061-T6" | "7075-T6", TypicalStrength>> = {
  "6061-T6": {
    yield_Pa: 276e6,
    ultimate_Pa: 310e6,
    shear_Pa: 207e6,
    note: "The standard promises less; see the material itself.",
  },
  "7075-T6": {
    yield_Pa: 503e6,
    ultimate_Pa: 572e6,
    shear_Pa: 331e6,
    note: "No choice of ours: it corrodes under stress, more so with wet alcohol.",
  },
};

/**
 * Spread of AlSi10Mg from the laser powder bed as built [Pa].
 * Source: reviews, Materials 13 (2020) 4564 and Metals 12 (2022) 1497.
 */
export const AS_BUILT_SPREAD = {
  yield_Pa: { min: 172e6, max: 332e6 },
  ultimate_Pa: { min: 289e6, max: 488e6 },
} as const;
