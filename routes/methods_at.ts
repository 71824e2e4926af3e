/** Tells a wrong method from a wrong address. */
import type { Hono } from "hono";
import type { AppEnv } from "./env.ts";

const METHODS = ["GET", "POST", "PUT", "PATCH", "DELETE"];

/** The methods that some route answers at an address, middleware left out. */
export function methodsAt(app: Hono<AppEnv>, path: string): string[] {
  return METHODS.filter((method) =>
    app.router.match(method, path)[0].some(([[, route]]) => route.method === method)
  );
}
