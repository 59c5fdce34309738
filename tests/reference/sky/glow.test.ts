import { describe, it } from 'vitest';
import { glowShape } from '../../../core/sky/glow-dome.ts';
import { glowFromTown } from '../../../core/sky/glow-from-town.ts';
import { luminanceFromSurfaceMagnitude, surfaceMagnitudeFromLuminance } from '../../../core/sky/magnitudes.ts';
import { stopsFromRatio } from '../../../core/units/stops.ts';
import { accuracySection } from '../support/accuracy.ts';

const { check } = accuracySection('Town glow');

describe('glowShape', () => {
  it.each([
    [20, 0, 0.245],
    [45, 0, 0.035],
    [90, 0, 0.0055],
    [10, 13.2, 0.5],
    [10, 0, 1],
  ])('at %d degrees, %d off the bearing: %d of that at 10 degrees (rel 2 %)', (altitude, turn, expected) => {
    const source = 'closed form fitted to Garstang 1986, 1989; number computed apart';
    const ours = glowShape(altitude, turn, 0);
    const claim = `glow at ${altitude}°, ${turn}° off`;
    check({ id: 'sky 4.7', claim, source, unit: '', expected, ours, tolerance: { relative: 0.02 } });
  });
});

describe('glowFromTown', () => {
  /** A natural zenith, as the law means it. */
  const natural = 1.9e-4;
  const source =
    'Walker 1977, 0.01 P d^-2.5 of a natural sky at 45 degrees, from memory; towns and models part by more';

  it.each([
    [1e5, 20, 0.559],
    [1e5, 50, 0.0566],
    [1e6, 50, 0.566],
    [1e6, 30, 2.03],
    [1e6, 75, 0.205],
    [1e6, 100, 0.1],
    [1e4, 10, 0.316],
    [3162, 10, 0.1],
    [31250, 25, 0.1],
    [176777, 50, 0.1],
  ])('5.3g, h: %d people at %d km give %d of a natural sky at 45 degrees (abs 1 stop)', (people, km, expected) => {
    const ours = (glowFromTown(people, km) * glowShape(45, 0, 0)) / natural;
    const claim = `${people} people at ${km} km, over Walker’s law`;
    const stops = stopsFromRatio(ours / expected);
    check({ id: '5.3g', claim, source, unit: 'stops', expected: 0, ours: stops, tolerance: { absolute: 1 } });
  });

  it.each([
    [20, 8.4],
    [30, 2.95],
    [50, 0.66],
    [75, 0.18],
    [100, 0.068],
  ])('sky 4.7: a million people at %d km give %d of a natural sky at 45 degrees (abs 0.5 mag)', (km, expected) => {
    const ours = 2.5 * Math.log10((glowFromTown(1e6, km) * glowShape(45, 0, 0)) / natural / expected);
    const claim = `a million people at ${km} km, over our own march`;
    const from = 'our own march of Garstang 1986, 1989, made apart; not published';
    check({ id: 'sky 4.7', claim, source: from, unit: 'mag', expected: 0, ours, tolerance: { absolute: 0.5 } });
  });
});

describe('brightening', () => {
  it.each([
    [0.01, 0.011],
    [0.1, 0.103],
    [0.33, 0.31],
    [1, 0.753],
    [3, 1.505],
    [9, 2.5],
    [27, 3.618],
  ])('5.3i: artificial light of %d of the natural sky brightens it by %d mag (abs 6e-4)', (ratio, expected) => {
    const natural = luminanceFromSurfaceMagnitude(22);
    const ours = 22 - surfaceMagnitudeFromLuminance(natural * (1 + ratio));
    const from = '2.5 lg (1 + r); class limits of published maps of artificial sky glow';
    const claim = `brightening by ${ratio}`;
    check({ id: '5.3i', claim, source: from, unit: 'mag', expected, ours, tolerance: { absolute: 6e-4 } });
  });
});
