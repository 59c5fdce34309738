import { describe, it } from 'vitest';
import { airglowRise } from '../../../core/sky/airglow.ts';
import { skyLuminance } from '../../../core/sky/sky-luminance.ts';
import { zodiacalS10 } from '../../../core/sky/zodiacal.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';
import { stopsFromRatio } from '../../../core/units/stops.ts';
import { fakeSky } from '../../core/sky/fake-sky.ts';
import { horizontalLux } from '../../core/sky/horizontal-lux.ts';
import { accuracySection } from '../support/accuracy.ts';

const { check } = accuracySection('Night sky');
const sine = (degrees: number): number => Math.sin(radiansFromDegrees(degrees));

describe('airglow', () => {
  it.each([
    [30, -0.12],
    [45, -0.29],
    [60, -0.54],
    [70, -0.75],
    [75, -0.87],
    [80, -0.97],
    [85, -1.04],
  ])('%d degrees off the zenith it is %d mag brighter (abs 0.006)', (zenithDegrees, expected) => {
    const ours = -2.5 * Math.log10(airglowRise(0.172, sine(90 - zenithDegrees)));
    const source = 'Krisciunas and Schaefer 1991, eq. 2, k 0.172; number computed';
    const claim = `airglow ${zenithDegrees}° off the zenith`;
    check({ id: 'sky 4.2', claim, source, unit: 'mag', expected, ours, tolerance: { absolute: 0.006 } });
  });

  it.each([
    [60, -0.58],
    [75, -0.82],
  ])('%d degrees off the zenith another model has %d mag (abs 0.06)', (zenithDegrees, expected) => {
    const ours = -2.5 * Math.log10(airglowRise(0.172, sine(90 - zenithDegrees)));
    const source = 'Noll et al. 2012, eqs. 23 to 25; number computed';
    const claim = `airglow ${zenithDegrees}° off the zenith, other model`;
    check({ id: 'sky 4.2', claim, source, unit: 'mag', expected, ours, tolerance: { absolute: 0.06 } });
  });
});

describe('zodiacalS10', () => {
  it.each([
    [0, 30, 829],
    [0, 60, 437],
    [0, 90, 202],
    [0, 130, 141],
    [0, 180, 180],
    [30, 90, 110],
    [90, 0, 60],
  ])('at latitude %d, %d degrees from the sun: %d S10 (rel 2 %: our crest is rounded)', (latitude, turn, expected) => {
    const ours = zodiacalS10(sine(latitude), Math.cos(radiansFromDegrees(turn)));
    const source = 'fit after Leinert et al. 1998; number computed apart';
    const claim = `zodiacal light at ${latitude}°, ${turn}°`;
    check({ id: 'sky 4.2', claim, source, unit: 'S10', expected, ours, tolerance: { relative: 0.02 } });
  });
});

describe('moonless night', () => {
  it.each([22, 21.8, 21.6])(
    '5.3c: level ground at a site of %d gets 0.6 to 0.9 mlx (abs 0.5 stop beyond)',
    (zenithMagnitude) => {
      // both bands along the horizon; the darkest natural sites are at the lower end
      const sky = skyLuminance(fakeSky({ input: { zenithMagnitude } }), [], { withoutStarsToV8: false });
      const ours = stopsFromRatio(horizontalLux(sky) / Math.sqrt(0.6e-3 * 0.9e-3));
      const source = 'natural moonless night 0.6 to 0.9 mlx, from memory';
      const claim = `site of ${zenithMagnitude}, over the middle of 0.6 to 0.9 mlx`;
      const tolerance = { absolute: stopsFromRatio(0.9 / 0.6) / 2 + 0.5 };
      check({ id: '5.3c', claim, source, unit: 'stops', expected: 0, ours, tolerance });
    },
  );
});
