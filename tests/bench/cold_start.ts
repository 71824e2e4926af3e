/** Cold start: from starting the process to its first answer. */
import config from "@/deno.json" with { type: "json" };
import { Program } from "../helpers/program.ts";
import { median } from "./measure.ts";

const FLAGS = config.tasks.start.split(" ").slice(1, -1);

/** What a cold start takes, in milliseconds. */
export interface ColdStart {
  /** The service as its task starts it. */
  readonly ours: number;
  /** A Hono app of one route, under the same flags. */
  readonly bare: number;
}

/** Starts both turn by turn and gives the medians. */
export async function coldStart(turns = 11): Promise<ColdStart> {
  const ours: number[] = [];
  const bare: number[] = [];
  for (let turn = 0; turn <= turns; turn++) {
    const times = [await firstAnswer("main.ts"), await firstAnswer("tests/bench/bare.ts")];
    if (turn === 0) continue; // the first fills Deno's caches
    ours.push(times[0] ?? NaN);
    bare.push(times[1] ?? NaN);
  }
  return { ours: median(ours), bare: median(bare) };
}

async function firstAnswer(entry: string): Promise<number> {
  const start = performance.now();
  await using program = new Program([...FLAGS, entry], "0");
  const answer = await fetch(await program.address());
  await answer.body?.cancel();
  if (!answer.ok) throw new Error(`${entry} answered ${answer.status}`);
  return performance.now() - start;
}
