import { decodeBase64, encodeBase64 } from '../scan/base64.ts';

/** What a fragment begins with that means to hold a setup, in whatever version. */
export const linkField = 'setup=';
/** What ours begin with; the letter says how the rest is written. */
export const linkStart = `${linkField}a`;

/** Most characters that a link’s fragment may have: what browsers, mail and messages carry without harm, with room to spare. */
export const maxLinkLetters = 40_000;

/** Bytes as base64url without padding (RFC 4648, section 5). */
export const encodeBase64Url = (bytes: Uint8Array): string =>
  encodeBase64(bytes).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');

/** Bytes of a base64url text without padding; null where it is none. */
export const decodeBase64Url = (text: string): Uint8Array<ArrayBuffer> | null =>
  /^[A-Za-z0-9_-]*$/.test(text)
    ? decodeBase64(text.replaceAll('-', '+').replaceAll('_', '/') + '='.repeat((4 - (text.length % 4)) % 4))
    : null;

/** Adler-32 of bytes (RFC 1950, section 8.2), as four bytes, the highest first. */
export const adler32 = (bytes: Uint8Array): Uint8Array => {
  let [a, b] = [1, 0];
  for (const byte of bytes) {
    a = (a + byte) % 65521;
    b = (b + a) % 65521;
  }
  return Uint8Array.of(b >> 8, b & 255, a >> 8, a & 255);
};
