import { describe, expect, it } from 'vitest';
import { midGreyRatioPerLuminanceSecond } from '../../../core/camera/exposure.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { PersonReading } from '../../../core/readings/person-reading.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { body } from '../../../core/walk/body.ts';
import { readPass } from '../support/read-pass.ts';
import { type OnePass, onePassSetup } from '../support/scenes.ts';

const { heightMetres: tall, radiusMetres: radius, reachMetres: reach } = body;
/** 36 x 24 mm over 24 mm: at 10 m the picture is 15 m wide and 10 m high. */
const camera = { position: [0, -10, 1], aim: [0, 0, 1] };
const exposure = { fNumber: 8, iso: 400 };
/** A marked 10 s is 2^(10/3) = 10.08 s. */
const shutterSeconds = 2 ** (10 / 3);

/** A lamp before a body whose feet are at a place, so many metres south of the lamp or, turned round, north of it. */
const heldAt = (east: number, north: number, toward: 'south' | 'north' = 'south', up = 1) => {
  const s = toward === 'south' ? -1 : 1;
  return { position: [east, north + s * reach, up], aim: [east, north + s * 9, up] };
};

const read = (what: Partial<OnePass> & Pick<OnePass, 'pass'>): PersonReading => {
  const { person } = readPass(onePassSetup({ camera, ...what }));
  if (!person) throw new Error('somebody holds the lamp');
  return person;
};
const wall = (heightMetres: number, rest: object = {}) => ({
  id: 'wall',
  name: 'Wall',
  finish: { reflectance: 0.18 },
  parts: [{ kind: 'box', position: [0, -2, 0], widthMetres: 6, depthMetres: 0.2, heightMetres, ...rest }],
});

