import { describe, expect, it } from 'vitest';
import { add, type Vec3 } from '../../../core/geometry/vec.ts';
import { distributionOf } from '../../../core/photometry/distribution.ts';
import { fluxExact, fluxZonal } from '../../../core/photometry/distribution-flux.ts';
import { measuredBeam } from '../../../core/photometry/measured-beam.ts';
import { meter } from '../../../core/trace/meter.ts';
import { emitterOf, fluxOf } from '../../../core/world/lamp-light.ts';
import { relativeError } from '../support/errors.ts';
import { stageWith, standing } from '../support/scenes.ts';
import { lampOf, measuredField } from './lamps.ts';

const stage = stageWith();
/** A lamp high up that looks north; left of it, seen from behind, is west. */
const lampAt: Vec3 = [0, 50, 0];
const sides = { left: [-1, 0], below: [0, -1], right: [1, 0], above: [0, 1] } as const;
type Side = keyof typeof sides;
const order: readonly Side[] = ['left', 'below', 'right', 'above'];

/** 400 cd in the half plane 0, 300 in 90, 200 in 180, 100 in 270, at every angle off the axis but the axis itself. */
const uneven = measuredField([0, 1, 80], [0, 90, 180, 270, 360], (_, h) => 400 - ((h % 360) / 90) * 100);

/** Light on a facing meter 5 m off, 40 degrees off the axis toward a side, with the lamp turned; lx. */
const luxToward = (side: Side, turnDegrees: number): number => {
  const lamp = lampOf({
    kind: 'point',
    output: { from: 'measured' },
    beam: { shape: 'measured', beamId: 'file', turnDegrees },
  });
  const [across, up] = sides[side];
  const [sin, cos] = [Math.sin((40 * Math.PI) / 180), Math.cos((40 * Math.PI) / 180)];
  const way: Vec3 = [across * sin, up * sin, -cos];
  const place = add(lampAt, [5 * way[0], 5 * way[1], 5 * way[2]]);
  const source = standing(lampAt, add(lampAt, [0, 0, -1]), emitterOf(lamp, [uneven]));
  return fluxOf(lamp, [uneven]) * meter(stage, source, place, [-way[0], -way[1], -way[2]], 1);
};

describe('measured beam, seen from behind the lamp', () => {
  // type C planes run counter-clockwise (LM-63-2002); which way 0 points is the setup format's own rule: left
  it('its half plane 0 points left, 90 down, 180 right, 270 up: candela over distance squared (rel 1e-9)', () => {
    order.forEach((side, quarter) => {
      expect(relativeError(luxToward(side, 0), (400 - quarter * 100) / 25)).toBeLessThanOrEqual(1e-9);
    });
  });

  it.each([90, 180, 270, -90, 360])('turned by %d degrees all sides move on counter-clockwise (rel 1e-9)', (turn) => {
    order.forEach((side, quarter) => {
      const from = order[(((quarter - turn / 90) % 4) + 4) % 4] as Side;
      expect(relativeError(luxToward(side, turn), luxToward(from, 0))).toBeLessThanOrEqual(1e-9);
    });
  });

  it('turned by 180 degrees left and right swap, and so do above and below (rel 1e-9)', () => {
    expect(relativeError(luxToward('left', 180), luxToward('right', 0))).toBeLessThanOrEqual(1e-9);
    expect(relativeError(luxToward('right', 180), luxToward('left', 0))).toBeLessThanOrEqual(1e-9);
    expect(relativeError(luxToward('above', 180), luxToward('below', 0))).toBeLessThanOrEqual(1e-9);
  });

  it('turned by 45 degrees, a side has the mean of its old neighbours (rel 1e-9)', () => {
    expect(relativeError(luxToward('below', 45), (luxToward('left', 0) + luxToward('below', 0)) / 2)).toBeLessThan(
      1e-9,
    );
  });
});

describe('measuredBeam', () => {
  const distribution = distributionOf(uneven);

  it('is the file scaled to one lumen, its peak too; a lamp whose output is the file has the file’s flux (rel 1e-12)', () => {
    const beam = measuredBeam(distribution, 0);
    expect(relativeError(beam.perLumen * fluxExact(distribution), 1)).toBeLessThanOrEqual(1e-12);
    expect(relativeError(beam.peakPerLumen / beam.perLumen, 400)).toBeLessThanOrEqual(1e-12);
    const lamp = lampOf({ kind: 'point', output: { from: 'measured' }, beam: { shape: 'measured', beamId: 'file' } });
    expect(relativeError(fluxOf(lamp, [uneven]), fluxExact(distribution))).toBeLessThanOrEqual(1e-12);
    // planes constant over the angle: zones are exact too, 250 cd on the mean over the circle
    const solidAngle = 2 * Math.PI * (1 - Math.cos((80 * Math.PI) / 180));
    expect(relativeError(fluxExact(distribution), 250 * solidAngle)).toBeLessThanOrEqual(1e-9);
    expect(relativeError(fluxZonal(distribution), 250 * solidAngle)).toBeLessThanOrEqual(1e-9);
  });

  it('a file’s flux and peak are worked out once, whatever the turn', () => {
    const large = distributionOf(uneven);
    measuredBeam(large, 0);
    large.candela.fill(1);
    // a new sum would see that the numbers were changed behind its back
    expect(measuredBeam(large, 2).perLumen).toBe(measuredBeam(distribution, 0).perLumen);
    expect(measuredBeam(large, 2).turnRadians).toBe(2);
  });

  it('stands for itself in keys of layers: alike for the same file and turn, else different', () => {
    const key = (...beam: Parameters<typeof measuredBeam>) => JSON.stringify(measuredBeam(...beam));
    expect(key(distribution, 1)).toBe(key(distribution, 1));
    expect(key(distribution, 1)).not.toBe(key(distribution, 2));
    expect(key(distributionOf(uneven), 1)).not.toBe(key(distribution, 1));
    expect(key(distribution, 1).length).toBeLessThan(60);
  });

  it('one beam of the setup is one file for all lamps that have it', () => {
    const lamp = (id: string) => lampOf({ id, kind: 'torch', beam: { shape: 'measured', beamId: 'file' } });
    const [a, b] = [emitterOf(lamp('a'), [uneven]), emitterOf(lamp('b'), [uneven])];
    expect(JSON.stringify(a)).toBe(JSON.stringify(b));
    const copy = { ...uneven };
    expect(JSON.stringify(emitterOf(lamp('a'), [copy]))).not.toBe(JSON.stringify(a));
  });

  it('a lamp whose beam is not in the setup is refused', () => {
    const lamp = lampOf({ kind: 'point', beam: { shape: 'measured', beamId: 'other' } });
    expect(() => emitterOf(lamp, [uneven])).toThrow('no measured beam has the id "other"');
  });
});
