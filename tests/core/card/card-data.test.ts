import { describe, expect, it } from 'vitest';
import { cardData } from '../../../core/card/card-data.ts';
import type { CardRow } from '../../../core/card/card-row.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { boxAt } from '../support/cautions.ts';
import { onePassSetup } from '../support/scenes.ts';
import { atClock, cardOf, passFrom, stoneSetup } from './card-setups.ts';

const withFrames = (setup: Setup, change: (frame: Frame) => readonly Frame[]): Setup => {
  const [scheme] = setup.schemes as [Scheme];
  return { ...setup, schemes: [{ ...scheme, frames: scheme.frames.flatMap(change) }] };
};

describe('cardData, rows', () => {
  it('counts clock, degrees and paces from the mark, camera at six', () => {
    const { rows, mark, camera } = cardOf(
      stoneSetup(passFrom('right', 2.5, 6, 0.5), passFrom('left', 9, 7.5, 1.4, { on: 4, off: 6 })),
    );
    expect(mark.subjectName).toBe('stone');
    expect(mark.place[0]).toBeCloseTo(0, 9);
    expect(mark.place[1]).toBeCloseTo(0, 9);
    expect(rows.map(({ start }) => start.clock)).toEqual(['2:30', '9:00']);
    // 2:30 is three and a half hours of 30 degrees round from six
    expect(rows[0]?.start.roundDegrees).toBeCloseTo(105, 6);
    expect(rows[1]?.start.roundDegrees).toBeCloseTo(-90, 6);
    // paces of 0.75 m
    expect(rows[0]?.start.paces).toBeCloseTo(8, 9);
    expect(rows[1]?.start.paces).toBeCloseTo(10, 9);
    expect(rows.map(({ start }) => start.heightWord)).toEqual(['knee', 'chest']);
    expect(camera.distanceMetres).toBeCloseTo(9, 9);
    expect(camera.paces).toBeCloseTo(12, 9);
    expect(camera.bearingDegrees).toBeCloseTo(0, 9);
    // 36 mm across at 18 mm: 45 degrees to each side
    expect(camera.halfFieldDegrees).toBeCloseTo(45, 9);
  });

  it('takes the pace of the setup', () => {
    const setup = stoneSetup(passFrom('a', 3, 6, 0.5));
    const { rows } = cardOf({ ...setup, walking: { ...setup.walking, paceMetres: 0.5 } });
    expect(rows[0]?.start.paces).toBeCloseTo(12, 9);
  });

  it('tells heights over what lies under the lamp, not over the level', () => {
    const setup = onePassSetup({
      camera: { position: [0, -9, 1.2], aim: [0, 0, 3], focalLengthMm: 18 },
      pass: { waypoints: [{ position: [4, 0, 2.5], aim: [0, 0, 3] }] },
      subjects: [boxAt('stone', [0, 0, 0], [1, 1, 4]), boxAt('ledge', [4, 0, 0], [2, 2, 2])],
    });
    expect(cardOf(setup).rows[0]?.start).toMatchObject({ heightWord: 'knee' });
    expect(cardOf(setup).rows[0]?.start.heightMetres).toBeCloseTo(0.5, 6);
  });

  it('has its mark at the aim of the first pass where all aim within 1 m of one another', () => {
    const aimed = (east: number) => ({ waypoints: [{ position: atClock(9, 5, 1), aim: [east, 0, 1] }] });
    const markAt = (east: number) =>
      cardOf(stoneSetup(passFrom('a', 3, 5, 1), passFrom('b', 9, 5, 1, { on: 4, off: 6, ...aimed(east) }))).mark.place;
    expect(markAt(0.4)).toEqual([0, 0]);
    expect(markAt(-0.4)).toEqual([0, 0]);
  });

  it('a lamp held in the hand higher than an arm reaches takes a pole', () => {
    const wordAt = (up: number, held: string) =>
      cardOf(stoneSetup(passFrom('a', 3, 5, up, { held }))).rows[0]?.start.heightWord;
    expect(wordAt(2.5, 'hand')).toBe('on a pole');
    expect(wordAt(20, 'hand')).toBe('high up');
    expect(wordAt(2.3, 'hand')).toBe('overhead');
    expect(wordAt(2.5, 'stand')).toBe('overhead');
  });

  it('numbers rows in the order in which lamps go on, whatever the order of the list', () => {
    const { rows } = cardOf(
      stoneSetup(passFrom('late', 3, 5, 1, { on: 6, off: 8 }), passFrom('early', 9, 5, 1, { on: 1, off: 2 })),
    );
    expect(rows.map(({ number, name, countSeconds }) => [number, name, countSeconds])).toEqual([
      [1, 'early', 1],
      [2, 'late', 2],
    ]);
  });

  it('a moving pass has a start, an end and its way; a swayed hand has none', () => {
    const moved = (metres: number) => [
      { time: 0, position: [3, -4, 0.5], aim: [0, 0, 1] },
      { time: 2, position: [3 + metres, -4, 0.5], aim: [0, 0, 1] },
    ];
    const rowOf = (metres: number) => cardOf(stoneSetup({ off: 2, waypoints: moved(metres) })).rows[0];
    expect(rowOf(2)?.end?.place).toEqual([5, -4]);
    expect(rowOf(2)?.way).toEqual([
      [3, -4],
      [5, -4],
    ]);
    expect(rowOf(0.2)?.end).toBeNull();
    expect(rowOf(0.2)?.way).toEqual([[3, -4]]);
  });

  it('says in words what is lit and what is in front of the lamp', () => {
    const high = { waypoints: [{ position: atClock(3, 5, 1.4), aim: [0.1, 0, 1.9] }] };
    const gels = [{ name: '1/4 CTO' }, { name: '1/8 green' }];
    const cloth = { stops: 2, spreadShare: 0.5 };
    expect(cardOf(stoneSetup({ ...high, gels, cloth })).rows[0]).toMatchObject({
      aimWord: 'stone, high',
      gelWord: '1/4 CTO + 1/8 green + cloth 2 stops',
    });
    const ground = { waypoints: [{ position: atClock(3, 5, 1.4), aim: [3, -3, 0] }] };
    expect(cardOf(stoneSetup(ground)).rows[0]).toMatchObject({ aimWord: 'ground', gelWord: 'none' });
  });

  it('a stand that shines through its frame is not counted', () => {
    const on = (rest: object) => cardOf(stoneSetup(passFrom('a', 3, 5, 1, rest))).rows[0]?.staysOn;
    expect(on({ held: 'stand', off: 10 })).toBe(true);
    expect(on({ held: 'stand', off: 9 })).toBe(false);
    expect(on({ held: 'hand', off: 10 })).toBe(false);
  });
});

