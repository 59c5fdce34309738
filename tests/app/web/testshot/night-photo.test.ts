import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { logPhoto, nightPhotoOf, type PhotoTaken } from '../../../../app/web/state/edits/night-photo-edits.ts';
import { parseSetup, validateSetup } from '../../../../core/setup/parse-setup.ts';
import type { Frame, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { photoSettings } from '../../../../core/testshot/photo-settings.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const scheme = stones.schemes[0] as Scheme;
const frame = scheme.frames[1] as Frame;
const now = '2026-12-01T12:00:00';
const tags = {
  exposureTime: 15,
  fNumber: 2.8,
  photographicSensitivity: 3200,
  focalLength: 24,
  dateTimeOriginal: '2026:10:09 22:41:07',
};
const taken = (more: Partial<PhotoTaken> = {}) =>
  nightPhotoOf({
    fileName: 'night.jpg',
    settings: photoSettings(tags),
    place: { schemeId: scheme.id, frameId: frame.id },
    passId: frame.passes[0]?.id ?? null,
    overStops: -0.8123,
    ...more,
  });
const night = (id: string, startedAt: string, schemeId = scheme.id) => ({
  id,
  startedAt,
  schemeId,
  schemeName: 'As it was called',
  note: '',
  runs: [],
  photos: [],
});
const good = (setup: Setup) => {
  expect(validateSetup(JSON.parse(JSON.stringify(setup)))).toEqual(setup);
  return setup;
};
const photosOf = ({ nights }: Setup) => nights.map(({ id, photos }) => [id, photos.length]);

describe('the settings of a photo in the log of nights', () => {
  it('begin a night of the photo’s own date where there is none; looked at again it is told anew, not twice', () => {
    const first = good(logPhoto({ ...stones, nights: [] }, scheme.id, taken(), now));
    expect(first.nights).toHaveLength(1);
    expect(first.nights[0]).toMatchObject({ startedAt: '2026-10-09T22:41:07', schemeName: scheme.name, runs: [] });
    expect(first.nights[0]?.photos).toEqual([
      {
        name: 'night.jpg',
        at: '2026-10-09T22:41:07',
        frameId: frame.id,
        passId: frame.passes[0]?.id,
        aperture: 2.8,
        seconds: 15,
        iso: 3200,
        focalLengthMm: 24,
        overStops: -0.81,
      },
    ]);
    const again = good(logPhoto(first, scheme.id, taken({ overStops: 0.1 }), now));
    expect(again.nights[0]?.photos.map(({ overStops }) => overStops)).toEqual([0.1]);
  });

  it('go to the latest night of the scheme within a day, else to its latest, whatever other schemes did', () => {
    const nights = [
      night('night-3', '2026-10-20T21:00'),
      night('night-1', '2026-10-09T18:00:00'),
      night('night-2', '2026-10-09T21:30'),
      night('night-4', '2026-10-09T22:00', 'another'),
    ];
    const setup = { ...stones, nights };
    expect(photosOf(good(logPhoto(setup, scheme.id, taken(), now)))[2]).toEqual(['night-2', 1]);
    const later = taken({ settings: photoSettings({ ...tags, dateTimeOriginal: '2026:11:20 20:00:00' }) });
    expect(photosOf(good(logPhoto(setup, scheme.id, later, now)))[0]).toEqual(['night-3', 1]);
    const undated = taken({ settings: photoSettings({}) });
    expect(photosOf(good(logPhoto(setup, scheme.id, undated, now)))[0]).toEqual(['night-3', 1]);
    expect(good(logPhoto({ ...stones, nights: [] }, scheme.id, undated, now)).nights[0]?.startedAt).toBe(now);
  });

  it('names are cut to what the log takes, the oldest photos make room, and a full log keeps what it has', () => {
    for (const fileName of ['x'.repeat(300), '\u0000\n', 'a\u2028b.jpg'])
      good(logPhoto(stones, scheme.id, taken({ fileName, overStops: 99 }), now));
    const many = Array.from({ length: 205 }, (_, i) => taken({ fileName: `n${i}.jpg` }));
    const full = good(
      many.reduce((s, photo) => logPhoto(s, scheme.id, photo, now), { ...stones, nights: [] } as Setup),
    );
    expect(full.nights[0]?.photos).toHaveLength(200);
    expect(full.nights[0]?.photos.at(-1)?.name).toBe('n204.jpg');
    const others = Array.from({ length: 60 }, (_, i) => night(`night-${i}`, now, 'another'));
    const busy = { ...stones, nights: others };
    expect(logPhoto(busy, scheme.id, taken(), now)).toBe(busy);
  });
});
