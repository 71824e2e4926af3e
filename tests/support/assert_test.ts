/** The stand-in for `@std/assert`: what passes, what fails, and what it then says. */
import {
  assert,
  assertAlmostEquals,
  assertArrayIncludes,
  assertEquals,
  assertExists,
  assertInstanceOf,
  AssertionError,
  assertMatch,
  assertNotEquals,
  assertObjectMatch,
  assertRejects,
  assertStrictEquals,
  assertStringIncludes,
  assertThrows,
  equal,
} from "@std/assert";
import * as node from "node:assert/strict";

const self: Record<string, unknown> = { a: 1 };
self.self = self;
const other: Record<string, unknown> = { a: 1 };
other.self = other;

const EQUAL: [what: string, a: unknown, b: unknown, equal: boolean][] = [
  ["numbers", 1, 1, true],
  ["0 and -0", 0, -0, true],
  ["NaN and NaN", NaN, NaN, true],
  ["a number and a text", 1, "1", false],
  ["null and undefined", null, undefined, false],
  [
    "nested objects, keys in any order",
    { a: [1, { b: 2 }], c: 3 },
    { c: 3, a: [1, { b: 2 }] },
    true,
  ],
  ["a key that is undefined and one that is missing", { a: undefined }, {}, false],
  ["lists of different length", [1, 2], [1, 2, 3], false],
  ["a list and an object like it", [1], { 0: 1 }, false],
  ["dates", new Date(5), new Date(5), true],
  ["other dates", new Date(5), new Date(6), false],
  ["patterns", /a/g, /a/g, true],
  ["patterns with other flags", /a/g, /a/i, false],
  ["addresses", new URL("http://a/"), new URL("http://a/"), true],
  ["sets in any order", new Set([1, { a: 1 }]), new Set([{ a: 1 }, 1]), true],
  ["sets of different members", new Set([1]), new Set([2]), false],
  ["maps in any order", new Map([[1, 2], [3, 4]]), new Map([[3, 4], [1, 2]]), true],
  ["maps with different values", new Map([[1, 2]]), new Map([[1, 3]]), false],
  ["an object without class and a plain one", Object.create(null), {}, true],
  ["objects of different classes", new Error("a"), { message: "a" }, false],
  ["bytes", new Uint8Array([1, 2]), new Uint8Array([1, 2]), true],
  ["other bytes", new Uint8Array([1, 2]), new Uint8Array([1, 3]), false],
  ["objects that hold themselves", self, other, true],
];
for (const [what, a, b, same] of EQUAL) {
  Deno.test(`equal() finds ${what} ${same ? "equal" : "different"}`, () => {
    node.equal(equal(a, b), same);
    node.equal(equal(b, a), same);
  });
}

