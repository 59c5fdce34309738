import { describe, expect, it } from 'vitest';
import { suggestZone } from '../../../app/web/place/suggest-zone.ts';

describe('suggestZone', () => {
  // Zones of these places as the IANA database has them; from memory.
  it.each([
    [-33, 149, 'Australia/Sydney'],
    [-31.95, 141.45, 'Australia/Broken_Hill'],
    [-31.55, 159.08, 'Australia/Lord_Howe'],
    [54.4, -2.6, 'Europe/London'],
    [36.1, -112.1, 'America/Phoenix'],
    [27.7, 85.3, 'Asia/Kathmandu'],
    [64.1, -21.9, 'Atlantic/Reykjavik'],
    [-22.9, -68.2, 'America/Santiago'],
  ])('%d, %d: %s', async (latitude, longitude, zone) => {
    expect(await suggestZone(latitude, longitude)).toBe(zone);
  });

  it('takes a zone of whole hours at sea, at the poles too', async () => {
    expect(await suggestZone(0, -30)).toBe('Etc/GMT+2');
    expect(await suggestZone(90, 0)).toBe('Etc/GMT');
  });

  it.each([
    [91, 0],
    [0, 181],
    [Number.NaN, 0],
  ])('has none for %d, %d, which is no place', async (latitude, longitude) => {
    expect(await suggestZone(latitude, longitude)).toBeNull();
  });
});
