import { describe, expect, it } from 'vitest';
import { naturalRipples, type RipplePattern } from '../../../../core/geometry/relief/ripple-phase.ts';
import { rippleSection, sectionKnots, windwardShare } from '../../../../core/geometry/relief/ripple-section.ts';
import { ripplesMesh } from '../../../../core/geometry/relief/ripples.ts';
import type { Vec3 } from '../../../../core/geometry/vec.ts';
import { shadowedShare, shadowedShareOfSection } from '../../support/raking.ts';
import { sheetShape } from './sheets.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const shape = { ...sheetShape, heightMetres: 0.02, spacingMetres: 0.25, radiusMetres: 4 };

/** Straight and even: what a section says of them can be worked out. */
const evenRipples = (spacingMetres: number): RipplePattern => ({
  phase: (u) => u / spacingMetres,
  strength: () => 1,
  gained: () => () => 0,
});

/** u runs north, which is -z. `fromLee`: light from +u, on the steep side; else from -u, which the steep side turns its back to. */
const toLight = (elevationDegrees: number, fromLee: boolean): Vec3 => {
  const e = radians(elevationDegrees);
  return [0, Math.sin(e), fromLee ? -Math.cos(e) : Math.cos(e)];
};

describe('shadowedShareOfSection', () => {
  it('a saw of height h and length s at slope m throws shadows of h/m over the next teeth: closed form (abs 1e-3)', () => {
    // teeth rise evenly away from the light’s side and drop at once; a shadow of length L lies on a slope h/s that rises against it
    const [h, s] = [0.05, 0.3];
    for (const slope of [0.2, 0.5, 1, 3]) {
      // light from +x; the tooth falls from its crest at x = 0 to nothing at x = s, where the next crest stands
      const share = shadowedShareOfSection((p) => h * (1 - p), s, slope);
      // behind each crest (at its -x foot) the ground rises toward -x by h/s: shadow where h - slope·d > (h/s)·d
      const length = Math.min(h / (slope + h / s), s);
      expect(share).toBeCloseTo(length / s, 2);
    }
  });
});

describe('ripplesMesh of even ripples', () => {
  const mesh = ripplesMesh(shape, evenRipples(shape.spacingMetres));

  it.each([
    [3, true],
    [6, true],
    [10, true],
    [3, false],
    [6, false],
    [10, false],
  ])(
    'light at %d° (from lee: %s) leaves the same share in shadow as its section solved in one dimension (abs 0.02)',
    (elevation, fromLee) => {
      const section = (phase: number) => shape.heightMetres * rippleSection(fromLee ? phase : 1 - phase);
      const expected = shadowedShareOfSection(section, shape.spacingMetres, Math.tan(radians(elevation)));
      expect(Math.abs(shadowedShare(mesh, 2, toLight(elevation, fromLee)) - expected)).toBeLessThan(0.02);
    },
  );

  it.each([12, 15])(
    'light at %d° on the windward side: the same share as the section of eight straight faces that is drawn (abs 0.02)',
    (elevation) => {
      const knots = [...sectionKnots(8), 1];
      const drawn = (phase: number): number => {
        const k = Math.max(knots.findIndex((knot) => knot > phase) - 1, 0);
        const [from, to] = [knots[k] as number, knots[k + 1] as number];
        return rippleSection(from) + ((phase - from) / (to - from)) * (rippleSection(to) - rippleSection(from));
      };
      const section = (phase: number) => shape.heightMetres * (phase === 0 ? 0 : drawn(1 - phase));
      const expected = shadowedShareOfSection(section, shape.spacingMetres, Math.tan(radians(elevation)));
      expect(expected).toBeGreaterThan(0.05);
      expect(Math.abs(shadowedShare(mesh, 2, toLight(elevation, false)) - expected)).toBeLessThan(0.02);
    },
  );

  it('rakes: from 30 % to 80 % lie in shadow at 5°', () => {
    for (const fromLee of [true, false]) {
      const share = shadowedShare(mesh, 2, toLight(5, fromLee));
      expect(share).toBeGreaterThan(0.3);
      expect(share).toBeLessThan(0.8);
    }
  });

  it('throws no shadow at 60°', () => {
    expect(shadowedShare(mesh, 2, toLight(60, true))).toBe(0);
    expect(shadowedShare(mesh, 2, toLight(60, false))).toBe(0);
  });
});

describe('ripplesMesh of natural ripples', () => {
  const mesh = ripplesMesh(shape);

  it.each([4, 8])('leave as much in shadow at %d° as even ripples of 0.55 to 1 times their height', (elevation) => {
    const of = (factor: number) =>
      shadowedShareOfSection(
        (p) => factor * shape.heightMetres * rippleSection(1 - p),
        shape.spacingMetres,
        Math.tan(radians(elevation)),
      );
    const share = shadowedShare(mesh, 2, toLight(elevation, false));
    expect(share).toBeGreaterThan(of(0.55));
    expect(share).toBeLessThan(of(1));
  });

  it('throw no shadow at 60°', () => {
    expect(shadowedShare(mesh, 2, toLight(60, true))).toBe(0);
    expect(shadowedShare(mesh, 2, toLight(60, false))).toBe(0);
  });

  it('fork: round some places the ripples passed on a small closed way add up to one whole, round most to none', () => {
    const { phase } = naturalRipples(0.25, 5, 2.25, 7);
    const around = (u: number, v: number): number => {
      const half = 0.025;
      const corners = [
        [u - half, v - half],
        [u + half, v - half],
        [u + half, v + half],
        [u - half, v + half],
      ] as const;
      const phases = corners.map(([x, y]) => phase(x, y));
      const steps = phases.map((p, k) => {
        const step = (phases[(k + 1) % 4] as number) - p;
        return step - Math.round(step);
      });
      return Math.round(steps.reduce((sum, step) => sum + step, 0));
    };
    let [none, plus, minus] = [0, 0, 0];
    for (let u = -4; u < 4; u += 0.05)
      for (let v = -4; v < 4; v += 0.05) {
        const whole = around(u, v);
        if (whole === 0) none++;
        else if (whole === 1) plus++;
        else if (whole === -1) minus++;
      }
    expect(plus).toBeGreaterThan(5);
    expect(minus).toBeGreaterThan(5);
    expect(none).toBeGreaterThan(200 * (plus + minus));
  });
});

describe('rippleSection', () => {
  it('rises from 0 in the trough to 1 on the crest and falls again, the lee side steeper', () => {
    expect(rippleSection(0)).toBe(0);
    expect(rippleSection(windwardShare)).toBeCloseTo(1, 12);
    expect(rippleSection(1.25)).toBe(rippleSection(0.25));
    for (let p = 0.01; p < windwardShare; p += 0.01) expect(rippleSection(p)).toBeGreaterThan(rippleSection(p - 0.01));
    for (let p = windwardShare + 0.02; p < 1; p += 0.01) expect(rippleSection(p)).toBeLessThan(rippleSection(p - 0.01));
    expect(1 - windwardShare).toBeLessThan(windwardShare);
  });
});
