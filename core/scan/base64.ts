const letters = new TextEncoder().encode('ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/');
const padding = '='.charCodeAt(0);
const none = 255;
const valueOfLetter = new Uint8Array(256).fill(none);
letters.forEach((letter, value) => {
  valueOfLetter[letter] = value;
});

/** Bytes as base64 with padding (RFC 4648, section 4). */
export const encodeBase64 = (bytes: Uint8Array): string => {
  const text = new Uint8Array(Math.ceil(bytes.length / 3) * 4).fill(padding);
  const letter = (bits: number) => letters[bits & 63] as number;
  let at = 0;
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i;
    const bits = ((bytes[i] as number) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    text[at] = letter(bits >> 18);
    text[at + 1] = letter(bits >> 12);
    if (left > 1) text[at + 2] = letter(bits >> 6);
    if (left > 2) text[at + 3] = letter(bits);
    at += 4;
  }
  return new TextDecoder().decode(text);
};

/** Bytes of a base64 text with padding; null where it is none. */
export const decodeBase64 = (text: string): Uint8Array<ArrayBuffer> | null => {
  if (text.length % 4 !== 0) return null;
  const unpadded = text.replace(/={1,2}$/, '');
  const bytes = new Uint8Array(Math.floor((unpadded.length * 3) / 4));
  let [bits, held, at] = [0, 0, 0];
  for (let i = 0; i < unpadded.length; i++) {
    const code = unpadded.charCodeAt(i);
    const value = code < 256 ? (valueOfLetter[code] as number) : none;
    if (value === none) return null;
    bits = ((bits << 6) | value) & 0xffffff;
    held += 6;
    if (held >= 8) {
      held -= 8;
      bytes[at++] = (bits >> held) & 255;
    }
  }
  return bytes;
};
