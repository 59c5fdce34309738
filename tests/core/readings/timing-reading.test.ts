import { describe, expect, it } from 'vitest';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { frameOrders } from '../../../core/readings/frame-order.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { detourRatio } from '../../../core/walk/walk.ts';
import { onePassSetup } from '../support/scenes.ts';

const reach = 0.45;
const camera = { position: [0, -20, 1.5], aim: [0, 0, 1.5] };

/** A pass of a lamp at a place, aimed 5 m north of it: its holder stands `reach` south of it. */
const passAt = (id: string, east: number, on: number, off: number, rest: object = {}) => ({
  id,
  name: id,
  lampId: 'torch',
  on,
  off,
  waypoints: [{ position: [east, 0, 1], aim: [east, 5, 1] }],
  ...rest,
});

interface Frames {
  readonly seconds: number;
  readonly delaySeconds?: number;
  readonly iso?: number;
  readonly passes: readonly object[];
}

const setupOf = (frames: readonly Frames[], walking: object = {}, subjects: readonly object[] = []): Setup => {
  const setup = onePassSetup({ camera, subjects, pass: passAt('first', 0, 0, 1) });
  const scheme = setup.schemes[0] as Scheme;
  const [frame] = scheme.frames;
  const [pass] = frame?.passes ?? [];
  return {
    ...setup,
    walking: { ...setup.walking, ...walking },
    schemes: [
      {
        ...scheme,
        frames: frames.map((own, f) => ({
          ...(frame as Scheme['frames'][number]),
          ...own,
          id: `f${f + 1}`,
          passes: own.passes.map((each) => ({ ...(pass as object), ...each }) as NonNullable<typeof pass>),
        })),
      },
    ],
  };
};

const timingsOf = (setup: Setup) =>
  reportScheme(setup, setup.schemes[0] as Scheme).frames.map(({ passes }) => passes.map(({ timing }) => timing));

describe('frameOrders', () => {
  it('counts from the first shutter: real shutter times, each delay before its frame (15 s is 16, 12 s is 12)', () => {
    const orders = frameOrders(
      setupOf([
        { seconds: 12, delaySeconds: 2, passes: [] },
        { seconds: 15, delaySeconds: 10, passes: [] },
        { seconds: 60, delaySeconds: 0, passes: [] },
      ]).schemes[0] as Scheme,
    );
    expect(orders).toEqual([
      { number: 1, startSeconds: 0, endSeconds: 12 },
      { number: 2, startSeconds: 22, endSeconds: 38 },
      { number: 3, startSeconds: 38, endSeconds: 98 },
    ]);
  });
});

