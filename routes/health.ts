/** GET /healthz: says that the service runs, and which version it is. */
import type { Hono } from "hono";
import config from "@/deno.json" with { type: "json" };
import type { AppEnv } from "./env.ts";

/** Adds it. */
export function addHealth(app: Hono<AppEnv>): void {
  app.get("/healthz", (c) => c.json({ status: "ok", version: config.version }));
}
