/** GET /: the start page. */
import type { Hono } from "hono";
import { assets } from "./assets.ts";
import type { AppEnv } from "./env.ts";

/** Adds it. */
export function addStart(app: Hono<AppEnv>): void {
  app.get("/", (c) => c.html(page));
}

// A bare page until the components are wired in here.
const page = `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>Dryrail</title>
    <link rel="icon" href="${assets.icon.path}">
  </head>
  <body>
    <main>
      <h1>Dryrail</h1>
    </main>
  </body>
</html>
`;