describe('timing of passes', () => {
  it('takes the straight way, a fifth longer, at the speed that is set: 10 m aside, 12 m on foot', () => {
    const setup = setupOf([{ seconds: 40, passes: [passAt('a', 0, 1, 3), passAt('b', 10, 30, 32)] }], {
      metresPerSecond: 0.5,
    });
    const [a, b] = timingsOf(setup)[0] ?? [];
    expect(a).toMatchObject({ walkSeconds: null, slackSeconds: null });
    expect(b?.walkSeconds).toBeCloseTo((10 * detourRatio) / 0.5, 9);
    expect(b?.slackSeconds).toBeCloseTo(30 - 3 - 24, 9);
  });

  it('goes from where one stands behind one lamp to where one stands behind the other (arm’s reach, 0.45 m)', () => {
    const turned = passAt('b', 10, 30, 32, { waypoints: [{ position: [10, 0, 1], aim: [10, -5, 1] }] });
    const [, b] =
      timingsOf(setupOf([{ seconds: 40, passes: [passAt('a', 0, 1, 3), turned] }], { metresPerSecond: 1 }))[0] ?? [];
    expect(b?.walkSeconds).toBeCloseTo(detourRatio * Math.hypot(10, 2 * reach), 9);
  });

  it('follows the clock, not the list, and counts rest of frame, delay and time before the lamp goes on', () => {
    const frames = [
      { seconds: 12, passes: [passAt('late', 4, 8, 10), passAt('early', 0, 1, 2)] },
      { seconds: 12, delaySeconds: 7, passes: [passAt('next', 8, 3, 5)] },
    ];
    const [first, second] = timingsOf(setupOf(frames, { metresPerSecond: 1 }));
    const [late, early] = first ?? [];
    expect(early?.walkSeconds).toBeNull();
    expect(late?.slackSeconds).toBeCloseTo(8 - 2 - 4 * detourRatio, 9);
    expect(second?.[0]?.slackSeconds).toBeCloseTo(12 - 10 + 7 + 3 - 4 * detourRatio, 9);
  });

  it('goes by way of the camera to a frame that is set otherwise, in the delay of that frame', () => {
    const frames = [
      { seconds: 12, passes: [passAt('a', 4, 1, 2)] },
      { seconds: 12, delaySeconds: 40, iso: 3200, passes: [passAt('b', 4, 3, 5)] },
      { seconds: 12, delaySeconds: 7, iso: 3200, passes: [passAt('c', 10, 3, 5)] },
    ];
    const [, [b] = [], [c] = []] = timingsOf(setupOf(frames, { metresPerSecond: 1 }));
    // from 0.45 m behind the lens, 20 m south of the lamp, to as far behind the lamp
    expect(b?.walkSeconds).toBeCloseTo(detourRatio * Math.hypot(4, 20), 9);
    expect(b?.slackSeconds).toBeCloseTo(40 + 3 - detourRatio * Math.hypot(4, 20), 9);
    // the third is set as the second: straight on
    expect([b?.isFromCamera, c?.isFromCamera]).toEqual([true, false]);
    expect(c?.walkSeconds).toBeCloseTo(6 * detourRatio, 9);
    expect(c?.slackSeconds).toBeCloseTo(12 - 5 + 7 + 3 - 6 * detourRatio, 9);
  });

  it('a moving pass is left where it ends', () => {
    const walked = passAt('a', 0, 1, 5, {
      waypoints: [
        { time: 1, position: [0, 0, 1], aim: [0, 5, 1] },
        { time: 5, position: [6, 0, 1], aim: [6, 5, 1] },
      ],
    });
    const [, b] =
      timingsOf(setupOf([{ seconds: 40, passes: [walked, passAt('b', 10, 30, 32)] }], { metresPerSecond: 1 }))[0] ?? [];
    expect(b?.walkSeconds).toBeCloseTo(4 * detourRatio, 9);
  });

  it('nobody walks to a stand, and the way leads past it', () => {
    const stand = passAt('stand', 50, 4, 6, { held: 'stand' });
    const [, s, b] =
      timingsOf(
        setupOf([{ seconds: 40, passes: [passAt('a', 0, 1, 3), stand, passAt('b', 10, 30, 32)] }], {
          metresPerSecond: 1,
        }),
      )[0] ?? [];
    expect(s).toEqual({
      visibleSeconds: 0,
      walkSeconds: null,
      isFromCamera: false,
      slackSeconds: null,
      roundHazards: [],
    });
    expect(b?.slackSeconds).toBeCloseTo(27 - 10 * detourRatio, 9);
  });

  it('goes round a wall that stands between: by its end, 0.3 m clear (Pythagoras, 5 % for the rounding of the corner)', () => {
    const wall = {
      id: 'wall',
      name: 'Wall',
      parts: [{ kind: 'box', position: [5, 0, 0], widthMetres: 0.4, depthMetres: 12, heightMetres: 2 }],
    };
    const passes = [passAt('a', 0, 1, 3), passAt('b', 10, 30, 32)];
    const [, b] = timingsOf(setupOf([{ seconds: 40, passes }], { metresPerSecond: 1 }, [wall]))[0] ?? [];
    // feet lie 0.45 m south of the lamps, so the wall's southern end, 6 m south, is the nearer one
    const round = detourRatio * (2 * Math.hypot(4.8, 6 - reach) + 0.4);
    expect(b?.walkSeconds).toBeGreaterThan(round);
    expect(b?.walkSeconds).toBeLessThan(round * 1.05 + 0.3);
  });

  it('steps over a low wall and walks under a high beam', () => {
    const across = (position: readonly number[], heightMetres: number) => ({
      id: 'bar',
      name: 'Bar',
      parts: [{ kind: 'box', position, widthMetres: 0.4, depthMetres: 12, heightMetres }],
    });
    const passes = [passAt('a', 0, 1, 3), passAt('b', 10, 30, 32)];
    const straight = 10 * detourRatio;
    for (const [bar, isFree] of [
      [across([5, 0, 0], 0.29), true],
      [across([5, 0, 0], 0.31), false],
      [across([5, 0, 1.76], 1), true],
      [across([5, 0, 1.74], 1), false],
    ] as const) {
      const [, b] = timingsOf(setupOf([{ seconds: 40, passes }], { metresPerSecond: 1 }, [bar]))[0] ?? [];
      if (isFree) expect(b?.walkSeconds).toBeCloseTo(straight, 9);
      else expect(b?.walkSeconds).toBeGreaterThan(straight + 1);
    }
  });

  it('on request goes round behind the camera where both stand beside its picture', () => {
    // 36 mm over 24 mm: 0.75 m to each side for each metre away, so that 20 m away 18 m aside is outside
    const passes = [passAt('a', -18, 1, 3), passAt('b', 18, 30, 32)];
    const walkOf = (keepsOutOfPicture: boolean) =>
      timingsOf(setupOf([{ seconds: 40, passes }], { metresPerSecond: 1, keepsOutOfPicture }))[0]?.[1]?.walkSeconds;
    expect(walkOf(false)).toBeCloseTo(36 * detourRatio, 9);
    expect(walkOf(true)).toBeCloseTo(2 * Math.hypot(18, 20 - reach) * detourRatio, 6);
  });

  it('stands on a deck, and walks along it over its boards', () => {
    const boards = Array.from({ length: 40 }, (_, k) => ({
      kind: 'box',
      position: [0.3 * k, 0, 0.75],
      widthMetres: 0.28,
      depthMetres: 3,
      heightMetres: 0.05,
    }));
    const deck = { id: 'deck', name: 'Deck', parts: boards };
    const high = (id: string, east: number, on: number, off: number) =>
      passAt(id, east, on, off, { waypoints: [{ position: [east, 0, 2], aim: [east, 5, 2] }] });
    const passes = [high('a', 0, 1, 3), high('b', 10.5, 30, 32)];
    const [, b] = timingsOf(setupOf([{ seconds: 40, passes }], { metresPerSecond: 1 }, [deck]))[0] ?? [];
    expect(b?.walkSeconds).toBeCloseTo(10.5 * detourRatio, 9);
  });

  it('is null where no way leads out, and there is no caution; a doorway 1 m wide is one', () => {
    const side = (id: string, position: readonly number[], turnDegrees: number, openings: readonly object[] = []) => ({
      id,
      name: id,
      position,
      turnDegrees,
      parts: [{ kind: 'wall', widthMetres: 6.4, thicknessMetres: 0.4, heightMetres: 2.5, openings }],
    });
    const door = [{ acrossMetres: 0, sillMetres: 0, widthMetres: 1, heightMetres: 2 }];
    const house = (openings: readonly object[]) => [
      side('north', [0, 3, 0], 0),
      side('south', [0, -3, 0], 0),
      side('east', [3, 0, 0], 90, openings),
      side('west', [-3, 0, 0], 90),
    ];
    const read = (openings: readonly object[]) => {
      const frames = [{ seconds: 40, passes: [passAt('a', 0, 1, 3), passAt('b', 12, 4, 5)] }];
      const setup = setupOf(frames, { metresPerSecond: 1 }, house(openings));
      const { frames: read, cautions } = reportScheme(setup, setup.schemes[0] as Scheme);
      return { timing: read[0]?.passes[1]?.timing, codes: cautions.map(({ code }) => code) };
    };
    const shut = read([]);
    expect(shut.timing).toMatchObject({ walkSeconds: null, slackSeconds: null });
    expect(shut.codes).not.toContain('cannot-walk');
    const open = read(door);
    expect(open.timing?.walkSeconds).toBeGreaterThan(12 * detourRatio - 1e-9);
    expect(open.timing?.walkSeconds).toBeLessThan(12.2 * detourRatio);
    expect(open.codes).toContain('cannot-walk');
  });
});
