import { assertEquals } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { Hono } from "hono";
import { createApp } from "@/routes/app.ts";
import { rateLimit } from "@/routes/rate_limit.ts";

describe("rateLimit()", () => {
  let clock = 0;
  const app = new Hono();
  app.use(rateLimit({ burst: 3, perSecond: 1 }, () => clock));
  app.all("/", (c) => c.text("ok"));
  const ask = async (hostname: string, method = "POST") => {
    const answer = await app.request("/", { method }, { remoteAddr: { hostname } });
    return answer.headers.get("retry-after") ?? answer.status;
  };

  it("lets a burst through and then says when to come back", async () => {
    const answers = [];
    for (let i = 0; i < 5; i++) answers.push(await ask("192.0.2.1"));
    assertEquals(answers, [200, 200, 200, "1", "1"]);
  });
  it("counts each address by itself", async () => assertEquals(await ask("192.0.2.2"), 200));
  it("does not count reading", async () => assertEquals(await ask("192.0.2.1", "GET"), 200));
  it("forgets with time", async () => {
    clock += 1500;
    assertEquals([await ask("192.0.2.1"), await ask("192.0.2.1")], [200, "1"]);
  });
  it("stands before the app's own routes", async () => {
    const { request } = createApp({ rate: { burst: 1, perSecond: 0.001 } });
    const statuses = [];
    for (let i = 0; i < 2; i++) {
      const headers = { "content-type": "application/json" };
      statuses.push((await request("/api/no-such", { method: "POST", headers })).status);
    }
    assertEquals(statuses, [404, 429]);
  });
});
