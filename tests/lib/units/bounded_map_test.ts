import { BoundedMap } from "@/lib/units/bounded_map.ts";
import { assertEquals } from "@std/assert";

Deno.test("BoundedMap forgets the oldest entry when it is full", () => {
  const map = new BoundedMap<number>(2);
  map.set("a", 1);
  map.set("b", 2);
  map.set("b", 3);
  assertEquals([map.get("a"), map.get("b")], [1, 3]);
  map.set("c", 4);
  assertEquals([map.get("a"), map.get("b"), map.get("c")], [undefined, 3, 4]);
});