const throwing = (error: unknown) => () => {
  throw error;
};
const rejecting = (error: unknown) => () => Promise.reject(error);
/** [call, passes, what it says when it fails]. */
const CALLS: [what: string, call: () => unknown, said: RegExp | null][] = [
  ["assert(1)", () => assert(1), null],
  ["assert(0)", () => assert(0), /^Expected a truthy value$/],
  ["assert('', msg)", () => assert("", "why"), /^why$/],
  ["assertEquals([1], [1])", () => assertEquals([1], [1]), null],
  ["assertEquals([1], [2])", () => assertEquals([1], [2], "why"), /why\.[^]*- +1,\n\+ +2,/],
  [
    "assertEquals('a', 'b')",
    () => assertEquals("a", "b"),
    /^Values are not equal\.[^]*- +a\n\+ +b/,
  ],
  ["assertNotEquals(1, 2)", () => assertNotEquals(1, 2), null],
  ["assertNotEquals(1, 1)", () => assertNotEquals(1, 1), /not to equal/],
  ["assertStrictEquals(1, 1)", () => assertStrictEquals(1, 1), null],
  ["assertStrictEquals({}, {})", () => assertStrictEquals({}, {}), /not strictly equal/],
  ["assertStrictEquals(0, -0)", () => assertStrictEquals(0, -0), /not strictly equal/],
  ["assertAlmostEquals(1, 1 + 1e-9)", () => assertAlmostEquals(1, 1 + 1e-9), null],
  ["assertAlmostEquals(1, 1.1, 0.2)", () => assertAlmostEquals(1, 1.1, 0.2), null],
  ["assertAlmostEquals(1, 1.1)", () => assertAlmostEquals(1, 1.1), /delta "1\.000e-1"/],
  ["assertAlmostEquals(NaN, 1)", () => assertAlmostEquals(NaN, 1), /close to/],
  ["assertExists(0)", () => assertExists(0), null],
  ["assertExists(null)", () => assertExists(null), /not be null/],
  ["assertStringIncludes('ab', 'b')", () => assertStringIncludes("ab", "b"), null],
  ["assertStringIncludes('ab', 'c')", () => assertStringIncludes("ab", "c"), /to contain: "c"/],
  ["assertMatch('ab', /b/)", () => assertMatch("ab", /b/), null],
  ["assertMatch('ab', /c/)", () => assertMatch("ab", /c/), /to match/],
  ["assertArrayIncludes([{a:1}], …)", () => assertArrayIncludes([{ a: 1 }], [{ a: 1 }]), null],
  ["assertArrayIncludes([1], [2])", () => assertArrayIncludes([1], [2]), /to include/],
  ["assertInstanceOf(error, Error)", () => assertInstanceOf(new TypeError(), Error), null],
  ["assertInstanceOf({}, Error)", () => assertInstanceOf({}, Error), /"Error" but was "Object"/],
  [
    "assertObjectMatch, a part",
    () => assertObjectMatch({ a: { b: 1, c: 2 } }, { a: { b: 1 } }),
    null,
  ],
  ["assertObjectMatch, another", () => assertObjectMatch({ a: 1 }, { a: 2 }), /not equal/],
  ["assertObjectMatch, missing", () => assertObjectMatch({}, { a: undefined }), /not equal/],
  ["assertThrows of what throws", () => assertThrows(throwing(new Error())), null],
  ["assertThrows of what does not", () => assertThrows(() => 1), /to throw/],
  [
    "assertThrows with class and text",
    () => assertThrows(throwing(new RangeError("no 7")), RangeError, "no"),
    null,
  ],
  [
    "assertThrows with another class",
    () => assertThrows(throwing(new RangeError()), TypeError),
    /instance of "TypeError", but was "RangeError"/,
  ],
  [
    "assertThrows with another text",
    () => assertThrows(throwing(new Error("a")), Error, "b"),
    /to include "b", but got "a"/,
  ],
  ["assertThrows of no error", () => assertThrows(throwing("a"), Error), /non-Error object/],
  ["assertRejects of what rejects", () => assertRejects(rejecting(new Error())), null],
  ["assertRejects of what does not", () => assertRejects(() => Promise.resolve(1)), /to reject/],
  [
    "assertRejects with another class",
    () => assertRejects(rejecting(new RangeError()), TypeError),
    /instance of "TypeError"/,
  ],
  [
    "assertRejects of what throws at once",
    // deno-lint-ignore no-explicit-any
    () => assertRejects(throwing(new Error("a")) as any),
    /threw synchronously/,
  ],
];
for (const [what, call, said] of CALLS) {
  Deno.test(`${what} ${said ? "fails" : "passes"}`, async () => {
    let error: unknown;
    try {
      await call();
    } catch (e) {
      error = e;
    }
    if (said === null) return node.equal(error, undefined);
    node.ok(error instanceof AssertionError, String(error));
    node.match(error.message, said);
  });
}

Deno.test("assertThrows and assertRejects give what was thrown", async () => {
  const error = new RangeError("a");
  node.equal(assertThrows(throwing(error), RangeError), error);
  node.equal(await assertRejects(rejecting(error), RangeError), error);
});

Deno.test("a failure points at the line of the test", () => {
  const error = assertThrows(() => assertEquals(1, 2), AssertionError);
  const [first = ""] = (error.stack ?? "").split("\n").filter((line) => /^\s+at /.test(line));
  node.match(first, /assert_test\.ts/);
});
