/** Every example of every component renders, and nothing is wrong with its markup. */
import { assertEquals } from "@std/assert";
import { renderToString } from "preact-render-to-string";
import { sources } from "../helpers/sources.ts";
import { EXAMPLES } from "./examples/all.ts";
import { faultsIn } from "./markup.ts";

for (const [component, examples] of Object.entries(EXAMPLES)) {
  for (const [name, render] of Object.entries(examples)) {
    Deno.test(`${component}: ${name}`, () => {
      const made = render();
      const text = typeof made === "string" ? made : renderToString(made);
      assertEquals(faultsIn(text), []);
    });
  }
}

Deno.test("every component has examples", async () => {
  // Pages of a plan need a whole evaluation: the tests of the routes render those.
  const files = (await sources("components", /\.ts$/)).filter(({ path }) =>
    !/_page\.ts$/.test(path)
  );
  const names = files.flatMap(({ text }) =>
    [...text.matchAll(/^export function ([A-Z]\w+|renderPage)\(/gm)].map(([, name = ""]) => name)
  );
  assertEquals(names.filter((name) => !(name in EXAMPLES)), []);
});
