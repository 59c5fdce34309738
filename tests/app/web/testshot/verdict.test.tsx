import { readFileSync } from 'node:fs';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { shotOutcome } from '../../../../app/web/testshot/shot-outcome.ts';
import { Verdict } from '../../../../app/web/testshot/Verdict.tsx';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Frame, Lamp } from '../../../../core/setup/schema/setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const lamp = stones.lamps[0] as Lamp;
const frame = stones.schemes[0]?.frames[1] as Frame;

const verdict = (stops: number, doubt: number) => {
  const found = { stops, uncertaintyStops: doubt, share: 1 };
  const compared = {
    channel: 'green',
    measuredStops: stops,
    predictedStops: 0,
    differenceStops: stops,
    uncertaintyStops: doubt,
    curveStops: 0.1,
    restShare: 0,
  } as const;
  return renderToStaticMarkup(
    <Verdict
      isDrawn
      isPointed
      answer={{ compared, lamp: found }}
      lamp={lamp}
      frame={frame}
      outcome={shotOutcome(lamp, frame, found, null)}
      onLamp={() => undefined}
      onCount={() => undefined}
    />,
  );
};

describe('a difference within what can be measured', () => {
  it('corrects the lamp at most, never the count', () => {
    const words = verdict(-0.1, 0.2);
    expect(words).toContain('the lamp may stay as it is');
    expect(words).toContain('Correct the lamp');
    expect(words).not.toContain('Correct the count');
    // 8 s × 2^0.3 = 9.8 s: the frame of 10 s holds them
    expect(verdict(-0.3, 0.2)).toContain('Correct the count: 8 s → 9.8 s');
  });
});
