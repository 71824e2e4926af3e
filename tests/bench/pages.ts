/** What a plan's page costs, against the same bytes served from memory. */
import { Hono } from "hono";
import { packPlan } from "@/lib/plan/link.ts";
import { createApp } from "@/routes/app.ts";
import { demos } from "@/routes/demos.ts";
import { timed } from "./measure.ts";

/** What is measured for one demo. */
export interface PageCost {
  /** The demo. */
  readonly name: string;
  /** The page's size, uncompressed. */
  readonly bytes: number;
  /** Plan pages a second. */
  readonly perSecond: number;
  /** One page, in servings of its bytes from memory. */
  readonly servings: number;
}

/** The address of a plan's first page. */
const pathOf = (code: string) => `/p/${code}/size`;

/** Measures each demo's page, by `app.request()`: without network, without compression. */
export async function pageCosts(): Promise<PageCost[]> {
  const app = createApp();
  const costs: PageCost[] = [];
  for (const demo of demos) {
    const path = pathOf(await packPlan(demo.plan));
    const answer = await app.request(path);
    if (answer.status !== 200) throw new Error(`${demo.name}'s page answers ${answer.status}`);
    const body = new Uint8Array(await answer.arrayBuffer());
    const headers = Object.fromEntries(answer.headers);
    const memory = new Hono();
    memory.get("*", (c) => c.body(body, 200, headers));
    const times = await timed({
      page: async () => await (await app.request(path)).arrayBuffer(),
      memory: async () => await (await memory.request(path)).arrayBuffer(),
    });
    const servings = times.page / times.memory;
    costs.push({ name: demo.name, bytes: body.length, perSecond: 1000 / times.page, servings });
  }
  return costs;
}
