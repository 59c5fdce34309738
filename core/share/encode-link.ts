import { deflateSync } from 'fflate';
import { validateSetup } from '../setup/parse-setup.ts';
import type { Setup } from '../setup/schema/setup.ts';
import { leanDocument } from './lean-document.ts';
import { adler32, encodeBase64Url, linkStart, maxLinkLetters } from './link-text.ts';

/** A setup as a link’s fragment, and how long that is; `fragment` is null where it would be too long for a link. */
export interface SharedLink {
  readonly fragment: string | null;
  readonly letters: number;
}

/** The shortest JSON that reads as the very same setup. */
const shortText = (setup: Setup): string => {
  const lean = leanDocument(setup);
  // nothing is left out on trust: what is sent is read here first
  const isExact = JSON.stringify(validateSetup(structuredClone(lean))) === JSON.stringify(setup);
  return JSON.stringify(isExact ? lean : setup);
};

/**
 * Writes a setup into the fragment of a link: JSON without defaults, an Adler-32 of it, deflate (RFC 1951), base64url. The
 * fragment is what follows “#”; browsers don’t send it to any server. `decodeLink` of it is deeply equal to the setup.
 *
 * @param setup a valid setup; scans are written too, and rarely fit
 * @returns the fragment without “#”, at most `maxLinkLetters` characters, or null where it would be longer
 */
export const encodeLink = (setup: Setup): SharedLink => {
  const bytes = new TextEncoder().encode(shortText(setup));
  const packed = deflateSync(bytes, { level: 9, mem: 12 });
  const all = new Uint8Array(4 + packed.length);
  all.set(adler32(bytes));
  all.set(packed, 4);
  const fragment = linkStart + encodeBase64Url(all);
  return { fragment: fragment.length > maxLinkLetters ? null : fragment, letters: fragment.length };
};
