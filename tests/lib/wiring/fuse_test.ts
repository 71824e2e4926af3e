import { assertEquals, assertThrows } from "@std/assert";
import { BLADE_FUSES_A, FUSE_FACTOR, fuseFor } from "@/lib/wiring/mod.ts";

const CASES = [
  ["nothing drawn takes the smallest", 0, 20, 3, true],
  ["exactly 1.25 times is enough", 8, 13.1, 10, true],
  ["a little more takes the next", 8.01, 13.1, 15, false],
  ["as large as the wire is rated is still allowed", 16, 20, 20, true],
  ["above the wire's rating does not protect it", 16, 17.4, 20, false],
  ["32 A take the largest", 32, 40, 40, true],
] as const;

for (const [name, current_A, wireRating_A, rating_A, protectsWire] of CASES) {
  Deno.test(`fuse: ${name}`, () => {
    assertEquals(fuseFor(current_A, wireRating_A), { rating_A, protectsWire });
  });
}

Deno.test("fuse: above 32 A no blade fuse is large enough", () => {
  assertEquals(fuseFor(32.01, 54), undefined);
});

Deno.test("fuse: the one found is the smallest that has enough in hand", () => {
  for (let current_A = 0.1; current_A <= 32; current_A += 0.1) {
    const rating_A = fuseFor(current_A, 54)?.rating_A ?? NaN;
    const smaller_A = BLADE_FUSES_A[BLADE_FUSES_A.indexOf(rating_A) - 1] ?? 0;
    assertEquals(rating_A >= FUSE_FACTOR * current_A, true, `${current_A} A`);
    assertEquals(smaller_A < FUSE_FACTOR * current_A, true, `${current_A} A`);
  }
});

Deno.test("fuse: a current or rating that can't be is refused by name", () => {
  assertThrows(() => fuseFor(-1, 20), RangeError, "current must be >= 0");
  assertThrows(() => fuseFor(NaN, 20), RangeError, "current must be >= 0");
  assertThrows(() => fuseFor(10, 0), RangeError, "wireRating_A must be > 0");
});
