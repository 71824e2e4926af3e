/** GET /demo/:name: opens a demo plan as if its link had been followed. */
import type { Hono } from "hono";
import { demos } from "./demos.ts";
import type { AppEnv } from "./env.ts";

/** Adds it. */
export function addDemos(app: Hono<AppEnv>): void {
  app.get("/demo/:name", async (c) => {
    const demo = demos.find(({ name }) => name === c.req.param("name"));
    if (demo === undefined) return c.notFound();
    const { packPlan } = await import("@/lib/plan/mod.ts");
    return c.redirect(`/p/${await packPlan(demo.plan)}/size`, 303);
  });
}
