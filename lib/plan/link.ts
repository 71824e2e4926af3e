/**
 * A whole plan as the tail of an address, so that a link opens it anywhere with nothing stored.
 *
 * A code is `1.` (the version of this coding, not of the plan), then in base64url
 * six bytes of head and the plan as JSON under raw deflate (RFC 1951). The head is
 * the length of the deflated bytes (2) and their CRC-32 (4): a code that ends too
 * early is told from one that was changed, which deflate alone can't do.
 */

/** The most characters that a code may have, so that any browser and mail program carries it. */
export const LINK_MAX_CHARACTERS = 7500;

/** The most bytes of JSON that a code may hold. */
export const LINK_MAX_BYTES = 64 * 1024;

/** Why a code gives no plan. */
export type LinkFault = "cut-off" | "damaged" | "too-long" | "unknown-version";

/** What a code holds, or why it can't be read. */
export type Unpacked =
  | { readonly ok: true; readonly plan: unknown }
  | { readonly ok: false; readonly reason: LinkFault };

const VERSION = "1";
const HEAD_BYTES = 6;
const HEAD_CHARACTERS = 8;

/**
 * Packs a plan into a code for an address. Equal plans give equal codes,
 * whatever the order of their keys.
 *
 * @param json The plan: anything that JSON can hold.
 * @returns The code, of letters, digits, `-`, `_` and one `.`.
 * @throws {RangeError} When the plan is too large for a link.
 * @throws {TypeError} When it is nothing that JSON can hold.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const code = await packPlan({ power: "420 hp", cylinders: 4 });
 *
 * assertEquals(code, await packPlan({ cylinders: 4, power: "420 hp" }));
 * assertEquals(await unpackPlan(code), { ok: true, plan: { cylinders: 4, power: "420 hp" } });
 * ```
 */
export async function packPlan(json: unknown): Promise<string> {
  const text: string | undefined = JSON.stringify(json, sortKeys);
  if (text === undefined) throw new TypeError("Cannot pack the plan, as JSON can't hold it");
  const bytes = new TextEncoder().encode(text);
  requireAtMost(bytes.length, LINK_MAX_BYTES, "bytes of JSON");
  const body = await pipe(bytes, new CompressionStream("deflate-raw"), Infinity);
  requireAtMost(codeLength(body.length), LINK_MAX_CHARACTERS, "characters");
  const whole = new Uint8Array(HEAD_BYTES + body.length);
  const head = new DataView(whole.buffer);
  head.setUint16(0, body.length);
  head.setUint32(2, crc32(body));
  whole.set(body, HEAD_BYTES);
  return `${VERSION}.${whole.toBase64({ alphabet: "base64url", omitPadding: true })}`;
}

/**
 * Reads a code that {@linkcode packPlan} made. Never throws: any text gives a
 * plan or a reason. What a message may hang on to the end of a link (a full
 * stop, a bracket) is left out.
 *
 * The plan is whatever JSON was packed; whether it is a valid plan is for the schema to say.
 *
 * @param code The code, as it stood in the address.
 * @returns The plan, or why there is none.
 *
 * @example
 * ```ts
 * import { assertEquals } from "@std/assert";
 *
 * const code = await packPlan({ power: "420 hp" });
 *
 * assertEquals(await unpackPlan(code.slice(0, -3)), { ok: false, reason: "cut-off" });
 * assertEquals(await unpackPlan("9.AAAA"), { ok: false, reason: "unknown-version" });
 * ```
 */
export async function unpackPlan(code: string): Promise<Unpacked> {
  const fault = (reason: LinkFault): Unpacked => ({ ok: false, reason });
  if (code.length > LINK_MAX_CHARACTERS) return fault("too-long");
  const [, version, packed] = code.match(/^(\d*)(?:\.([\w-]*)[^\w-]*)?$/) ?? [];
  if (version === undefined) return fault("damaged");
  if (packed === undefined) return fault("cut-off");
  if (version !== VERSION) return fault(version === "" ? "damaged" : "unknown-version");
  if (packed.length < HEAD_CHARACTERS) return fault("cut-off");

  const head = fromBase64(packed.slice(0, HEAD_CHARACTERS));
  if (head === undefined) return fault("damaged");
  const view = new DataView(head.buffer);
  const wanted = codeLength(view.getUint16(0)) - `${VERSION}.`.length;
  if (packed.length < wanted) return fault("cut-off");
  const body = fromBase64(packed.slice(HEAD_CHARACTERS));
  if (packed.length > wanted || body === undefined) return fault("damaged");
  if (crc32(body) !== view.getUint32(2)) return fault("damaged");

  try {
    const bytes = await pipe(body, new DecompressionStream("deflate-raw"), LINK_MAX_BYTES);
    const text = new TextDecoder("utf-8", { fatal: true }).decode(bytes);
    return { ok: true, plan: JSON.parse(text) };
  } catch (error) {
    return fault(error instanceof TooMuch ? "too-long" : "damaged");
  }
}

/** The characters of a code whose deflated bytes are so many. */
function codeLength(bodyBytes: number): number {
  return `${VERSION}.`.length + HEAD_CHARACTERS + Math.ceil(bodyBytes * 4 / 3);
}

function requireAtMost(value: number, most: number, what: string): void {
  if (value <= most) return;
  throw new RangeError(
    `Cannot pack the plan, as a link must hold at most ${most} ${what}: current value is ${value}`,
  );
}

/** A replacer for `JSON.stringify` that puts the keys of every object in order. */
function sortKeys(_key: string, value: unknown): unknown {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => a < b ? -1 : 1));
}

class TooMuch extends Error {}

/** Sends bytes through a stream, giving up once more come out than may. */
async function pipe(
  bytes: Uint8Array<ArrayBuffer>,
  through: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer>> {
  const chunks: Uint8Array<ArrayBuffer>[] = [];
  let length = 0;
  for await (const chunk of new Blob([bytes]).stream().pipeThrough(through)) {
    length += chunk.length;
    if (length > most) throw new TooMuch();
    chunks.push(chunk);
  }
  return new Uint8Array(await new Blob(chunks).arrayBuffer());
}

function fromBase64(text: string): Uint8Array<ArrayBuffer> | undefined {
  try {
    return Uint8Array.fromBase64(text, { alphabet: "base64url" });
  } catch {
    return undefined;
  }
}

/** The CRC-32 of zip and gzip files (RFC 1952, section 8). */
function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = (crc >>> 1) ^ (crc & 1 ? 0xedb88320 : 0);
  }
  return (crc ^ 0xffffffff) >>> 0;
}
