/**
 * A local stand-in for the parts of `@std/assert` that this project uses, for
 * machines that cannot reach JSR. Same names, argument orders and semantics.
 *
 * @module
 */

/** Thrown by every assertion in this module. */
export class AssertionError extends Error {
  /** Makes an assertion error with the given message. */
  constructor(message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = "AssertionError";
  }
}

/** Any class whose instances are `E`. */
// deno-lint-ignore no-explicit-any
export type AnyClass<E = any> = abstract new (...args: any[]) => E;

const show = (value: unknown): string =>
  Deno.inspect(value, {
    depth: 100,
    sorted: true,
    trailingComma: true,
    compact: false,
    iterableLimit: Infinity,
    strAbbreviateSize: Infinity,
    escapeSequences: false,
  });
/** Throws; the stack starts at the caller of `entry`, so the report shows the test's own line. */
function fail(entry: (...args: never[]) => unknown, what: string, msg?: string): never {
  const error = new AssertionError(msg ? `${what}: ${msg}` : what);
  Error.captureStackTrace(error, entry);
  throw error;
}

const sameClass = (a: object, b: object): boolean =>
  a.constructor === b.constructor ||
  (a.constructor === Object && !b.constructor) ||
  (!a.constructor && b.constructor === Object);

/** Deep equality as `@std/assert` defines it: `0` equals `-0`, `NaN` equals `NaN`. */
export function equal(a: unknown, b: unknown, seen: Map<unknown, unknown> = new Map()): boolean {
  if (typeof a === "number" && typeof b === "number") return a === b || (a !== a && b !== b);
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (!sameClass(a, b)) return false;
  if (a instanceof Date) return equal(a.getTime(), (b as Date).getTime());
  if (a instanceof RegExp || a instanceof URL) return String(a) === String(b);
  if (seen.get(a) === b) return true;
  seen.set(a, b);
  if (a instanceof Set || a instanceof Map) {
    const other = b as Set<unknown> | Map<unknown, unknown>;
    if (a.size !== other.size) return false;
    const rest = [...other];
    return [...a].every((x) => {
      const i = rest.findIndex((y) => equal(x, y, seen));
      if (i >= 0) rest.splice(i, 1);
      return i >= 0;
    });
  }
  if (Array.isArray(a) && a.length !== (b as unknown[]).length) return false;
  const keys = new Set([...Reflect.ownKeys(a), ...Reflect.ownKeys(b)]);
  for (const key of keys) {
    if (!(key in a) || !(key in b)) return false;
    if (!equal(Reflect.get(a, key), Reflect.get(b, key), seen)) return false;
  }
  return true;
}

/** A line diff (longest common subsequence), `-` actual, `+` expected. */
function diff(actual: string, expected: string): string {
  const a = actual.split("\n");
  const b = expected.split("\n");
  if (a.length * b.length > 4e6) return `  actual:   ${actual}\n  expected: ${expected}`;
  const width = b.length + 1;
  const lengths = new Uint32Array((a.length + 1) * width);
  const at = (i: number, j: number): number => lengths[i * width + j] ?? 0;
  for (let i = a.length - 1; i >= 0; i--) {
    for (let j = b.length - 1; j >= 0; j--) {
      lengths[i * width + j] = a[i] === b[j]
        ? at(i + 1, j + 1) + 1
        : Math.max(at(i + 1, j), at(i, j + 1));
    }
  }
  const out: [mark: string, line: string][] = [];
  let i = 0;
  let j = 0;
  while (i < a.length || j < b.length) {
    const [left = "", right = ""] = [a[i], b[j]];
    if (i < a.length && j < b.length && left === right) {
      out.push([" ", left]);
      i++;
      j++;
    } else if (j >= b.length || (i < a.length && at(i + 1, j) >= at(i, j + 1))) {
      out.push(["-", left]);
      i++;
    } else {
      out.push(["+", right]);
      j++;
    }
  }
  const near = out.map((_, k) => out.slice(Math.max(0, k - 3), k + 4).some(([m]) => m !== " "));
  const lines: string[] = [];
  out.forEach(([mark, line], k) => {
    if (near[k]) lines.push(`${mark}   ${line}`);
    else if (near[k - 1]) lines.push("    …");
  });
  return lines.join("\n");
}

