/** A short name for a text, so that its address changes when it does. */

/**
 * Hashes a text by FNV-1a, twice with different starts: 64 bits, no secret. The
 * platform's digests are asynchronous and lengthen a cold start by a tenth.
 *
 * Source: G. Fowler, L. C. Noll, K.-P. Vo, "FNV Hash", offset basis and prime for 32 bits.
 *
 * @param bytes The content.
 * @returns Letters and digits, at most 14.
 */
export function contentHash(bytes: Uint8Array): string {
  let a = 0x811c9dc5;
  let b = 0x811c9dc5 ^ bytes.length;
  for (const byte of bytes) {
    a = Math.imul(a ^ byte, 0x01000193);
    b = Math.imul(b ^ byte ^ (a >>> 24), 0x01000193);
  }
  return (a >>> 0).toString(36) + (b >>> 0).toString(36);
}
