/** Kind and size of a picture from its first bytes; null where they are none that is known. */
export const pictureSize = (bytes: Uint8Array): { type: string; width: number; height: number } | null => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const text = (at: number, length: number) => String.fromCharCode(...bytes.subarray(at, at + length));
  if (bytes.length < 30) return null;
  // PNG (W3C), section 11.2.2: the header chunk comes first
  if (text(1, 3) === 'PNG') return { type: 'image/png', width: view.getUint32(16), height: view.getUint32(20) };
  if (view.getUint16(0) === 0xffd8) return jpegSize(view);
  if (text(0, 4) === 'RIFF' && text(8, 4) === 'WEBP') return webpSize(view, text(12, 4));
  // an AVIF's size lies deep in its boxes; the decoder refuses what is too large
  if (text(4, 4) === 'ftyp' && text(8, 3) === 'avi') return { type: 'image/avif', width: 1, height: 1 };
  return null;
};

/** ITU-T T.81, annex B: segments up to the start of the frame. */
const jpegSize = (view: DataView) => {
  for (let at = 2; at + 9 < view.byteLength; ) {
    if (view.getUint8(at) !== 0xff) return null;
    const marker = view.getUint8(at + 1);
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return { type: 'image/jpeg', width: view.getUint16(at + 7), height: view.getUint16(at + 5) };
    at += marker === 0xff ? 1 : 2 + view.getUint16(at + 2);
  }
  return null;
};

/** RFC 9649, sections 2.4 to 2.7. */
const webpSize = (view: DataView, chunk: string) => {
  const type = 'image/webp';
  if (chunk === 'VP8 ')
    return { type, width: view.getUint16(26, true) & 0x3fff, height: view.getUint16(28, true) & 0x3fff };
  if (chunk === 'VP8L') {
    const bits = view.getUint32(21, true);
    return { type, width: (bits & 0x3fff) + 1, height: ((bits >> 14) & 0x3fff) + 1 };
  }
  const three = (at: number) => view.getUint16(at, true) | (view.getUint8(at + 2) << 16);
  return chunk === 'VP8X' ? { type, width: three(24) + 1, height: three(27) + 1 } : null;
};
