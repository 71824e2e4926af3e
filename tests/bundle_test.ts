/** The build for deployment does what the source does, and names no place it was made at. */
import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { afterAll, beforeAll, describe, it } from "@std/testing/bdd";
import config from "@/deno.json" with { type: "json" };
import { demos } from "@/routes/demos.ts";
import { Bundle } from "./helpers/bundle.ts";
import { Program } from "./helpers/program.ts";
import { ROOT } from "./helpers/sources.ts";

describe("the build", { timeout: 60_000 }, () => {
  let bundle: Bundle;
  beforeAll(async () => {
    bundle = await Bundle.make();
  });
  afterAll(() => bundle[Symbol.asyncDispose]());

  it("is started with the permissions of the source", () => {
    const flags = (task: string): string[] => task.split(" ").filter((arg) => arg.startsWith("--"));
    assertEquals(flags(config.tasks["start:bundled"]), flags(config.tasks.start));
  });

  it("serves start page, sheets with their working, methods and API, and stops cleanly", async () => {
    await using program = new Program(bundle.args, "0");
    const url = await program.address();
    const text = async (path: string, init: RequestInit = {}): Promise<string> => {
      const answer = await fetch(new URL(path, url), init);
      const body = await answer.text();
      assertEquals(answer.status, 200, `${path}: ${body.slice(0, 200)}`);
      return body;
    };
    assertStringIncludes(await text("/"), 'name="engine.power"');
    for (const { name } of demos) {
      assertStringIncludes(await text(`/demo/${name}`), "Injector duty at the power peak");
    }
    const [demo] = demos;
    const path = new URL((await fetch(new URL(`/demo/${demo?.name}`, url))).url).pathname;
    assertStringIncludes(await text(path.replace(/size$/, "working?open=all")), "<math");
    assertStringIncludes(await text(path.replace(/size$/, "prove")), "Rung 1");
    assertStringIncludes(await text("/methods/injector-duty"), "<math");
    const evaluation = JSON.parse(
      await text("/api/evaluate", {
        method: "POST",
        headers: { "content-type": "application/json" },
        body: JSON.stringify(demo?.plan),
      }),
    );
    assert(evaluation.checks.length >= 15);
    program.child.kill("SIGINT");
    assertEquals((await program.child.status).code, 0);
  });

  it("holds no path of the machine and no registry's address", async () => {
    for await (const { name } of Deno.readDir(bundle.folder)) {
      const text = await Deno.readTextFile(`${bundle.folder}/${name}`);
      assert(!text.includes(ROOT.pathname), `${name} names the checkout`);
      assert(!/https?:\/\/registry\./.test(text), `${name} names a registry`);
    }
  });
});
