/** The architecture, as a table that the sources must keep to; and proof that the table bites. */
import { assertEquals } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import { factsOf, type Table, violations } from "./helpers/architecture.ts";
import { ROOT, sources } from "./helpers/sources.ts";

/** The rooms of `lib/`, lowest first: each may import those before it. */
const ROOMS = [
  "basics",
  "units",
  "method",
  "network",
  "fuel",
  "flow",
  "line",
  "engine",
  "injector",
  "rail",
  "wiring",
  "supply",
  "thread",
  "sensor",
  "seal",
  "strength",
  "inspect",
  "layout",
  "drawing",
  "proof",
  "plan",
  "evaluation",
  "walkround",
  "book",
];

/** Packages, by the one room that may import them. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  units: ["mathjs", "mathjs/single-file"],
  drawing: ["@tarikjabiri/dxf"],
  plan: ["zod"],
};

const TABLE: Table = {
  ...Object.fromEntries(ROOMS.map((room, i) => [
    `lib/${room}`,
    [...ROOMS.slice(0, i).map((lower) => `lib/${lower}`), ...PACKAGES[room] ?? []],
  ])),
  components: [
    "lib/*",
    "d3-scale",
    "d3-shape",
    "htm",
    "preact",
    "preact/jsx-runtime",
    "preact-render-to-string",
    "temml",
  ],
  routes: [
    "lib/*",
    "components",
    "seeds",
    "deno.json",
    "hono",
    "hono/body-limit",
    "hono/csrf",
    "hono/http-exception",
    "hono/route",
    "hono/secure-headers",
    "node:zlib",
  ],
  "main.ts": ["routes"],
};

describe("the architecture", () => {
  it("is kept to by every source", async () => {
    const files = await Promise.all(
      ["lib", "components", "routes", "main.ts"].map((from) => sources(from, /\.[jt]sx?$/)),
    );
    assertEquals(violations(files.flat(), TABLE), []);
  });

  it("names every room there is", async () => {
    for await (const { name } of Deno.readDir(new URL("lib", ROOT))) {
      assertEquals(ROOMS.includes(name), true, `lib/${name} is missing in the table`);
    }
  });
});

describe("violations()", () => {
  const samples: [what: string, path: string, text: string, found: string[]][] = [
    ["a lower room's door", "lib/flow/a.ts", `import { x } from "@/lib/basics/mod.ts";`, []],
    ["a file beside it", "lib/flow/a.ts", `export * from "./b.ts";`, []],
    ["a folder of its own", "lib/plan/a.ts", `import "./sections/b.ts"; import "zod";`, []],
    [
      "what stands in comments and texts",
      "lib/flow/a.ts",
      `/** import "zod"; Date.now() */ export const a = 'import "hono"; Math.random()';`,
      [],
    ],
    ["pure web APIs", "lib/plan/a.ts", `new CompressionStream("gzip"); Math.max(1, 2);`, []],
    [
      "components with any lib room",
      "components/a.ts",
      `import { h } from "preact"; import "@/lib/book/mod.ts"; import "@/components/b.ts";`,
      [],
    ],
    [
      "a higher room",
      "lib/flow/a.ts",
      `import { x } from "@/lib/plan/mod.ts";`,
      [
        "lib/flow/a.ts may not import @/lib/plan/mod.ts: lib/flow may not know lib/plan",
      ],
    ],
    ["a higher room, as a type", "lib/flow/a.ts", `import type { X } from "@/lib/plan/mod.ts";`, [
      "lib/flow/a.ts may not import @/lib/plan/mod.ts: lib/flow may not know lib/plan",
    ]],
    ["a higher room, inline", "lib/flow/a.ts", `type X = import("@/lib/plan/mod.ts").X;`, [
      "lib/flow/a.ts may not import @/lib/plan/mod.ts: lib/flow may not know lib/plan",
    ]],
    ["a higher room, dynamically", "lib/flow/a.ts", `await import("@/lib/plan/mod.ts");`, [
      "lib/flow/a.ts may not import @/lib/plan/mod.ts: lib/flow may not know lib/plan",
    ]],
    ["a higher room, passed on", "lib/flow/a.ts", `export { x } from "@/lib/plan/mod.ts";`, [
      "lib/flow/a.ts may not import @/lib/plan/mod.ts: lib/flow may not know lib/plan",
    ]],
    ["a computed import", "lib/flow/a.ts", `await import("@/lib/" + name);`, [
      "lib/flow/a.ts may not import ?: an import must name what it imports as plain text",
    ]],
    ["a way past the door", "lib/flow/a.ts", `import "@/lib/basics/limits.ts";`, [
      "lib/flow/a.ts may not import @/lib/basics/limits.ts: a room's only door is mod.ts",
    ]],
    ["a way past the door from outside", "routes/a.ts", `import "@/lib/basics/limits.ts";`, [
      "routes/a.ts may not import @/lib/basics/limits.ts: a room's only door is mod.ts",
    ]],
    ["a neighbour by a relative path", "lib/flow/a.ts", `import "../basics/mod.ts";`, [
      "lib/flow/a.ts may not import ../basics/mod.ts: another room is imported by its @/ address",
    ]],
    ["its own door", "lib/flow/a.ts", `import "@/lib/flow/mod.ts";`, [
      "lib/flow/a.ts may not import @/lib/flow/mod.ts: within a room, import ./file.ts",
    ]],
    ["mathjs elsewhere", "lib/flow/a.ts", `await import("mathjs/single-file");`, [
      "lib/flow/a.ts may not import mathjs/single-file: this package is for other rooms",
    ]],
    ["zod in routes", "routes/a.ts", `import { z } from "zod";`, [
      "routes/a.ts may not import zod: this package is for other rooms",
    ]],
    ["hono in components", "components/a.ts", `import { html } from "hono/html";`, [
      "components/a.ts may not import hono/html: this package is for other rooms",
    ]],
    ["a package by its registry", "components/a.ts", `import "npm:temml@0.13.5";`, [
      "components/a.ts may not import npm:temml@0.13.5: this package is for other rooms",
    ]],
    ["components in lib", "lib/drawing/a.ts", `import "@/components/b.ts";`, [
      "lib/drawing/a.ts may not import @/components/b.ts: lib/drawing may not know components",
    ]],
    ["routes in components", "components/a.ts", `import "@/routes/b.ts";`, [
      "components/a.ts may not import @/routes/b.ts: components may not know routes",
    ]],
    ["tests in lib", "lib/flow/a.ts", `import "@/tests/helpers/b.ts";`, [
      "lib/flow/a.ts may not import @/tests/helpers/b.ts: lib/flow may not know tests",
    ]],
    ["a room of no table", "lib/magic/a.ts", "", [
      "lib/magic/a.ts: lib/magic is not in the table",
    ]],
    ["the clock", "lib/flow/a.ts", `Date.now(); new Date(); Date(); performance.now();`, [
      "lib/flow/a.ts may not use Date.now: lib is pure",
      "lib/flow/a.ts may not use new Date: lib is pure",
      "lib/flow/a.ts may not use Date(): lib is pure",
      "lib/flow/a.ts may not use performance.now: lib is pure",
    ]],
    ["chance", "lib/flow/a.ts", `Math.random(); crypto.randomUUID();`, [
      "lib/flow/a.ts may not use Math.random: lib is pure",
      "lib/flow/a.ts may not use crypto.randomUUID: lib is pure",
    ]],
    ["the machine and the net", "lib/flow/a.ts", `Deno.env.get("X"); fetch("/");`, [
      "lib/flow/a.ts may not use Deno.env: lib is pure",
      "lib/flow/a.ts may not use fetch(): lib is pure",
    ]],
  ];
  for (const [what, path, text, found] of samples) {
    it(`${found.length ? "finds" : "allows"} ${what}`, () => {
      const sorted = violations([{ path, text }], TABLE).sort();
      assertEquals(sorted, [...found].sort());
    });
  }

  it("finds circles", () => {
    const files = [
      { path: "lib/flow/a.ts", text: `import "./b.ts";` },
      { path: "lib/flow/b.ts", text: `import "./c.ts";` },
      { path: "lib/flow/c.ts", text: `import type { X } from "./a.ts";` },
      { path: "lib/flow/d.ts", text: `import "./a.ts"; import "./b.ts";` },
    ];
    assertEquals(violations(files, TABLE), [
      "circle: lib/flow/a.ts > lib/flow/b.ts > lib/flow/c.ts > lib/flow/a.ts",
    ]);
  });
});

describe("factsOf()", () => {
  it("reads every way to import", () => {
    const text = `
      import a from "1"; import type { B } from "2"; import "3"; export * from "4";
      export { c } from "5"; export type { D } from "6"; const e = import("7");
      type F = import("8").F; import g from "9" with { type: "text" }; export const h = 1;
      const i = import(a);`;
    assertEquals(factsOf({ path: "a.ts", text }).imports.toSorted(), [..."123456789", "?"]);
  });
});
