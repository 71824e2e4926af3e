/** The stand-in for `@std/testing/bdd`: order of hooks, names, and what failing ones do. */
import { assertEquals, assertMatch, assertStringIncludes, assertThrows } from "@std/assert";
import { afterAll, afterEach, beforeAll, beforeEach, describe, it } from "@std/testing/bdd";
import { countTests } from "../run.ts";

const seen: string[] = [];
describe("outer", () => {
  beforeAll(() => void seen.push("outer before all"));
  afterAll(() => void seen.push("outer after all"));
  beforeEach(() => void seen.push("outer before"));
  afterEach(() => void seen.push("outer after"));
  it("first", () => void seen.push("first"));
  describe("inner", () => {
    beforeAll(() => void seen.push("inner before all"));
    afterAll(() => void seen.push("inner after all"));
    beforeEach(() => void seen.push("inner before"));
    afterEach(() => void seen.push("inner after"));
    it("second", async () => {
      await Promise.resolve();
      seen.push("second");
    });
  });
});

describe("describe() and it()", () => {
  it("run the hooks around the tests, outer ones first", () =>
    assertEquals(seen, [
      ...["outer before all", "outer before", "first", "outer after"],
      ...["inner before all", "outer before", "inner before", "second", "inner after"],
      ...["outer after", "inner after all", "outer after all"],
    ]));
  it("name a test by its groups", (t) =>
    assertEquals(t.name, "describe() and it() > name a test by its groups"));
  it("take options", { timeout: 10_000 }, () => {});
  it("refuse a test within a test", () => {
    assertThrows(() => it("within", () => {}), Error, "must not be called while tests run");
  });
  it("refuse a group whose tests would come too late", () => {
    // deno-lint-ignore no-explicit-any
    const late: any = async () => await Promise.resolve();
    assertThrows(() => describe("late", late), TypeError, "must not be async");
  });
});

Deno.test("failing tests and hooks fail the run, and the rest still runs", async () => {
  const { code, stdout } = await new Deno.Command(Deno.execPath(), {
    args: ["test", "--no-check", import.meta.resolve("./fixtures/failing.ts")],
    env: { NO_COLOR: "1" },
  }).output();
  const text = new TextDecoder().decode(stdout);
  assertEquals(code, 1);
  assertEquals(countTests(text, code), { passed: 1, failed: 4, skipped: 1 });
  for (const name of ["fails", "is not run", "neither", "one > cleans up badly"]) {
    assertMatch(text, new RegExp(`^\\w+ > ${name} \\.\\.\\..*FAILED`, "m"));
  }
  assertStringIncludes(text, "after each of fails");
  assertEquals(text.includes("a body ran"), false);
});
