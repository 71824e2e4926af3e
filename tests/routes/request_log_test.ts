import { assert, assertEquals, assertMatch } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { Hono } from "hono";
import { createApp } from "@/routes/app.ts";
import { type RequestLine, requestLog } from "@/routes/request_log.ts";

describe("the request log", () => {
  it("has the route's pattern, never the address", async () => {
    const lines: RequestLine[] = [];
    const app = new Hono();
    app.use(requestLog((line) => lines.push(line)));
    app.get("/plan/:code/drill", (c) => c.text("ok"));
    const answer = await app.request("/plan/1.secret/drill?more=secret");
    await app.request("/secret");
    assertEquals(lines.map((l) => [l.method, l.route, l.status]), [
      ["GET", "/plan/:code/drill", 200],
      ["GET", "-", 404],
    ]);
    assert(!JSON.stringify(lines).includes("secret"));
    assertEquals(lines[0]?.id, answer.headers.get("x-request-id"));
    assertMatch(lines[0]?.time ?? "", /^\d{4}-\d\d-\d\dT[\d:.]+Z$/);
    assert((lines[0]?.ms ?? -1) >= 0);
  });

  it("says where an unexpected error rose, without its message", async () => {
    const lines: RequestLine[] = [];
    const app = new Hono();
    app.use(requestLog((line) => lines.push(line)));
    app.get("/", () => {
      throw new RangeError("secret\n at secret");
    });
    app.onError((_, c) => c.text("sorry", 500));
    await app.request("/");
    assertMatch(lines[0]?.error ?? "", /^RangeError\n +at .*request_log_test\.ts/);
    assert(!lines[0]?.error?.includes("secret"));
  });

  it("is silent unless told where to go", async () => {
    const said: unknown[] = [];
    const log = console.log;
    console.log = (...args) => said.push(args);
    try {
      await createApp().request("/");
    } finally {
      console.log = log;
    }
    assertEquals(said, []);
  });
});
