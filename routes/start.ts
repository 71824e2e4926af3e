/** GET /: the start page, with the eight questions and the demo plans. */
import type { Hono } from "hono";
import type { AppEnv } from "./env.ts";

/** Adds it. What it is made with is loaded when it is first asked for. */
export function addStart(app: Hono<AppEnv>): void {
  app.get("/", async (c) => {
    const { startPage } = await import("./start_page.ts");
    return c.html(startPage({ boxes: new Map(), faults: [] }));
  });
}
