import { describe, expect, it } from 'vitest';
import { cardText } from '../../../core/card/card-text.ts';
import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';
import { atClock, cardOf, passFrom, stoneSetup } from './card-setups.ts';

const setup = stoneSetup(passFrom('Key', 2.5, 6, 0.5, { levelPercent: 25, gels: [{ name: '1/4 CTO' }], strokes: 2 }));
const card = cardOf(setup);

describe('cardText', () => {
  it('tells things in the order of the printed card', () => {
    const text = cardText(card);
    const order = [
      'Test · Scheme',
      'Moon:',
      'Dark:',
      'Permission:',
      'PASSES',
      'CAMERA',
      'IF IT CAME OUT',
      'WHERE NOT TO STAND',
      'ALWAYS',
    ];
    const places = order.map((words) => text.indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('has everything of a row, with a box to tick and a line to write on', () => {
    const text = cardText(card);
    expect(text).toContain(' 1. [ ] Key\n      2:30 (right 105°), 8 paces (6.0 m), knee (0.50 m)\n');
    expect(text).toContain('aim: stone · Torch 25 % · gel: 1/4 CTO\n');
    expect(text).toContain('COUNT 3 s, at 0 s · strokes 2 · frame 1\n');
    expect(text).toMatch(/what I did: _{10,}/);
    expect(text).toContain('18 mm, f/8, 10 s, ISO 400, 4200 K, focus 8.0 m, delay 2 s, count 1');
  });

  it('goes by the settings of the document', () => {
    const other = { ...setup, card: { ...setup.card, lengths: 'feet' as const, permission: 'Asked at the farm' } };
    const text = cardText(cardOf({ ...other, walking: { ...setup.walking, paceMetres: 0.6 } }));
    // 6 m are 10 paces of 0.6 m, and 19.7 ft
    expect(text).toContain('10 paces (19.7 ft)');
    expect(text).toContain('Permission: Asked at the farm\n');
    expect(text).not.toMatch(/\d m[ ),]/);
  });

  it('tells a moving lamp by both its places, and a lamp that stays on without a count', () => {
    const way = [
      { time: 0, position: atClock(3, 6, 0.5), aim: [0, 0, 1] },
      { time: 2, position: atClock(9, 3, 0.5), aim: [0, 0, 1] },
    ];
    const moved = cardText(cardOf(stoneSetup({ off: 2, waypoints: way })));
    expect(moved).toContain(
      '      3:00 (right 90°), 8 paces (6.0 m), knee (0.50 m), to 9:00 (left 90°), 4 paces (3.0 m), knee (0.50 m)\n',
    );
    const stays = cardText(cardOf(stoneSetup(passFrom('Fill', 3, 6, 0.5, { held: 'stand', off: 10 }))));
    expect(stays).toContain('COUNT all, stays on · strokes 1 · frame 1\n');
  });

  it('tells like frames on a line with the gap between them, and the steps of a focus stack', () => {
    const [scheme] = setup.schemes as [Scheme];
    const [frame] = scheme.frames as [Frame];
    const textOf = (frames: Frame[]) => cardText(cardOf({ ...setup, schemes: [{ ...scheme, frames }] }));
    const sky = (id: string, delaySeconds: number): Frame => ({ ...frame, id, name: 'Sky', passes: [], delaySeconds });
    expect(textOf([sky('a', 10), sky('b', 1), sky('c', 1), frame])).toMatch(
      / {2}1–3\. Sky: 18 mm, .*, delay 10 s, gap 1 s, count 3\n {2}4\. Frame: .*, delay 2 s, count 1\n/,
    );
    const focused = (focusMetres: number): Frame => ({ ...sky(`f${focusMetres}`, 2), focusMetres });
    expect(textOf([2, 5, 10_000].map(focused))).toContain(
      '  Focus steps, frames 1, 2, 3: 2.0 m, 5.0 m, infinity. Turn the ring, touch nothing else.\n',
    );
  });

  it('names the row or the frame that a caution is of, after its word; one of the whole scheme has neither', () => {
    const message = 'Something is wrong.';
    const plain = { code: 'unheard-of', severity: 'note', message, short: message } as const;
    const text = cardText({
      ...card,
      cautions: [
        { ...plain, severity: 'warning', rowNumber: 1, frameNumber: 1 },
        { ...plain, rowNumber: null, frameNumber: 2 },
        { ...plain, rowNumber: null, frameNumber: null },
      ],
    });
    expect(text).toContain(
      'CAUTIONS\n  Watch row 1: Something is wrong.\n  frame 2: Something is wrong.\n  Something is wrong.\n\nALWAYS',
    );
    expect(cardText({ ...card, cautions: [] })).not.toContain('CAUTIONS');
  });

  it('says so where no lamp is used, and where the camera looks straight down', () => {
    const [scheme] = setup.schemes as [Scheme];
    const unlit = { ...scheme, frames: scheme.frames.map((frame) => ({ ...frame, passes: [] })) };
    const text = cardText(cardOf({ ...setup, schemes: [unlit] }));
    expect(text).toContain('PASSES\n  none: no lamp is used\n');
    expect(text).toContain('Mark: where the camera looks. ');
    // due north
    expect(text).toMatch(/Camera: 12 paces \(9\.0 m\) from the mark, 1\.2 m high, looks 0° N\n/);
    const down = { ...setup, camera: { ...setup.camera, aim: [0, -9, 0] as [number, number, number] } };
    expect(cardText(cardOf(down))).toMatch(/Camera: .* 1\.2 m high\n/);
  });

  it('names the hazards to keep off', () => {
    const hazard = { id: 'edge', name: 'Quarry edge', position: [30, 30] as [number, number], radiusMetres: 2 };
    expect(cardText(cardOf({ ...setup, hazards: [hazard, { ...hazard, id: 'again' }] }))).toContain(
      '  Keep off: Quarry edge.\n',
    );
    expect(cardText(card)).not.toContain('Keep off');
  });
});
