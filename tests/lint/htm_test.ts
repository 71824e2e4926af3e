import { assertEquals } from "@std/assert";
import { describe, it } from "@std/testing/bdd";
import htm from "./htm.ts";

const messages = (markup: string) =>
  Deno.lint.runPlugin(htm, "page.ts", `html\`${markup}\`;`).map((d) => d.message);

describe("the lint rule on html`` templates", () => {
  const bad: [markup: string, message: string][] = [
    ["<p>a<br>b</p>", "<br> must be written <br />"],
    ["<p>a", "<p> is not closed"],
    ["<${Box}>a", "<${…}> is not closed"],
    ["<p><b>a</p></b>", "</p> closes <b>"],
    ["<p>a</p></div>", "</div> closes nothing"],
    ["<p>3&nbsp;bar</p>", "htm does not decode entities: write the character itself"],
    ["<p>3 &#8211; 4</p>", "htm does not decode entities: write the character itself"],
    ["<!doctype html><p>a</p>", "htm has no doctype: put it before the rendered text"],
    [
      "<p><b>a</b>\n<i>b</i></p>",
      'a line break between inline elements leaves no space: write ${" "}',
    ],
  ];
  for (const [markup, message] of bad) {
    it(`finds fault with ${JSON.stringify(markup)}`, () =>
      assertEquals([...new Set(messages(markup))].at(0), message));
  }

  const good = [
    "<p>a<br />b</p>",
    "<${Box} size=${3} />",
    "<${Box}>a<//>",
    '<input name="a" value=${"<"} />',
    '<p title="a > b & c">a</p>',
    "<!-- <p> --><p>a</p>",
    '<p>a${" "}<b>b</b></p>',
    '<svg viewBox="0 0 1 1"><path d="M0 0h1" /></svg>',
  ];
  for (const markup of good) {
    it(`finds none with ${JSON.stringify(markup)}`, () => assertEquals(messages(markup), []));
  }

  it("leaves other templates alone", () => {
    assertEquals(Deno.lint.runPlugin(htm, "page.ts", "fast`<br>`; `<p>`;"), []);
  });
});
