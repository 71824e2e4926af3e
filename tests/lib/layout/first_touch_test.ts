/** Closed forms of a drill against the gallery, against the rim sampled in space and the wider search. */
import { assert, assertAlmostEquals } from "@std/assert";
import fc from "fast-check";
import { firstTouch, type Hole, openingMargin, worstOpening } from "@/lib/layout/mod.ts";

const bore = (to_m: number, d_m: number) =>
  ({ cut: "bore", from_m: 0, to_m, fromDiameter_m: d_m, toDiameter_m: d_m }) as const;

const galleryOf = (bore_m: number, up_m: number): Hole => ({
  id: "gallery",
  title: "Gallery",
  feature: "gallery",
  face: "datum-end",
  entry: [0, 0, up_m],
  into: [1, 0, 0],
  profile: [bore(0.4, bore_m)],
  opensInto: [],
});

const pocketOf = (across_m: number, tilt_rad: number, drill_m: number, at_m = 0.2): Hole => ({
  id: "pocket-1",
  title: "Pocket 1",
  feature: "pocket",
  face: "injectors",
  entry: [at_m, across_m, 0],
  into: [Math.sin(tilt_rad), 0, Math.cos(tilt_rad)],
  profile: [bore(0.03, drill_m)],
  opensInto: ["gallery"],
});

/** The least depth at which any point of the drill's flat end lies in the gallery, by trying them. */
function sampled(hole: Hole, gallery: Hole, drill_m: number): number {
  const [, y, z] = hole.entry;
  const [sin, , cos] = hole.into;
  const radius = (gallery.profile[0]?.fromDiameter_m ?? 0) / 2;
  let least = Infinity;
  for (let turn = 0; turn < 2 * Math.PI; turn += Math.PI / 360) {
    for (const share of [0, 0.25, 0.5, 0.75, 0.9, 1]) {
      const along = share * drill_m / 2 * Math.cos(turn);
      const aside = y + share * drill_m / 2 * Math.sin(turn);
      if (Math.abs(aside) > radius) continue;
      // The point's height at depth t is z + t cos - along sin; it enters at the gallery's underside.
      const enters = gallery.entry[2] - Math.sqrt(radius ** 2 - aside ** 2);
      least = Math.min(least, (enters - z + along * sin) / cos);
    }
  }
  return least;
}

Deno.test("firstTouch() is where sampled points of the drill's end first lie in the gallery", () => {
  fc.assert(
    fc.property(
      fc.record({
        gallery: fc.double({ min: 0.006, max: 0.025, noNaN: true }),
        up: fc.double({ min: 0.02, max: 0.04, noNaN: true }),
        drill: fc.double({ min: 0.004, max: 0.02, noNaN: true }),
        across: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
        tilt: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
      }),
      ({ gallery: bore_m, up, drill, across, tilt }) => {
        const gallery = galleryOf(bore_m, up);
        const pocket = pocketOf(across, tilt, drill);
        const found = firstTouch(pocket, gallery, drill);
        const seen = sampled(pocket, gallery, drill);
        if (found === undefined) return void assert(seen === Infinity);
        // Samples are never nearer than the truth, and stand so close that they come near to it.
        assert(found <= seen + 1e-9, `${found} > ${seen}`);
        if (Math.abs(across) + 1e-4 < (bore_m + drill) / 2) assert(seen - found < 4e-4);
      },
    ),
    { numRuns: 200, seed: 41 },
  );
});

Deno.test("openingMargin() is the margin that the search over all directions finds", () => {
  fc.assert(
    fc.property(
      fc.double({ min: -0.003, max: 0.003, noNaN: true }),
      fc.double({ min: 0.05, max: 0.35, noNaN: true }),
      fc.double({ min: 0, max: 0.0015, noNaN: true }),
      fc.constantFrom("one" as const, "both" as const),
      (across, at, drift_m, drilledFrom) => {
        const gallery = galleryOf(0.012, 0.02);
        const hole = pocketOf(across, 0, 0.006, at);
        const drift = { drift_m, drilledFrom };
        const margin = openingMargin(hole, gallery, drift);
        assertAlmostEquals(margin ?? 0, worstOpening(hole, gallery, drift)?.margin_m ?? 1, 1e-9);
      },
    ),
    { numRuns: 100, seed: 42 },
  );
});

Deno.test("a gallery that wanders comes so much nearer, most at the drill's far side", () => {
  const drift = { drift_m: 0.001, drilledFrom: "one" } as const;
  const touch = firstTouch(pocketOf(0, 0, 0.014), galleryOf(0.0127, 0.02), 0.014, drift);
  assertAlmostEquals(touch ?? 0, 0.02 - 0.00635 - 0.001 * 0.207 / 0.4, 1e-12);
});
