/** The page that says what went wrong. */
import { assets } from "./assets.ts";

/** What it says. */
export interface ErrorPageProps {
  /** What is wrong, in short. */
  readonly title: string;
  /** What is wrong here, and what to do. */
  readonly detail: string;
}

/** Gives the whole page as text. */
export function errorPage({ title, detail }: ErrorPageProps): string {
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>${escape(title)} – Dryrail</title>
    <link rel="icon" href="${assets.icon.path}">
  </head>
  <body>
    <main>
      <h1>${escape(title)}</h1>
      <p>${escape(detail)}</p>
      <p><a href="/">Start page</a></p>
    </main>
  </body>
</html>
`;
}

function escape(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll('"', "&quot;");
}
