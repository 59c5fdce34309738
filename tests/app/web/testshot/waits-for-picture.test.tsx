import { readFileSync } from 'node:fs';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { CrossPicture } from '../../../../app/web/photo/CrossPicture.tsx';
import { shotOutcome } from '../../../../app/web/testshot/shot-outcome.ts';
import { Verdict } from '../../../../app/web/testshot/Verdict.tsx';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Frame, Lamp } from '../../../../core/setup/schema/setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const lamp = stones.lamps[0] as Lamp;
const frame = stones.schemes[0]?.frames[1] as Frame;

const verdict = (stops: number, doubt: number, isDrawn = true, isPointed = true) => {
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
      isDrawn={isDrawn}
      isPointed={isPointed}
      answer={{ compared, lamp: found }}
      lamp={lamp}
      frame={frame}
      outcome={shotOutcome(lamp, frame, found, null)}
      onLamp={() => undefined}
      onCount={() => undefined}
    />,
  );
};
const pictureWith = (place: readonly [number, number] | null) =>
  renderToStaticMarkup(
    <CrossPicture label="As rehearsed." place={place} radius={0.01} aspect={1.5} onPlace={() => undefined}>
      picture
    </CrossPicture>,
  );

describe('a test shot whose rehearsal is still being drawn', () => {
  it('says that it waits, and neither judges nor offers a correction', () => {
    for (const isPointed of [true, false]) {
      const words = verdict(-0.8, 0.2, false, isPointed);
      expect(words).toContain('rehearsal is still being drawn');
      expect(words).not.toContain('of what its box says');
      expect(words).not.toContain('<button');
    }
    expect(verdict(-0.8, 0.2, true)).toContain('gives 57 % of what its box says');
  });

  it('takes no cross until the picture stands', () => {
    expect(pictureWith(null)).toContain('disabled');
    expect(pictureWith(null)).not.toContain('<svg');
    expect(pictureWith([0.5, 0.5])).not.toContain('disabled');
    expect(pictureWith([0.5, 0.5])).toContain('<svg');
  });
});

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
