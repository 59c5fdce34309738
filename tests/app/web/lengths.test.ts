import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { speedWords } from '../../../app/web/inspector/path-words.ts';
import { placeWords } from '../../../app/web/sweep/cell-words.ts';
import { inPageLengths, parseLength, shownLength } from '../../../app/web/ui/length-field.ts';
import { cautionSentence, lengthWords, worded, writeLengthsIn } from '../../../app/web/ui/lengths.ts';
import { parseHeight } from '../../../app/web/ui/parse-height.ts';
import { parseQuantity } from '../../../app/web/ui/parse-quantity.ts';
import { planHalf, ringStep, ringWords } from '../../../app/web/ui/plan-view.ts';
import { metresText } from '../../../app/web/ui/words.ts';
import type { Scheme } from '../../../core/setup/schema/setup.ts';
import { infinityMetres } from '../../../core/units/focus-range.ts';
import { onePassSetup } from '../../core/support/scenes.ts';

/** A scheme of one frame and one pass. */
const schemeOf = (pass: object, frame: object = {}): Scheme => {
  const camera = { position: [0, -8, 1.5], aim: [0, 8, 1] };
  return onePassSetup({ camera, pass, frame }).schemes[0] as Scheme;
};
const stands = [{ time: 0, position: [0, 0, 1], aim: [0, 8, 1] }];

const field = (extra: object = {}) => {
  const told: number[] = [];
  const given = {
    label: 'Height',
    value: 6,
    unit: 'm',
    min: 0,
    max: 500,
    onChange: (to: number) => told.push(to),
    ...extra,
  };
  return { field: inPageLengths(given), given, told };
};

describe('lengths of the page', () => {
  beforeEach(() => writeLengthsIn('feet'));
  afterEach(() => writeLengthsIn('metres'));

  it('in metres leave a field as it is', () => {
    writeLengthsIn('metres');
    const { field: same, given } = field();
    expect(same).toBe(given);
    expect(lengthWords(6, 1)).toBe('6.0 m');
    expect(worded('38 m')).toBe('38 m');
  });

  it('are shown in feet, and told to the document in metres', () => {
    const { field: feet, told } = field();
    expect(feet.unit).toBe('ft');
    expect(feet.value).toBeCloseTo(6 / 0.3048, 9);
    expect(feet.max).toBeCloseTo(500 / 0.3048, 9);
    feet.onChange(8);
    expect(told).toEqual([2.4384]);
  });

  it.each([
    ['8', 8 * 0.3048],
    ['8 ft', 8 * 0.3048],
    [`6'2"`, 74 * 0.0254],
    ['6 ft 2 in', 74 * 0.0254],
    ['2.5 m', 2.5],
    ['250 cm', 2.5],
    ['-3 ft', -3 * 0.3048],
    ['1/2', 0.1524],
    ['1/2 m', 0.5],
    ['2,5', 2.5 * 0.3048],
    ['+8', 8 * 0.3048],
  ])('%s is typed as it is meant', (text, metres) => {
    expect((field().field.parse?.(text) ?? Number.NaN) * 0.3048).toBeCloseTo(metres, 9);
  });

  it.each([
    ['8 ft', 8 * 0.3048],
    [`6'2"`, 74 * 0.0254],
    ['2.5 m', 2.5],
    ['2.5', 2.5],
  ])('%s is read by a field in metres too', (text, metres) => {
    expect(parseQuantity(text, 'm')).toBeCloseTo(metres, 9);
  });

  it('come back as they went: what is shown and typed again is the same length (rel 1e-6)', () => {
    for (const metres of [0.05, 0.3, 1, 2.4384, 19.99, 480]) {
      const { field: feet, told } = field({ value: metres });
      const again = feet.parse?.(String(feet.value)) ?? Number.NaN;
      feet.onChange(again);
      expect(Math.abs((told[0] as number) / metres - 1)).toBeLessThan(1e-6 + 1e-6 / metres);
    }
  });

  it('tell the ends of a range in few figures, inside it, and sizes to hundredths of a foot', () => {
    expect(field({ min: 0.05, max: 10000 }).field.ends).toEqual([0.165, 32800]);
    expect(field({ min: -5000, max: 5000 }).field.ends).toEqual([-16400, 16400]);
    // the hut of 7 m, and what was typed
    expect(field({ value: 7, digits: 3 }).field).toMatchObject({ digits: 2 });
    expect(Number((7 / 0.3048).toFixed(2))).toBe(22.97);
    for (const feet of [0.125, 3, 22.25]) {
      const { field: shown } = field({ value: feet * 0.3048, digits: 3 });
      expect(Number(shown.value.toFixed(shown.digits))).toBe(feet);
    }
    expect(lengthWords(0.9144, 1)).toBe('3 ft');
  });

  it('know heights on the body, infinity and lists', () => {
    expect(parseLength('knee', 'm', parseHeight)).toBe(0.5);
    expect(parseLength('2', 'm', parseHeight)).toBeCloseTo(0.6096, 9);
    const { field: focus } = field({ format: (m: number) => (m >= infinityMetres ? '∞' : String(m)) });
    expect(focus.format?.(infinityMetres / 0.3048)).toBe('∞');
    expect(focus.format?.(10)).toBe('10');
    expect(shownLength(3.048, 'm')).toEqual([10, 'ft']);
    expect(shownLength(3, 'stops')).toEqual([3, 'stops']);
  });

  it('make small sizes inches, and speeds feet a second', () => {
    expect(field({ unit: 'cm', value: 2.54 }).field).toMatchObject({ unit: 'in', value: 1 });
    expect(field({ unit: 'm/s', value: 0.3048 }).field).toMatchObject({ unit: 'ft/s', value: 1 });
    expect(field({ unit: '°', value: 30 }).field.unit).toBe('°');
  });

  it('leave the names of frames and passes in cautions alone', () => {
    const scheme = schemeOf({ name: 'Key 3 m', waypoints: stands }, { name: 'Land · focus 3.2 m' });
    const said = (message: string) => cautionSentence({ message }, scheme);
    expect(said('Key 3 m: the lamp is 0.50 m under the ground.')).toBe('Key 3 m: the lamp is 1.6 ft under the ground.');
    expect(said('Land · focus 3.2 m: sharp from 6.0 m on')).toBe('Land · focus 3.2 m: sharp from 19.7 ft on');
    expect(said('Key: 14 m to walk from “Key 3 m”')).toBe('Key: 46 ft to walk from “Key 3 m”');
  });

  it('reach the speed of a path and the names of places in a sweep, not those of other pictures', () => {
    const waypoints = [...stands, { time: 10, position: [3.048, 0, 1], aim: [3.048, 8, 1] }];
    const pass = schemeOf({ waypoints, on: 0, off: 10 }).frames[0]?.passes[0];
    // 3.048 m in 10 s: 1 foot a second
    expect(pass && speedWords(pass)).toMatch(/ · 1(\.0)? ft\/s$/);
    expect(placeWords('heights', 'knee · 0.5 m')).toBe('knee · 1.6 ft');
    expect(placeWords('distances', '8 m')).toBe('26 ft');
    expect(placeWords('ratios', 'under Key 3 m')).toBe('under Key 3 m');
  });

  it('draw rings at round feet', () => {
    const view = { centre: [0, 0], up: [0, 1], unitsPerMetre: 25 } as const;
    const step = ringStep(view);
    expect(ringWords(step)).toBe('10 ft');
    expect(ringWords(3 * step)).toBe('30 ft');
    expect(planHalf / view.unitsPerMetre / step).toBeLessThanOrEqual(6);
    expect(metresText(6)).toBe('19.7 ft');
  });
});
