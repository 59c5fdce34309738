import { describe, expect, it } from 'vitest';
import { peopleReading } from '../../../core/readings/people-reading.ts';
import { smallPictures } from '../../../core/readings/small-picture.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { boxAt, cautionsFor } from '../support/cautions.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

const lantern = {
  kind: 'lantern',
  id: 'lantern',
  name: 'Lantern',
  output: { from: 'lumens', lumens: 200 },
  diameterMm: 20,
};
/** A lantern held 1.2 m up so far from the lens, in the middle of the picture; whoever holds it stands before or behind it. */
const lanternAt = (metres: number, aimNorth: number, more: object = {}): OnePass => ({
  camera: { position: [0, -metres, 1.2], aim: [0, 0, 1], focalLengthMm: 24 },
  lamps: [lantern],
  pass: { lampId: 'lantern', off: 5, waypoints: [{ position: [0, 0, 1.2], aim: [0, aimNorth, 1.2] }], ...more },
  frame: { seconds: 10, iso: 1600, aperture: 4 },
});
const told = (what: OnePass) => cautionsFor(what).filter(({ code }) => code === 'person-in-frame');
const readingOf = (what: OnePass) => {
  const setup = onePassSetup(what);
  const [picture] = smallPictures(buildWorld(setup, setup.schemes[0] as Scheme));
  return picture ? peopleReading(picture, -4) : null;
};

// half a stop over half a per cent of the picture: common practice, no published source
describe('people in the picture', () => {
  it('somebody behind their own lantern is lit by it, and throws a shadow on the grass', () => {
    const what = lanternAt(5, -9);
    const reading = readingOf(what);
    expect(reading?.changedShare).toBeGreaterThan(0.005);
    expect(told(what)).toHaveLength(1);
  });
  it('somebody before their lantern hides what it lights: darker, not brighter', () => {
    const reading = readingOf(lanternAt(5, 9));
    expect(reading?.changedShare).toBeGreaterThan(0.005);
    expect(reading?.darkerShare).toBeGreaterThan(0.9);
    expect(told(lanternAt(5, 9))).toHaveLength(1);
  });
  it('goes with the distance, at its limit: what is told has more than 0.5 %, what is not has less', () => {
    const shares = [4, 8, 16, 24, 32, 48].map((metres) => {
      const what = {
        ...lanternAt(metres, 9),
        subjects: [boxAt('wall', [0, 3, 0], [1.6, 0.2, 1.6])],
        ground: { finish: { reflectance: 0 } },
      };
      const share = readingOf(what)?.changedShare ?? 0;
      // the rule about single passes may have told of it, and is enough
      const [first] = told(what);
      if (first?.passId === undefined) expect(first !== undefined, `${metres} m, ${share}`).toBe(share > 0.005);
      return share;
    });
    expect(shares[0]).toBeGreaterThan(0.005);
    expect(shares.at(-1)).toBeLessThanOrEqual(0.005);
  });
  it('goes with the lamp on a stand, and in the dark', () => {
    expect(readingOf(lanternAt(5, 9, { held: 'stand' }))).toBeNull();
    expect(told(lanternAt(5, 9, { held: 'stand' }))).toEqual([]);
    expect(readingOf(lanternAt(5, 9, { levelPercent: 0 }))?.changedShare).toBe(0);
  });
  it('is the same whether or not people are drawn', () => {
    const what = lanternAt(5, 9);
    expect(readingOf({ ...what, camera: { ...what.camera, drawn: { holder: false } } })).toEqual(readingOf(what));
  });
});
