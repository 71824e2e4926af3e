/** Keeps one address from taking the whole service: a leaky bucket in memory, per instance. */
import type { Context, MiddlewareHandler } from "hono";
import { fault } from "./fault.ts";

/** How much one address may send. */
export interface Rate {
  /** Requests that may come at once. */
  readonly burst: number;
  /** Requests a second that may come on and on. */
  readonly perSecond: number;
}

/** Addresses that are remembered; the longest unseen go first. */
const MOST_ADDRESSES = 10_000;

/**
 * Refuses what an address sends above its rate. Reading (GET and HEAD) is not counted.
 *
 * @param rate How much it may send.
 * @param now The clock, in milliseconds.
 * @returns The middleware; it answers 429 with `Retry-After`.
 */
export function rateLimit(rate: Rate, now: () => number = Date.now): MiddlewareHandler {
  const buckets = new Map<string, { level: number; at: number }>();
  return async (c, next) => {
    if (c.req.method === "GET" || c.req.method === "HEAD") return await next();
    const key = addressOf(c);
    const at = now();
    const old = buckets.get(key) ?? { level: 0, at };
    const level = Math.max(0, old.level - (at - old.at) / 1000 * rate.perSecond) + 1;
    if (level > rate.burst) {
      c.header("Retry-After", String(Math.ceil((level - rate.burst) / rate.perSecond)));
      return fault(c, 429, "Too much was sent at once. Wait a moment and try again.");
    }
    buckets.delete(key); // put in again last, so that the map stays in order of use
    buckets.set(key, { level, at });
    if (buckets.size > MOST_ADDRESSES) buckets.delete(buckets.keys().next().value ?? "");
    await next();
  };
}

/** The caller's address as the server saw it, never as a header claims. */
function addressOf(c: Context): string {
  const info = c.env as { remoteAddr?: { hostname?: string } } | undefined;
  return info?.remoteAddr?.hostname ?? "unknown";
}
