import { describe, expect, it } from 'vitest';
import { lensFactor, midGreyExposure, saturationExposure, saturationStops } from '../../../core/camera/exposure.ts';
import { siderealRadiansPerSecond } from '../../../core/camera/star-trail.ts';
import { aboutReadings } from '../../../core/readings/about/all-readings.ts';
import { steepDegrees } from '../../../core/readings/ambient-ways.ts';
import { shadowReachMetres } from '../../../core/readings/shadow-reading.ts';
import { luminanceFromSurfaceMagnitude } from '../../../core/sky/magnitudes.ts';
import { moonMagnitude } from '../../../core/sky/moon-light.ts';
import { detourRatio } from '../../../core/walk/walk.ts';

describe('what stands behind a reading', () => {
  it('has a name, a sentence, a rule and a source', () => {
    for (const [id, { name, says, rule, source }] of Object.entries(aboutReadings)) {
      for (const text of [says, rule, source]) expect(text, id).toMatch(/^\S.{5,}\.$/);
      expect(name, id).toMatch(/^[A-Z]/);
      expect(`${says}${rule}${source}`, id).not.toMatch(/undefined|NaN/);
    }
  });
  it('tells the numbers that core works with', () => {
    const { target, walk, shadow, stars, moonlight, zenith, burnt } = aboutReadings;
    expect(target.rule).toContain(`log2(${lensFactor} × L × seconds × ISO ÷ (${midGreyExposure(1)} ×`);
    expect(target.says).toContain(`+${saturationStops.toFixed(1)} the sensor is full`);
    expect(burnt.rule).toContain(`${saturationExposure(1)} ÷ ISO`);
    expect(walk.rule).toContain(`× ${detourRatio} ÷ your speed`);
    expect(shadow.rule).toContain(`out to ${shadowReachMetres} m`);
    expect(aboutReadings['against-moon'].rule).toContain(`higher than ${steepDegrees}°`);
    expect(stars.rule).toContain(
      `1 turn in ${Math.round((2 * Math.PI) / siderealRadiansPerSecond).toLocaleString('en')} s`,
    );
    expect(moonlight.rule).toContain(`V = −${-moonMagnitude(0)} `);
    expect(zenith.rule).toContain(
      `${(Math.round(luminanceFromSurfaceMagnitude(0) / 1000) * 1000).toLocaleString('en')}`,
    );
  });
});
