import { assert, assertEquals, assertStringIncludes } from "@std/assert";
import { gzipSync } from "node:zlib";
import { html } from "@/components/html.ts";
import { type PageProps, renderPage } from "@/components/page.ts";
import { ROOT } from "../helpers/sources.ts";
import { EXAMPLES } from "./examples/all.ts";
import { attribute, tags, textOf } from "./render.ts";

const page: PageProps = { title: "Size", stylesheet: "/a.css", children: html`<p>x</p>` };
const css = await Deno.readTextFile(new URL("components/style.css", ROOT));

Deno.test("a page with faults says so first in its title", () => {
  assertStringIncludes(renderPage(page), "<title>Size – Dryrail</title>");
  assertStringIncludes(
    renderPage({ ...page, hasErrors: true }),
    "<title>Error: Size – Dryrail</title>",
  );
});

Deno.test("a page marks its step for eyes and ears", () => {
  const text = renderPage({ ...page, step: "drill", planPath: "/p/1.x" });
  const current = tags(text, "a").filter((tag) => tag.includes("aria-current"));
  assertEquals(current.map((tag) => attribute(tag, "href")), ["/p/1.x/drill"]);
  assertStringIncludes(textOf(text), "Drill (this sheet)");
});

Deno.test("the steps are words, not links, while no plan is open", () => {
  const links = tags(renderPage(page), "a").map((tag) => attribute(tag, "href"));
  assertEquals(links, ["#content", "/", "/methods"]);
});

Deno.test("the title block says what is assumed and open, and which sheet it is", () => {
  const text = textOf(
    renderPage({ ...page, step: "hand-over", sheet: {}, assumedCount: 1, openCount: 2 }),
  );
  assertStringIncludes(text, "Assumed 1 value left Open 2 checks");
  assertStringIncludes(text, "Hand over, sheet 4 of 4");
  assertStringIncludes(text, "Approved by not given");
});

Deno.test("the size page's form with its style is under 52 KB compressed", () => {
  const text = EXAMPLES.renderPage?.size?.();
  assert(typeof text === "string");
  assert(gzipSync(text, { level: 1 }).length + gzipSync(css).length < 52_000);
});

Deno.test("the stylesheet is under 8 KB compressed and loads nothing", () => {
  assert(gzipSync(css).length < 8_000);
  assert(!/url\(|@import|https?:/.test(css));
});

/** The colours of a theme, by name; the first is light, the second dark. */
const themes = [...css.matchAll(/:root \{([^}]*--table[^}]*)\}/g)].slice(0, 2).map((
  [, body = ""],
) =>
  Object.fromEntries(
    [...body.matchAll(/--(\w+): (#\w{6})/g)].map(([, name, value]) => [name, value]),
  )
);

/** Relative luminance by WCAG 2.2. */
function luminance(colour: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = parseInt(colour.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

function contrast(a: string, b: string): number {
  const [low = 0, high = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (high + 0.05) / (low + 0.05);
}

Deno.test("text stands out by at least 4.5 to 1 in both themes", () => {
  assertEquals(themes.length, 2);
  for (const theme of themes) {
    const { paper = "", ink = "", faint = "", dye = "", coat = "", scribe = "" } = theme;
    const pairs = [[ink, paper], [faint, paper], [dye, paper], ["#ffffff", coat], [scribe, coat]];
    for (const [text = "", ground = ""] of pairs) {
      assert(contrast(text, ground) >= 4.5, `${text} on ${ground}: ${contrast(text, ground)}`);
    }
  }
});
