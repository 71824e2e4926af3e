import { assert, assertEquals } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { countTask, countTests, perform } from "./run.ts";

describe("the closing line's counts", () => {
  it("are those of a good run", () => {
    const text = "ok | 6 passed (2 steps) | 0 failed | 1 ignored (44ms)\n";
    assertEquals(countTests(text, 0), { passed: 6, failed: 0, skipped: 1 });
  });
  it("come from the last summary, coloured or not", () => {
    const text =
      "ok | 1 passed | 0 failed (1ms)\n\x1b[31mFAILED\x1b[0m | 5 passed | 2 failed (3 steps) (44ms)\n";
    assertEquals(countTests(text, 1), { passed: 5, failed: 2, skipped: 0 });
  });
  it("have a failure for an error outside the tests", () => {
    assertEquals(countTests("ok | 3 passed | 0 failed (1ms)", 1).failed, 1);
    assertEquals(countTests("", 1).failed, 1);
    assertEquals(countTests("a test called Deno.exit(0)", 0).failed, 1);
  });
  it("are nought when nothing ran", () => {
    const text = "ok | 0 passed | 0 failed | 7 filtered out (1ms)";
    assertEquals(countTests(text, 0), { passed: 0, failed: 0, skipped: 0 });
  });
  it("take a task of the gate for one test", () => {
    assertEquals(countTask("", 0), { passed: 1, failed: 0, skipped: 0 });
    assertEquals(countTask("", 1), { passed: 0, failed: 1, skipped: 0 });
  });
});

describe("a run", () => {
  const run = (code: string, minutes = 1) =>
    perform({ cwd: ".", args: ["eval", "--no-lock", code], minutes, count: countTask });

  it("passes on how deno ended", async () => {
    assertEquals((await run("Deno.exit(0)")).passed, 1);
    assertEquals((await run("Deno.exit(3)")).failed, 1);
  });
  it("that hangs is ended and has failed", async () => {
    const before = performance.now();
    assertEquals((await run("setInterval(() => {}, 1000)", 1 / 60)).failed, 1);
    assert(performance.now() - before < 20_000, "it was ended in time");
  });
});
