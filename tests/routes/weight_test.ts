/** No page weighs more than 60 KB compressed, with all that it loads. */
import { assert, assertEquals } from "@std/assert";
import { packPlan } from "@/lib/plan/mod.ts";
import { createApp } from "@/routes/app.ts";
import { compressionReady } from "@/routes/compress.ts";
import { demos } from "@/routes/demos.ts";

const MOST_BYTES = 60 * 1024;

const SHEETS = [
  "size",
  "drill",
  "prove",
  "hand-over",
  "working",
  "shopping",
  "workshop",
  "changes",
  "blends",
] as const;

const app = createApp();
await compressionReady();

async function weight(path: string): Promise<{ readonly bytes: number; readonly text: string }> {
  const answer = await app.request(`http://localhost${path}`, {
    headers: { "accept-encoding": "gzip" },
  });
  assertEquals(answer.status, 200, path);
  const body = new Uint8Array(await answer.arrayBuffer());
  const plain = new Response(body).body?.pipeThrough(new DecompressionStream("gzip"));
  return { bytes: body.length, text: await new Response(plain).text() };
}

/** The page and every style, script and image that it names. */
async function wholeWeight(path: string): Promise<number> {
  const { bytes, text } = await weight(path);
  const loaded = [...text.matchAll(/(?:href|src)="(\/assets\/[^"]+)"/g)].map(([, at]) => at ?? "");
  assert(loaded.length > 0, `${path} loads no stylesheet`);
  let sum = bytes;
  for (const each of new Set(loaded)) sum += (await weight(each)).bytes;
  return sum;
}

for (const { name, plan } of demos) {
  for (const sheet of SHEETS) {
    Deno.test(`the ${sheet} sheet of ${name} weighs at most 60 KB with all that it loads`, async () => {
      const bytes = await wholeWeight(`/p/${await packPlan(plan)}/${sheet}`);
      assert(bytes <= MOST_BYTES, `${bytes} bytes`);
    });
  }
}

for (const path of ["/", "/methods"]) {
  Deno.test(`${path} weighs at most 60 KB with all that it loads`, async () => {
    assert(await wholeWeight(path) <= MOST_BYTES);
  });
}
