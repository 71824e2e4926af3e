/** Answers that say what went wrong: a page for people, `application/problem+json` for programs. */
import type { Context } from "hono";
import type { MessageKind } from "@/components/messages.ts";
import { messagePage } from "./message.ts";

/** The statuses that this service answers a fault with. */
export type FaultStatus = 400 | 403 | 404 | 405 | 413 | 415 | 429 | 500;

const TITLES: Readonly<Record<FaultStatus, string>> = {
  400: "This can't be used as it is",
  403: "This form came from elsewhere",
  404: "There is nothing here",
  405: "This address does not take that",
  413: "This is too large",
  415: "This is of another kind than asked for",
  429: "Too much at once",
  500: "Something went wrong",
};

/** What a page says to do about each. */
const KINDS: Readonly<Record<FaultStatus, MessageKind>> = {
  400: "not-found",
  403: "not-found",
  404: "not-found",
  405: "not-found",
  413: "too-large",
  415: "not-found",
  429: "too-many",
  500: "internal",
};

/**
 * Answers with a fault. Below `/api/` it is a problem by RFC 9457, elsewhere a page.
 *
 * @param c The request.
 * @param status The status of the answer.
 * @param detail What is wrong here, and what to do.
 * @param more Further members of the problem, such as the fields concerned.
 * @returns The answer.
 */
export async function fault(
  c: Context,
  status: FaultStatus,
  detail: string,
  more: Readonly<Record<string, unknown>> = {},
): Promise<Response> {
  const title = TITLES[status];
  if (isForPrograms(c)) {
    const problem = { type: "about:blank", title, status, detail, ...more };
    return c.body(JSON.stringify(problem), status, { "Content-Type": "application/problem+json" });
  }
  return c.html(await messagePage(KINDS[status], { title, detail }), status);
}

function isForPrograms(c: Context): boolean {
  return c.req.path.startsWith("/api/");
}
