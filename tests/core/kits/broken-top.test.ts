import { describe, expect, it } from 'vitest';
import { heightAt } from '../../../core/kits/shared/broken-top.ts';

describe('heightAt', () => {
  const top = {
    spots: [
      [-2, 3],
      [0, 2],
      [0, 1],
      [1, 1],
    ] as const,
  };

  it('follows the edge of a ruined wall from spot to spot', () => {
    expect(heightAt(top, -2)).toBeCloseTo(3, 12);
    expect(heightAt(top, -1)).toBeCloseTo(2.5, 12);
    expect(heightAt(top, 0.5)).toBeCloseTo(1, 12);
  });

  it('is the lower one where the edge steps, and the height of its end beyond it', () => {
    expect(heightAt(top, 0)).toBeCloseTo(1, 12);
    expect([-9, 9].map((place) => heightAt(top, place))).toEqual([3, 1]);
    // a step up to the last spot
    expect(heightAt({ spots: [...top.spots, [1, 4]] }, 1)).toBeCloseTo(1, 12);
  });
});
