/** What is wrong with a piece of rendered HTML, as a browser or a reader would find it. */

const VOIDS = new Set("area base br col embed hr img input link meta source track wbr".split(" "));
const INTERACTIVE = new Set("a button input select summary textarea".split(" "));
/** What a browser ends a paragraph at. */
const BLOCKS = new Set(
  "article aside details div dl fieldset figcaption figure footer form h1 h2 h3 h4 header hr main nav ol p section table ul"
    .split(" "),
);
/** The only elements that may hold these. */
const PARENTS: Readonly<Record<string, readonly string[]>> = {
  li: ["ul", "ol"],
  tr: ["tbody", "thead", "tfoot"],
  td: ["tr"],
  th: ["tr"],
  dt: ["dl", "div"],
  dd: ["dl", "div"],
  option: ["select"],
  summary: ["details"],
  legend: ["fieldset"],
  caption: ["table"],
};
const TAG = /<!--[^]*?-->|<(\/?)([\w-]+)((?:\s+[\w:-]+(?:="[^"]*")?)*)\s*(\/?)>/g;
const ATTRIBUTE = /([\w:-]+)(?:="([^"]*)")?/g;

/**
 * Finds the faults of rendered HTML.
 *
 * @param html A whole page, or a part of one.
 * @returns A line for each fault.
 */
export function faultsIn(html: string): string[] {
  const found: string[] = [];
  const open: string[] = [];
  const ids = new Set<string>();
  const wanted: string[] = [];
  const isPage = html.startsWith("<!doctype html>");
  const body = html.replace("<!doctype html>", "");

  // A browser would show these; a value that is none, or a condition that was printed.
  const shown = body.replaceAll(TAG, "|");
  const nothing = /.{0,30}(undefined|NaN|Infinity|\[object|null|\bfalse\b|\btrue\b).{0,20}/
    .exec(shown);
  if (nothing) found.push(`shows ${nothing[0]}`);
  const loose = /.{0,30}<.{0,30}/.exec(shown);
  if (loose) found.push(`has a loose bracket: ${loose[0]}`);

  for (const [whole, slash, name = "", attributes = "", self] of body.matchAll(TAG)) {
    if (whole.startsWith("<!--")) continue;
    if (slash) {
      const last = open.pop();
      if (last !== name) found.push(`</${name}> closes <${last}>`);
      continue;
    }
    const parent = open.at(-1);
    if (["script", "style"].includes(name)) found.push(`has a <${name}>`);
    if (INTERACTIVE.has(name) && open.some((each) => ["a", "button", "label"].includes(each))) {
      found.push(`<${name}> in <${open.join("> <")}>`);
    }
    if (BLOCKS.has(name) && open.includes("p")) found.push(`<${name}> in a <p>`);
    const parents = PARENTS[name];
    if (parents && parent !== undefined && !parents.includes(parent)) {
      found.push(`<${name}> in <${parent}>`);
    }
    const names = new Set<string>();
    for (const [, attribute = "", value = ""] of attributes.matchAll(ATTRIBUTE)) {
      if (names.has(attribute)) found.push(`<${name}> has ${attribute} twice`);
      names.add(attribute);
      if (attribute === "style" || attribute.startsWith("on")) found.push(`<${name} ${attribute}>`);
      if (/undefined|NaN|Infinity|\[object|null/.test(value)) found.push(`${attribute}="${value}"`);
      if (attribute === "id") {
        if (ids.has(value)) found.push(`id ${value} twice`);
        ids.add(value);
      }
      if (["for", "aria-describedby", "aria-labelledby"].includes(attribute)) {
        wanted.push(...value.split(" "));
      }
      if (isPage && name === "button" && attribute === "form") wanted.push(value);
      if (isPage && attribute === "href" && value.startsWith("#")) wanted.push(value.slice(1));
    }
    if (name === "button" && !names.has("form") && !open.includes("form")) {
      found.push("a button that belongs to no form");
    }
    if (!VOIDS.has(name) && !self) open.push(name);
  }
  if (open.length > 0) found.push(`<${open.join("> <")}> is not closed`);
  for (const id of wanted) if (!ids.has(id)) found.push(`points to ${id}, which is not there`);
  return found;
}
