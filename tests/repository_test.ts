/** The repository as a whole: what lies in it, what its locks hold, what it must not give away. */
import { assertEquals } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import root from "@/deno.json" with { type: "json" };
import { paths, ROOT, sources } from "./helpers/sources.ts";

const TOP = [
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "components",
  "deno.json",
  "deno.lock",
  "lib",
  "main.ts",
  "routes",
  "seeds",
  "tests",
];
const NO_TEXT = /\.(?:png|jpe?g|ico|pdf|woff2?)$/;

const read = (path: string) => Deno.readTextFile(new URL(path, ROOT));

describe("the repository", () => {
  it("has only the top-level names that DEVELOPERS.md maps", async () => {
    const names = new Set((await paths(".")).map((path) => path.replace(/\/.*/, "")));
    const own = [...names].filter((name) => !name.startsWith(".") && !TOP.includes(name));
    assertEquals(own, []);
  });

  it("names no place of anyone's machine and no registry", async () => {
    // Written in two halves, so that this file is not found itself.
    const places = ["work", "tmp", "root", "home", "Users", "farm"].map((name) => "/" + name + "/");
    const hosts = ["registry" + ".", "npm" + "js", "jsr" + ".io", "localhost" + ":4873"];
    const found: string[] = [];
    for (const { path, text } of await sources(".")) {
      if (NO_TEXT.test(path)) continue;
      for (const word of places) {
        if (new RegExp(`(?<![\\w.})*$~-])${word}`).test(text)) found.push(`${path}: ${word}`);
      }
      for (const word of hosts) if (text.includes(word)) found.push(`${path}: ${word}`);
    }
    assertEquals(found, []);
  });

  it("pins every package exactly, the same for the browser tests", async () => {
    const browser = JSON.parse(await read("tests/browser/deno.json"));
    const all: [string, string][] = [root, browser].flatMap((c) => Object.entries(c.imports));
    const npm = all.filter(([, to]) => to.startsWith("npm:"));
    const loose = npm.filter(([, to]) =>
      !/^npm:\/?(?:@[\w-]+\/)?[\w-]+@\d+\.\d+\.\d+(?:\/|$)/.test(to)
    );
    assertEquals(loose, []);
    const packages = new Map(Object.entries<string>(root.imports));
    const other = Object.entries<string>(browser.imports).filter(([name, to]) =>
      to.startsWith("npm:") && packages.has(name) && packages.get(name) !== to
    );
    assertEquals(other, []);
    const { strict: _, ...options } = root.compilerOptions;
    assertEquals(browser.compilerOptions, { strict: true, ...options });
  });

  it("gives one test command, in README.md and to the CI", async () => {
    const readme = await read("README.md");
    const [, command] = readme.match(/^(npx --yes deno@\S+ task test)$/m) ?? [];
    const [, run] = (await read(".ci/run")).match(/^exec (.+)$/m) ?? [];
    assertEquals([command, run], [command ?? "a command", command]);
  });

  it("lets the CI's script be run", async () => {
    if (Deno.build.os === "windows") return;
    const { mode } = await Deno.stat(new URL(".ci/run", ROOT));
    assertEquals((mode ?? 0) & 0o111, 0o111);
  });
});

// preact-render-to-string takes any preact as its peer; given another copy than
// the one the vnodes are made with, it silently renders nothing.
for (const path of ["deno.lock", "tests/browser/deno.lock"]) {
  describe(path, () => {
    it("holds one preact", async () => {
      const keys = Object.keys(JSON.parse(await read(path)).npm);
      const copies = new Set(
        keys.filter((k) => k.startsWith("preact@")).map((k) => k.split("_")[0]),
      );
      assertEquals([...copies], ["preact@11.2.0"]);
    });
    it("holds no host name", async () => {
      const text = await read(path);
      assertEquals(text.match(/https?:|\/\/|registry|"[\w-]+\.(?:com|org|io|net|dev)\b/g), null);
    });
    it("holds the digest of every package", async () => {
      const packages = Object.entries<{ integrity?: string }>(JSON.parse(await read(path)).npm);
      const without = packages.filter(([, { integrity = "" }]) => !integrity.startsWith("sha512-"));
      assertEquals(without.map(([name]) => name), []);
    });
    it("is frozen", async () => {
      const config = JSON.parse(await read(path.replace("deno.lock", "deno.json")));
      assertEquals(config.lock, { path: "./deno.lock", frozen: true });
    });
  });
}
