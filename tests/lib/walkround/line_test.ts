/** Sentences with quantities kept apart. */
import { assertEquals, assertThrows } from "@std/assert";
import { fillLine, line, pieces } from "@/lib/walkround/mod.ts";

const P = { value: 5e4, kind: "pressure" } as const;

Deno.test("pieces() leaves out empty text at the ends and between values", () => {
  assertEquals(pieces(line("{a}{b}", { a: P, b: P })), [P, P]);
  assertEquals(pieces(line("")), []);
  assertEquals(pieces(line("plain")), ["plain"]);
});

Deno.test("fillLine() uses a value as often as it stands", () => {
  assertEquals(fillLine(line("{a}, {a}.", { a: P }), ({ kind }) => kind), "pressure, pressure.");
});

Deno.test("fillLine() names the placeholder that has no value", () => {
  assertThrows(
    () => fillLine(line("to {b}", { a: P }), () => ""),
    RangeError,
    "b must have a value",
  );
});
