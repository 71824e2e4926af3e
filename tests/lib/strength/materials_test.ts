import { assertAlmostEquals, assertEquals } from "@std/assert";
import { type MaterialName, MATERIALS, TYPICAL_STRENGTH } from "@/lib/strength/mod.ts";

/**
 * Least yield and tensile strength as the standards print them in MPa, shear over tensile
 * strength as the room states it, modulus in GPa and Poisson's ratio of handbooks. From
 * memory but for 6082, brass and steel, which wall-strength.json gives as read.
 */
const PRINTED: readonly (readonly [
  name: MaterialName,
  yield_MPa: number,
  ultimate_MPa: number,
  shear_MPa: number,
  modulus_GPa: number,
  poisson: number,
])[] = [
  ["6061-T6", 240, 260, 0.6 * 260, 69, 0.33],
  ["6082-T6", 260, 310, 0.6 * 310, 70, 0.33],
  ["AlSi10Mg", 160, 269, 0.6 * 269, 70, 0.33],
  ["AlSi10Mg-as-built", 172, 289, 0.6 * 289, 70, 0.33],
  ["304", 205, 515, 0.6 * 515, 193, 0.29],
  ["brass", 170, 380, 234, 97, 0.34],
  ["steel", 235, 360, 0.6 * 360, 210, 0.3],
];

Deno.test("materials: least values are those that the standards print", () => {
  assertEquals(PRINTED.map(([name]) => name).toSorted(), Object.keys(MATERIALS).toSorted());
  for (const [name, yielding, ultimate, shear, modulus, poisson] of PRINTED) {
    const m = MATERIALS[name];
    assertAlmostEquals(m.yield_Pa / 1e6, yielding, 1e-9, name);
    assertAlmostEquals(m.ultimate_Pa / 1e6, ultimate, 1e-9, name);
    assertAlmostEquals(m.shear_Pa / 1e6, shear, 1e-9, name);
    assertAlmostEquals(m.elasticModulus_Pa / 1e9, modulus, 1e-9, name);
    assertEquals(m.poisson, poisson, name);
  }
});

Deno.test("typical strengths: catalogues' MPa are their ksi", () => {
  const KSI = 6.894757e6;
  for (
    const [name, yielding, ultimate, shear] of [
      ["6061-T6", 40, 45, 30],
      ["7075-T6", 73, 83, 48],
    ] as const
  ) {
    const typical = TYPICAL_STRENGTH[name];
    assertAlmostEquals(typical.yield_Pa / KSI, yielding, 0.09, name);
    assertAlmostEquals(typical.ultimate_Pa / KSI, ultimate, 0.09, name);
    assertAlmostEquals(typical.shear_Pa / KSI, shear, 0.09, name);
  }
});
