import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { Hono } from "hono";
import { HTTPException } from "hono/http-exception";
import type { AppEnv } from "@/routes/env.ts";
import { onError } from "@/routes/on_error.ts";
import { requestLog } from "@/routes/request_log.ts";

function throwing(error: Error): Hono<AppEnv> {
  const app = new Hono<AppEnv>();
  app.use(requestLog());
  app.onError(onError);
  return app.get("*", () => {
    throw error;
  });
}

describe("onError()", () => {
  it("gives a page with the request's number, without trace or message", async () => {
    const answer = await throwing(new RangeError("secret")).request("/");
    assertEquals(answer.status, 500);
    const text = await answer.text();
    assertStringIncludes(text, answer.headers.get("x-request-id") ?? "no number");
    assertStringIncludes(text, "<h1>Something went wrong</h1>");
    for (const leak of ["secret", "RangeError", ".ts"]) assert(!text.includes(leak), leak);
  });

  it("gives programs a problem", async () => {
    const answer = await throwing(new Error("secret")).request("/api/evaluate");
    assertEquals(answer.headers.get("content-type"), "application/problem+json");
    assertEquals((await answer.json()).status, 500);
  });

  const thrown: [status: 400 | 401 | 403 | 422 | 503, answered: number][] = [
    [400, 400],
    [401, 400],
    [403, 403],
    [422, 400],
    [503, 500],
  ];
  for (const [status, answered] of thrown) {
    it(`answers a thrown ${status} with ${answered}`, async () => {
      const answer = await throwing(new HTTPException(status)).request("/");
      assertEquals(answer.status, answered);
    });
  }
});
