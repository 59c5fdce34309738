import { describe, expect, it } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, errorOf, expectError, type Loose } from './good-setup.ts';

const passOf = (setup: Loose) => setup.schemes[0].frames[1].passes[0];
const pass = 'schemes[0].frames[1].passes[0]';
const put =
  (fields: object) =>
  (target: Loose): void => {
    Object.assign(target, fields);
  };

const cases: readonly (readonly [name: string, change: (setup: Loose) => void, path: string, words: string])[] = [
  [
    'cloth without stops',
    (s) => put({ cloth: {} })(passOf(s)),
    `${pass}.cloth.stops`,
    'is missing; must be a number in stops',
  ],
  ['cloth of 17 stops', (s) => put({ cloth: { stops: 17 } })(passOf(s)), `${pass}.cloth.stops`, 'at most 16 stops'],
  [
    'cloth that gives light',
    (s) => put({ cloth: { stops: -1 } })(passOf(s)),
    `${pass}.cloth.stops`,
    'at least 0 stops',
  ],
  [
    'cloth that spreads more than all',
    (s) => put({ cloth: { stops: 1, spreadShare: 1.1 } })(passOf(s)),
    `${pass}.cloth.spreadShare`,
    'at most 1',
  ],
  ['a snoot of nought', (s) => put({ snootDegrees: 0 })(passOf(s)), `${pass}.snootDegrees`, 'at least 1 degrees'],
  ['a snoot of 181', (s) => put({ snootDegrees: 181 })(passOf(s)), `${pass}.snootDegrees`, 'at most 180 degrees'],
  ['drawn as a word', (s) => put({ drawn: 'all' })(s.camera), 'camera.drawn', 'must be an object'],
  ['noise of 1', (s) => put({ drawn: { noise: 1 } })(s.camera), 'camera.drawn.noise', 'must be true or false'],
  [
    'an unknown response',
    (s) => put({ drawn: { response: 'film' } })(s.camera),
    'camera.drawn.response',
    'must be one of "soft", "plain"',
  ],
  [
    'an unknown sharpness',
    (s) => put({ sharpness: 'print' })(s.camera),
    'camera.sharpness',
    'must be one of "sensor", "pixel"',
  ],
  [
    'an empty well',
    (s) => put({ sensor: { fullWellElectrons: 0 } })(s.camera),
    'camera.sensor.fullWellElectrons',
    'at least 500 electrons',
  ],
  ['three bounces', (s) => put({ bounces: 3 })(s), 'bounces', 'at most 2'],
  ['half a bounce', (s) => put({ bounces: 0.5 })(s), 'bounces', 'must be a whole number'],
  ['a night level of +2', (s) => put({ nightLevelStops: 2 })(s), 'nightLevelStops', 'at most 1 stops'],
];

describe('parseSetup on cloth, snoots and what is drawn', () => {
  it.each(cases)('%s: names the field and what was expected', (_, change, path, words) => {
    expectError(errorOf(changed(change)), 'field', path, words);
  });

  it('fills in what is drawn, the sensor’s electrons, bounces, night level, cloth and snoot', () => {
    const setup = parseSetup(changed(() => undefined));
    expect(setup).toMatchObject({ bounces: 0, nightLevelStops: -1.5, measuredBeams: [] });
    expect(setup.camera).toMatchObject({
      sharpness: 'sensor',
      drawn: { focusBlur: false, vignetting: false, noise: false, response: 'soft' },
      sensor: { fullWellElectrons: 72000, baseIso: 100, readNoiseElectrons: 2 },
    });
    expect(setup.schemes[0]?.frames[1]?.passes[0]).toMatchObject({
      cloth: null,
      snootDegrees: null,
      strokes: 1,
      dwell: 'typed',
    });
    const cloth = changed((s) => put({ cloth: { stops: 1 } })(passOf(s)));
    expect(parseSetup(cloth).schemes[0]?.frames[1]?.passes[0]?.cloth).toEqual({ stops: 1, spreadShare: 0 });
  });
});
