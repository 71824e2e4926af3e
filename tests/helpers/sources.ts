/** The repository's own files, read for the tests that look at them. */

/** A file, by its path from the repository's root. */
export interface Source {
  /** Its path, with `/`, without a leading one. */
  readonly path: string;
  /** What it holds. */
  readonly text: string;
}

/** The repository's root. */
export const ROOT: URL = new URL("../../", import.meta.url);

const NOT_OURS = new Set([".git", "node_modules", "coverage"]);

/** Lists every file below a folder (or the file itself) whose name the pattern matches. */
export async function paths(from: string, name = /./): Promise<string[]> {
  if (!(await Deno.stat(new URL(from, ROOT))).isDirectory) return [from];
  const found: string[] = [];
  for await (const entry of Deno.readDir(new URL(from, ROOT))) {
    if (NOT_OURS.has(entry.name)) continue;
    const path = from === "." ? entry.name : `${from}/${entry.name}`;
    if (entry.isDirectory) found.push(...await paths(path, name));
    else if (entry.isFile && name.test(entry.name)) found.push(path);
  }
  return found.sort();
}

/** Reads those files. */
export async function sources(from: string, name = /./): Promise<Source[]> {
  return await Promise.all((await paths(from, name)).map(async (path) => ({
    path,
    text: await Deno.readTextFile(new URL(path, ROOT)),
  })));
}