/** Fails unless `expr` is truthy. */
export function assert(expr: unknown, msg = ""): asserts expr {
  if (!expr) fail(assert, msg || "Expected a truthy value");
}

/** Fails unless `actual` and `expected` are deeply equal. */
export function assertEquals<T>(actual: T, expected: T, msg?: string): void {
  if (!equal(actual, expected)) fail(assertEquals, unequal(actual, expected, msg));
}

function unequal(actual: unknown, expected: unknown, msg?: string): string {
  const [a, e] = typeof actual === "string" && typeof expected === "string"
    ? [actual, expected]
    : [show(actual), show(expected)];
  const body = a === e
    ? `    ${a}\n  (these look alike but differ in class or symbol keys)`
    : diff(a, e);
  return `Values are not equal${msg ? `: ${msg}` : ""}.

    [Diff] -Actual / +Expected

${body}
`;
}

/** Fails if `actual` and `expected` are deeply equal. */
export function assertNotEquals<T>(actual: T, expected: T, msg?: string): void {
  if (equal(actual, expected)) {
    fail(assertNotEquals, `Expected actual: ${show(actual)} not to equal expected`, msg);
  }
}

/** Fails unless `Object.is(actual, expected)`. */
export function assertStrictEquals<T>(
  actual: unknown,
  expected: T,
  msg?: string,
): asserts actual is T {
  if (Object.is(actual, expected)) return;
  fail(
    assertStrictEquals,
    `Values are not strictly equal${msg ? `: ${msg}` : ""}.\n\n${
      diff(show(actual), show(expected))
    }\n`,
  );
}

/** Fails unless the two numbers differ by no more than `tolerance` (default: 1e-7 of `expected`). */
export function assertAlmostEquals(
  actual: number,
  expected: number,
  tolerance?: number,
  msg?: string,
): void {
  if (Object.is(actual, expected)) return;
  const tol = tolerance ?? (Number.isFinite(expected) ? Math.abs(expected * 1e-7) : 1e-7);
  const delta = Math.abs(expected - actual);
  if (delta <= tol) return;
  fail(
    assertAlmostEquals,
    `Expected actual: "${actual}" to be close to "${expected}": delta "${delta.toExponential(3)}"` +
      ` is greater than "${tol.toExponential(3)}"`,
    msg,
  );
}

/** Fails if `actual` is `null` or `undefined`. */
export function assertExists<T>(actual: T, msg?: string): asserts actual is NonNullable<T> {
  if (actual === undefined || actual === null) {
    fail(assertExists, `Expected actual: "${actual}" to not be null or undefined`, msg);
  }
}

/** Fails unless `actual` includes `expected`. */
export function assertStringIncludes(actual: string, expected: string, msg?: string): void {
  if (!actual.includes(expected)) {
    fail(assertStringIncludes, `Expected actual: "${actual}" to contain: "${expected}"`, msg);
  }
}

/** Fails unless `actual` matches the pattern. */
export function assertMatch(actual: string, expected: RegExp, msg?: string): void {
  if (!expected.test(actual)) {
    fail(assertMatch, `Expected actual: "${actual}" to match: "${expected}"`, msg);
  }
}

/** Fails unless every member of `expected` is deeply equal to some member of `actual`. */
export function assertArrayIncludes<T>(
  actual: ArrayLike<T>,
  expected: ArrayLike<T>,
  msg?: string,
): void {
  const missing = Array.from(expected).filter((e) => !Array.from(actual).some((a) => equal(a, e)));
  if (missing.length) {
    fail(assertArrayIncludes, `Expected actual: ${show(actual)} to include: ${show(missing)}`, msg);
  }
}

