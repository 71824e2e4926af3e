/**
 * POST /api/evaluate: a plan in, its evaluation out.
 * GET /schema/plan-1.json: the JSON Schema of a plan.
 */
import type { Context, Hono } from "hono";
import type { AppEnv } from "./env.ts";
import { fault } from "./fault.ts";

/** Adds both. */
export function addApi(app: Hono<AppEnv>): void {
  app.post("/api/evaluate", evaluatePlan);
  app.get("/schema/plan-1.json", async (c) => {
    const { planJsonSchema } = await import("@/lib/plan/mod.ts");
    return c.body(JSON.stringify(await planJsonSchema()), 200, {
      "Content-Type": "application/schema+json",
    });
  });
}

async function evaluatePlan(c: Context): Promise<Response> {
  if (!/^application\/json\b/i.test(c.req.header("Content-Type") ?? "")) {
    return await fault(c, 415, "Send the plan as application/json.");
  }
  let document: unknown;
  try {
    document = JSON.parse(await c.req.text());
  } catch {
    return await fault(c, 400, "The body is no JSON.");
  }
  const [{ evaluate }, { read }] = await Promise.all([
    import("@/lib/evaluation/mod.ts"),
    import("./read_plan.ts"),
  ]);
  const reading = await read(document);
  if (!reading.ok) {
    const detail = "The plan can't be taken as it is; `errors` says where and why.";
    return await fault(c, 400, detail, { errors: reading.faults });
  }
  return c.json(evaluate(reading.plan));
}
