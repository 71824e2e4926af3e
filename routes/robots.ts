/** GET /robots.txt: addresses hold people's plans, so only the start page is for search engines. */
import type { Hono } from "hono";
import type { AppEnv } from "./env.ts";

/** Adds it. */
export function addRobots(app: Hono<AppEnv>): void {
  app.get("/robots.txt", (c) => c.text("User-agent: *\nAllow: /$\nDisallow: /\n"));
}
