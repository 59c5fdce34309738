import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { body } from '../../../core/walk/body.ts';
import { boxAt } from '../support/cautions.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

const find = (what: OnePass, code: string) => {
  const setup = onePassSetup(what);
  return reportScheme(setup, setup.schemes[0] as Scheme).cautions.find((caution) => caution.code === code);
};

const camera = { position: [0, -10, 0.5], aim: [0, 0, 1.5] };
/** Held by someone who stands at the origin; the beam goes away from the lens. */
const held = { position: [0, body.reachMetres, 1], aim: [0, 9, 1] };
/** A marked 10 s is 2^(10/3) s, so a tenth of the exposure is 1.008 s. */
const tenth = 2 ** (10 / 3) / 10;

// about 10 % of the exposure: common practice, no published source (trade notes, 2.8)
describe('person-in-frame', () => {
  const bright = { skylight: { illuminanceLux: 0.5, temperatureKelvin: 6000 } };
  const darkest = { skylight: { illuminanceLux: 0.00001, temperatureKelvin: 6000 } };
  const inFrame = (off: number, place: object = bright, rest: Partial<OnePass> = {}) =>
    find({ camera, place, pass: { off, waypoints: [held] }, ...rest }, 'person-in-frame');

  it('appears past a tenth of the exposure before a bright sky, and goes below it', () => {
    const caution = inFrame(1.01 * tenth);
    expect(caution).toMatchObject({ severity: 'warning', passId: 'pass', limit: 0.1 });
    expect(caution?.value).toBeCloseTo(0.101, 6);
    expect(caution?.message).toMatch(/the lens sees you for 1\.0 s, at one place for 10 % of the exposure/);
    expect(caution?.message).toContain('what is behind you is lit');
    expect(inFrame(0.99 * tenth)).toBeUndefined();
  });

  it('says which subject you stand before, and none where you stand beside it', () => {
    const stone = (east: number) => ({ subjects: [boxAt('stone', [east, 4, 0], [1, 0.5, 2.5])] });
    expect(inFrame(9, bright, stone(0))?.message).toContain(
      // half a metre of you over a stone of one
      'You stand between the lens and “stone” and hide part of it.',
    );
    expect(inFrame(9, bright, stone(3))?.message).not.toContain('hide');
    // two metres before the lens one hides far more than the stone
    const near = { waypoints: [{ position: [0, body.reachMetres - 8, 1], aim: [0, 9, 1] }], off: 9 };
    const close = find({ camera, place: bright, pass: near, ...stone(0) }, 'person-in-frame');
    expect(close?.message).toContain('“stone” and hide it.');
    // right before it, or in its place, there is no picture left
    const at = { waypoints: [{ position: [0, body.reachMetres - 9.65, 1], aim: [0, 9, 1] }], off: 9 };
    const none = find({ camera, place: darkest, pass: at, ...stone(0) }, 'person-in-frame');
    expect(none).toMatchObject({ severity: 'danger', passId: 'pass' });
    expect(none?.message).toMatch(
      /you stand right before the lens and hide the picture for 9\.0 s, 89 % of the exposure/,
    );
  });

  it('is told of a walk out from the lens by what is seen of it after the first steps', () => {
    const out = [-10.4, -2].map((north, i) => ({
      time: 8 * i,
      position: [0, north + body.reachMetres, 1],
      aim: [0, 30, 1],
    }));
    const walk = find(
      { camera, place: bright, frame: { seconds: 30 }, pass: { off: 8, waypoints: out } },
      'person-in-frame',
    );
    // right before the lens for less than a tenth of 32 s
    expect(walk?.severity).toBe('warning');
    expect(walk?.message).toContain('what is behind you is lit');
  });

  // "only true against a dark background and with no light on you" (the same notes): -4 stops, lost in the night
  it('goes before the dark, however long, and comes back when another lamp lights you', () => {
    expect(inFrame(9, darkest)).toBeUndefined();
    expect(inFrame(9, { skylight: { illuminanceLux: 0, temperatureKelvin: 6000 } })).toBeUndefined();
    const other = {
      lamps: [
        {
          kind: 'torch',
          id: 'other',
          name: 'Other',
          output: { from: 'peak-candela', candela: 4000 },
          beam: { shape: 'open' },
        },
      ],
      passes: [
        {
          id: 'fill',
          name: 'Fill',
          lampId: 'other',
          held: 'stand',
          off: 9,
          waypoints: [{ position: [3, -9, 1], aim: [0, 0, 1] }],
        },
      ],
    };
    expect(inFrame(9, darkest, other)?.message).toContain('light falls on you');
    // before a black sky, seen from the ground
    const low = { camera: { position: [0, -10, 0.01], aim: [0, 0, 1.5] } };
    const black = { skylight: { illuminanceLux: 0, temperatureKelvin: 6000 } };
    expect(inFrame(9, black, { ...other, ...low })?.message).toContain('light falls on you');
  });

  it('begins where what is behind you is 4 stops under mid-grey', () => {
    // mid-grey of f/8 and ISO 400 is 10/400 = 0.65 L t / 64 (ISO 12232); an even sky of E lux has L = E / π
    const luxFor = (stops: number) => ((2 ** stops * (10 / 400) * 64) / 0.65 / (tenth * 10)) * Math.PI;
    const sky = (stops: number) => ({ skylight: { illuminanceLux: luxFor(stops), temperatureKelvin: 6000 } });
    // the lens looks up from the ground, so that nothing but sky is behind
    const low = { camera: { position: [0, -10, 0.01], aim: [0, 0, 1.5] } };
    expect(inFrame(5, sky(-3.8), low)).toBeDefined();
    expect(inFrame(5, sky(-4.2), low)).toBeUndefined();
  });

  it('goes for a lamp on a stand, and for somebody behind a wall', () => {
    expect(
      find({ camera, place: bright, pass: { off: 9, held: 'stand', waypoints: [held] } }, 'person-in-frame'),
    ).toBeUndefined();
    const wall = {
      id: 'wall',
      name: 'Wall',
      parts: [{ kind: 'box', position: [0, -1, 0], widthMetres: 3, depthMetres: 0.2, heightMetres: 2 }],
    };
    expect(inFrame(9, bright, { subjects: [wall] })).toBeUndefined();
  });

  it('goes for somebody who keeps moving: 15 m in 9 s', () => {
    const walk = [-7.5, 7.5].map((east, i) => ({
      time: 9 * i,
      position: [east, body.reachMetres, 1],
      aim: [east, 9, 1],
    }));
    expect(find({ camera, place: bright, pass: { off: 9, waypoints: walk } }, 'person-in-frame')).toBeUndefined();
  });
});

