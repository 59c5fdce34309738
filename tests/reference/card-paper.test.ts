import { describe, it } from 'vitest';
import { millimetresPerPoint, paperSizes } from '../../core/card/sheet/paper.ts';
import { footMetres } from '../../core/units/feet.ts';
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Paper of the field card');

describe('paper and type of the field card', () => {
  it.each([
    ['a4', 'ISO 216, A4', 210, 297],
    ['letter', 'ANSI/ASME Y14.1, size A, 8.5 x 11 in, and 25.4 mm to the inch', 215.9, 279.4],
  ] as const)('%s is as its standard has it (exact)', (paper, source, width, height) => {
    const { widthMm, heightMm } = paperSizes[paper];
    const tolerance = { absolute: 1e-9 };
    check({
      id: `paper-${paper}-width`,
      claim: `${paper} is so wide`,
      source,
      unit: 'mm',
      expected: width,
      ours: widthMm,
      tolerance,
    });
    check({
      id: `paper-${paper}-height`,
      claim: `${paper} is so high`,
      source,
      unit: 'mm',
      expected: height,
      ours: heightMm,
      tolerance,
    });
  });

  it('A4 has sides in the ratio 1 to the root of two, to the millimetre that ISO 216 rounds to', () => {
    check({
      id: 'paper-a4-ratio',
      claim: 'height of A4 from its width',
      source: 'ISO 216: sides in the ratio 1 to the root of 2, rounded to a millimetre',
      unit: 'mm',
      expected: 210 * Math.SQRT2,
      ours: paperSizes.a4.heightMm,
      tolerance: { absolute: 0.5 },
    });
  });

  it('a point is 1/72 inch, a foot 0.3048 m (exact)', () => {
    check({
      id: 'point',
      claim: 'a point in millimetres',
      source: 'ISO 32000-1, 8.3.2.3: default user space, 1/72 inch; 25.4 mm to the inch',
      unit: 'mm',
      expected: 25.4 / 72,
      ours: millimetresPerPoint,
      tolerance: { relative: 1e-12 },
    });
    check({
      id: 'foot',
      claim: 'a foot in metres',
      source: 'international yard and pound agreement, 1959',
      unit: 'm',
      expected: 0.3048,
      ours: footMetres,
      tolerance: { relative: 1e-12 },
    });
  });
});
