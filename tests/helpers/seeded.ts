/** Numbers by chance that are the same on every run, for systems too intertwined to shrink. */

/** A source of numbers that begins anew with its seed. */
export class Seeded {
  #state: number;

  /** @param seed Any whole number. */
  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  /** A number from nought to below one. Source: mulberry32 (public domain), 32 bits of state. */
  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = this.#state;
    mixed = Math.imul(mixed ^ (mixed >>> 15), mixed | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A number between two, evenly. */
  between(low: number, high: number): number {
    return low + (high - low) * this.next();
  }

  /** A number between two above nought, evenly by its logarithm. */
  decades(low: number, high: number): number {
    return low * (high / low) ** this.next();
  }

  /** A whole number, both ends included. */
  whole(low: number, high: number): number {
    return low + Math.floor((high - low + 1) * this.next());
  }

  /** True in a share of all cases. */
  chance(share: number): boolean {
    return this.next() < share;
  }

  /** One of a list. */
  oneOf<T>(list: readonly T[]): T {
    return list[this.whole(0, list.length - 1)] as T;
  }
}
