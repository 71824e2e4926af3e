import { assert, assertEquals, assertMatch, assertStringIncludes } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import config from "@/deno.json" with { type: "json" };
import { createApp } from "@/routes/app.ts";

const app = createApp();
const FORM = { "content-type": "application/x-www-form-urlencoded" };

describe("the app", () => {
  it("says that it runs", async () => {
    const answer = await app.request("/healthz");
    assertEquals(answer.status, 200);
    assertEquals(await answer.json(), { status: "ok", version: config.version });
  });

  it("lets search engines see the start page only", async () => {
    const text = await (await app.request("/robots.txt")).text();
    assertEquals(text, "User-agent: *\nAllow: /$\nDisallow: /\n");
  });

  it("answers HEAD as GET, without the body", async () => {
    const answer = await app.request("/healthz", { method: "HEAD" });
    assertEquals([answer.status, await answer.text()], [200, ""]);
  });

  it("has a page for an address with nothing behind it", async () => {
    const answer = await app.request("/no/such?plan=<script>");
    assertEquals(answer.status, 404);
    assertEquals(answer.headers.get("content-type")?.toLowerCase(), "text/html; charset=utf-8");
    const text = await answer.text();
    assertStringIncludes(text, "<h1>");
    assert(!text.includes("<script>"));
  });

  it("says which method an address takes", async () => {
    for (const method of ["PUT", "DELETE", "PATCH", "OPTIONS"]) {
      const headers = { "content-type": "application/json" };
      const answer = await app.request("/healthz", { method, headers });
      assertEquals([answer.status, answer.headers.get("allow")], [405, "GET"], method);
    }
  });

  it("answers faults below /api/ as problems", async () => {
    const answer = await app.request("/api/no-such");
    assertEquals(answer.headers.get("content-type"), "application/problem+json");
    const { detail, ...problem } = await answer.json();
    assertEquals(problem, { type: "about:blank", title: "There is nothing here", status: 404 });
    assertMatch(detail, /^There is no page/);
  });

  it("refuses a form from another site with a page, not a trace", async () => {
    const post = (headers: Record<string, string>) =>
      app.request("http://localhost/no-such", {
        method: "POST",
        body: "a=1",
        headers: { ...FORM, ...headers },
      });
    assertEquals((await post({ origin: "https://elsewhere.example" })).status, 403);
    assertEquals((await post({ "sec-fetch-site": "cross-site" })).status, 403);
    assertEquals((await post({ origin: "http://localhost" })).status, 404);
    assertEquals((await post({ "sec-fetch-site": "same-origin" })).status, 404);
    assertStringIncludes(await (await post({})).text(), "<h1>This form came from elsewhere</h1>");
  });

  it("refuses a body over 64 KiB, announced or not", async () => {
    const post = (body: BodyInit) =>
      app.request("/api/no-such", {
        method: "POST",
        body,
        headers: { "content-type": "application/json" },
      });
    assertEquals((await post("x".repeat(65_536))).status, 404);
    assertEquals((await post("x".repeat(65_537))).status, 413);
    const stream = new ReadableStream({
      start(controller) {
        for (let i = 0; i < 9; i++) controller.enqueue(new Uint8Array(8000));
        controller.close();
      },
    });
    const answer = await post(stream);
    assertEquals(answer.status, 413);
    assertEquals((await answer.json()).detail, "What was sent is larger than 64 KiB.");
  });

  it("names every request at random, whatever name it came with", async () => {
    const names = new Set<string | null>();
    for (let i = 0; i < 3; i++) {
      const answer = await app.request("/healthz", { headers: { "x-request-id": "theirs" } });
      names.add(answer.headers.get("x-request-id"));
    }
    assertEquals(names.size, 3);
    for (const name of names) assertMatch(name ?? "", /^[\da-f]{8}(-[\da-f]{4}){3}-[\da-f]{12}$/);
  });
});
