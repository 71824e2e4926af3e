/** Cold start: from starting the process to its first answer. */
import config from "@/deno.json" with { type: "json" };
import { Bundle } from "../helpers/bundle.ts";
import { Program } from "../helpers/program.ts";
import { median } from "./measure.ts";

/** Flags of the service's task, which the app it is compared with gets as well. */
const FLAGS = config.tasks.start.split(" ").slice(1, -1);

/** One thing that is started, and what is asked of it first. */
interface Start {
  readonly args: readonly string[];
  readonly path: string;
}

/** Median times to the first answer [ms]. */
export interface ColdStarts {
  /** A Hono app of one route. */
  readonly bare: number;
  /** Ours, by what is started and asked. */
  readonly ours: Readonly<Record<string, number>>;
}

/** Starts all turn by turn. */
export async function coldStarts(turns = 11): Promise<ColdStarts> {
  await using bundle = await Bundle.make();
  const bare: Start = { args: [...FLAGS, "tests/bench/bare.ts"], path: "" };
  const ours: Record<string, Start> = {
    "the build's start page": { args: bundle.args, path: "" },
    "the build's /healthz": { args: bundle.args, path: "healthz" },
    "the source's start page": { args: [...FLAGS, "main.ts"], path: "" },
    "the source's /healthz": { args: [...FLAGS, "main.ts"], path: "healthz" },
  };
  const times = new Map<Start, number[]>();
  for (let turn = 0; turn <= turns; turn++) {
    for (const start of [bare, ...Object.values(ours)]) {
      const time = await firstAnswer(start);
      const before = times.get(start) ?? [];
      times.set(start, turn === 0 ? [] : [...before, time]); // the first fills Deno's caches
    }
  }
  const typical = (start: Start): number => median(times.get(start) ?? []);
  return {
    bare: typical(bare),
    ours: Object.fromEntries(Object.entries(ours).map(([name, start]) => [name, typical(start)])),
  };
}

async function firstAnswer({ args, path }: Start): Promise<number> {
  const start = performance.now();
  await using program = new Program(args, "0");
  const answer = await fetch(new URL(path, await program.address()));
  await answer.body?.cancel();
  if (!answer.ok) throw new Error(`${args.at(-1)} answered ${answer.status}`);
  return performance.now() - start;
}
