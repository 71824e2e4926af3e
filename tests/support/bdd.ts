/**
 * A local stand-in for `@std/testing/bdd`, for machines that cannot reach JSR.
 *
 * Every `it` becomes one `Deno.test` named `outer > inner > name`, so that each
 * is counted, filtered and reported on its own (the real package reports nested
 * ones as steps of one test).
 *
 * @module
 */

/** What a hook or a test body may be. */
export type Body = (this: void, t: Deno.TestContext) => void | Promise<void>;
/** What a hook may be. */
export type Hook = () => void | Promise<void>;
/** `Deno.test`'s options, without its name and body. */
export type Options = Omit<Deno.TestDefinition, "name" | "fn">;

interface Suite {
  name: string;
  parent: Suite | undefined;
  options: Options;
  beforeAll: Hook[];
  afterAll: Hook[];
  beforeEach: Hook[];
  afterEach: Hook[];
  left: number;
  state: "new" | "ready" | "failed" | "done";
  error?: unknown;
}

const suite = (name: string, parent: Suite | undefined, options: Options = {}): Suite => ({
  name,
  parent,
  options: { ...parent?.options, ...options },
  beforeAll: [],
  afterAll: [],
  beforeEach: [],
  afterEach: [],
  left: 0,
  state: "new",
});

const root = suite("", undefined);
let current = root;
let running = false;

const path = (s: Suite | undefined): Suite[] => s ? [...path(s.parent), s] : [];

/** Runs a suite's `afterAll` hooks, once. */
async function finish(s: Suite): Promise<void> {
  if (s.state !== "ready") return;
  s.state = "done";
  for (const hook of s.afterAll) await hook();
}

async function run(own: Suite, body: Body, t: Deno.TestContext): Promise<void> {
  const chain = path(own);
  running = true;
  const errors: unknown[] = [];
  const attempt = async (fn: () => void | Promise<void>) => {
    try {
      await fn();
    } catch (e) {
      errors.push(e);
    }
  };
  for (const s of chain) {
    if (s.state === "failed") errors.push(s.error);
    if (s.state !== "new" || errors.length) continue;
    s.state = "ready";
    for (const hook of s.beforeAll) if (!errors.length) await attempt(hook);
    if (errors.length) (s.state = "failed"), (s.error = errors[0]);
  }
  if (!errors.length) {
    for (const s of chain) {
      for (const hook of s.beforeEach) if (!errors.length) await attempt(hook);
    }
    if (!errors.length) await attempt(() => body(t));
    for (const s of [...chain].reverse()) {
      for (const hook of s.afterEach) await attempt(hook);
    }
  }
  for (const s of [...chain].reverse()) {
    if (--s.left === 0) await attempt(() => finish(s));
  }
  if (errors.length === 1) throw errors[0];
  if (errors.length > 1) throw new AggregateError(errors, errors.map(String).join("\n"));
}

// With `--filter` or `.only` some tests never run and `left` never reaches 0.
const suites: Suite[] = [root];
Deno.test.afterAll(async () => {
  for (const s of suites.reverse()) await finish(s);
});

/** `describe` and its variants. */
export interface Describe {
  (name: string, fn: () => void): void;
  (name: string, options: Options, fn: () => void): void;
}
/** `it` and its variants. */
export interface It {
  (name: string, fn: Body): void;
  (name: string, options: Options, fn: Body): void;
}

/** Tells options and body apart; the options may be left out. */
function parts<Fn extends () => void>(a: Options | Fn, b: Fn | undefined): [Options, Fn];
function parts(a: Options | Body, b: Body | undefined): [Options, Body];
function parts(a: Options | Body, b: Body | undefined): [Options, Body] {
  if (typeof a === "function") return [{}, a];
  if (b === undefined) throw new TypeError("a test or a group of tests needs a body");
  return [a, b];
}

const makeDescribe =
  (extra: Options): Describe => (name: string, a: Options | (() => void), b?: () => void): void => {
    const [options, fn] = parts(a, b);
    const outer = current;
    current = suite(name, outer, { ...options, ...extra });
    suites.push(current);
    try {
      const result: unknown = fn();
      if (result instanceof Promise) throw new TypeError(`describe("${name}") must not be async`);
    } finally {
      current = outer;
    }
  };

const makeIt = (extra: Options): It => (name: string, a: Options | Body, b?: Body): void => {
  if (running) throw new Error(`it("${name}") must not be called while tests run`);
  const [options, fn] = parts(a, b);
  const own = current;
  const chain = path(own);
  const all = { ...own.options, ...options, ...extra };
  if (!all.ignore) { for (const s of chain) s.left++; }
  Deno.test({
    ...all,
    name: [...chain.slice(1).map((s) => s.name), name].join(" > "),
    fn: (t) => run(own, fn, t),
  });
};

const hook = (kind: "beforeAll" | "afterAll" | "beforeEach" | "afterEach") => (fn: Hook): void => {
  current[kind].push(fn);
};

/** Groups tests; the name is put before theirs. */
export const describe: Describe & { only: Describe; skip: Describe; ignore: Describe } = Object
  .assign(
    makeDescribe({}),
    {
      only: makeDescribe({ only: true }),
      skip: makeDescribe({ ignore: true }),
      ignore: makeDescribe({ ignore: true }),
    },
  );
/** Registers a test. */
export const it: It & { only: It; skip: It; ignore: It } = Object.assign(
  makeIt({}),
  {
    only: makeIt({ only: true }),
    skip: makeIt({ ignore: true }),
    ignore: makeIt({ ignore: true }),
  },
);
/** Runs once before the first test of the enclosing `describe`. */
export const beforeAll: (fn: Hook) => void = hook("beforeAll");
/** Runs once after the last test of the enclosing `describe`. */
export const afterAll: (fn: Hook) => void = hook("afterAll");
/** Runs before each test of the enclosing `describe`, outer hooks first. */
export const beforeEach: (fn: Hook) => void = hook("beforeEach");
/** Runs after each test of the enclosing `describe`, inner hooks first, even when the test failed. */
export const afterEach: (fn: Hook) => void = hook("afterEach");
