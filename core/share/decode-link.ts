import { inflateBounded } from '../scan/inflate-bounded.ts';
import { readSetup } from '../scan/read-setup.ts';
import { ScanDataError } from '../scan/scan-data-error.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { SetupError } from '../setup/setup-error.ts';
import { adler32, decodeBase64Url, linkStart, maxLinkLetters } from './link-text.ts';

/** Most bytes of JSON that a link may unpack to: ten times what the largest of our samples takes. */
export const maxUnpackedBytes = 2_000_000;

const damaged = (): SetupError =>
  new SetupError('syntax', '', 'The link must be whole; it was cut short or changed on its way');

const unpacked = (bytes: Uint8Array): Uint8Array => {
  try {
    return inflateBounded(bytes.subarray(4), maxUnpackedBytes);
  } catch (error) {
    if (error instanceof ScanDataError) throw damaged();
    throw error;
  }
};

/**
 * Reads the setup in a link’s fragment, whoever wrote it: takes time and memory that the limits bound, and runs nothing of it.
 *
 * @param fragment what follows “#”
 * @returns the setup with all defaults filled in, deeply frozen
 * @throws SetupError that says what was expected; nothing else
 */
export const decodeLink = (fragment: string): Setup => {
  if (fragment.length > maxLinkLetters)
    throw new SetupError(
      'size',
      '',
      `A link must have at most ${maxLinkLetters} characters; it has ${fragment.length}`,
    );
  if (!fragment.startsWith(linkStart))
    throw new SetupError('version', '', `A link must begin with #${linkStart}; this one may be of a newer version`);
  const bytes = decodeBase64Url(fragment.slice(linkStart.length));
  if (!bytes || bytes.length < 5) throw damaged();
  const plain = unpacked(bytes);
  if (adler32(plain).some((byte, i) => byte !== bytes[i])) throw damaged();
  return readSetup(new TextDecoder().decode(plain));
};
