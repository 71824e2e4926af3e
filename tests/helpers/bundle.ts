/** The service as one build for deployment, made by its task's own command. */
import config from "@/deno.json" with { type: "json" };
import { ROOT } from "./sources.ts";

/** A build in a folder of its own, removed at the end of the block if declared by `await using`. */
export class Bundle {
  private constructor(
    /** The folder. */
    readonly folder: string,
  ) {}

  /** Builds. */
  static async make(): Promise<Bundle> {
    const folder = await Deno.makeTempDir();
    const [, ...args] = config.tasks.bundle.split(" ").map((arg) =>
      arg === ".build" ? folder : arg
    );
    const { success, stderr } = await new Deno.Command(Deno.execPath(), { args, cwd: ROOT })
      .output();
    if (!success) throw new Error(`deno bundle: ${new TextDecoder().decode(stderr)}`);
    return new Bundle(folder);
  }

  /** What follows `deno` to start it, as its task does. */
  get args(): string[] {
    const [, ...args] = config.tasks["start:bundled"].split(" ");
    return args.map((arg) => arg.replace(/^\.build/, this.folder));
  }

  /** Removes the folder. */
  async [Symbol.asyncDispose](): Promise<void> {
    await Deno.remove(this.folder, { recursive: true });
  }
}
