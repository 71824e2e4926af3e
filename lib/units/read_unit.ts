/** The unit behind the number of a typed quantity. */
import { SHARES, spelled } from "./spellings.ts";

/** A unit of mathjs with its power. */
export interface Term {
  readonly unit: string;
  readonly power: number;
}

/** A typed unit as a product, or why it is none. */
export type UnitRead =
  | { readonly found: "terms"; readonly terms: readonly Term[]; readonly factor: number }
  | { readonly found: "capitals"; readonly spellings: readonly string[] }
  | { readonly found: "none" };

type Words = Readonly<Record<string, string>>;

/** Beyond it no unit of the trade goes. */
const HIGHEST_POWER = 6;
const TOKEN = /\s*(?:([a-zμΩω]+|[°%‰"'])(?:\^\s*\(?([+-]?\d)\)?|([+-]?\d))?|(1)(?![\d.])|(.))/iuy;
const POWER_WORDS: ReadonlyMap<string, number> = new Map([
  ["sq", 2],
  ["square", 2],
  ["cu", 3],
  ["cubic", 3],
]);

/**
 * Reads a unit such as `lb/(hp h)`, `g/kW h`, `lb per hour`, `sq in`, `min-1`.
 *
 * What is multiplied behind a stroke stands below it, with or without brackets,
 * as the trade writes it: `lb/hp h` is a mass over power and time.
 *
 * @param text The tidied text behind the number.
 * @param reads What a word in small letters means in this kind of quantity only.
 */
export function readUnit(text: string, reads: Words | undefined): UnitRead {
  const reader = new UnitReader(text, reads);
  return reader.read();
}

class UnitReader {
  readonly #text: string;
  readonly #reads: Words | undefined;
  readonly #terms: Term[] = [];
  #at = 0;
  #factor = 1;
  #bad: UnitRead | undefined;

  constructor(text: string, reads: Words | undefined) {
    this.#text = text;
    this.#reads = reads;
  }

  read(): UnitRead {
    if (this.#text.trim() !== "") this.#quotient(1);
    if (this.#bad === undefined && this.#at < this.#text.trimEnd().length) this.#none();
    // "50 % bar" is no quantity.
    if (this.#factor !== 1 && this.#terms.length > 0) this.#none();
    return this.#bad ?? { found: "terms", terms: this.#terms, factor: this.#factor };
  }

  /** Products parted by strokes: the first above, all others below. */
  #quotient(sign: number): void {
    let side = sign;
    if (this.#takeStroke()) side = -sign;
    do {
      this.#product(side);
      side = -sign;
    } while (this.#bad === undefined && this.#takeStroke());
  }

  /** Factors side by side, or joined by a dot, a star or a hyphen. */
  #product(sign: number): void {
    let more = true;
    while (more && this.#bad === undefined) {
      this.#factorOf(sign);
      this.#take(/\s*(?:[*·⋅×•]|[.-](?=\s*[a-z(]))/iy);
      more = this.#at < this.#text.length &&
        !/^\s*(?:\/|\)|per(?![a-z])|$)/i.test(this.#text.slice(this.#at));
    }
  }

  #factorOf(sign: number): void {
    if (this.#take(/\s*\(/y)) {
      this.#quotient(sign);
      if (!this.#take(/\s*\)/y)) this.#none();
      return;
    }
    const match = this.#take(TOKEN);
    if (match === null || match[5] !== undefined) return this.#none();
    if (match[4] !== undefined) return;
    const [, word = "", raised, glued] = match;
    const power = Number(raised ?? glued ?? 1);
    const powerWord = POWER_WORDS.get(word.toLowerCase());
    if (powerWord === undefined || raised !== undefined || glued !== undefined) {
      return this.#word(word, sign * power);
    }
    const next = this.#take(TOKEN);
    if (next?.[1] === undefined || next[2] !== undefined || next[3] !== undefined) {
      return this.#none();
    }
    this.#word(next[1], sign * powerWord);
  }

  #word(word: string, power: number): void {
    const share = SHARES.get(word.toLowerCase());
    if (share !== undefined) {
      this.#factor *= share ** power;
      return;
    }
    const own = ownOf(this.#reads, word.toLowerCase());
    if (own !== undefined) return this.#units(own, power);
    const found = spelled(word);
    if (found.found === "capitals") this.#bad = found;
    else this.#units(found.found === "unit" ? found.units : word, power);
  }

  #units(units: string, power: number): void {
    if (units === "") return;
    for (const unit of units.split(" ")) {
      const [name = "", own = "1"] = unit.split("^");
      const total = Number(own) * power;
      if (Math.abs(total) > HIGHEST_POWER || total === 0) return this.#none();
      this.#terms.push({ unit: name, power: total });
    }
  }

  #takeStroke(): boolean {
    return this.#take(/\s*(?:\/|per(?![a-z]))/iy) !== null;
  }

  /** What a sticky pattern finds at this place, which is then passed. */
  #take(pattern: RegExp): RegExpExecArray | null {
    pattern.lastIndex = this.#at;
    const match = pattern.exec(this.#text);
    if (match) this.#at += match[0].length;
    return match;
  }

  #none(): void {
    this.#bad ??= { found: "none" };
  }
}

function ownOf(words: Words | undefined, word: string): string | undefined {
  return words !== undefined && Object.hasOwn(words, word) ? words[word] : undefined;
}
