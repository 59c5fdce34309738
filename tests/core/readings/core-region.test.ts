import { describe, expect, it } from 'vitest';
import { apply } from '../../../core/colour/matrix.ts';
import { coreRegion } from '../../../core/readings/core-region.ts';
import { seenSkyOf } from '../../../core/readings/frame-sky.ts';
import { altitudeOf, trueBearing } from '../../../core/sky/frames-body.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { cameraToward, hourPlace } from '../support/hours.ts';
import { onlyPassOf } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';
import { wallAt } from '../support/sky-night.ts';

// a March morning at latitude -33: the core stands low in the east, in reach of a wall
const late = hourPlace('2026-03-10T02:00');
const worldOf = (camera: object, subjects: readonly object[] = [], place: object = late) => {
  const { world, worldFrame } = onlyPassOf(
    onePassSetup({ camera, place, subjects, pass: { waypoints: [{ position: [0, 2, 1], aim: [0, 9, 1] }] } }),
  );
  const seen = seenSkyOf(worldFrame);
  if (!seen) throw new Error('no sky of an hour');
  return { world, state: skyAt(seen.input) };
};
const centre = apply(worldOf({ position: [0, 0, 1.5], aim: [0, 9, 3] }).state.worldFromGalactic, [1, 0, 0]);
const [bearing, altitude] = [degreesFromRadians(trueBearing(centre, 0)), degreesFromRadians(altitudeOf(centre))];
const read = (camera: object, subjects: readonly object[] = [], place: object = late) => {
  const { world, state } = worldOf(camera, subjects, place);
  return coreRegion(world, state);
};

describe('coreRegion', () => {
  it('stands ten to forty degrees up, so that all of it can be in a picture over the horizon', () => {
    expect(altitude).toBeGreaterThan(11);
    expect(altitude).toBeLessThan(40);
  });

  it('in the middle of a wide picture is seen whole', () => {
    const open = read(cameraToward(bearing, altitude));
    expect(open).toMatchObject({
      isCentreInPicture: true,
      isCentreSeen: true,
      inPictureShare: 1,
      hiddenShare: 0,
      hiddenBy: null,
    });
    expect(open.open).toHaveLength(91);
  });

  it('behind a wall as high as its middle is hidden by half, by the wall (abs 0.1)', () => {
    const hidden = read(cameraToward(bearing, altitude), [wallAt(bearing, altitude + 0.5)]);
    expect(hidden).toMatchObject({ isCentreInPicture: true, isCentreSeen: false, inPictureShare: 1, hiddenBy: 0 });
    expect(Math.abs((hidden.hiddenShare ?? 0) - 0.5)).toBeLessThan(0.1);
  });

  it('as it rises is hidden by the land out to the horizon, from high up too, past where the ground was laid out', () => {
    // its middle, 0.3 degrees up by the sphere, is seen 0.8 up: 0.08 of its radius, which leaves 0.45 of the disc below
    const bearingThen = (125 * Math.PI) / 180;
    const camera = { position: [0, 0, 500], aim: [10 * Math.sin(bearingThen), 10 * Math.cos(bearingThen), 500] };
    const rising = read({ ...camera, focalLengthMm: 24 }, [], hourPlace('2026-03-10T00:20'));
    expect(rising).toMatchObject({ isCentreInPicture: true, isCentreSeen: true, inPictureShare: 1, hiddenBy: -1 });
    expect(Math.abs((rising.hiddenShare ?? 0) - 0.45)).toBeLessThan(0.06);
  });

  it('behind the camera is in no picture', () => {
    expect(read(cameraToward(bearing + 180, 10))).toMatchObject({
      isCentreInPicture: false,
      isCentreSeen: false,
      inPictureShare: 0,
      hiddenShare: null,
    });
  });
});
