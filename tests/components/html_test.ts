import { assertEquals, assertThrows } from "@std/assert";
import { fast, raw } from "@/components/fast.ts";
import { html } from "@/components/html.ts";
import { h } from "preact";
import { renderToString } from "preact-render-to-string";
import { ROOT } from "../helpers/sources.ts";

// preact-render-to-string takes any preact as its peer; given another copy than
// the one the vnodes are made with, it silently renders nothing.
Deno.test("preact is there once", async () => {
  const lock = JSON.parse(await Deno.readTextFile(new URL("deno.lock", ROOT)));
  const copies = Object.keys(lock.npm).filter((key) => /^preact@/.test(key));
  assertEquals(new Set(copies.map((key) => key.split("_")[0])).size, 1);
});

Deno.test("h, html, fast and raw render alike", () => {
  const text = "<b>x &amp; y</b>";
  const cases: [what: string, rendered: string, expected: string][] = [
    ["h", renderToString(h("b", null, "x & y")), text],
    ["html", renderToString(html`<b>${"x & y"}</b>`), text],
    ["raw", renderToString(raw(text)), text],
    ["fast in html", renderToString(html`<i>${fast`<b>${"x & y"}</b>`}</i>`), `<i>${text}</i>`],
    [
      "html in fast",
      renderToString(fast`<i>${[html`<b>${"x & y"}</b>`]}${null}${1}${false}</i>`),
      `<i>${text}1</i>`,
    ],
    [
      "fast's attributes",
      renderToString(fast`<a title="${'"'}">${"<>"}</a>`),
      `<a title="&quot;">&lt;&gt;</a>`,
    ],
  ];
  for (const [what, rendered, expected] of cases) assertEquals(rendered, expected, what);
});

Deno.test("fast refuses what would vanish silently", () => {
  assertThrows(() => fast`<b>${new Date(0)}</b>`, TypeError, "not a vnode");
  assertThrows(() => fast`<b>${() => 1}</b>`, TypeError, "a function");
});
