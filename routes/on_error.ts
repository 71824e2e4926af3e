/** What is answered when something was thrown: what to do, never a trace. */
import type { Context } from "hono";
import { HTTPException } from "hono/http-exception";
import type { AppEnv } from "./env.ts";
import { fault } from "./fault.ts";

/** Answers in place of what threw. Middleware refuses by throwing an `HTTPException`. */
export async function onError(error: Error, c: Context<AppEnv>): Promise<Response> {
  const status = error instanceof HTTPException ? error.status : 500;
  if (status === 403) {
    const what = "It was not sent from a page of this service.";
    return await fault(c, 403, `${what} Open the page here and send it from there.`);
  }
  if (status < 500) {
    return await fault(c, 400, "What was sent can't be read. Go back and try again.");
  }
  return await fault(
    c,
    500,
    "The fault is here, not in what you entered. Try again; if it stays, tell whoever runs " +
      `this service the number ${c.get("requestId")}.`,
  );
}
