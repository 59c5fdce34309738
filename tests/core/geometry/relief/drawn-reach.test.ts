import { describe, expect, it } from 'vitest';
import { drawnReach } from '../../../../core/geometry/relief/drawn-reach.ts';
import { sheetShape, sheets } from './sheets.ts';

const awayOf = ({ positions }: { readonly positions: Float64Array }): number => {
  let away = 0;
  for (let i = 0; i < positions.length; i += 3)
    away = Math.max(away, Math.hypot(positions[i] as number, positions[i + 2] as number));
  return away;
};

describe.each(sheets)('drawnReach of %s', (name, make) => {
  const kind = name as 'ripples' | 'drifts' | 'cracks' | 'pool';

  it('is the shape’s own where the triangles are enough', () => {
    const { radiusMetres, spacingMetres } = sheetShape;
    expect(drawnReach(kind, { ...sheetShape, spacingMetres: 1 })).toEqual({ radiusMetres, spacingMetres: 1 });
    expect(spacingMetres).toBe(0.25);
  });

  it.each([5, 20, 100, 500])(
    'says how far the mesh of a radius of %d m goes (within a quarter, for the rim is drawn in)',
    (radius) => {
      const shape = { ...sheetShape, radiusMetres: radius };
      const reach = drawnReach(kind, shape).radiusMetres;
      const away = awayOf(make(shape));
      expect(away).toBeLessThanOrEqual(reach * (1 + 1e-12));
      expect(away).toBeGreaterThan(0.75 * reach);
    },
  );

  it(kind === 'pool' ? 'keeps the extent and draws longer waves' : 'keeps the spacing and covers less', () => {
    const far = drawnReach(kind, { ...sheetShape, radiusMetres: 100 });
    if (kind === 'pool') expect(far).toMatchObject({ radiusMetres: 100 });
    else expect(far).toMatchObject({ spacingMetres: sheetShape.spacingMetres });
    expect(kind === 'pool' ? far.spacingMetres > 1 : far.radiusMetres < 20).toBe(true);
  });
});
