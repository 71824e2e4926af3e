import {
  assert,
  assertEquals,
  assertMatch,
  assertNotEquals,
  assertStringIncludes,
} from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { createApp } from "@/routes/app.ts";
import { asset, assets } from "@/routes/assets.ts";
import { compressionReady } from "@/routes/compress.ts";

const app = createApp();

await compressionReady();

describe("static files", () => {
  for (const [name, { path }] of Object.entries(assets)) {
    it(`${name} is served for good, under a name of its content`, async () => {
      assertMatch(path, /^\/assets\/\w+\.[\w-]{10,14}\.\w+$/);
      const answer = await app.request(path);
      assertEquals(answer.status, 200);
      assertEquals(answer.headers.get("cache-control"), "public, max-age=31536000, immutable");
      assert((await answer.text()).length > 0);
    });
    it(`${name} is the same packed`, async () => {
      const plain = await (await app.request(path)).text();
      const packed = await app.request(path, { headers: { "accept-encoding": "gzip" } });
      assertEquals(packed.headers.get("content-encoding"), "gzip");
      const stream = packed.body?.pipeThrough(new DecompressionStream("gzip"));
      assertEquals(await new Response(stream ?? null).text(), plain);
    });
    it(`${name} is not sent again to who has it`, async () => {
      const tag = (await app.request(path)).headers.get("etag") ?? "";
      const again = await app.request(path, { headers: { "if-none-match": tag } });
      assertEquals([again.status, await again.text()], [304, ""]);
    });
  }

  it("change their address with their content", () => {
    const one = asset("a.css", "text/css", "a{}");
    const other = asset("a.css", "text/css", "b{}");
    assertNotEquals(one.path, other.path);
  });

  it("have an icon where browsers ask for one", async () => {
    const answer = await app.request("/favicon.ico");
    assertEquals(answer.headers.get("content-type"), "image/svg+xml");
    assertStringIncludes(await answer.text(), "<svg");
    assertEquals(answer.headers.get("cache-control"), "public, max-age=86400");
  });
});
