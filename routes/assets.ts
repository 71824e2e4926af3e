/** Static files, held in memory under addresses that name their content. */
import type { Context, Hono } from "hono";
import { acceptsGzip, gzip } from "./compress.ts";
import { contentHash } from "./content_hash.ts";
import type { AppEnv } from "./env.ts";
import css from "@/components/style.css" with { type: "text" };
import icon from "./icon.svg" with { type: "text" };

/** One static file. */
export interface Asset {
  /** Its address; it changes when the content does. */
  readonly path: string;
  /** Answers with it. */
  readonly serve: (c: Context) => Response;
}

const FOREVER = "public, max-age=31536000, immutable";

/**
 * Makes a static file of a text.
 *
 * @param name Its name, with its ending.
 * @param type Its content type.
 * @param text Its content.
 * @returns The file, compressed once, at the first call after zlib is loaded.
 */
export function asset(name: string, type: string, text: string): Asset {
  const plain = new TextEncoder().encode(text);
  const hash = contentHash(plain);
  const dot = name.lastIndexOf(".");
  const tag = `W/"${hash}"`; // weak: the same for the plain and the compressed bytes
  let zipped: Uint8Array<ArrayBuffer> | undefined;
  return {
    path: `/assets/${name.slice(0, dot)}.${hash}${name.slice(dot)}`,
    serve: (c) => {
      c.header("ETag", tag);
      c.header("Cache-Control", FOREVER);
      c.header("Vary", "Accept-Encoding");
      if (c.req.header("If-None-Match")?.includes(hash)) return c.body(null, 304);
      c.header("Content-Type", type);
      zipped ??= gzip(plain, 9);
      if (zipped === undefined || !acceptsGzip(c)) return c.body(plain);
      c.header("Content-Encoding", "gzip");
      return c.body(zipped);
    },
  };
}

/** Every static file, by what pages call it. */
export const assets = {
  icon: asset("icon.svg", "image/svg+xml", icon),
  style: asset("style.css", "text/css; charset=utf-8", css),
};

/** Serves them; the icon also where browsers ask for it unasked. */
export function addAssets(app: Hono<AppEnv>): void {
  for (const { path, serve } of Object.values(assets)) app.get(path, serve);
  app.get("/favicon.ico", (c) => {
    const answer = assets.icon.serve(c);
    answer.headers.set("Cache-Control", "public, max-age=86400");
    return answer;
  });
}
