/** The whole service without its port: what a request goes through, and what answers it. */
import { Hono } from "hono";
import { bodyLimit } from "hono/body-limit";
import { csrf } from "hono/csrf";
import { addApi } from "./api.ts";
import { addAssets } from "./assets.ts";
import { compress } from "./compress.ts";
import type { AppEnv } from "./env.ts";
import { fault } from "./fault.ts";
import { addDemos } from "./demo.ts";
import { addHealth } from "./health.ts";
import { methodsAt } from "./methods_at.ts";
import { onError } from "./on_error.ts";
import { type Rate, rateLimit } from "./rate_limit.ts";
import { type Log, requestLog } from "./request_log.ts";
import { addMethods } from "./methods.ts";
import { addPlan } from "./plan.ts";
import { addRobots } from "./robots.ts";
import { securityHeaders } from "./security_headers.ts";
import { addStart } from "./start.ts";

/** What the service can be told. */
export interface AppOptions {
  /** Where a line for each request goes; nowhere if left out. */
  readonly log?: Log;
  /** How much one address may send; 60 at once and 10 a second if left out. */
  readonly rate?: Rate;
}

/** The service, ready to answer. */
export interface App {
  /** Answers a request; `info` is what `Deno.serve` tells of the connection. */
  readonly fetch: (request: Request, info?: object) => Response | Promise<Response>;
  /** Answers a request given in short, for tests. */
  readonly request: (
    input: string | Request,
    init?: RequestInit,
    info?: object,
  ) => Response | Promise<Response>;
}

/** The most bytes that a form or a plan sent to the service may have. */
const MOST_BODY_BYTES = 64 * 1024;

/** Builds the service. */
export function createApp(options: AppOptions = {}): App {
  const app = new Hono<AppEnv>();

  app.use(requestLog(options.log));
  app.use(securityHeaders);
  app.use(compress);
  app.use(rateLimit(options.rate ?? { burst: 60, perSecond: 10 }));
  app.use(bodyLimit({
    maxSize: MOST_BODY_BYTES,
    onError: (c) => fault(c, 413, `What was sent is larger than ${MOST_BODY_BYTES / 1024} KiB.`),
  }));
  app.use(csrf());

  addStart(app);
  addDemos(app);
  addPlan(app);
  addMethods(app);
  addApi(app);
  addHealth(app);
  addRobots(app);
  addAssets(app);

  app.notFound((c) => {
    const methods = methodsAt(app, c.req.path);
    if (methods.length === 0 || methods.includes(c.req.method)) {
      return fault(
        c,
        404,
        "There is no page at this address. It may have been cut off or mistyped.",
      );
    }
    c.header("Allow", methods.join(", "));
    return fault(c, 405, `This address answers only to ${methods.join(" and ")}.`);
  });

  app.onError(onError);

  return app;
}
