import { describe, expect, it } from 'vitest';
import { arrowPath } from '../../../app/web/groundplan/DragArrow.tsx';
import type { PlanView } from '../../../app/web/ui/plan-view.ts';

/** A metre is 30 units, north is up: the camera stands in the south, at six. */
const view: PlanView = { centre: [0, 0], up: [0, 1], unitsPerMetre: 30 };
const ends = (path: string | null) => {
  const found = /^M([-\d.e]+) ([-\d.e]+)A([-\d.e]+) \S+ 0 0 (\d) ([-\d.e]+) ([-\d.e]+)M/.exec(path ?? '');
  if (!found) throw new Error(`no arrow: ${path}`);
  const [x0, y0, radius, sweep, x1, y1] = found.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  return { from: [x0, y0] as const, to: [x1, y1] as const, radius, sweep };
};

describe('the arrow from a lamp to beside the camera', () => {
  it('leads round the middle, at the lamp’s own distance, down on its own side', () => {
    for (const side of [1, -1]) {
      const { from, to, radius, sweep } = ends(arrowPath(view, [side * 6, 0, 1]));
      expect(radius).toBeCloseTo(180, 9);
      for (const [x, y] of [from, to]) {
        expect(Math.hypot(x, y)).toBeCloseTo(180, 9);
        expect(Math.sign(x)).toBe(side);
      }
      // the lamp is at y 0; six is at y 180
      expect(from[1]).toBeGreaterThan(0);
      expect(to[1]).toBeGreaterThan(from[1]);
      // it ends by half past five or six, an hour being 30°, and short of it
      const hours = Math.atan2(side * to[0], to[1]) / (Math.PI / 6);
      expect(hours).toBeGreaterThan(0.5);
      expect(hours).toBeLessThan(1);
      // clockwise on the screen from the right, where y grows downward
      expect(sweep).toBe(side > 0 ? 1 : 0);
    }
  });
  it('is left out where the lamp is there already, or right in the middle', () => {
    expect(arrowPath(view, [0.2, -6, 1])).toBeNull();
    expect(arrowPath(view, [0.5, 0, 1])).toBeNull();
  });
});