describe('cardData, where readings trail the scheme', () => {
  const before = stoneSetup(passFrom('a', 3, 5, 1));
  const [scheme] = before.schemes as [Scheme];
  const report = reportScheme(before, scheme);

  it('has a pass and a frame that were just put in, without what is not read yet', () => {
    const after = withFrames(stoneSetup(passFrom('a', 3, 5, 1), passFrom('b', 9, 5, 1, { on: 5, off: 6 })), (frame) => [
      frame,
      { ...frame, id: 'more', aperture: 4, passes: [] },
    ]);
    const card = cardData(after, after.schemes[0] as Scheme, report);
    expect(card.rows.map(({ name }) => name)).toEqual(['a', 'b']);
    expect(card.rows[1]).toMatchObject({ walkSeconds: null, slackSeconds: null, seenSeconds: 0 });
    expect(card.frames.map(({ sharpFromMetres }) => sharpFromMetres === null)).toEqual([false, true]);
    // what the new pass is about is not known yet: the mark is that of the other
    expect(card.mark).toEqual({ place: [0, 0], subjectName: 'stone' });
  });
});

describe('cardData, frames', () => {
  const base = stoneSetup(passFrom('a', 3, 5, 1));

  it('puts like frames without passes together with their count and gap', () => {
    const setup = withFrames(base, (frame) => [
      { ...frame, id: 's1', purpose: 'sky', passes: [], delaySeconds: 10 },
      { ...frame, id: 's2', purpose: 'sky', passes: [], delaySeconds: 1 },
      { ...frame, id: 's3', purpose: 'sky', passes: [], delaySeconds: 1 },
      frame,
    ]);
    expect(cardOf(setup).frames).toMatchObject([
      { number: 1, count: 3, delaySeconds: 10, gapSeconds: 1, rowNumbers: [] },
      { number: 4, count: 1, gapSeconds: null, rowNumbers: [1] },
    ]);
  });

  it('finds frames that differ in focus alone: the steps of a stack', () => {
    const setup = withFrames(base, (frame) =>
      [2, 5, 20].map((focusMetres) => ({ ...frame, id: `f${focusMetres}`, focusMetres, passes: [] })),
    );
    expect(cardOf(setup).focusStacks).toEqual([{ frameNumbers: [1, 2, 3], focusMetres: [2, 5, 20] }]);
    expect(cardOf(base).focusStacks).toEqual([]);
  });

  it('knows no depth that is sharp where the focus is nearer than the lens can, and says infinity as such', () => {
    const focused = (focusMetres: number) => {
      const setup = withFrames(base, (frame) => [{ ...frame, focusMetres }]);
      return cardOf({ ...setup, camera: { ...setup.camera, focalLengthMm: 400 } }).frames[0];
    };
    expect(focused(0.3)).toMatchObject({ focusMetres: 0.3, sharpFromMetres: null, sharpToMetres: null });
    expect(focused(10_000)).toMatchObject({ focusMetres: null, sharpToMetres: null });
    expect(focused(10_000)?.sharpFromMetres).toBeGreaterThan(400);
  });

  it('lets one stand in the picture for a tenth of the exposure that the camera really makes', () => {
    // 10 s as marked is 2^(10/3) s, as third-stop scales have it
    const [stay] = cardOf(base).sight.stays;
    expect(stay?.frameNumber).toBe(1);
    expect(stay?.seconds).toBeCloseTo(2 ** (10 / 3) / 10, 9);
  });
});

