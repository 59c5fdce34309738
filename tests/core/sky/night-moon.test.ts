import { describe, expect, it } from 'vitest';
import { moonPhaseName, moonPhaseNames } from '../../../core/sky/night-moon.ts';
import { skyAt } from '../../../core/sky/sky-at.ts';
import { skyInput } from '../support/sky-inputs.ts';

const day = 86_400_000;

describe('moonPhaseName', () => {
  it('goes through the eight names in order for two years, each quarter for one day of a month', () => {
    const names = Array.from({ length: 730 }, (_, i) => {
      const start = Date.UTC(2026, 0, 1) + i * day;
      return moonPhaseName(start, start + day);
    });
    const changes = names.filter((name, i) => i === 0 || name !== names[i - 1]);
    for (const [i, name] of changes.entries()) {
      const before = changes[i - 1];
      if (before !== undefined) expect(moonPhaseNames.indexOf(name)).toBe((moonPhaseNames.indexOf(before) + 1) % 8);
    }
    // 730 days are 24.72 months.
    for (const quarter of ['new moon', 'first quarter', 'full moon', 'last quarter']) {
      const days = names.filter((name) => name === quarter).length;
      expect(days).toBeGreaterThanOrEqual(24);
      expect(days).toBeLessThanOrEqual(25);
    }
  });

  it('calls a moon under half lit a crescent and over half gibbous, waxing while it stands east of the sun', () => {
    for (let i = 0; i < 120; i++) {
      const start = Date.UTC(2026, 0, 1) + i * day;
      const name = moonPhaseName(start, start + day);
      const { moon } = skyAt(skyInput(0, 0, start + day / 2));
      const grows = skyAt(skyInput(0, 0, start + day)).moon.litShare > skyAt(skyInput(0, 0, start)).moon.litShare;
      if (name.endsWith('crescent')) expect(moon.litShare).toBeLessThan(0.5);
      if (name.endsWith('gibbous')) expect(moon.litShare).toBeGreaterThan(0.5);
      if (name.startsWith('waxing')) expect(grows).toBe(true);
      if (name.startsWith('waning')) expect(grows).toBe(false);
    }
  });
});
