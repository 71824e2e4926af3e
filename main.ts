/** Starts the service: reads `PORT`, serves, and stops cleanly when asked to. */
import { createApp } from "@/routes/app.ts";

const DEFAULT_PORT = 8000;

/** Ends the program with one line that says why. */
function refuse(why: string): never {
  console.error(why);
  Deno.exit(1);
}

function portFrom(text: string): number {
  if (/^\d{1,5}$/.test(text) && Number(text) <= 65535) return Number(text);
  refuse(`PORT must be a whole number from 0 to 65535 (0: any free one), but is "${text}".`);
}

/**
 * The first answer is called complete a little before it is out, and nothing else runs
 * while mathjs is loaded: it is given this long to leave [ms].
 */
const HEAD_START_MS = 50;

/** Begun when the first answer is out. */
let warm: Promise<void> | undefined;

/** Loads it only now: even what it imports would lengthen the start. */
async function warmUp(): Promise<void> {
  const { warmUp } = await import("@/routes/warm_up.ts");
  await warmUp();
}

function pause(): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, HEAD_START_MS));
}

function serve(port: number): Deno.HttpServer<Deno.NetAddr> {
  const app = createApp({ log: (line) => console.log(JSON.stringify(line)) });
  try {
    // It says where it listens at the very end, when it can be stopped too.
    return Deno.serve({ port, hostname: "0.0.0.0", onListen() {} }, (request, info) => {
      warm ??= info.completed.catch(() => {}).then(pause).then(warmUp).catch((error) =>
        refuse(`What the service needs can't be loaded: ${error}`)
      );
      return app.fetch(request, info);
    });
  } catch (error) {
    if (error instanceof Deno.errors.AddrInUse) {
      refuse(`Port ${port} is in use: stop what runs there, or choose another by PORT.`);
    }
    if (error instanceof Deno.errors.PermissionDenied) {
      refuse(`Port ${port} may not be used by this user: choose another by PORT, like 8000.`);
    }
    throw error;
  }
}

const server = serve(portFrom(Deno.env.get("PORT") || String(DEFAULT_PORT)));

// Windows knows no SIGTERM.
const signals: Deno.Signal[] = Deno.build.os === "windows" ? ["SIGINT"] : ["SIGINT", "SIGTERM"];
async function stop(): Promise<void> {
  // A second signal finds no listener and ends the program at once.
  for (const signal of signals) Deno.removeSignalListener(signal, stop);
  await server.shutdown();
  Deno.exit(0);
}
for (const signal of signals) Deno.addSignalListener(signal, stop);

console.log(`Dryrail listens on http://localhost:${server.addr.port}/ (Ctrl-C stops it)`);
