/** The walk-round lists. */
import { assert, assertEquals } from "@std/assert";
import { CAUTIONS, walkRoundLists } from "@/lib/walkround/mod.ts";
import { contextOf, CONTEXTS, E10, METHANOL } from "./contexts.ts";

for (const [name, context] of Object.entries(CONTEXTS)) {
  Deno.test(`${name}: six lists of 5 to 12 items, each looked at with something`, () => {
    const lists = walkRoundLists(context);
    assertEquals(
      lists.map((list) => list.id),
      ["bench", "first-fuel", "first-start", "hot-soak", "first-drive", "yearly"],
    );
    for (const { id, items } of lists) {
      assert(items.length >= 5 && items.length <= 12, `${id}: ${items.length}`);
      assertEquals(new Set(items.map((item) => item.id)).size, items.length, id);
      for (const item of items) {
        assert(item.with.length > 2 && item.text.text.length > 5, `${id}/${item.id}`);
        assert(item.time_s === undefined || item.time_s > 0);
      }
    }
  });
}

Deno.test("the lists carry the plan's own pressures", () => {
  const context = contextOf({ fuel: E10 });
  const [bench, , , hot] = walkRoundLists(context);
  const proof = { value: context.pressures.proofPressure_Pa, kind: "pressure" } as const;
  assertEquals(bench?.items.find((item) => item.id === "proof")?.text.values, { proof });
  const working = { value: context.pressures.workingPressure_Pa, kind: "pressure" } as const;
  assertEquals(hot?.items.find((item) => item.id === "gauge")?.text.values, { working });
});

Deno.test("cautions of other fuels are left out of the lists", () => {
  const conditional = new Set(CAUTIONS.filter((c) => c.when).map((c) => c.id));
  const called = (fuel: typeof E10 | typeof METHANOL) =>
    walkRoundLists(contextOf({ fuel })).flatMap((list) => list.items)
      .flatMap((item) => item.cautions).filter((id) => conditional.has(id));
  assertEquals(called(E10), []);
  assert(called(METHANOL).includes("methanol-toxic"));
});

Deno.test("only alcohol-rich fuel asks for a look at bare aluminium", () => {
  const asks = (fuel: typeof E10 | typeof METHANOL) =>
    walkRoundLists(contextOf({ fuel })).at(-1)?.items.some((item) => item.id === "corrosion");
  assertEquals([asks(E10), asks(METHANOL)], [false, true]);
});
