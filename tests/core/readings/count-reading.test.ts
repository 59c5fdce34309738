import { describe, expect, it } from 'vitest';
import type { CountReading } from '../../../core/readings/count-reading.ts';
import { relativeError } from '../support/errors.ts';
import { readPass } from '../support/read-pass.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A torch level with its target, square to a wide wall that reflects a fifth. */
interface Case {
  readonly candela: number;
  readonly distance: number;
  readonly level: number;
  readonly lowest: number;
  readonly count: number;
  readonly frame: number;
  readonly iso: number;
  readonly held: 'hand' | 'stand';
  readonly cloth: number;
}
const usual: Case = {
  candela: 100,
  distance: 5,
  level: 100,
  lowest: 100,
  count: 2,
  frame: 10,
  iso: 400,
  held: 'hand',
  cloth: 0,
};
const wanted = -1.5;
const face = 9.8;

const read = (what: Partial<Case>): { stops: number | null; count: CountReading } => {
  const { candela, distance, level, lowest, count, frame, iso, held, cloth } = { ...usual, ...what };
  const setup = onePassSetup({
    camera: { position: [0.5, 2, 1.5], aim: [0, 10, 1.5] },
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        parts: [{ kind: 'box', position: [0, 10, 0], widthMetres: 40, depthMetres: 0.4, heightMetres: 9 }],
      },
    ],
    lamp: { output: { from: 'peak-candela', candela }, lowestLevelPercent: lowest },
    frame: { seconds: frame, iso },
    pass: {
      held,
      off: count,
      levelPercent: level,
      cloth: cloth === 0 ? null : { stops: cloth },
      waypoints: [{ position: [0, face - distance, 1.5], aim: [0, face, 1.5] }],
    },
  });
  const reading = readPass(setup);
  return { stops: reading.target?.stops ?? null, count: reading.count };
};

/** Seconds that a Lambertian wall needs: pi H N^2 / (q rho E), H = 10 / S x 2^wanted (ISO 12232), E = I / d^2. */
const secondsNeeded = ({ candela, distance, iso }: Case) =>
  (Math.PI * (10 / iso) * 2 ** wanted * 8 ** 2) / (0.65 * 0.2 * (candela / distance ** 2));

const first = (text: RegExp, advice: readonly string[]): number[] => {
  for (const sentence of advice) {
    const found = text.exec(sentence);
    if (found) return found.slice(1).map(Number);
  }
  return [];
};

describe('countReading within reach', () => {
  it('seconds are those of the exposure equation (rel 1e-3); no advice', () => {
    for (const what of [{}, { iso: 200 }, { distance: 7 }, { level: 50 }, { candela: 240, count: 7 }]) {
      const { count } = read(what);
      const case_ = { ...usual, ...what };
      const expected = secondsNeeded({ ...case_, candela: (case_.candela * case_.level) / 100 });
      expect(relativeError(count.seconds as number, expected)).toBeLessThanOrEqual(1e-3);
      expect(count).toMatchObject({ reachable: true, missStops: null, wantedStops: wanted, advice: [] });
    }
  });

  it('the spoken count is within the frame, and read again with it the target is where spokenStops says (abs 1e-9)', () => {
    for (const what of [{}, { iso: 250 }, { candela: 40, frame: 9 }, { candela: 300 }]) {
      const { spoken, spokenStops } = read(what).count;
      expect(spoken).not.toBeNull();
      expect(spoken).toBeLessThanOrEqual({ ...usual, ...what }.frame);
      expect(read({ ...what, count: spoken as number }).stops).toBeCloseTo(spokenStops as number, 9);
      expect(Math.abs((spokenStops as number) - wanted)).toBeLessThanOrEqual(0.5);
    }
  });

  it('counting exactly the seconds brings the target to the wanted level (abs 1e-9 stops), and still is reached', () => {
    const again = read({ count: read({}).count.seconds as number });
    expect(again.stops).toBeCloseTo(wanted, 9);
    expect(again.count.reachable).toBe(true);
  });
});

