import { assertEquals } from "@std/assert";
import { demos } from "@/routes/demos.ts";
import { sources } from "../helpers/sources.ts";

Deno.test("demos are the files of seeds/, all of them, unchanged", async () => {
  const files = (await sources("seeds", /\.json$/)).map(({ path, text }) => ({
    name: path.slice("seeds/".length, -".json".length),
    plan: JSON.parse(text),
  }));
  assertEquals(demos.toSorted((a, b) => a.name < b.name ? -1 : 1), files);
});
