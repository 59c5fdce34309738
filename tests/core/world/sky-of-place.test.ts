import { describe, expect, it } from 'vitest';
import { place as placeSchema } from '../../../core/setup/schema/place.ts';
import { hourInputOf, plainAir, skyInputOf } from '../../../core/world/sky-of-place.ts';

const place = placeSchema.parse({
  latitudeDegrees: -33,
  longitudeDegrees: 149,
  localTime: '2026-08-11T20:30',
  timeZone: 'Australia/Sydney',
  northDegrees: 90,
  sky: { zenithMagnitude: 21, extinctionMagnitudes: 0.15, thinCloudDepth: 0.3 },
});

describe('skyInputOf', () => {
  it('turns degrees to radians and the clock of the place to an instant: Sydney is ten hours ahead in August', () => {
    expect(skyInputOf(place)).toEqual({
      latitudeRadians: expect.closeTo((-33 * Math.PI) / 180, 12),
      longitudeRadians: expect.closeTo((149 * Math.PI) / 180, 12),
      utcMilliseconds: Date.UTC(2026, 7, 11, 10, 30),
      northRadians: expect.closeTo(Math.PI / 2, 12),
      zenithMagnitude: 21,
      extinctionMagnitudes: 0.15,
      thinCloudDepth: 0.3,
    });
  });

  it('is null where the light is plain; the hour is known all the same, in clear dark air', () => {
    const plain = { ...place, sky: null };
    expect(skyInputOf(plain)).toBeNull();
    expect(hourInputOf(plain)).toMatchObject({ utcMilliseconds: Date.UTC(2026, 7, 11, 10, 30), ...plainAir });
  });

  it('is null in a zone that nobody knows', () => {
    expect(skyInputOf({ ...place, timeZone: 'No/Where' })).toBeNull();
  });

  it('plain air is what the schema gives a sky without numbers', () => {
    expect(placeSchema.parse({ sky: {} }).sky).toEqual(plainAir);
  });
});
