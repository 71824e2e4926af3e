/** One line for each request, that never holds what the request was about. */
import type { MiddlewareHandler } from "hono";
import { matchedRoutes } from "hono/route";
import type { AppEnv } from "./env.ts";

/** What is logged of a request. */
export interface RequestLine {
  /** When it was answered (RFC 3339, UTC). */
  readonly time: string;
  /** Its random name, also in the answer's `X-Request-Id`. */
  readonly id: string;
  /** How it asked. */
  readonly method: string;
  /** The pattern of the route that answered, `-` when none did: never the address, which may hold a plan. */
  readonly route: string;
  /** How it was answered. */
  readonly status: number;
  /** How long that took, in milliseconds. */
  readonly ms: number;
  /** The class of an error that nobody expected, and where it rose; not its message, which may quote the plan. */
  readonly error?: string;
}

/** Where lines go. */
export type Log = (line: RequestLine) => void;

/**
 * Names each request and logs it once it is answered.
 *
 * @param log Where lines go; nowhere if left out.
 * @returns The middleware; it must be the outermost.
 */
export function requestLog(log?: Log): MiddlewareHandler<AppEnv> {
  return async (c, next) => {
    const id = crypto.randomUUID();
    c.set("requestId", id);
    const start = performance.now();
    await next();
    c.header("X-Request-Id", id);
    if (log === undefined) return;
    const route = matchedRoutes(c).findLast((r) => r.method !== "ALL");
    log({
      time: new Date().toISOString(),
      id,
      method: c.req.method,
      route: route?.path ?? "-",
      status: c.res.status,
      ms: Math.round((performance.now() - start) * 100) / 100,
      ...(c.error && c.res.status === 500 ? { error: placeOf(c.error) } : {}),
    });
  };
}

/** The class of an error and its stack, without its message. */
function placeOf(error: Error): string {
  const { name, message, stack = "" } = error;
  const frames = stack.includes(message)
    ? stack.slice(stack.indexOf(message) + message.length)
    : "";
  return name + frames;
}