describe('personReading, what is seen', () => {
  it('is null for a lamp on a stand', () => {
    const pass = { held: 'stand', waypoints: [heldAt(0, 0)] };
    expect(readPass(onePassSetup({ camera, pass })).person).toBeNull();
  });

  it('sees a body in the open for the time its lamp is on: 3 s of a marked 10 s, which are 10.08 s', () => {
    const person = read({ pass: { on: 2, off: 5, waypoints: [heldAt(0, 0)] } });
    expect(person.visibleSeconds).toBeCloseTo(3, 12);
    expect(person.exposureShare).toBeCloseTo(3 / shutterSeconds, 12);
    expect(person.stillShare).toBeCloseTo(3 / shutterSeconds, 12);
  });

  it('covers the outline of a capsule over the picture: (2 r (h − 2 r) + π r²) / 150 m² at 10 m (5 %)', () => {
    const { frameShare } = read({ pass: { waypoints: [heldAt(0, 0)] } });
    const expected = (2 * radius * (tall - 2 * radius) + Math.PI * radius ** 2) / 150;
    expect(Math.abs(frameShare / expected - 1)).toBeLessThan(0.05);
  });

  it('of a body whose squares don’t come out even, 2.8 m off, too, where the picture is 4.2 m by 2.8 m (5 %)', () => {
    // its middle at the lens's height, so that all of it is in sight
    const level = { position: [0, -10, tall / 2], aim: [0, 0, tall / 2] };
    const { frameShare } = read({ camera: level, pass: { waypoints: [heldAt(0, -7.2, 'north')] } });
    const expected = (2 * radius * (tall - 2 * radius) + Math.PI * radius ** 2) / (4.2 * 2.8);
    expect(Math.abs(frameShare / expected - 1)).toBeLessThan(0.05);
  });

  it('a quarter of it at twice the distance (2 %)', () => {
    const [near, far] = [0, 10].map((north) => read({ pass: { waypoints: [heldAt(0, north)] } }).frameShare);
    expect(Math.abs((far as number) / (near as number) - 1 / 4)).toBeLessThan(0.02 / 4);
  });

  // the lens is 1 m up and 8.1 m from the wall's back, 10 m from the body: a wall of h hides it up to 1 + (h - 1) 10 / 8.1
  it.each([
    [1.65, 0],
    [1.2, tall - (1 + (0.2 * 10) / 8.1)],
    [1, tall - 1],
  ])('a wall of %d m before it leaves %d m of it in sight', (height, seen) => {
    const { visibleSeconds, frameShare } = read({ pass: { waypoints: [heldAt(0, 0)] }, subjects: [wall(height)] });
    expect(visibleSeconds > 0).toBe(seen > 0);
    // half a metre wide but for the round top, cut into squares of an eighth of a metre
    expect(Math.abs(frameShare * 150 - seen * 2 * radius)).toBeLessThan(0.1);
  });

  // 0.75 m to each side for each metre away: the edge of the picture lies 7.5 m east at 10 m
  it.each([
    [7.2, 1],
    [7.5, 0.5],
    [7.8, 0],
  ])('%d m aside %d of it is inside the picture', (east, inside) => {
    const whole = read({ pass: { waypoints: [heldAt(0, 0, 'north')] } }).frameShare;
    const { frameShare } = read({ pass: { waypoints: [heldAt(east, 0, 'north')] } });
    // what faces the lens so far aside is drawn wider by 1 / cos, as in any straight picture
    const wider = Math.hypot(east, 10) / 10;
    expect(Math.abs(frameShare / whole / wider - inside)).toBeLessThan(0.05);
  });

  it('walking aside, covers one place as long as it takes to walk its own width', () => {
    // 17 m in 10 s: the body, 0.5 m wide, stands at one place for 0.29 s; looked at every 1 m
    const walk = [-8.5, 8.5].map((east, i) => ({ time: 10 * i, ...heldAt(east, 0) }));
    const fast = read({ pass: { off: 10, waypoints: walk } });
    expect(fast.visibleSeconds).toBeGreaterThan(8);
    expect(fast.stillShare).toBeLessThanOrEqual(1 / 17);
    // 1.7 m in 10 s: 0.5 m in 2.9 s, looked at every 0.1 m, the edges of the outline included
    const slow = [-0.85, 0.85].map((east, i) => ({ time: 10 * i, ...heldAt(east, 0) }));
    const { stillShare } = read({ pass: { off: 10, waypoints: slow } });
    expect(Math.abs(stillShare * shutterSeconds - 10 * (0.5 / 1.7))).toBeLessThan(10 / 17 + 0.1);
  });

  // the camera is 10 m south of the middle: 0.35 m before it, in its place, and a metre before it
  it.each([
    [-9.65, 1],
    [-10, 1],
    [-9, 0],
  ])('at %d m north it hides the whole picture: %d', (north, atLens) => {
    const person = read({ pass: { on: 2, off: 5, waypoints: [heldAt(0, north, 'north')] } });
    expect(person.atLensSeconds).toBeCloseTo(3 * atLens, 12);
    if (!atLens) expect(person.frameShare).toBeLessThan(0.9);
    else expect(person).toMatchObject({ frameShare: 1, visibleSeconds: person.atLensSeconds });
  });

  it('a metre before the lens, where it covers 5 m at 10 m, hides the whole of a thin post there', () => {
    const post = {
      id: 'post',
      name: 'Post',
      parts: [{ kind: 'box', position: [0, 0, 0], widthMetres: 0.3, depthMetres: 0.3, heightMetres: 1.2 }],
    };
    const person = (east: number) => read({ pass: { waypoints: [heldAt(east, -9, 'north')] }, subjects: [post] });
    expect(person(0)).toMatchObject({ hidesId: 'post', hiddenShare: 1 });
    // aside by more than its own half width beside the post’s
    expect(person(0.6)).toMatchObject({ hidesId: null, hiddenShare: 0 });
  });

  it('stands on what lies under it: on a block a metre high its head is in sight over a wall that hides it below', () => {
    const block = (heightMetres: number) => ({
      id: 'block',
      name: 'Block',
      parts: [{ kind: 'box', widthMetres: 2, depthMetres: 2, heightMetres }],
    });
    const seen = (heightMetres: number) =>
      read({
        pass: { waypoints: [heldAt(0, 0, 'south', heightMetres + 1)] },
        subjects: [wall(1.65), block(heightMetres)],
      }).visibleSeconds;
    expect([seen(1) > 0, seen(0.01) > 0]).toEqual([true, false]);
  });
});

describe('personReading, the bare lamp', () => {
  it('is seen for its whole time before a body that faces the lens, and not behind one that faces away', () => {
    expect(read({ pass: { off: 4, waypoints: [heldAt(0, 0, 'south')] } }).lampSeconds).toBeCloseTo(4, 12);
    expect(read({ pass: { off: 4, waypoints: [heldAt(0, 0, 'north')] } }).lampSeconds).toBe(0);
  });
  it('is seen over the head of one who holds it high', () => {
    expect(read({ pass: { off: 4, waypoints: [heldAt(0, 0, 'north', 2.3)] } }).lampSeconds).toBeCloseTo(4, 12);
  });
});

