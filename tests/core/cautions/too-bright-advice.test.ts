import { describe, expect, it } from 'vitest';
import { tooBrightAdvice } from '../../../core/cautions/too-bright-advice.ts';

describe('tooBrightAdvice', () => {
  const case_ = { stops: 4, countSeconds: 8, levelPercent: 100, lowestLevelPercent: 5, standBackMetres: 24 };
  // 4 stops are 16 times
  it('4 stops over: a sixteenth of the count, a sixteenth of the level, and how far to step back', () => {
    const advice = tooBrightAdvice(case_);
    expect(advice).toContain('count 0.5 s instead of 8');
    expect(advice).toContain('down to 6.3 %');
    expect(advice).toContain('about 24 m');
  });
  it('where no distance can be told, none is', () => {
    expect(tooBrightAdvice({ ...case_, standBackMetres: null })).not.toContain('step back');
  });
  it('a level the lamp does not have is not advised: how far its lowest still is, is said (5 % / 3.1 % = 0.7 stop)', () => {
    const advice = tooBrightAdvice({ ...case_, stops: 5 });
    expect(advice).not.toContain('turn the lamp down');
    expect(advice).toContain('its lowest level, 5 %, is still 0.7 stops too bright');
  });
});
