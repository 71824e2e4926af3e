/** Distances that are known exactly. */
import { assert, assertAlmostEquals, assertEquals } from "@std/assert";
import { type Hole, leastDistance, type Vec3 } from "@/lib/layout/mod.ts";
import { Seeded } from "../../helpers/seeded.ts";
import { cut, holeAt, MM } from "./holes.ts";

const X: Vec3 = [1, 0, 0];
const Y: Vec3 = [0, 1, 0];
const Z: Vec3 = [0, 0, 1];

const bore = (id: string, entry: Vec3, into: Vec3, length: number, d: number): Hole =>
  holeAt(id, entry, into, [cut("bore", 0, length, d)]);

const pointed = (id: string, entry: Vec3, into: Vec3, length: number, d: number): Hole =>
  holeAt(id, entry, into, [cut("bore", 0, length, d), cut("tip", length, length + d / 2, d, 0)]);

const long = bore("long", [0, 0, 0], X, 100, 10);

const CASES: readonly [what: string, a: Hole, b: Hole, mm: number][] = [
  ["parallel, side by side", long, bore("b", [10, 12, 0], X, 20, 6), 4],
  ["parallel, one after the other", long, bore("b", [103, 2, 0], X, 20, 6), 3],
  ["parallel, corner to corner", long, bore("b", [103, 12, 0], X, 20, 6), 5],
  ["parallel, drilled towards each other", long, bore("b", [123, 12, 0], [-1, 0, 0], 20, 6), 5],
  ["crossing square at a distance", long, bore("b", [50, 9, -30], Z, 60, 4), 2],
  ["flat bottom above", long, bore("b", [50, 0, 27], [0, 0, -1], 20, 4), 2],
  ["drill's point above", long, pointed("b", [50, 0, 27], [0, 0, -1], 16, 8), 2],
  // The flank of a cone of 90 degrees against a plane end: the rim of the bore comes nearest.
  ["a cone's rim beside an end", long, pointed("b", [107, 0, 27], [0, 0, -1], 30, 8), 3],
  ["skew", long, bore("b", [50, 11, 0], [0, 0.001, 1], 20, 4), 4],
  [
    "skew at 45 degrees, both feet on the holes",
    long,
    bore("b", [20, 11, -30], [1, 0, 1], 80, 4),
    4,
  ],
  // Two rims: (100, 5, 0) of the long one to (104, 5 + 3, 0) of the other, turned a quarter.
  ["rim to rim, square axes", long, bore("b", [106, 8, 0], Y, 20, 4), 5],
  ["a thread's major diameter counts", long, {
    ...bore("b", [50, 0, 30], [0, 0, -1], 20, 4),
    thread: { name: "M6", major_m: 6 * MM, pitch_m: MM, from_m: 0, to_m: 22 * MM },
  }, 3],
  ["meeting side by side", long, bore("b", [10, 6, 0], X, 20, 6), -2],
  ["crossing through the middle", long, bore("b", [50, 0, -30], Z, 60, 4), -7],
  ["a flat bottom that reaches in", long, bore("b", [50, 0, 24], [0, 0, -1], 20, 4), -1],
  ["touching", long, bore("b", [50, 7, -30], Z, 60, 4), 0],
];

for (const [what, a, b, mm] of CASES) {
  Deno.test(`${what}: ${mm} mm`, () => {
    assertAlmostEquals(leastDistance(a, b), mm * MM, 2e-9);
    assertEquals(leastDistance(b, a), leastDistance(a, b));
  });
}

Deno.test("a tilted hole is as far as the straight one that it is all but", () => {
  // A tenth of a microradian takes the pair off the closed form and to the general one.
  const random = new Seeded(7);
  let general = 0;
  for (let i = 0; i < 400; i++) {
    const r = () => random.between(-20, 20);
    const profile = [
      cut("bore", 0, 10, random.between(2, 9)),
      cut("seat", 10, 14, 9, random.between(0, 5)),
    ];
    const a = holeAt("a", [r(), r(), r()], X, profile);
    const at: Vec3 = [r(), r(), r()];
    const straight = leastDistance(a, holeAt("b", at, X, profile));
    if (straight <= 0) continue;
    const tilted = leastDistance(a, holeAt("b", at, [1, 1e-7, 0], profile));
    assert(Math.abs(tilted - straight) < 4e-9, `${straight} against ${tilted}`);
    general++;
  }
  assert(general > 200, `${general} pairs`);
});

Deno.test("how deep holes meet doesn't depend on the way the rail lies", () => {
  const random = new Seeded(8);
  for (let i = 0; i < 60; i++) {
    const aside = random.between(0, 6);
    const a = bore("a", [-50, 0, 0], X, 100, 10);
    const b = bore("b", [0, aside, -50], Z, 100, 4);
    assertAlmostEquals(leastDistance(a, b), (aside - 7) * MM, 1e-8);
    // The same two, the whole turned by any angle about y.
    const turn = random.between(0, Math.PI);
    const [c, s] = [Math.cos(turn), Math.sin(turn)];
    const turned = ([x, y, z]: Vec3): Vec3 => [c * x + s * z, y, c * z - s * x];
    const ta = bore("a", turned([-50, 0, 0]), turned(X), 100, 10);
    const tb = bore("b", turned([0, aside, -50]), turned(Z), 100, 4);
    assertAlmostEquals(leastDistance(ta, tb), (aside - 7) * MM, 1e-8);
  }
});
