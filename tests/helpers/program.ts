/** A Deno program in a process of its own, whose lines can be read one by one. */
import { ROOT } from "./sources.ts";

/** The program while it runs; killed at the end of the block if declared by `await using`. */
export class Program {
  /** The process. */
  readonly child: Deno.ChildProcess;
  readonly #lines: AsyncIterator<string>;

  /**
   * Starts it from the repository's root.
   *
   * @param args What follows `deno`.
   * @param port What it gets as `PORT`.
   */
  constructor(args: readonly string[], port: string) {
    this.child = new Deno.Command(Deno.execPath(), {
      args: [...args],
      cwd: ROOT,
      env: { PORT: port },
      stdin: "null",
      stdout: "piped",
      stderr: "null",
    }).spawn();
    this.#lines = lines(this.child.stdout);
  }

  /** The next line that it prints; empty after the last. */
  async line(): Promise<string> {
    return (await this.#lines.next()).value ?? "";
  }

  /** The address in the next line that it prints. */
  async address(): Promise<string> {
    const line = await this.line();
    const [url] = line.match(/http:\S+/) ?? [];
    if (url === undefined) throw new Error(`There is no address in its line "${line}"`);
    return url;
  }

  /** Kills it, unless it has ended. */
  async [Symbol.asyncDispose](): Promise<void> {
    try {
      this.child.kill("SIGKILL");
    } catch {
      // it ended by itself
    }
    while ((await this.#lines.next()).done !== true);
    await this.child.status;
  }
}

async function* lines(stream: ReadableStream<Uint8Array<ArrayBuffer>>): AsyncGenerator<string> {
  let rest = "";
  for await (const chunk of stream.pipeThrough(new TextDecoderStream())) {
    const parts = (rest + chunk).split("\n");
    rest = parts.pop() ?? "";
    yield* parts;
  }
  if (rest) yield rest;
}
