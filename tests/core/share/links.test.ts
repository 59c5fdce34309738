import { readdirSync, readFileSync } from 'node:fs';
import { crc32, inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import { decodeLink } from '../../../core/share/decode-link.ts';
import { encodeLink } from '../../../core/share/encode-link.ts';
import { forSharing } from '../../../core/share/for-sharing.ts';
import { leanDocument } from '../../../core/share/lean-document.ts';
import { adler32, encodeBase64Url, linkStart, maxLinkLetters } from '../../../core/share/link-text.ts';
import { goodSetup } from '../setup/good-setup.ts';
import { richSetup } from '../setup/rich-setup.ts';

const samples = readdirSync('assets/setups').map(
  (name) => [name, parseSetup(readFileSync(`assets/setups/${name}`, 'utf8'))] as const,
);

describe('a setup as a link', () => {
  it.each(samples)('%s fits, and comes back deeply equal', (_, setup) => {
    const { fragment, letters } = encodeLink(setup);
    expect(letters).toBeLessThanOrEqual(maxLinkLetters);
    expect(fragment).toMatch(/^setup=a[A-Za-z0-9_-]+$/);
    expect(decodeLink(fragment as string)).toEqual(setup);
  });

  it('comes back deeply equal with every kind of field in it, and lean documents read as the whole', () => {
    for (const document of [goodSetup(), richSetup()]) {
      const setup = validateSetup(document);
      expect(decodeLink(encodeLink(setup).fragment as string)).toEqual(setup);
      const lean = leanDocument(setup);
      expect(validateSetup(structuredClone(lean))).toEqual(setup);
      expect(JSON.stringify(lean).length).toBeLessThan(JSON.stringify(setup).length);
    }
  });

  it('comes back deeply equal without the times that sharing takes out', () => {
    const given = forSharing(validateSetup(richSetup()), true);
    expect(given.lamps[0]?.testShots[0]?.at).toBeNull();
    expect(decodeLink(encodeLink(given).fragment as string)).toEqual(given);
  });

  it('is written whole where leaving out defaults would not give back the very same text', () => {
    const setup = validateSetup(richSetup());
    // the same document, its fields in another order
    const other = Object.fromEntries(Object.entries(setup).reverse()) as typeof setup;
    const { fragment, letters } = encodeLink(other);
    expect(decodeLink(fragment as string)).toEqual(setup);
    expect(letters).toBeGreaterThan(encodeLink(setup).letters);
    const bytes = Buffer.from((fragment as string).slice(linkStart.length), 'base64url');
    expect(inflateRawSync(bytes.subarray(4)).toString()).toBe(JSON.stringify(other));
  });

  it('is deflate as zlib reads it, after the Adler-32 of RFC 1950', () => {
    const fragment = encodeLink(samples[0]?.[1] as ReturnType<typeof parseSetup>).fragment as string;
    const bytes = Buffer.from(fragment.slice(linkStart.length), 'base64url');
    const text = inflateRawSync(bytes.subarray(4));
    expect(JSON.parse(text.toString())).toMatchObject({ format: 'lampfall-setup' });
    expect([...bytes.subarray(0, 4)]).toEqual([...adler32(text)]);
    // the worked example that goes with the algorithm: "Wikipedia" gives 11E60398 (from memory)
    expect(Buffer.from(adler32(Buffer.from('Wikipedia'))).toString('hex')).toBe('11e60398');
  });

  it('writes base64url as Node does, for every length of the last group', () => {
    for (let length = 0; length < 9; length++) {
      const bytes = Uint8Array.from({ length }, (_, i) => 255 - 37 * i);
      expect(encodeBase64Url(bytes)).toBe(Buffer.from(bytes).toString('base64url'));
    }
  });

  it('says how long it would be where it is too long, and is no link then', () => {
    const setup = validateSetup(richSetup());
    const night = setup.nights[0] as (typeof setup.nights)[number];
    // checksums look like noise, which can't be packed
    const noise = (i: number) => Array.from({ length: 300 }, (_, j) => crc32(`${i} ${j}`).toString(36)).join('');
    const nights = Array.from({ length: 40 }, (_, i) => ({ ...night, id: `n${i}`, note: noise(i).slice(0, 2000) }));
    const long = encodeLink({ ...setup, nights });
    expect(long.fragment).toBeNull();
    expect(long.letters).toBeGreaterThan(maxLinkLetters);
    expect(encodeLink({ ...setup, nights: nights.slice(0, 1) }).fragment?.length).toBeLessThan(maxLinkLetters);
  });
});

describe('forSharing', () => {
  const setup = validateSetup(richSetup());

  it('keeps at home the log of nights, who gave permission and when test shots were taken, and nothing else', () => {
    expect(setup.nights.length).toBeGreaterThan(0);
    expect(setup.card.permission).not.toBe('');
    const taken = setup.lamps[0]?.testShots[0]?.at as string;
    const given = forSharing(setup, false);
    const text = JSON.stringify(given);
    for (const own of [setup.card.permission, taken]) {
      expect(JSON.stringify(setup)).toContain(own);
      expect(text).not.toContain(own);
    }
    expect(given.nights).toEqual([]);
    expect(given.lamps[0]?.testShots).toEqual([{ ...setup.lamps[0]?.testShots[0], at: null }]);
    const { nights, card, lamps } = setup;
    expect({ ...given, nights, lamps, card: { ...given.card, permission: card.permission } }).toEqual(setup);
    expect({ ...given.lamps[0], testShots: [] }).toEqual({ ...lamps[0], testShots: [] });
  });

  it('rounds the place to whole degrees and takes the names of towns off, and nothing else', () => {
    const there = { ...setup.place, latitudeDegrees: 54.4873, longitudeDegrees: -0.4 };
    const given = forSharing({ ...setup, place: there }, true);
    expect([given.place.latitudeDegrees, given.place.longitudeDegrees]).toEqual([54, 0]);
    expect(Object.is(given.place.longitudeDegrees, -0)).toBe(false);
    // just south of the equator too
    const south = forSharing({ ...setup, place: { ...there, latitudeDegrees: -0.3 } }, true);
    expect(Object.is(south.place.latitudeDegrees, 0)).toBe(true);
    expect(given.place.glowDomes.every(({ name }) => name === '')).toBe(true);
    expect({ ...given, place: setup.place }).toEqual(forSharing(setup, false));
    expect(JSON.stringify(given)).not.toContain('54.4873');
  });
});
