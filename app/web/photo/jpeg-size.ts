/** Markers of frame headers (ITU-T T.81, table B.1): SOF0 to SOF15 but DHT, JPG and DAC. */
const isFrameHeader = (marker: number): boolean =>
  marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc;

/**
 * Width and height that a JPEG says it has, from its frame header (ITU-T T.81, B.2.2), before anything is decoded; null
 * where the first part of the file has none.
 */
export const jpegSize = (bytes: Uint8Array): { readonly width: number; readonly height: number } | null => {
  const at16 = (at: number) => ((bytes[at] ?? 0) << 8) | (bytes[at + 1] ?? 0);
  for (let at = 2; at + 9 < bytes.length; ) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] as number;
    if (marker === 0xff) at++;
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) at += 2;
    else if (marker === 0xda || marker === 0xd9) return null;
    else if (isFrameHeader(marker)) return { height: at16(at + 5), width: at16(at + 7) };
    else at += 2 + Math.max(at16(at + 2), 2);
  }
  return null;
};
