/** How injectors stand between manifold and rail, by hand. */
import { assertAlmostEquals, assertEquals, assertThrows } from "@std/assert";
import { bossCentres, floatOf, stackUp } from "@/lib/layout/mod.ts";
import { Working } from "@/lib/method/mod.ts";
import { MM } from "./holes.ts";

const SPEC = {
  stations: [
    { seat_m: 12.0 * MM, injectorLength_m: 48.2 * MM },
    { seat_m: 11.4 * MM, injectorLength_m: 48.2 * MM },
    { seat_m: 12.1 * MM, injectorLength_m: 47.9 * MM, spacer_m: 0 },
  ],
  railFace_m: 54 * MM,
  pocket: { leadIn_m: 2 * MM, depth_m: 9.5 * MM },
  ring: { width_m: 3.6 * MM, beyond_m: 2.8 * MM },
  tolerances: {
    seat_m: 0.2 * MM,
    injector_m: 0.3 * MM,
    spacer_m: 0.05 * MM,
    railFace_m: 0.2 * MM,
    leadIn_m: 0.1 * MM,
    depth_m: 0.2 * MM,
  },
};

Deno.test("stack-up: spacers, insertion and room of three injectors", () => {
  const working = new Working();
  const { plane_m, injectors } = stackUp(working, "stack", SPEC);
  const mm = (value = NaN) => Math.round(value / MM * 1e4) / 1e4;
  assertEquals(mm(plane_m), 60.2);
  assertEquals(injectors.map((i) => mm(i.spacerNeeded_m)), [0, 0.6, 0.2]);
  assertEquals(injectors.map((i) => mm(i.spacer_m)), [0, 0.6, 0]);
  // Rings 6.2 mm up in the pocket, half of 3.6 and 2 mm of lead-in off; the third 0.2 mm lower.
  assertEquals(injectors.map((i) => mm(i.insertion.nominal_m)), [2.4, 2.4, 2.2]);
  // 0.2 + 0.3 + 0.2 + 0.1, and 0.05 of the spacer where there is one.
  assertEquals(injectors.map((i) => mm(i.insertion.worst_m)), [1.6, 1.55, 1.4]);
  assertEquals(mm(injectors[0]?.insertion.byChance_m), mm((2.4 - Math.sqrt(0.18)) * MM));
  assertEquals(mm(injectors[1]?.insertion.byChance_m), mm((2.4 - Math.sqrt(0.1825)) * MM));
  // 9.5 - 6.2 - 2.8 mm above the first two.
  assertEquals(injectors.map((i) => mm(i.room.nominal_m)), [0.5, 0.5, 0.7]);
  assertEquals(injectors.map((i) => mm(i.room.worst_m)), [-0.4, -0.45, -0.2]);
  assertEquals(working.uses.length, 3 * 7);
  assertEquals(new Set(working.uses.map(({ result }) => result)).size, 3 * 7);
});

Deno.test("stack-up: without injectors there is nothing to stack", () => {
  assertThrows(
    () => stackUp(new Working(), "stack", { ...SPEC, stations: [] }),
    RangeError,
    "one injector at least",
  );
});

Deno.test("boss centres: by edges and by pins alike, with residuals that sum to nought", () => {
  const centres = [35.02, 127.4, 219.71, 312.2];
  const byEdges = centres.map((c) => ({ near_m: (c - 6.75) * MM, far_m: (c + 6.75) * MM }));
  const byPins = centres.map((c) => ({ over_m: (c + 6.7) * MM, pin_m: 13.4 * MM }));
  const edges = bossCentres(new Working(), "bosses", byEdges);
  const pins = bossCentres(new Working(), "bosses", byPins);
  centres.forEach((c, i) => {
    assertAlmostEquals(edges.bosses[i]?.centre_m ?? NaN, c * MM, 1e-12);
    assertAlmostEquals(pins.bosses[i]?.centre_m ?? NaN, c * MM, 1e-12);
    assertAlmostEquals(edges.bosses[i]?.bore_m ?? NaN, 13.5 * MM, 1e-12);
  });
  // Least squares by hand: (3 (312.2 - 35.02) + (219.71 - 127.4)) / 10.
  assertAlmostEquals(edges.pitch_m ?? NaN, 92.385 * MM, 1e-12);
  const residuals = edges.bosses.map(({ residual_m }) => residual_m);
  assertAlmostEquals(residuals.reduce((sum, r) => sum + r, 0), 0, 1e-15);
  assertAlmostEquals(residuals[0] ?? NaN, (35.02 - 173.5825 + 1.5 * 92.385) * MM, 1e-12);
});

Deno.test("boss centres: one boss has no pitch, and no residual", () => {
  const alone = bossCentres(new Working(), "bosses", [{ near_m: 0.01, far_m: 0.02 }]);
  assertEquals(alone.pitch_m, undefined);
  assertAlmostEquals(alone.bosses[0]?.residual_m ?? NaN, 0, 1e-15);
});

const MISREAD: readonly [
  what: string,
  readings: Parameters<typeof bossCentres>[2],
  says: string,
][] = [
  ["no reading", [], "one boss at least"],
  ["edges the wrong way round", [{ near_m: 0.02, far_m: 0.01 }], "beyond near_m"],
  [
    "bosses out of order",
    [{ near_m: 0.03, far_m: 0.04 }, { over_m: 0.02, pin_m: 0.01 }],
    "beyond the boss before it",
  ],
];

for (const [what, readings, says] of MISREAD) {
  Deno.test(`boss centres: ${what} is refused`, () => {
    assertThrows(() => bossCentres(new Working(), "bosses", readings), RangeError, says);
  });
}

Deno.test("float: what is left at each injector, by hand", () => {
  const { play_m, tilt_rad, left_m } = floatOf(new Working(), "float", {
    atRail_m: 0.15 * MM,
    atManifold_m: 0.25 * MM,
    between_m: 40 * MM,
    trueTo_m: 0.15 * MM,
    stations: [{ along_m: 0, across_m: 0 }, { along_m: 0.09 * MM, across_m: -0.12 * MM }, {
      along_m: 0.3 * MM,
      across_m: 0,
    }],
  });
  assertAlmostEquals(play_m, 0.4 * MM, 1e-12);
  assertAlmostEquals(tilt_rad * 180 / Math.PI, 0.573, 1e-4);
  [0.25, 0.1, -0.05].forEach((mm, i) => assertAlmostEquals(left_m[i] ?? NaN, mm * MM, 1e-12));
});
