import { describe, expect, it } from 'vitest';
import { dot, normalize, type Vec3 } from '../../../core/geometry/vec.ts';
import { directLuminance, look } from '../../../core/trace/direct-light.ts';
import { beamInHaze } from '../../../core/trace/haze-light.ts';
import { meter } from '../../../core/trace/meter.ts';
import type { LampSource } from '../../../core/trace/moments-taken.ts';
import { scatteredDirection } from '../../../core/trace/through-air.ts';
import { type Air, airOf, throughAir } from '../../../core/world/air.ts';
import { forwardness, scatterPhase } from '../../../core/world/air-light.ts';
import type { Stage } from '../../../core/world/stage.ts';
import { poseAt, type Source } from '../../../core/world/world.ts';
import { discEmitter, stageWith, standing, subjectOf } from '../../core/support/scenes.ts';
import { accuracySection } from '../support/accuracy.ts';
import { barePoint } from '../support/lamps.ts';

const { check } = accuracySection('Haze');

const hazy = (stage: Stage, hazeVisibilityKm: number): Stage => ({ ...stage, air: airOf({ hazeVisibilityKm }) });
const airAt = (hazeVisibilityKm: number): Air => airOf({ hazeVisibilityKm }) as Air;
const open = stageWith();
/** Share taken per metre where one sees 0.4 km. */
const sigma = Math.log(20) / 400;
const up: Vec3 = [0, 1, 0];

/** Midpoint rule on [from, to]. */
const integral = (from: number, to: number, count: number, value: (x: number) => number): number => {
  const step = (to - from) / count;
  let sum = 0;
  for (let i = 0; i < count; i++) sum += value(from + (i + 0.5) * step) * step;
  return sum;
};

/** Henyey and Greenstein 1941, eq. 2, for unit albedo: written out apart from ours. */
const phase = (g: number, cosine: number) =>
  (1 - g ** 2) / (4 * Math.PI) / Math.sqrt((1 + g ** 2 - 2 * g * cosine) ** 3);

describe('throughAir', () => {
  it.each([0.4, 2, 20])('leaves a twentieth of a beam over a visibility of %d km', (km) => {
    const source = 'WMO-No. 8, part I, chapter 9: meteorological optical range';
    const ours = throughAir(airAt(km), km * 1000);
    const claim = `share of a beam left after ${km} km where one sees as far`;
    check({ id: 'haze a', claim, source, unit: '', expected: 0.05, ours, tolerance: { relative: 1e-9 } });
  });
});

describe('scatterPhase', () => {
  const source = 'Henyey and Greenstein 1941';
  const overSphere = (value: (cosine: number) => number) => 2 * Math.PI * integral(-1, 1, 20_000, value);

  it('sends on all light: 1 over the sphere', () => {
    const ours = overSphere(scatterPhase);
    check({
      id: 'haze b',
      claim: 'phase over the sphere',
      source,
      unit: '',
      expected: 1,
      ours,
      tolerance: { relative: 1e-6 },
    });
  });

  it('has g for mean cosine, and so have the directions drawn by it', () => {
    const tolerance = { absolute: 1e-3 };
    const common = { source, unit: '', expected: forwardness, tolerance };
    const ours = overSphere((cosine) => cosine * scatterPhase(cosine));
    check({ id: 'haze c', claim: 'mean cosine of the phase', ours, ...common });
    const axis = normalize([1, 2, -0.5]);
    const drawn = integral(0, 1, 2000, (u) => dot(scatteredDirection(axis, u, (u * 77) % 1), axis));
    check({ id: 'haze d', claim: 'mean cosine of directions drawn', ours: drawn, ...common });
  });

  it('draws directions within 30 degrees as often as it scatters there', () => {
    const axis: Vec3 = [0, 0, 1];
    const within = Math.cos(Math.PI / 6);
    const expected = 2 * Math.PI * integral(within, 1, 20_000, (cosine) => phase(0.7, cosine));
    const ours = integral(0, 1, 20_000, (u) => (scatteredDirection(axis, u, 0.3)[2] >= within ? 1 : 0));
    const claim = 'share scattered within 30°';
    check({ id: 'haze e', claim, source, unit: '', expected, ours, tolerance: { absolute: 1e-3 } });
  });
});

