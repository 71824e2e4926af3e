/** A map that forgets its oldest entries. */

/** Holds at most so many entries, so that what strangers type cannot fill the memory. */
export class BoundedMap<Value> {
  readonly #entries = new Map<string, Value>();
  readonly #size: number;

  /** @param size Most entries held. */
  constructor(size: number) {
    this.#size = size;
  }

  /** What is held under a key, if anything. */
  get(key: string): Value | undefined {
    return this.#entries.get(key);
  }

  /** Holds a value; the oldest makes room. */
  set(key: string, value: Value): Value {
    if (this.#entries.size >= this.#size && !this.#entries.has(key)) {
      const oldest = this.#entries.keys().next();
      if (!oldest.done) this.#entries.delete(oldest.value);
    }
    this.#entries.set(key, value);
    return value;
  }
}
