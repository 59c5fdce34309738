import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { shotOutcome } from '../../../../app/web/testshot/shot-outcome.ts';
import { withinDoubtWords } from '../../../../app/web/testshot/shot-words.ts';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Frame, Lamp } from '../../../../core/setup/schema/setup.ts';

const stones = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const lamp = stones.lamps[0] as Lamp;
const frame = stones.schemes[0]?.frames[1] as Frame;
const outcomeOf = (stops: number, uncertaintyStops: number) =>
  shotOutcome(lamp, frame, { stops, uncertaintyStops, share: 1 }, null);

describe('what a shot would make of a lamp', () => {
  it('is within doubt where it is less than the shot can tell', () => {
    expect(outcomeOf(0.1, 0.2)).toMatchObject({ movedStops: 0.1, isWithinDoubt: true });
    expect(outcomeOf(-0.1, 0.2).isWithinDoubt).toBe(true);
    expect(outcomeOf(-0.8, 0.3).isWithinDoubt).toBe(false);
  });

  it('leaves the counts alone then; beyond it they make up for the lamp', () => {
    expect(outcomeOf(-0.1, 0.2).counts).toEqual([]);
    // 8 s of a lamp at half its light become 16 s, which a frame of 10 s does not hold
    expect(outcomeOf(-1, 0.3).counts).toBeNull();
    expect(outcomeOf(1, 0.3).counts).toMatchObject([{ from: 8, to: 4 }]);
  });

  it('is said to be so', () => {
    expect(withinDoubtWords(0.1, 0.2)).toBe(
      '0.1 stop is within what can be measured here (±0.2): the lamp may stay as it is.',
    );
  });
});
