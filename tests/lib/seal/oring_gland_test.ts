/** No gland within its limits does worse than what is said of it. */
import { assert, assertEquals, assertThrows } from "@std/assert";
import fc from "fast-check";
import { InputError } from "@/lib/basics/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import {
  glandFill,
  holeTolerance,
  oringGland,
  type OringGlandSpec,
  oringSqueeze,
  oringStretch,
  sectionByCurve,
  sectionByInside,
  sectionByVolume,
  type Size,
  sizeOf,
} from "@/lib/seal/mod.ts";

const MM = 1e-3;

const USUAL: OringGlandSpec = {
  bore: holeTolerance("H9", 14 * MM),
  groove: sizeOf(8.3 * MM, -0.06 * MM, 0),
  grooveWidth: sizeOf(4.8 * MM, 0, 0.1 * MM),
  land: sizeOf(13.8 * MM, -0.1 * MM, 0),
  insideDiameter: sizeOf(7.52 * MM, -0.13 * MM, 0.13 * MM),
  section: sizeOf(3.53 * MM, -0.1 * MM, 0.1 * MM),
};

const between = ({ least_m, most_m }: Size, share: number): number =>
  least_m + share * (most_m - least_m);

const anyGland = fc.record({
  bore: fc.double({ min: 10, max: 20, noNaN: true }),
  section: fc.double({ min: 1.7, max: 3.6, noNaN: true }),
  squeeze: fc.double({ min: 0.05, max: 0.3, noNaN: true }),
  stretch: fc.double({ min: -0.01, max: 0.16, noNaN: true }),
  clearance: fc.double({ min: 0.02, max: 0.4, noNaN: true }),
}).map((g): OringGlandSpec => {
  const groove = g.bore - 2 * g.section * (1 - g.squeeze);
  const size = (nominal: number, lower: number, upper: number) =>
    sizeOf(nominal * MM, lower * MM, upper * MM);
  return {
    bore: holeTolerance("H9", g.bore * MM),
    groove: size(groove, -0.06, 0),
    grooveWidth: size(1.35 * g.section, 0, 0.1),
    land: size(g.bore - g.clearance, -0.05, 0),
    insideDiameter: size(groove / (1 + g.stretch), -0.13, 0.13),
    section: size(g.section, -0.08, 0.08),
  };
});

const share = fc.double({ min: 0, max: 1, noNaN: true });

Deno.test("no ring, groove, bore and place around it within the limits is worse than the worst", () => {
  const shares = fc.array(share, { minLength: 6, maxLength: 6 });
  fc.assert(fc.property(anyGland, shares, fc.constantFrom(-1, -0.3, 0, 1), (spec, at, aside) => {
    const [b = 0, g = 0, i = 0, s = 0, l = 0, w = 0] = at;
    const bore = between(spec.bore, b);
    const groove = between(spec.groove, g);
    const insideDiameter = between(spec.insideDiameter, i);
    const free = between(spec.section, s);
    const land = between(spec.land, l);
    const stretch = oringStretch({ insideDiameter, groove });
    const gland = oringGland(new Working(), "gland", spec);
    // The pieces of the published curve miss each other by some 1e-5 at 3 % and by 1e-4 at nought.
    const slack = 2e-4;
    assert(stretch <= gland.stretchMost + 1e-12);
    assert(bore - land <= gland.gapMost_m + 1e-12);
    for (
      const section of [
        sectionByInside({ section: free, stretch }),
        sectionByCurve({ section: free, stretch }),
        sectionByVolume({ section: free, insideDiameter, groove }),
      ]
    ) {
      const depth = (bore - groove) / 2;
      const squeeze = oringSqueeze({ section, depth: depth + aside * (bore - land) / 2 });
      assert(squeeze >= gland.squeezeLeast - slack, `${squeeze}, least ${gland.squeezeLeast}`);
      assert(squeeze <= gland.squeezeMost + slack, `${squeeze}, most ${gland.squeezeMost}`);
      const fill = glandFill({ section, depth, width: between(spec.grooveWidth, w) });
      assert(fill <= gland.fillMost * (1 + slack), `${fill}, most ${gland.fillMost}`);
      assert(groove + 2 * section <= gland.fittedOutsideMost_m + slack * MM);
    }
  }));
});

Deno.test("a stretched ring: the curve takes most, the torus least, and tolerances come on top", () => {
  const { laws, ...gland } = oringGland(new Working(), "gland", USUAL);
  assert(laws.curve.nominal < laws.inside.nominal && laws.inside.nominal < laws.volume.nominal);
  assertEquals(laws.inside.nominal, gland.squeezeNominal);
  assert(gland.squeezeLeast < laws.curve.least, "off its axis it is less");
  assert(gland.squeezeMost > laws.volume.most, "off its axis it is more");
});

Deno.test("the record holds the steps to every result, and they add up", () => {
  const working = new Working();
  const gland = oringGland(working, "seals.upper", USUAL);
  const used = (result: string) => working.uses.find((u) => u.result === `seals.upper.${result}`);
  for (
    const key of [
      "stretchMost",
      "section_m",
      "depth_m",
      "squeezeNominal",
      "squeezeLeast",
      "squeezeMost",
      "fillNominal",
      "fillMost",
      "gapMost_m",
      "fittedOutsideMost_m",
    ] as const
  ) assertEquals(used(key)?.value, gland[key], key);
  assertEquals(used("stretch")?.value, gland.stretch);
  assertEquals(used("squeezeLeast")?.inputs.section, used("least.section_m")?.value);
  assertEquals(used("squeezeLeast")?.inputs.depth, used("least.depth_m")?.value);
  assertEquals(used("fillMost")?.inputs.section, used("fullest.section_m")?.value);
  assert(working.uses.length < 25, `${working.uses.length} uses`);
});

Deno.test("a ring that does not reach the bore has less than no squeeze, and is no error", () => {
  const gland = oringGland(new Working(), "gland", {
    ...USUAL,
    section: sizeOf(2.62 * MM, -0.08 * MM, 0.08 * MM),
  });
  assert(gland.squeezeNominal < 0 && Number.isFinite(gland.squeezeLeast));
});

const REFUSED: readonly [what: string, spec: Partial<OringGlandSpec>, field: string][] = [
  ["limits out of order", { bore: { least_m: 2, nominal_m: 1, most_m: 3 } }, "bore"],
  ["no number", { section: sizeOf(NaN, 0, 0) }, "section"],
  ["a part wider than the bore", { land: sizeOf(14.01 * MM, 0, 0) }, "land"],
  ["a groove as wide as the part", { land: sizeOf(8.3 * MM, 0, 0) }, "land"],
  ["a ring stretched by more than half", { insideDiameter: sizeOf(5.5 * MM, 0, 0) }, "stretch"],
  ["a ring far too wide", { insideDiameter: sizeOf(11 * MM, 0, 0) }, "stretch"],
  ["a groove without width", { grooveWidth: sizeOf(0, 0, 0) }, "grooveWidth"],
];
for (const [what, spec, field] of REFUSED) {
  Deno.test(`a gland is refused for ${what}`, () => {
    const error = assertThrows(
      () => oringGland(new Working(), "gland", { ...USUAL, ...spec }),
      InputError,
    );
    assertEquals(error.field, field);
  });
}