describe('person-shadow', () => {
  const wall = {
    id: 'wall',
    name: 'Wall',
    finish: { reflectance: 0.3 },
    parts: [{ kind: 'box', position: [0, 5, 0], widthMetres: 9, depthMetres: 0.2, heightMetres: 4 }],
  };
  /** A panel 8 m south of the wall lights a spot 1 m up; somebody stands between, so far aside, for so long of its 10 s. */
  const between = (aside: number, seconds: number, rest: object = {}, key: object = {}, ...more: object[]) =>
    find(
      {
        camera: { position: [0, -10, 1.5], aim: [0, 5, 1.5] },
        subjects: [wall, ...more],
        lamps: [
          {
            kind: 'torch',
            id: 'key',
            name: 'Key',
            output: { from: 'peak-candela', candela: 100 },
            beam: { shape: 'open' },
          },
        ],
        pass: {
          off: seconds,
          waypoints: [{ position: [aside + body.reachMetres, 1, 1], aim: [aside + 4, 1, 1] }],
          ...rest,
        },
        passes: [
          {
            id: 'key',
            name: 'Key',
            lampId: 'key',
            held: 'stand',
            off: 10,
            waypoints: [{ position: [0, -3, 1], aim: [0, 4.9, 1] }],
            ...key,
          },
        ],
      },
      'person-shadow',
    );

  it('appears where the body, 0.25 m to each side, is in the way, and goes beside it', () => {
    expect(between(0.24, 5)).toMatchObject({ passId: 'pass', severity: 'warning', value: 0.5, limit: 0.1 });
    expect(between(0.24, 5)?.message).toContain('between “Key” and what it lights, for 50 % of its time');
    expect(between(0.26, 5)).toBeUndefined();
  });
  it('begins past a tenth of the other lamp’s time', () => {
    expect(between(0, 1.02)).toBeDefined();
    expect(between(0, 0.98)).toBeUndefined();
  });
  it('goes when the one lamp is off before the other is on, for a stand, and where a wall stands before the lamp anyway', () => {
    expect(between(0, 5, {}, { on: 4 })).toBeDefined();
    expect(between(0, 5, {}, { on: 5 })).toBeUndefined();
    expect(between(0, 5, { held: 'stand' })).toBeUndefined();
    expect(between(0, 5, {}, { waypoints: [{ position: [0, 9, 1], aim: [0, 4.9, 1] }] })).toBeUndefined();
    // a board under the lens's line to the target (1.064 m high there) and over the lamp's (1 m)
    const board = (up: number) => boxAt('board', [0, 3, 0], [3, 0.02, up]);
    expect(between(0, 5, {}, {}, board(0.97))).toBeDefined();
    expect(between(0, 5, {}, {}, board(1.03))).toBeUndefined();
  });
});
