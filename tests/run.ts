/**
 * Runs the named suites one after another and ends with one plain line,
 * `N passed, N failed`, that any CI can read.
 *
 * - `gate`: formatting, lint, types and docs by their tasks, each counted as one test
 * - `unit`: every test and every `@example` outside `tests/browser/`
 * - `browser`: the tests of `tests/browser/`, with its own dependencies
 *
 * Other arguments are handed to `deno test`. Exits non-zero when something
 * failed, hung, or when no test ran at all.
 *
 * @module
 */

/** What a run came to. */
export interface Counts {
  /** Tests that passed. */
  passed: number;
  /** Tests that failed, and 1 if something outside the tests did. */
  failed: number;
  /** Tests that were left out. */
  skipped: number;
}

/** One call of `deno`. */
export interface Run {
  /** Where, from the repository's root. */
  readonly cwd: string;
  /** With what arguments. */
  readonly args: readonly string[];
  /** After how many minutes it is taken for hung and ended. */
  readonly minutes: number;
  /** How what it printed and its exit code are counted. */
  readonly count: (output: string, code: number) => Counts;
}

const ROOT = new URL("../", import.meta.url);
const TASKS = ["fmt:check", "lint", "check", "docs"];
const SUITES: Readonly<Record<string, readonly Run[]>> = {
  gate: TASKS.map((task) => ({
    cwd: ".",
    args: ["task", "--quiet", task],
    minutes: 4,
    count: countTask,
  })),
  unit: [{
    cwd: ".",
    args: ["test", "-A", "--doc", "--parallel"],
    minutes: 8,
    count: countTests,
  }],
  browser: [{ cwd: "tests/browser", args: ["test", "-A"], minutes: 6, count: countTests }],
};

const ANSI = new RegExp("\u001b\\[[0-9;]*m", "g");
const SUMMARY =
  /^(?:ok|FAILED) \| (\d+) passed(?: \([^)]*\))? \| (\d+) failed(?: \([^)]*\))?(?: \| (\d+) ignored)?/;

/** Counts one task as one test. */
export function countTask(_output: string, code: number): Counts {
  return { passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, skipped: 0 };
}

/** Reads what `deno test` printed and returned. */
export function countTests(output: string, code: number): Counts {
  const line = output.replaceAll(ANSI, "").split("\n").findLast((l) => SUMMARY.test(l));
  const [, passed, failed, skipped] = line?.match(SUMMARY) ?? [];
  const counts = {
    passed: Number(passed ?? 0),
    failed: Number(failed ?? 0),
    skipped: Number(skipped ?? 0),
  };
  // A type error, `only` or an error outside any test is a failure too,
  // and so is a run that ended well without its summary.
  if (counts.failed === 0 && (code !== 0 || !line)) counts.failed = 1;
  return counts;
}

/** Runs `deno` once, passing its output through, and counts what came of it. */
export async function perform(run: Run): Promise<Counts> {
  const child = new Deno.Command(Deno.execPath(), {
    args: [...run.args],
    cwd: new URL(`${run.cwd}/`, ROOT),
    stdin: "null",
    stdout: "piped",
    env: Deno.stdout.isTerminal() ? { FORCE_COLOR: "1" } : {},
  }).spawn();
  let hung = false;
  const end = (signal: Deno.Signal) => {
    try {
      child.kill(signal);
    } catch {
      // it ended by itself just now
    }
  };
  const timers = [
    setTimeout(() => ((hung = true), end("SIGTERM")), run.minutes * 60_000),
    setTimeout(() => end("SIGKILL"), run.minutes * 60_000 + 5_000),
  ];
  let output = "";
  const text = new TextDecoder();
  for await (const chunk of child.stdout) {
    await Deno.stdout.write(chunk);
    output = (output + text.decode(chunk, { stream: true })).slice(-65536);
  }
  const { code } = await child.status;
  timers.forEach(clearTimeout);
  if (hung) console.log(`deno ${run.args.join(" ")}: ended after ${run.minutes} minutes`);
  return run.count(output, hung ? 124 : code);
}

if (import.meta.main) {
  const names = Deno.args.filter((a) => a in SUITES);
  const extra = Deno.args.filter((a) => !(a in SUITES));
  const total: Counts = { passed: 0, failed: 0, skipped: 0 };
  for (const run of (names.length ? names : Object.keys(SUITES)).flatMap((n) => SUITES[n] ?? [])) {
    console.log(`--- deno ${run.args.join(" ")}`);
    const args = run.count === countTests ? [...run.args, ...extra] : run.args;
    const counts = await perform({ ...run, args });
    for (const key of ["passed", "failed", "skipped"] as const) total[key] += counts[key];
  }
  if (total.skipped > 0) console.log(`${total.skipped} skipped`);
  console.log(`${total.passed} passed, ${total.failed} failed`);
  Deno.exit(total.failed > 0 ? 1 : total.passed === 0 ? 5 : 0);
}
