/** GET /methods and /methods/:id: the method book. */
import type { Hono } from "hono";
import type { AppEnv } from "./env.ts";

/** Adds both. */
export function addMethods(app: Hono<AppEnv>): void {
  app.get("/methods", async (c) => {
    const { methodsPage } = await import("./method_pages.ts");
    return c.html(methodsPage());
  });
  app.get("/methods/:id", async (c) => {
    const { methodPage } = await import("./method_pages.ts");
    const page = await methodPage(c.req.param("id"));
    return page === undefined ? c.notFound() : c.html(page);
  });
}
