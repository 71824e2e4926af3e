import { assert, assertEquals } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { Hono } from "hono";
import { compress, compressionReady } from "@/routes/compress.ts";

const TEXT = "<p>Drill the gallery first.</p>\n".repeat(100);
const app = new Hono();
app.use(compress);
app.get("/html", (c) => c.html(TEXT));
app.get("/svg", (c) => c.body(TEXT, 200, { "Content-Type": "image/svg+xml" }));
app.get("/problem", (c) => c.body(TEXT, 400, { "Content-Type": "application/problem+json" }));
app.get("/short", (c) => c.html("<p>short</p>"));
app.get("/png", (c) => c.body(TEXT, 200, { "Content-Type": "image/png" }));
app.get("/empty", (c) => c.body(null, 204));
app.get("/done", (c) => c.html(TEXT, 200, { "Content-Encoding": "br" }));

const ask = (path: string, accept?: string) =>
  app.request(path, accept === undefined ? {} : { headers: { "accept-encoding": accept } });

await compressionReady();

describe("compress()", () => {
  for (const path of ["/html", "/svg", "/problem"]) {
    it(`packs ${path}, and what comes out is the same`, async () => {
      const answer = await ask(path, "gzip, deflate, br");
      assertEquals(answer.headers.get("content-encoding"), "gzip");
      assertEquals(answer.headers.get("vary"), "Accept-Encoding");
      assertEquals(
        answer.headers.get("content-type"),
        (await ask(path)).headers.get("content-type"),
      );
      const packed = await answer.bytes();
      assert(packed.length < TEXT.length / 5);
      const stream = new Blob([packed]).stream().pipeThrough(new DecompressionStream("gzip"));
      assertEquals(await new Response(stream).text(), TEXT);
    });
  }
  it("keeps the status", async () => assertEquals((await ask("/problem", "gzip")).status, 400));

  const unpacked: [path: string, encoding: string | null, vary: string | null][] = [
    ["/short", null, "Accept-Encoding"],
    ["/png", null, null],
    ["/empty", null, null],
    ["/done", "br", null],
  ];
  for (const [path, encoding, vary] of unpacked) {
    it(`leaves ${path} alone`, async () => {
      const { headers } = await ask(path, "gzip");
      assertEquals([headers.get("content-encoding"), headers.get("vary")], [encoding, vary]);
    });
  }

  const offers: [accept: string | undefined, packs: boolean][] = [
    ["gzip", true],
    ["GZIP;q=0.5", true],
    ["br;q=1, gzip;q=0.8", true],
    ["*", true],
    [undefined, false],
    ["", false],
    ["br", false],
    ["identity", false],
    ["gzip;q=0", false],
    ["gzip; q=0.0, *", false],
    ["*;q=0", false],
    ["gzipped", false],
  ];
  for (const [accept, packs] of offers) {
    it(`${packs ? "packs" : "does not pack"} for Accept-Encoding: ${accept}`, async () => {
      const answer = await ask("/html", accept);
      assertEquals(answer.headers.get("content-encoding"), packs ? "gzip" : null);
      if (!packs) assertEquals(await answer.text(), TEXT);
    });
  }
});
