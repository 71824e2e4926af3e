/** Cold start: from starting the process to its first answer. */
import config from "@/deno.json" with { type: "json" };
import { Program } from "../helpers/program.ts";
import { median } from "./measure.ts";

const FLAGS = config.tasks.start.split(" ").slice(1, -1);

/** What a cold start takes, in milliseconds. */
export interface ColdStart {
  /** The service as its task starts it, to its start page. */
  readonly page: number;
  /** The same to its sign of life. */
  readonly health: number;
  /** A Hono app of one route, under the same flags. */
  readonly bare: number;
}

/** Starts all turn by turn and gives the medians. */
export async function coldStart(turns = 11): Promise<ColdStart> {
  const times: Record<keyof ColdStart, number[]> = { page: [], health: [], bare: [] };
  for (let turn = 0; turn <= turns; turn++) {
    const page = await firstAnswer("main.ts", "");
    const health = await firstAnswer("main.ts", "healthz");
    const bare = await firstAnswer("tests/bench/bare.ts", "");
    if (turn === 0) continue; // the first fills Deno's caches
    times.page.push(page);
    times.health.push(health);
    times.bare.push(bare);
  }
  return { page: median(times.page), health: median(times.health), bare: median(times.bare) };
}

async function firstAnswer(entry: string, path: string): Promise<number> {
  const start = performance.now();
  await using program = new Program([...FLAGS, entry], "0");
  const answer = await fetch(new URL(path, await program.address()));
  await answer.body?.cancel();
  if (!answer.ok) throw new Error(`${entry} answered ${answer.status}`);
  return performance.now() - start;
}