/** Fails unless `actual` is an instance of `expectedType`. */
export function assertInstanceOf<T extends AnyClass>(
  actual: unknown,
  expectedType: T,
  msg?: string,
): asserts actual is InstanceType<T> {
  if (actual instanceof expectedType) return;
  const got = actual === null
    ? "null"
    : typeof actual === "object"
    ? actual?.constructor?.name
    : typeof actual;
  fail(
    assertInstanceOf,
    `Expected object to be an instance of "${expectedType.name}" but was "${got}"`,
    msg,
  );
}

/** Fails unless every property of `expected`, at any depth, is in `actual` with an equal value. */
export function assertObjectMatch(
  // deno-lint-ignore no-explicit-any
  actual: Record<PropertyKey, any>,
  expected: Record<PropertyKey, unknown>,
  msg?: string,
): void {
  const pick = (a: unknown, e: unknown): unknown => {
    if (typeof a !== "object" || a === null || typeof e !== "object" || e === null) return a;
    if (a instanceof Date || a instanceof RegExp || a instanceof Set || a instanceof Map) return a;
    if (Array.isArray(a)) return Array.isArray(e) ? a.map((v, i) => i in e ? pick(v, e[i]) : v) : a;
    const out: Record<PropertyKey, unknown> = {};
    for (const key of Reflect.ownKeys(e)) {
      if (key in a) out[key] = pick(Reflect.get(a, key), Reflect.get(e, key));
    }
    return out;
  };
  const picked = pick(actual, expected);
  if (!equal(picked, expected)) fail(assertObjectMatch, unequal(picked, expected, msg));
}

function checkError<E extends Error>(
  entry: (...args: never[]) => unknown,
  error: unknown,
  type?: AnyClass<E>,
  includes?: string,
  msg?: string,
): E {
  if (!(error instanceof Error)) {
    fail(entry, `A non-Error object was thrown or rejected: ${show(error)}`, msg);
  }
  const e = error as E;
  if (type && !(e instanceof type)) {
    fail(
      entry,
      `Expected error to be instance of "${type.name}", but was "${e.constructor.name}": ${e.message}`,
      msg,
    );
  }
  if (includes && !e.message.includes(includes)) {
    fail(entry, `Expected error message to include "${includes}", but got "${e.message}"`, msg);
  }
  return e;
}

/** Fails unless `fn` throws; returns what it threw. */
export function assertThrows(fn: () => unknown, msg?: string): unknown;
/** Fails unless `fn` throws an error of the given class, with the given text in its message. */
export function assertThrows<E extends Error = Error>(
  fn: () => unknown,
  type: AnyClass<E>,
  includes?: string,
  msg?: string,
): E;
export function assertThrows(
  fn: () => unknown,
  type?: AnyClass<Error> | string,
  includes?: string,
  msg?: string,
): unknown {
  let error: unknown;
  try {
    fn();
  } catch (e) {
    error = e;
    return typeof type === "function"
      ? checkError(assertThrows, error, type, includes, msg)
      : error;
  }
  return fail(assertThrows, "Expected function to throw", typeof type === "string" ? type : msg);
}

/** Fails unless the promise rejects; resolves to what it rejected with. */
export function assertRejects(fn: () => PromiseLike<unknown>, msg?: string): Promise<unknown>;
/** Fails unless the promise rejects with an error of the given class and text. */
export function assertRejects<E extends Error = Error>(
  fn: () => PromiseLike<unknown>,
  type: AnyClass<E>,
  includes?: string,
  msg?: string,
): Promise<E>;
export async function assertRejects(
  fn: () => PromiseLike<unknown>,
  type?: AnyClass<Error> | string,
  includes?: string,
  msg?: string,
): Promise<unknown> {
  let promise: PromiseLike<unknown>;
  try {
    promise = fn();
  } catch (e) {
    return fail(
      assertRejects,
      `Function threw synchronously when it should have returned a rejecting promise: ${e}`,
    );
  }
  try {
    await promise;
  } catch (error) {
    return typeof type === "function"
      ? checkError(assertRejects, error, type, includes, msg)
      : error;
  }
  return fail(assertRejects, "Expected function to reject", typeof type === "string" ? type : msg);
}
