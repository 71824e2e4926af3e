import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { createApp } from "@/routes/app.ts";
import { demos } from "@/routes/demos.ts";
import { notFinite } from "../helpers/finite.ts";

const app = createApp({ rate: { burst: 1e9, perSecond: 1e9 } });

async function evaluate(body: string, type = "application/json"): Promise<Response> {
  return await app.request("http://localhost/api/evaluate", {
    method: "POST",
    headers: { "content-type": type },
    body,
  });
}

for (const { name, plan } of demos) {
  Deno.test(`POST /api/evaluate takes the demo ${name} as it stands in seeds/`, async () => {
    const answer = await evaluate(JSON.stringify(plan));
    assertEquals(answer.status, 200);
    const evaluation = await answer.json();
    assert(evaluation.checks.length >= 15);
    assertEquals(notFinite(evaluation), []);
  });
}

Deno.test("POST /api/evaluate names each field that it can't take", async () => {
  const [demo] = demos;
  const plan = structuredClone(demo?.plan) as { engine: { power: string } };
  plan.engine.power = "420";
  const answer = await evaluate(JSON.stringify(plan));
  assertEquals(answer.status, 400);
  assertStringIncludes(answer.headers.get("content-type") ?? "", "application/problem+json");
  const problem = await answer.json();
  assertEquals(problem.errors[0].path, "engine.power");
  assertStringIncludes(problem.errors[0].message, "Target power");
});

const BAD: [name: string, body: string, type: string, status: number][] = [
  ["no JSON", "{", "application/json", 400],
  ["a form", "a=1", "text/csv", 415],
  ["null", "null", "application/json", 400],
  ["a list", "[]", "application/json", 400],
  ["too much", `"${"x".repeat(70_000)}"`, "application/json", 413],
];
for (const [name, body, type, status] of BAD) {
  Deno.test(`POST /api/evaluate answers ${name} with a problem`, async () => {
    const answer = await evaluate(body, type);
    assertEquals(answer.status, status);
    const problem = await answer.json();
    assertEquals(problem.status, status);
    assert(!/at file:|node_modules|Error:/.test(JSON.stringify(problem)));
  });
}

Deno.test("GET /schema/plan-1.json describes the plan", async () => {
  const answer = await app.request("http://localhost/schema/plan-1.json");
  assertEquals(answer.status, 200);
  const schema = await answer.json();
  assertEquals(schema.properties.version.const, 1);
  assertStringIncludes(schema.properties.engine.properties.power.description, "420 hp");
});