describe('countReading too bright, though the lamp can be turned down', () => {
  it.each([
    ['far down: an easy count of three', { candela: 2000, lowest: 1 }, 3],
    ['not far: the shortest count of one', { candela: 400, lowest: 60 }, 1],
    ['in a short frame: all of it', { candela: 3000, lowest: 1, frame: 2, count: 1 }, 2],
  ])('%s; read again with that level and count it is right (abs 0.1 stops)', (_, what, counted) => {
    const { count } = read(what);
    expect(count).toMatchObject({ reachable: true, missStops: null, spoken: null, spokenStops: null });
    const [level, seconds] = first(/^Turn the lamp down to ([\d.]+) % and count ([\d.]+)\.$/, count.advice) as [
      number,
      number,
    ];
    expect(seconds).toBe(counted);
    expect(level).toBeGreaterThanOrEqual({ ...usual, ...what }.lowest);
    const again = read({ ...what, level, count: seconds });
    expect(Math.abs((again.stops as number) - wanted)).toBeLessThanOrEqual(0.1);
    expect(again.count.reachable).toBe(true);
  });

  it('a stand lamp that stays lit has only its level (abs 0.1 stops)', () => {
    const what = { candela: 100, lowest: 10, held: 'stand', count: 10 } as const;
    const { count } = read(what);
    const [level] = first(/^Turn the lamp down to ([\d.]+) %\.$/, count.advice);
    expect(count.reachable).toBe(true);
    expect(Math.abs((read({ ...what, level: level as number }).stops as number) - wanted)).toBeLessThanOrEqual(0.1);
    // switched off before the frame ends it is a lamp with a count like any other
    expect(read({ ...what, count: 9 }).count.advice).toEqual([]);
  });
  it.each([
    [0.3, true],
    [0.36, false],
  ])('its lowest level %d stops over the right one will do: %s; a third is one marking of the ISO', (stops, isNear) => {
    // 10 s on a camera are 10.08
    const right = (100 * secondsNeeded(usual)) / 2 ** (10 / 3);
    const { count } = read({ lowest: right * 2 ** stops, held: 'stand', count: 10 });
    expect(count.reachable).toBe(isNear);
    expect(count.advice[0]?.startsWith('Turn the lamp down to')).toBe(isNear);
  });
});

describe('countReading at the lowest level and too bright: each advice, read again, is right (abs 0.1 stops)', () => {
  it.each([
    ['no lower level', { candela: 3000 }],
    ['level at 100 of a lamp that goes to 5 %', { candela: 90_000, lowest: 5 }],
    ['close by', { candela: 60, distance: 0.37, iso: 100 }],
    ['far off', { candela: 2e6, distance: 23, lowest: 30, iso: 800 }],
    ['ISO 1250', { candela: 2000, distance: 6.3, iso: 1250 }],
    ['a stand lamp', { candela: 900, held: 'stand', count: 10, distance: 4.2 }],
    ['a frame shorter than a count', { candela: 20_000, frame: 0.5, count: 0.5 }],
  ] as const)('%s', (_, what) => {
    const case_: Case = { ...usual, ...what };
    const { count } = read(what);
    expect(count).toMatchObject({ reachable: false, spoken: null });
    const shortest = case_.held === 'stand' ? case_.frame : Math.min(1, case_.frame);
    const lowest: Case = { ...case_, level: case_.lowest, count: shortest };
    const over = (read(lowest).stops as number) - wanted;
    const [head] = count.advice as [string];
    const [stops, metres] = first(/it is still ([\d.]+) stops too bright at ([\d.]+) m, level\.$/, [head]) as [
      number,
      number,
    ];
    expect(Math.abs(stops - over)).toBeLessThanOrEqual(0.1);
    expect(count.missStops).toBeCloseTo(over, 9);
    expect(relativeError(metres, case_.distance)).toBeLessThanOrEqual(0.02);
    if (case_.lowest < 100) expect(head).toContain(`At its lowest level, ${case_.lowest} %`);
    else expect(head).toContain('It has no lower level');
    expect(head).toContain(case_.held === 'stand' ? 'lit for the whole frame' : `a count of ${shortest}`);
    const levelWith = (change: Partial<Case>) => (read({ ...lowest, ...change }).stops as number) - wanted;
    const [distance] = first(/^Step back to ([\d.]+) m\.$/, count.advice) as [number];
    expect(Math.abs(levelWith({ distance }))).toBeLessThanOrEqual(0.1);
    const [cloth] = first(/^Or hang ([\d.]+) stops of cloth or ND over it\.$/, count.advice) as [number];
    expect(Math.abs(levelWith({ cloth }))).toBeLessThanOrEqual(0.1);
    // the marked speed at or under: never brighter than wanted, and a count that is not too short
    const [iso] = first(/^Or lower the ISO to (\d+)\.$/, count.advice);
    if (iso === undefined) return expect(case_.iso / 2 ** over).toBeLessThan(50);
    expect(levelWith({ iso })).toBeLessThanOrEqual(0.02);
    expect(levelWith({ iso })).toBeGreaterThan(-1 / 3 - 0.01);
    expect(read({ ...lowest, iso }).count.reachable).toBe(true);
  });
});

