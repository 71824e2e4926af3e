/**
 * Runs the named suites by `deno test`, one after another, and ends with one
 * plain line, `N passed, N failed, N skipped`, that any CI can read.
 *
 * Exits non-zero when a suite failed or when no test ran at all.
 *
 * @module
 */

const suites: Record<string, { cwd: string; args: string[] }> = {
  unit: { cwd: ".", args: ["-A", "--doc"] },
  coverage: {
    cwd: ".",
    args: ["-A", "--doc", "--coverage=coverage", "--coverage-raw-data-only", "--clean"],
  },
  browser: { cwd: "tests/browser", args: ["-A"] },
};

/** What a run came to. */
export interface Counts {
  /** Tests that passed. */
  passed: number;
  /** Tests that failed, and 1 if something outside the tests did. */
  failed: number;
  /** Tests that were left out. */
  skipped: number;
}

const ansi = new RegExp("\u001b\\[[0-9;]*m", "g");
const summary =
  /^(?:ok|FAILED) \| (\d+) passed(?: \([^)]*\))? \| (\d+) failed(?: \([^)]*\))?(?: \| (\d+) ignored)?/;

/** Reads what `deno test` printed and returned. */
export function count(output: string, code: number): Counts {
  const line = output.replaceAll(ansi, "").split("\n").findLast((l) => summary.test(l));
  const [, passed, failed, skipped] = line?.match(summary) ?? [];
  const counts = {
    passed: Number(passed ?? 0),
    failed: Number(failed ?? 0),
    skipped: Number(skipped ?? 0),
  };
  // A type error, `only`, a missed threshold or an error outside any test is a failure too,
  // and so is a run that ended well without its summary.
  if (counts.failed === 0 && (code !== 0 || !line)) counts.failed = 1;
  return counts;
}

if (import.meta.main) {
  const [names, extra] = [
    Deno.args.filter((a) => a in suites),
    Deno.args.filter((a) => !(a in suites)),
  ];
  const total: Counts = { passed: 0, failed: 0, skipped: 0 };
  for (const { cwd, args } of (names.length ? names : ["unit"]).flatMap((n) => suites[n] ?? [])) {
    const child = new Deno.Command(Deno.execPath(), {
      args: ["test", ...args, ...extra],
      cwd: new URL(`../${cwd}/`, import.meta.url),
      stdin: "null",
      stdout: "piped",
      env: Deno.stdout.isTerminal() ? { FORCE_COLOR: "1" } : {},
    }).spawn();
    let output = "";
    const text = new TextDecoder();
    for await (const chunk of child.stdout) {
      await Deno.stdout.write(chunk);
      output = (output + text.decode(chunk, { stream: true })).slice(-65536);
    }
    const counts = count(output, (await child.status).code);
    for (const key of ["passed", "failed", "skipped"] as const) total[key] += counts[key];
  }
  console.log(`${total.passed} passed, ${total.failed} failed, ${total.skipped} skipped`);
  Deno.exit(total.failed > 0 ? 1 : total.passed === 0 ? 5 : 0);
}