describe('light on a surface in haze', () => {
  it.each([5, 20, 90])('of a lamp on the axis %d m away dims by exp(-sigma d)', (metres) => {
    const lamp = standing([0, 10, metres], [0, 10, 0], discEmitter(0.01));
    const lux = (stage: Stage) => meter(stage, lamp, [0, 10, 0], [0, 0, 1], 1);
    const ours = lux(hazy(open, 0.4)) / lux(open);
    const expected = Math.exp(-sigma * metres);
    const claim = `share of a lamp's light that arrives ${metres} m away, visibility 0.4 km`;
    check({ id: 'haze f', claim, source: 'Beer and Lambert', unit: '', expected, ours, tolerance: { relative: 1e-6 } });
  });

  // what gets through straight, and what haze sends down: as bright as a way through it takes, on level ground no more
  // than it takes of the moon; by columns of sky on a fine grid
  it.each([20, 45, 75])('of a moon %d degrees up adds up from straight and scattered light', (altitude) => {
    const [s, c] = [Math.sin((altitude * Math.PI) / 180), Math.cos((altitude * Math.PI) / 180)];
    const moon: Source = { kind: 'moon', toward: [c, s, 0], radiusRadians: 0.0045 };
    const straight = Math.exp((-sigma * 100) / s);
    const scattered = integral(0, 1, 500, (y) =>
      integral(0, 2 * Math.PI, 500, (turn) => {
        const cosine = y * s + Math.sqrt(1 - y * y) * c * Math.cos(turn);
        const taken = Math.min(1 - Math.exp((-sigma * 100) / y), ((1 - straight) * s) / y);
        return taken * phase(0.7, cosine) * y;
      }),
    );
    const expected = straight * s + scattered;
    const ours = meter(hazy(open, 0.4), moon, [0, 0, 0], up, 16_384);
    const claim = `moon ${altitude}° up on level ground in haze, per lux on what faces it in clear air`;
    const source = 'first principles, one scattering';
    check({ id: 'haze g', claim, source, unit: '', expected, ours, tolerance: { relative: 0.02 } });
    expect(ours).toBeLessThan(s);
    expect(ours).toBeGreaterThan(0.5 * s);
  });
});

describe('beamInHaze', () => {
  const air = airAt(0.4);
  const along = Array.from({ length: 32 }, (_, i) => (i + 0.5) / 32);
  const ours = (lamp: LampSource, origin: Vec3, direction: Vec3, metres: number) => {
    const taken = { poses: [poseAt(lamp, 0.5)], feet: null, clothes: 0 };
    const at = (share: number) =>
      beamInHaze(hazy(open, 0.4), air, lamp, { origin, direction }, metres, taken, null, {
        along: share,
        choice: 0.5,
        turn: 0.5,
      });
    return along.reduce((sum, share) => sum + at(share), 0) / along.length;
  };
  /** Candela per lumen off the lamp's axis over the distance squared, scattered once, thinned on both ways. */
  const quadrature = (
    position: Vec3,
    aim: Vec3,
    candela: (cosine: number) => number,
    [ox, oy, oz]: Vec3,
    [dx, dy, dz]: Vec3,
    metres: number,
  ) => {
    const axis = normalize([aim[0] - position[0], aim[1] - position[1], aim[2] - position[2]]);
    return integral(0, metres, 400_000, (t) => {
      const way: Vec3 = [ox + t * dx - position[0], oy + t * dy - position[1], oz + t * dz - position[2]];
      const distance = Math.hypot(...way);
      const cosine = -(way[0] * dx + way[1] * dy + way[2] * dz) / distance;
      const sent = candela((way[0] * axis[0] + way[1] * axis[1] + way[2] * axis[2]) / distance) / distance ** 2;
      return sent * sigma * phase(0.7, cosine) * Math.exp(-sigma * (t + distance));
    });
  };
  const source = 'first principles: inverse square, Henyey and Greenstein 1941, Beer and Lambert; midpoint rule';
  const common = { source, unit: 'cd/m² per lm', tolerance: { relative: 0.02 } };

  it.each([
    ['beside the way', [3, 20, -30], 100],
    ['near the way', [0.2, 20, -12], 100],
    ['behind the eye', [1, 20, 4], 60],
    ['past the end of the way', [2, 22, -80], 60],
  ] as const)('of a bare lamp %s', (where, position, metres) => {
    const aim: Vec3 = [position[0], position[1], position[2] - 1];
    const [eye, ahead]: [Vec3, Vec3] = [
      [0, 20, 0],
      [0, 0, -1],
    ];
    const expected = quadrature(position, aim, () => 1 / (4 * Math.PI), eye, ahead, metres);
    const value = ours(standing(position, aim, barePoint()), eye, ahead, metres);
    check({ id: 'haze h', claim: `light of haze, bare lamp ${where}`, expected, ours: value, ...common });
  });

  it.each([200, 2000])('of a narrow beam cos^%d seen from the side', (exponent) => {
    const [position, aim]: [Vec3, Vec3] = [
      [-15, 20, -25],
      [15, 20, -25],
    ];
    const [eye, ahead]: [Vec3, Vec3] = [[0, 21, 0], normalize([0.1, -0.04, -1])];
    const candela = (cosine: number) => (cosine > 0 ? ((exponent + 1) / (2 * Math.PI)) * cosine ** exponent : 0);
    const expected = quadrature(position, aim, candela, eye, ahead, 80);
    const beam = { exponent, cosSpill: -1, cosSpillEven: -1, spillShare: 0 };
    const value = ours(standing(position, aim, discEmitter(0.01, beam)), eye, ahead, 80);
    check({
      id: 'haze i',
      claim: `light of haze, beam cos^${exponent} from the side`,
      expected,
      ours: value,
      ...common,
    });
  });
});