describe('countReading and marked ISO speeds, exact in thirds of a stop: 1250 is really 1269.9, 640 is 635.0', () => {
  it.each([
    [1250, 100 * 2 ** (11 / 3), 640],
    [400, 400, 200],
    [2000, 100 * 2 ** (13 / 3), 1000],
  ])('one stop too bright at ISO %d: lower by three markings', (iso, exact, expected) => {
    // half a second would do where one is the shortest
    const candela = 2 * secondsNeeded({ ...usual, candela: 1, iso: exact });
    expect(read({ iso, candela, count: 1 }).count.advice).toContain(`Or lower the ISO to ${expected}.`);
  });

  it.each([
    [1250, 100 * 2 ** (11 / 3), 2500],
    [320, 100 * 2 ** (5 / 3), 640],
  ])('one stop too dark at ISO %d: raise by three markings', (iso, exact, expected) => {
    const candela = secondsNeeded({ ...usual, candela: 1, iso: exact }) / 20;
    expect(read({ iso, candela, count: 10 }).count.advice).toContain(`Or raise the ISO to ${expected}.`);
  });
});

describe('countReading too dark', () => {
  it('at a level that can be raised: up, for the whole frame (abs 0.1 stops)', () => {
    const what = { level: 10, candela: 60 };
    const { count } = read(what);
    const [level] = first(/^Turn the lamp up to ([\d.]+) % and leave it on for the whole frame\.$/, count.advice);
    expect(count.reachable).toBe(true);
    expect(Math.abs((read({ ...what, level: level as number, count: 10 }).stops as number) - wanted)).toBeLessThan(0.1);
  });

  it.each([
    ['a weak torch', { candela: 1 }],
    ['at half level', { candela: 1.5, level: 50 }],
    ['far off', { candela: 100, distance: 64, iso: 1600 }],
    ['ISO 125', { candela: 4, iso: 125, distance: 2.2 }],
    ['a stand lamp that can be dimmed', { candela: 3, held: 'stand', count: 10, lowest: 50 }],
    ['not by much', { candela: 30 }],
  ] as const)('%s: each advice, read again, is right (abs 0.1 stops)', (_, what) => {
    const case_: Case = { ...usual, ...what };
    const { count } = read(what);
    expect(count).toMatchObject({ reachable: false, spoken: null });
    const full: Case = { ...case_, level: 100, count: case_.frame };
    const under = wanted - (read(full).stops as number);
    const [stops] = first(/^At full level, lit for all 10 s, it is still ([\d.]+) stops too dark\.$/, count.advice);
    expect(Math.abs((stops as number) - under)).toBeLessThanOrEqual(0.1);
    expect(count.missStops).toBeCloseTo(-under, 9);
    const levelWith = (change: Partial<Case>) => (read({ ...full, ...change }).stops as number) - wanted;
    const [distance] = first(/^Come to ([\d.]+) m\.$/, count.advice) as [number];
    expect(Math.abs(levelWith({ distance }))).toBeLessThanOrEqual(0.1);
    const [frame] = first(/keep the shutter open for ([\d.]+) s\.$/, count.advice) as [number];
    expect(Math.abs(levelWith({ frame, count: frame }))).toBeLessThanOrEqual(0.1);
    // the marked speed at or over: never darker than wanted
    const [iso] = first(/^Or raise the ISO to (\d+)\.$/, count.advice) as [number];
    expect(levelWith({ iso })).toBeGreaterThanOrEqual(-0.02);
    expect(levelWith({ iso })).toBeLessThan(1 / 3 + 0.01);
    expect(read({ ...full, iso }).count.reachable).toBe(true);
  });
});

describe('countReading without light', () => {
  const none = { seconds: null, spoken: null, spokenStops: null, reachable: false, missStops: null, advice: [] };
  it('a lamp behind the wall, or one turned down to nothing, has no count and no advice', () => {
    expect(read({ distance: -2 })).toEqual({ stops: null, count: { ...none, wantedStops: wanted } });
    expect(read({ level: 0 })).toEqual({ stops: null, count: { ...none, wantedStops: wanted } });
  });
});
