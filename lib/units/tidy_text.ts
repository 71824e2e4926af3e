/** Typed text with its typography made plain. */

const SUPERSCRIPTS = "⁰¹²³⁴⁵⁶⁷⁸⁹";
const DEGREES =
  /(?:°|(?<![a-z])deg(?:ree)?s?\.?)\s*(c|f|k|r)(?:elsius|ahrenheit|elvin|ankine)?(?![a-z])/gi;
/** A pressure told as the height of a column of mercury or water. */
const COLUMN = /(?<![a-z])(in|mm|cm)\.?\s*(hg|h2o|aq)(?![a-z])/gi;

/**
 * Makes one writing of the many that keyboards, phones and copied tables give:
 * plain spaces, minus and quote signs, `^` for raised figures, `1/2` for `½`,
 * `°C` for `℃` and `deg C`.
 */
export function tidyText(text: string): string {
  if (isPlain(text)) return joined(text.trim());
  return joined(
    text
      .replace(/[\u200b-\u200d\u2060\ufeff]/g, "")
      .replace(/[⁻⁺]?[⁰¹²³⁴⁵⁶⁷⁸⁹]+/g, (raised) => "^" + lowered(raised))
      .replace(/[¼-¾⅐-⅞]/g, (fraction) => " " + fraction)
      .replace(/[º˚]/g, "°")
      .replace(/''|[″”“ʺ]/g, '"')
      .replace(/[′’‘ʹ]/g, "'")
      .normalize("NFKC")
      .replace(/[\u2212\u2010-\u2013]/g, "-")
      .replace(/\u2044/g, "/")
      .trim(),
  );
}

/** True when only signs of the English keyboard occur, none of which needs work but `''`. */
function isPlain(text: string): boolean {
  return /^[ -~]*$/.test(text) && !text.includes("''");
}

function lowered(raised: string): string {
  let figures = "";
  for (const sign of raised) {
    if (sign === "⁻") figures += "-";
    else if (sign !== "⁺") figures += SUPERSCRIPTS.indexOf(sign);
  }
  return figures;
}

/** Joins what belongs together: `° C`, `deg F`, `degrees celsius`, `in Hg`, `US gal`. */
function joined(text: string): string {
  return text
    .replace(/[\s.,;]+$/, "")
    .replace(DEGREES, "deg$1")
    .replace(COLUMN, (_, unit, fluid) => unit + (/hg/i.test(fluid) ? "Hg" : "Aq"))
    .replace(/(?<![a-z])u\.?\s?s\.?\s*(?=gal)/gi, "")
    .replace(/(?<![a-z])imp(?:erial)?\.?\s*(?=gal)/gi, "imp");
}