/** A wall 4 m deep whose face stands at z = 0, and an eye before it. */
const walled = stageWith(
  subjectOf('wall', [{ kind: 'box', position: [0, 2, 0], widthMetres: 60, depthMetres: 4, heightMetres: 40 }]),
);
const numbers = { u: 0.5, v: 0.5, time: 0.5 };
const luminance = (stage: Stage, source: Source, origin: Vec3, direction: Vec3) =>
  directLuminance(stage, source, look(stage, { origin, direction }, null), numbers)[1];

describe('what is seen through haze', () => {
  it.each([10, 60, 200])('of a surface %d m away keeps exp(-sigma d) of its luminance', (metres) => {
    const lamp = standing([0, 3, 5], [0, 3, 0], discEmitter(0.01));
    const eye: Vec3 = [0.5, 3, metres];
    const ahead = normalize([-0.5, 0, -metres]);
    const ours = luminance(hazy(walled, 0.4), lamp, eye, ahead) / luminance(walled, lamp, eye, ahead);
    const expected = Math.exp(-sigma * (5 + Math.hypot(0.5, metres)));
    const claim = `wall ${metres} m away, lit from 5 m`;
    check({ id: 'haze j', claim, source: 'Beer and Lambert', unit: '', expected, ours, tolerance: { relative: 1e-3 } });
  });

  it.each([0.1, 0.4, 5])('of an even sky stays as bright, one sees %d km', (km) => {
    for (const y of [0.01, 0.2, 1]) {
      const expected = 1 / Math.PI;
      const ours = luminance(hazy(open, km), { kind: 'sky' }, [0, 1.6, 0], normalize([0, y, -1]));
      const claim = `even sky of 1 lx through haze of ${km} km, rise ${y}`;
      const source = 'all of it scattered, none taken up; ground as bright, our choice';
      check({ id: 'haze k', claim, source, unit: 'cd/m²', expected, ours, tolerance: { relative: 1e-6 } });
    }
  });

  it('is as in clear air where one sees 300 km (1e-3)', () => {
    const s = Math.SQRT1_2;
    const sources: [string, Source][] = [
      ['lamp', standing([3, 3, 8], [0, 3, 0], discEmitter(0.01))],
      ['moon', { kind: 'moon', toward: [0, s, s], radiusRadians: 0.0045 }],
      ['sky', { kind: 'sky' }],
    ];
    for (const [name, source] of sources)
      for (const [what, direction] of [
        ['wall', [0, 0, -1]],
        ['ground', normalize([0, -0.6, -1])],
        ['sky', normalize([0, 6, -1])],
      ] as const) {
        const [ours, expected] = [hazy(walled, 300), walled].map((stage) =>
          luminance(stage, source, [0, 3, 8], direction),
        ) as [number, number];
        const claim = `${what} by ${name}, clear air of 300 km`;
        // where clear air sends nothing, against the even sky of a lux
        const tolerance = expected > 0 ? { relative: 1e-3 } : { absolute: 1e-3 };
        check({ id: 'haze l', claim, source: 'limit of no haze', unit: 'cd/m²', expected, ours, tolerance });
      }
  });
});
