/** What the sources import and use, held against the table of who may. */
import { posix } from "node:path";
import type { Source } from "./sources.ts";

/** Who may import what: for each room the rooms and packages, itself left out. */
export type Table = Readonly<Record<string, readonly string[]>>;

/** What a module asks for. */
export interface Facts {
  /** Every specifier it imports, statically, as a type, or by `import()`; `?` for one that is computed. */
  readonly imports: readonly string[];
  /** What it uses of clock, chance, network, screen and machine. */
  readonly impure: readonly string[];
}

/** Globals that a pure module leaves alone altogether. */
const IMPURE = new Set(
  "Date Deno document globalThis localStorage navigator process self sessionStorage window".split(
    " ",
  ),
);
/** Single members of globals that are pure otherwise. */
const IMPURE_MEMBERS = new Set(
  "Math.random crypto.getRandomValues crypto.randomUUID performance.now".split(" "),
);
const IMPURE_CALLS = new Set("Date fetch eval require setTimeout setInterval".split(" "));

/** Reads a module's syntax tree, so that comments, examples and texts don't count. */
export function factsOf({ path, text }: Source): Facts {
  const imports: string[] = [];
  const impure: string[] = [];
  const nameOf = (node: Deno.lint.Node) => node.type === "Identifier" ? node.name : "";
  const add = (source: Deno.lint.Node | null | undefined) => {
    if (source === null || source === undefined) return;
    const literal = source.type === "Literal" && typeof source.value === "string";
    imports.push(literal ? String(source.value) : "?");
  };
  const collect: Deno.lint.Plugin = {
    name: "facts",
    rules: {
      facts: {
        create: () => ({
          ImportDeclaration: (node) => add(node.source),
          ExportNamedDeclaration: (node) => add(node.source),
          ExportAllDeclaration: (node) => add(node.source),
          ImportExpression: (node) => add(node.source),
          TSImportType: ({ argument }) =>
            add(argument.type === "TSLiteralType" ? argument.literal : argument),
          MemberExpression: ({ object, property }) => {
            const member = `${nameOf(object)}.${nameOf(property)}`;
            if (IMPURE.has(nameOf(object)) || IMPURE_MEMBERS.has(member)) impure.push(member);
          },
          NewExpression: ({ callee }) => {
            if (nameOf(callee) === "Date") impure.push("new Date");
          },
          CallExpression: ({ callee }) => {
            if (IMPURE_CALLS.has(nameOf(callee))) impure.push(`${nameOf(callee)}()`);
          },
        }),
      },
    },
  };
  Deno.lint.runPlugin(collect, path, text);
  return { imports, impure };
}

/** The room a file stands in: `lib/flow`, `components`, `routes`, `main.ts`. */
export function roomOf(path: string): string {
  const [first = "", second] = path.split("/");
  return first === "lib" ? `lib/${second}` : first;
}

/** The file that a specifier leads to, or `undefined` for a package. */
function fileOf(from: string, specifier: string): string | undefined {
  if (specifier.startsWith("@/")) return specifier.slice(2);
  if (specifier.startsWith(".")) return posix.join(posix.dirname(from), specifier);
  return undefined;
}

/**
 * Finds what breaks the architecture: imports that the table does not allow, or
 * that pass a room's door by; impure uses and circles.
 */
export function violations(files: readonly Source[], table: Table): string[] {
  const facts = new Map(files.map((file) => [file.path, factsOf(file)]));
  const found: string[] = [];
  for (const [path, { imports, impure }] of facts) {
    const room = roomOf(path);
    if (!(room in table)) found.push(`${path}: ${room} is not in the table`);
    for (const specifier of imports) {
      const why = refusal(path, specifier, table[room] ?? []);
      if (why) found.push(`${path} may not import ${specifier}: ${why}`);
    }
    if (!room.startsWith("lib/")) continue;
    for (const use of impure) found.push(`${path} may not use ${use}: lib is pure`);
  }
  const edges = new Map([...facts].map(([path, { imports }]) => [
    path,
    imports.flatMap((specifier) => fileOf(path, specifier) ?? []),
  ]));
  for (const circle of circles(edges)) found.push(`circle: ${circle.join(" > ")}`);
  return found;
}

function refusal(path: string, specifier: string, allowed: readonly string[]): string | undefined {
  if (specifier === "?") return "an import must name what it imports as plain text";
  const file = fileOf(path, specifier);
  if (file === undefined) {
    return allowed.includes(specifier) ? undefined : "this package is for other rooms";
  }
  const [own, room] = [roomOf(path), roomOf(file)];
  const relative = specifier.startsWith(".");
  if (own === room) {
    return own.startsWith("lib/") && !relative ? "within a room, import ./file.ts" : undefined;
  }
  if (relative) return "another room is imported by its @/ address";
  const any = room.startsWith("lib/") && allowed.includes("lib/*");
  if (!any && !allowed.includes(room)) return `${own} may not know ${room}`;
  if (room.startsWith("lib/") && file !== `${room}/mod.ts`) return "a room's only door is mod.ts";
  return undefined;
}

/** Finds each circle that following the edges closes. */
function circles(edges: ReadonlyMap<string, readonly string[]>): string[][] {
  const found: string[][] = [];
  const done = new Set<string>();
  const visit = (node: string, way: readonly string[]) => {
    if (way.includes(node)) {
      found.push([...way.slice(way.indexOf(node)), node]);
      return;
    }
    if (done.has(node)) return;
    for (const next of edges.get(node) ?? []) visit(next, [...way, node]);
    done.add(node);
  };
  for (const node of edges.keys()) visit(node, []);
  return found;
}
