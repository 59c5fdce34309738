import { describe, it } from 'vitest';
import { clearFresnel, metalFresnel } from '../../core/photometry/fresnel.ts';
import { throughSheen } from '../../core/photometry/through-sheen.ts';
import { normalReflectanceOf } from '../../core/world/stage-finish.ts';
import { accuracySection } from './support/accuracy.ts';
import { gaussLegendre } from './support/quadrature.ts';

const { check } = accuracySection('Clear faces and metal');
const radians = (degrees: number) => (degrees * Math.PI) / 180;
const sineForm = 'Fresnel’s sine and tangent laws with Snell’s law, Hecht, Optics, eqs. 4.42 and 4.43';

/** Both polarisations by the sine and the tangent law: another form of the equations than ours. */
const bySines = (index: number, degrees: number): { across: number; along: number } => {
  const outside = radians(degrees);
  const inside = Math.asin(Math.sin(outside) / index);
  return {
    across: (Math.sin(outside - inside) / Math.sin(outside + inside)) ** 2,
    along: (Math.tan(outside - inside) / Math.tan(outside + inside)) ** 2,
  };
};

describe('share that a clear face reflects', () => {
  it.each([
    [1.5, 0.04],
    [1.333, 0.02037],
    [2.42, 0.1724],
  ])('straight on, index %d: ((n - 1) / (n + 1))^2', (index, expected) => {
    const row = { id: `n ${index}`, source: '((n - 1) / (n + 1))^2, Hecht eq. 4.67', unit: '', expected };
    const claim = `share that a face of index ${index} reflects straight on`;
    check({ ...row, claim, ours: clearFresnel(index, 1), tolerance: { relative: 5e-4 } });
    check({ ...row, claim: `${claim}, of a finish`, ours: normalReflectanceOf(index), tolerance: { relative: 5e-4 } });
  });

  it.each([1.333, 1.5, 2])('index %d at angles from near to grazing: mean of both polarisations', (index) => {
    for (const degrees of [10, 30, 45, 60, 75, 85, 89]) {
      const { across, along } = bySines(index, degrees);
      check({
        id: `n ${index}`,
        claim: `share that a face of index ${index} reflects at ${degrees} degrees`,
        source: sineForm,
        unit: '',
        expected: (across + along) / 2,
        ours: clearFresnel(index, Math.cos(radians(degrees))),
        tolerance: { relative: 1e-9 },
      });
    }
  });

  it.each([1.333, 1.5, 1.9])('index %d at Brewster’s angle: half of what is polarised across', (index) => {
    check({
      id: `n ${index}`,
      claim: `share that a face of index ${index} reflects at Brewster’s angle, where nothing is polarised along`,
      source: 'tan of the angle = n (Brewster 1815), so that the share is ((n^2 - 1) / (n^2 + 1))^2 / 2',
      unit: '',
      expected: ((index ** 2 - 1) / (index ** 2 + 1)) ** 2 / 2,
      ours: clearFresnel(index, Math.cos(Math.atan(index))),
      tolerance: { relative: 1e-9 },
    });
  });

  it('along the surface: all', () => {
    check({
      id: 'grazing',
      claim: 'share that water reflects along its surface',
      source: 'Hecht fig. 4.45',
      unit: '',
      expected: 1,
      ours: clearFresnel(1.333, 0),
      tolerance: { absolute: 1e-12 },
    });
  });

  it.each([
    [1.333, 0.066],
    [1.5, 0.092],
  ])('from all round, index %d: as tables of diffuse light have it', (index, expected) => {
    check({
      id: `n ${index}`,
      claim: `share that a face of index ${index} reflects of light from all round`,
      source: 'Duntley 1942 after Walsh 1926, value from memory',
      unit: '',
      expected,
      ours: 1 - throughSheen(0, index).mean,
      tolerance: { absolute: 1e-3 },
    });
    const inTurns = gaussLegendre(400).reduce((sum, { at, weight }) => {
      const { across, along } = bySines(index, 90 * at);
      return (
        sum + ((weight * Math.PI) / 2) * (across + along) * Math.sin(radians(90 * at)) * Math.cos(radians(90 * at))
      );
    }, 0);
    check({
      id: `n ${index}`,
      claim: `the same as the mean over all directions`,
      source: `${sineForm}; Gauss and Legendre’s rule in the angle`,
      unit: '',
      expected: inTurns,
      ours: 1 - throughSheen(0, index).mean,
      tolerance: { absolute: 1e-3 },
    });
  });

  // Schlick 1994: the approximation meets Fresnel's equations straight on and along the surface
  it.each([0.5, 0.95])('metal, %d straight on', (straight) => {
    const row = { id: `metal ${straight}`, source: 'Schlick 1994, eq. 15', unit: '', tolerance: { absolute: 1e-12 } };
    check({
      ...row,
      claim: 'share that metal reflects straight on',
      expected: straight,
      ours: metalFresnel(straight, 1),
    });
    check({ ...row, claim: 'share that metal reflects along it', expected: 1, ours: metalFresnel(straight, 0) });
    check({
      ...row,
      claim: 'share that metal reflects at 60 degrees',
      expected: straight + (1 - straight) / 32,
      ours: metalFresnel(straight, Math.cos(radians(60))),
    });
  });
});