describe('personReading, levels', () => {
  const sky = { skylight: { illuminanceLux: 0.4, temperatureKelvin: 6000 } };
  const stopsOf = (luminanceSeconds: number) => Math.log2(luminanceSeconds * midGreyRatioPerLuminanceSecond(exposure));

  it('behind the body: an even sky of E lux has E / π cd/m² all over, for the whole exposure (0.15 stop: the feet have the ground behind them)', () => {
    const low = { position: [0, -10, 0.05], aim: [0, 0, 1] };
    const { backgroundStops } = read({ camera: low, place: sky, pass: { waypoints: [heldAt(0, 0)] } });
    expect(Math.abs((backgroundStops ?? 0) - stopsOf((0.4 / Math.PI) * shutterSeconds))).toBeLessThan(0.15);
  });

  const second = (rest: object = {}) => ({
    lamps: [
      {
        kind: 'torch',
        id: 'other',
        name: 'Other',
        output: { from: 'peak-candela', candela: 400 },
        beam: { shape: 'open' },
        diameterMm: 2,
      },
    ],
    passes: [
      {
        id: 'second',
        name: 'Second',
        lampId: 'other',
        held: 'stand',
        off: 10,
        // beside the lens
        waypoints: [{ position: [0, -10, 1], aim: [0, 0, 1] }],
        ...rest,
      },
    ],
    place: { skylight: { illuminanceLux: 0, temperatureKelvin: 6000 } },
  });

  it('on the body: a lamp at the lens gives I / d² lux, dark clothes return 5 %, a round body π/4 of that on average (0.3 stop)', () => {
    const { bodyStops } = read({ ...second(), pass: { on: 1, off: 4, waypoints: [heldAt(0, 0)] } });
    const lux = 400 / 9.75 ** 2;
    // only the 3 s that its own lamp is on count
    const expected = stopsOf(((lux * body.reflectance.dark) / Math.PI) * (Math.PI / 4) * 3);
    expect(Math.abs((bodyStops ?? 0) - expected)).toBeLessThan(0.3);
  });

  it('in haze a lamp at the lens lights the body twice through it: exp(-2 sigma d) (0.02 stop)', () => {
    const pass = { on: 1, off: 4, waypoints: [heldAt(0, 0)] };
    const { place, ...lamps } = second();
    const [clear, hazy] = [null, 0.1].map(
      (hazeVisibilityKm) => read({ ...lamps, place: { ...place, hazeVisibilityKm }, pass }).bodyStops ?? 0,
    ) as [number, number];
    const sigma = Math.log(20) / 100;
    expect(Math.abs(hazy - clear - Math.log2(Math.exp(-2 * sigma * 9.75)))).toBeLessThan(0.02);
  });

  it('in dense haze under an even sky the sky behind stays as bright, and the body comes out between (0.05 stop)', () => {
    const hazeVisibilityKm = 0.1;
    const place = { ...sky, hazeVisibilityKm };
    // from below, so that the sky is behind all of it
    const low = { position: [0, -10, 0.05], aim: [0, 0, 1] };
    const pass = { on: 0, off: 10, waypoints: [heldAt(0, 0)] };
    const [clear, hazy] = [sky, place].map((each) => read({ camera: low, place: each, pass })) as [
      PersonReading,
      PersonReading,
    ];
    const skyStops = stopsOf((0.4 / Math.PI) * shutterSeconds);
    expect(Math.abs((hazy.backgroundStops ?? 0) - skyStops)).toBeLessThan(0.15);
    const through = Math.exp((-Math.log(20) / 100) * 9.8);
    const body = through * 2 ** (clear.bodyStops ?? 0) + (1 - through) * 2 ** skyStops;
    expect(Math.abs((hazy.bodyStops ?? 0) - Math.log2(body))).toBeLessThan(0.05);
  });

  it('light clothes return 0.44 / 0.05 as much: 3.1 stops more', () => {
    const setup = onePassSetup({ camera, ...second(), pass: { waypoints: [heldAt(0, 0)] } });
    const [dark, light] = (['dark', 'light'] as const).map((clothes) => {
      const dressed = { ...setup, walking: { ...setup.walking, clothes } };
      return reportScheme(dressed, dressed.schemes[0] as Scheme).frames[0]?.passes[0]?.person?.bodyStops;
    });
    expect((light ?? 0) - (dark ?? 0)).toBeCloseTo(Math.log2(0.44 / 0.05), 9);
  });

  it('a lamp that is off while the body is there does not light it', () => {
    const pass = { on: 1, off: 4, waypoints: [heldAt(0, 0, 'north')] };
    expect(read({ ...second({ on: 5 }), pass }).bodyStops).toBeNull();
  });
});
