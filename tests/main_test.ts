/** The program as `deno task start` runs it: same flags, own process. */
import { assert, assertEquals, assertMatch, assertStringIncludes } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import config from "@/deno.json" with { type: "json" };
import { assets } from "@/routes/assets.ts";
import { Program } from "./helpers/program.ts";
import { ROOT } from "./helpers/sources.ts";

const [deno, ...FLAGS] = config.tasks.start.split(" ");

async function refusal(port: string): Promise<{ code: number; said: string }> {
  const { code, stderr } = await new Deno.Command(Deno.execPath(), {
    args: FLAGS,
    cwd: ROOT,
    env: { PORT: port },
  }).output();
  return { code, said: new TextDecoder().decode(stderr).trim() };
}

describe("main.ts", { timeout: 60_000 }, () => {
  it("is started by its task without more permissions than its port needs", () => {
    assertEquals(deno, "deno");
    assertEquals(FLAGS, ["run", "--allow-net=0.0.0.0", "--allow-env=PORT", "main.ts"]);
  });

  it("says where it listens, answers, and stops with code 0 on SIGINT and SIGTERM", async () => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) {
      await using program = new Program(FLAGS, "0");
      const said = await program.line();
      assertMatch(said, /^Dryrail listens on http:\/\/localhost:\d+\/ \(Ctrl-C stops it\)$/);
      const url = said.match(/http:\S+/)?.[0];
      const answer = await fetch(`${url}healthz`);
      assertEquals(await answer.json(), { status: "ok", version: config.version });
      program.child.kill(signal);
      const { code, signal: by } = await program.child.status;
      assertEquals([code, by], [0, null], signal);
    }
  });

  it("logs one line of JSON for a request, without its address", async () => {
    await using program = new Program(FLAGS, "0");
    const url = await program.address();
    await (await fetch(`${url}healthz?plan=secret`)).body?.cancel();
    const line = await program.line();
    assertEquals(JSON.parse(line).route, "/healthz");
    assert(!line.includes("secret"));
  });

  it("compresses once its first answer is out", async () => {
    await using program = new Program(FLAGS, "0");
    const url = await program.address();
    const encoding = async () => {
      const answer = await fetch(url + assets.icon.path.slice(1), {
        headers: { "accept-encoding": "gzip" },
      });
      await answer.body?.cancel();
      return answer.headers.get("content-encoding");
    };
    assertEquals(await encoding(), null);
    while (await encoding() !== "gzip") await program.line();
  });

  it("says in one line that its port is in use", async () => {
    await using first = new Program(FLAGS, "0");
    const { port } = new URL(await first.address());
    const { code, said } = await refusal(port);
    assertEquals(code, 1);
    assertEquals(said, `Port ${port} is in use: stop what runs there, or choose another by PORT.`);
  });

  it("refuses a port that is none", async () => {
    for (const port of ["http", "-1", "65536", "80.5", " 80"]) {
      const { code, said } = await refusal(port);
      assertEquals(code, 1, port);
      assertStringIncludes(said, `PORT must be a whole number from 0 to 65535`);
      assertEquals(said.split("\n").length, 1, "one line");
    }
  });
});
