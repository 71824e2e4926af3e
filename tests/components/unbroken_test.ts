import { assertEquals } from "@std/assert";
import { unbroken } from "@/components/unbroken.ts";

const CASES: [text: string, unbroken: string][] = [
  ["stores 6.61 J of it", "stores 6.61\u00a0J of it"],
  ["90.0 % and 20 °C", "90.0\u00a0% and 20\u00a0°C"],
  ["1.0×10⁻⁴ mbar L/s", "1.0×10⁻⁴\u00a0mbar L/s"],
  ["at 5 (in all)", "at 5 (in all)"],
  ["no number, no change", "no number, no change"],
];
for (const [text, expected] of CASES) {
  Deno.test(`unbroken() of "${text}"`, () => assertEquals(unbroken(text), expected));
}
