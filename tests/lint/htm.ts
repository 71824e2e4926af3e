/** Finds what htm takes silently and browsers don't: unclosed and mismatched tags, entities, lost spaces. */
const voids = new Set([
  "area",
  "base",
  "br",
  "col",
  "embed",
  "hr",
  "img",
  "input",
  "link",
  "meta",
  "source",
  "track",
  "wbr",
]);
export default {
  name: "htm",
  rules: {
    "well-formed": {
      create(context) {
        return {
          TaggedTemplateExpression(node) {
            if (node.tag.type !== "Identifier" || node.tag.name !== "html") return;
            // each hole becomes \u0001, so that <${Name}> and attributes keep their places
            const text = node.quasi.quasis.map((q) => q.cooked).join("\u0001");
            const report = (message: string) => context.report({ node, message });
            if (/&(#\d+|#x[\da-f]+|[a-z]+);/i.test(text)) {
              report("htm does not decode entities: write the character itself");
            }
            const open: string[] = [];
            const tags = /<!--[^]*?-->|<(\/?)([^\s<>\/]*|\/)((?:"[^"]*"|'[^']*'|[^"'<>])*?)(\/?)>/g;
            for (const [whole, slash, name = "", , self] of text.matchAll(tags)) {
              if (whole.startsWith("<!--")) continue;
              if (name.startsWith("!")) {
                report("htm has no doctype: put it before the rendered text");
              } else if (slash || name === "/") {
                const last = open.pop();
                if (last === undefined) report(`</${name}> closes nothing`);
                else if (last !== name && name !== "/" && last !== "\u0001") {
                  report(`</${name}> closes <${last}>`);
                }
              } else if (!self) {
                if (voids.has(name)) report(`<${name}> must be written <${name} />`);
                else open.push(name);
              }
            }
            if (open.length) {
              report(`<${open.at(-1) === "\u0001" ? "${…}" : open.at(-1)}> is not closed`);
            }
            if (
              />[^\S\n]*\n\s*<(a|b|i|em|strong|span|small|abbr|code|kbd|var|sub|sup|time|label|input|button|output)\b/
                .test(text) &&
              /<\/(a|b|i|em|strong|span|small|abbr|code|kbd|var|time|label|button|output)>[^\S\n]*\n\s*</
                .test(text)
            ) {
              report('a line break between inline elements leaves no space: write ${" "}');
            }
          },
        };
      },
    },
  },
} satisfies Deno.lint.Plugin;
