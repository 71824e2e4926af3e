/**
 * Checks of methods against the outside: each names what it checks and its source.
 *
 * A room lists its checks in `tests/lib/<room>/checks.ts`; `checks_test.ts`
 * beside it runs them, and `tests/lib/book/checked_test.ts` reads all lists to
 * see that no method is without one.
 *
 * @module
 */
import { assert, assertEquals } from "@std/assert";
import type { AnyMethod } from "@/lib/method/mod.ts";

/** Where an expected value comes from. */
export type Provenance =
  | "computed-with-library"
  | "read-from-source"
  | "from-memory"
  | "exact-solution"
  | "second-correlation"
  | "formula-evaluated";

/** One comparison of the code with something outside it. */
export interface Check {
  /** What is compared, for the test's name. */
  readonly name: string;
  /** The methods whose numbers decide it; empty for tables and texts. */
  readonly methods: readonly AnyMethod[];
  /** The document, program or exact solution compared with. */
  readonly source: string;
  /** How the expected value was come by. */
  readonly provenance: Provenance;
  /** Throws when the code disagrees. */
  readonly run: () => void;
}

/** One case of a file in `tests/reference/`. */
export interface ReferenceCase {
  readonly id: string;
  readonly quantity: string;
  // deno-lint-ignore no-explicit-any
  readonly inputs: any;
  readonly expected: unknown;
  readonly tolerance: Tolerance;
  readonly source: string;
  readonly provenance: Provenance;
  readonly note: string;
}

/** How close a case wants the answer; a number for all keys or one per key. */
interface Tolerance {
  readonly rel?: number | Readonly<Record<string, number>>;
  readonly abs?: number | Readonly<Record<string, number>>;
  readonly exact?: boolean;
  readonly range?: boolean;
  readonly semantic?: boolean;
}

/** How a room answers the cases of one quantity. */
export interface Answer {
  /** The methods that the answer comes from. */
  readonly methods: readonly AnyMethod[];
  /**
   * Gives the answer to a case: the keys of `expected` that this room answers,
   * or a bare value where `expected` is one. Never reads `expected` to make it.
   */
  // deno-lint-ignore no-explicit-any
  readonly run: (inputs: any, c: ReferenceCase) => unknown;
  /** Keys of `expected` left out, each with the reason. */
  readonly leaves?: Readonly<Record<string, string>>;
}

/** What becomes of the cases of a file: an answer, or the reason why there is none yet. */
export type Answers = Readonly<Record<string, Answer | { readonly later: string }>>;

/**
 * Makes one check of each case of a reference file.
 *
 * @param file The file's name in `tests/reference/`.
 * @param answers An answer by quantity; a key that ends in `*` stands for all
 * quantities that begin so. Every case must be met by one, or a `later`.
 * @returns The checks.
 */
export function fromReference(file: string, answers: Answers): Check[] {
  const cases: ReferenceCase[] = JSON.parse(
    Deno.readTextFileSync(new URL(`../reference/${file}`, import.meta.url)),
  );
  return cases.flatMap((c): Check[] => {
    const key = Object.keys(answers).find((k) =>
      k.endsWith("*") ? c.quantity.startsWith(k.slice(0, -1)) : k === c.quantity
    );
    const answer = key === undefined ? undefined : answers[key];
    if (answer !== undefined && "later" in answer) return [];
    return [{
      name: `${file} ${c.id}: ${c.quantity}`,
      methods: answer?.methods ?? [],
      source: c.source,
      provenance: c.provenance,
      run: () => {
        assert(answer, `nothing answers "${c.quantity}"`);
        compare(answer.run(c.inputs, c), c, answer.leaves ?? {});
      },
    }];
  });
}

/** Registers a test for each check. */
export function runChecks(checks: readonly Check[]): void {
  for (const check of checks) {
    Deno.test(`${check.name} (${check.provenance}: ${check.source})`, check.run);
  }
}

function compare(
  actual: unknown,
  c: ReferenceCase,
  leaves: Readonly<Record<string, string>>,
): void {
  const { expected, tolerance } = c;
  if (!isRecord(expected)) return compareValue(actual, expected, tolerance, "");
  if (tolerance.range) return compareRange(actual as Record<string, number>, expected);
  for (const [key, want] of Object.entries(expected)) {
    if (key in leaves) continue;
    compareValue((actual as Record<string, unknown>)[key], want, tolerance, key);
  }
}

function compareValue(actual: unknown, want: unknown, tolerance: Tolerance, key: string): void {
  if (typeof want === "number" && typeof actual === "number") {
    return compareNumber(actual, want, tolerance, key);
  }
  if (Array.isArray(want)) {
    assert(Array.isArray(actual), `${key}: a list was expected, got ${actual}`);
    assertEquals(actual.length, want.length, `${key}: length of the list`);
    want.forEach((w, i) => compareValue(actual[i], w, tolerance, `${key}[${i}]`));
    return;
  }
  assertEquals(actual, want, key);
}

function compareNumber(actual: number, want: number, tolerance: Tolerance, key: string): void {
  if (tolerance.exact) return assertEquals(actual, want, key);
  const rel = allowed(tolerance.rel, key);
  const abs = allowed(tolerance.abs, key);
  assert(rel !== undefined || abs !== undefined, `${key}: the case states no tolerance`);
  const off = Math.abs(actual - want);
  const met = off <= (rel ?? -1) * Math.abs(want) || off <= (abs ?? -1);
  assert(met, `${key}: ${actual}, published ${want}, tolerance ${JSON.stringify(tolerance)}`);
}

function allowed(tolerance: Tolerance["rel"], key: string): number | undefined {
  if (typeof tolerance !== "object") return tolerance;
  return tolerance[key] ?? tolerance[key.replace(/\[.*/, "")];
}

/** `min`/`max` or `x_min`/`x_max` in `expected` bracket `value` or `x` of the answer. */
function compareRange(actual: Record<string, number>, expected: Record<string, unknown>): void {
  for (const [key, bound] of Object.entries(expected)) {
    if (typeof bound !== "number") continue;
    const [, name = "", end] = key.match(/^(.*?)_?(min|max)/) ?? [];
    const value = actual[name || "value"] ?? NaN;
    assert(
      end === "min" ? value >= bound : value <= bound,
      `${name}: ${value} against ${key} ${bound}`,
    );
  }
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}
