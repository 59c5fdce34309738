import { converter } from 'culori';
import { describe, it } from 'vitest';
import { adaptationMatrix } from '../../core/colour/adaptation.ts';
import type { Chromaticity } from '../../core/colour/chromaticity.ts';
import { apply, type Triple } from '../../core/colour/matrix.ts';
import {
  decodeSrgb,
  encodeSrgb,
  linearSrgbFromXyz,
  luminanceOfLinearSrgb,
  srgbWhite,
  xyzFromLinearSrgb,
} from '../../core/colour/srgb.ts';
import packageJson from '../../package.json' with { type: 'json' };
import { accuracySection } from './support/accuracy.ts';

const { check } = accuracySection('Colour library');
const source = `culori ${packageJson.devDependencies.culori}`;

const toRgb = converter('rgb');
const toLinear = converter('lrgb');
const toXyz = converter('xyz65');
const toXyz50 = converter('xyz50');
/** White of the library's D50. */
const d50: Chromaticity = [0.3457, 0.3585];

const compare = (claim: string, names: readonly string[], expected: Triple, ours: Triple, absolute: number) => {
  for (const i of [0, 1, 2] as const)
    check({
      id: 'library',
      claim: `${claim}: ${names[i]}`,
      source,
      unit: '',
      expected: expected[i],
      ours: ours[i],
      tolerance: { absolute },
    });
};

const colours: readonly Triple[] = [
  [1, 1, 1],
  [0.18, 0.18, 0.18],
  [1, 0.52, 0.19],
  [0.02, 0.4, 0.9],
  [0.002, 0.003, 0.9],
];

describe('sRGB', () => {
  it.each([0.0005, 0.003, 0.0032, 0.05, 0.35, 0.9])('%d is encoded and decoded alike (abs 1e-12)', (value) => {
    const grey = { r: value, g: value, b: value };
    const one = { id: 'library', source, unit: '', tolerance: { absolute: 1e-12 } };
    const [encoded, decoded] = [toRgb({ mode: 'lrgb', ...grey }).r, toLinear({ mode: 'rgb', ...grey }).r];
    check({ ...one, claim: `code value of linear ${value}`, expected: encoded, ours: encodeSrgb(value) });
    check({ ...one, claim: `linear value of code ${value}`, expected: decoded, ours: decodeSrgb(value) });
  });

  it.each(colours)('linear (%d, %d, %d) has the same XYZ, and back (abs 1e-9)', (r, g, b) => {
    const { x, y, z } = toXyz({ mode: 'lrgb', r, g, b });
    const rgb: Triple = [r, g, b];
    compare(`XYZ of linear ${rgb.join(' ')}`, ['X', 'Y', 'Z'], [x, y, z], apply(xyzFromLinearSrgb, rgb), 1e-9);
    const back = toLinear({ mode: 'xyz65', x, y, z });
    const ours = apply(linearSrgbFromXyz, [x, y, z]);
    compare(`linear of XYZ of ${rgb.join(' ')}`, ['red', 'green', 'blue'], [back.r, back.g, back.b], ours, 1e-9);
    check({
      id: 'library',
      claim: `luminance of linear ${rgb.join(' ')}`,
      source,
      unit: '',
      expected: y,
      ours: luminanceOfLinearSrgb(rgb),
      tolerance: { absolute: 1e-9 },
    });
  });
});

describe('adaptationMatrix', () => {
  it.each(colours)('linear (%d, %d, %d) from D65 to D50 is the same XYZ (abs 1e-7)', (r, g, b) => {
    const { x, y, z } = toXyz50({ mode: 'lrgb', r, g, b });
    const ours = apply(adaptationMatrix(srgbWhite, d50), apply(xyzFromLinearSrgb, [r, g, b]));
    compare(`XYZ under D50 of linear ${[r, g, b].join(' ')}`, ['X', 'Y', 'Z'], [x, y, z], ours, 1e-7);
  });
});
