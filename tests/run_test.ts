import { assertEquals } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { count } from "./run.ts";

describe("the closing line's counts", () => {
  it("are those of a good run", () => {
    const text = "ok | 6 passed (2 steps) | 0 failed | 1 ignored (44ms)\n";
    assertEquals(count(text, 0), { passed: 6, failed: 0, skipped: 1 });
  });
  it("come from the last summary, coloured or not", () => {
    const text =
      "ok | 1 passed | 0 failed (1ms)\n\x1b[31mFAILED\x1b[0m | 5 passed | 2 failed (3 steps) (44ms)\n";
    assertEquals(count(text, 1), { passed: 5, failed: 2, skipped: 0 });
  });
  it("have a failure for an error outside the tests", () => {
    assertEquals(count("ok | 3 passed | 0 failed (1ms)", 1).failed, 1);
    assertEquals(count("", 1).failed, 1);
    assertEquals(count("a test called Deno.exit(0)", 0).failed, 1);
  });
  it("are nought when nothing ran", () => {
    const text = "ok | 0 passed | 0 failed | 7 filtered out (1ms)";
    assertEquals(count(text, 0), { passed: 0, failed: 0, skipped: 0 });
  });
});