describe('cardData, the rest', () => {
  it('puts dangers before warnings before notes, each with its row', () => {
    // from beside the camera: flat; and a lamp inside the stone
    const card = cardOf(stoneSetup(passFrom('front', 6.1, 8.5, 1.2), passFrom('inside', 3, 0.1, 1, { on: 4, off: 5 })));
    const severities = card.cautions.map(({ severity }) => severity);
    const order = ['danger', 'warning', 'note'];
    expect(severities).toEqual([...severities].sort((a, b) => order.indexOf(a) - order.indexOf(b)));
    expect(card.cautions.find(({ message }) => message.startsWith('inside'))).toMatchObject({ rowNumber: 2 });
    expect(card.cautions.find(({ message }) => message.startsWith('front'))).toMatchObject({ rowNumber: 1 });
  });

  it('tells what is of the camera without row or frame', () => {
    const setup = stoneSetup(passFrom('a', 3, 5, 1));
    const { cautions } = cardOf({ ...setup, camera: { ...setup.camera, position: [0, 0, 1], aim: [0, 5, 1] } });
    const inside = cautions.find(({ code }) => code === 'inside-subject');
    expect(inside).toMatchObject({ severity: 'danger', rowNumber: null, frameNumber: null });
  });

  it('tells a caution that has no short words in full', () => {
    const setup = stoneSetup(passFrom('a', 3, 5, 1));
    const [scheme] = setup.schemes as [Scheme];
    const told = {
      code: 'unheard-of',
      severity: 'note',
      message: 'Something new is wrong.',
      frameId: 'frame',
    } as const;
    const report = { ...reportScheme(setup, scheme), cautions: [told] };
    expect(cardData(setup, scheme, report).cautions).toMatchObject([
      { short: told.message, message: told.message, frameNumber: 1, rowNumber: null },
    ]);
  });

  it('calls a lamp under the ground buried, as deep as it lies', () => {
    const { start } = cardOf(stoneSetup(passFrom('a', 3, 5, -0.5))).rows[0] as CardRow;
    expect(start.heightWord).toBe('buried');
    expect(start.heightMetres).toBeCloseTo(-0.5, 6);
  });

  it('has its mark in the middle of what its passes are aimed at where nothing stands there', () => {
    const aimed = (east: number) => ({ waypoints: [{ position: [east, -5, 1], aim: [east, 2, 0] }] });
    const bare = { ...stoneSetup(passFrom('a', 3, 5, 1, aimed(-2)), passFrom('b', 3, 5, 1, aimed(4))), subjects: [] };
    const { mark } = cardOf(bare);
    expect(mark.subjectName).toBeNull();
    expect(mark.place[0]).toBeCloseTo(1, 9);
    expect(mark.place[1]).toBeCloseTo(2, 9);
  });

  it('knows the night of the place, and none in a zone that this machine does not know', () => {
    const at = (timeZone: string) => {
      const setup = stoneSetup(passFrom('a', 3, 5, 1));
      return cardOf({ ...setup, place: { ...setup.place, timeZone, localTime: '2026-10-09T22:30' } }).sky;
    };
    expect(at('Etc/UTC').night?.dark).toHaveLength(1);
    expect(at('Etc/UTC').night?.dark[0]?.from).toMatch(/^\d\d:\d\d$/);
    // a day before new moon (new moon in the afternoon of 10 October 2026, from memory)
    expect(at('Etc/UTC').night?.litShare).toBeLessThan(0.02);
    expect(at('Nowhere/At_all').night).toBeNull();
  });

  it('a scheme without passes has no rows and its mark where the camera looks', () => {
    const setup = withFrames(stoneSetup(passFrom('a', 3, 5, 1)), (frame) => [{ ...frame, passes: [] }]);
    const card = cardOf(setup);
    expect(card.rows).toEqual([]);
    expect(card.mark).toEqual({ place: [0, 0], subjectName: null });
  });
});
