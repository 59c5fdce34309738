/** A random key that no two things share: 128 bits. Works where the page is not served securely, too. */
export const newKey = (): string =>
  [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, '0')).join('');
