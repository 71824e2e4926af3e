/** The least that can answer: what a cold start is compared with. */
import { Hono } from "hono";

const app = new Hono();
app.get("/", (c) => c.text("ok"));

const server = Deno.serve({ port: 0, hostname: "0.0.0.0", onListen() {} }, app.fetch);
console.log(`Listens on http://localhost:${server.addr.port}/`);
