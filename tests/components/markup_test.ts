import { assertEquals } from "@std/assert";
import { faultsIn } from "./markup.ts";

const PAGE = "<!doctype html><html><body>";

const CASES: [what: string, html: string, faults: string[]][] = [
  [
    "nothing in what is in order",
    `<p id="a">x &lt; y</p><input id="b"/><label for="b">B</label>`,
    [],
  ],
  ["nothing in a whole page", `${PAGE}<a href="#b">x</a><p id="b">y</p></body></html>`, []],
  ["what is not closed", "<div><p>x</p>", ["<div> is not closed"]],
  ["what is closed wrongly", "<b><i>x</b></i>", ["</b> closes <i>", "</i> closes <b>"]],
  ["a value that is none", "<p>1 undefined</p>", ["shows |1 undefined|"]],
  ["a value that is none in an attribute", `<p class="a NaN">x</p>`, [`class="a NaN"`]],
  ["an id used twice", `<i id="a">x</i><b id="a">y</b>`, ["id a twice"]],
  ["a label without a box", `<label for="a">x</label>`, ["points to a, which is not there"]],
  ["a link without a place", `${PAGE}<a href="#b">x</a></body></html>`, [
    "points to b, which is not there",
  ]],
  ["inline style", `<p style="color:red">x</p>`, ["<p style>"]],
  ["inline script", `<p onclick="x()">x</p><script>y</script>`, ["<p onclick>", "has a <script>"]],
  ["a block in a paragraph", "<p><span><div>x</div></span></p>", ["<div> in a <p>"]],
  ["a button in a link", `<form><a href="/"><button>x</button></a></form>`, [
    "<button> in <form> <a>",
  ]],
  ["a button that sends nothing", "<button>x</button>", ["a button that belongs to no form"]],
  ["a cell out of place", "<table><td>x</td></table>", ["<td> in <table>"]],
  ["a bracket that is not escaped", "<p>a < b</p>", ["has a loose bracket: |a < b|"]],
  ["an attribute given twice", `<p class="a" class="b">x</p>`, ["<p> has class twice"]],
];

for (const [what, html, faults] of CASES) {
  Deno.test(`faultsIn() finds ${what}`, () => assertEquals(faultsIn(html), faults));
}
