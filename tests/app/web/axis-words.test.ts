import { expect, it } from 'vitest';
import { axisWords } from '../../../app/web/inspector/axis-words.ts';
import { allKits } from '../../../core/kits/all-kits.ts';

it('east and north are the compass’s only where the setup’s north is not turned', () => {
  expect(axisWords({ northDegrees: 0 })).toEqual({ east: 'East', north: 'North' });
  expect(axisWords({ northDegrees: 360 }).north).toBe('North');
  expect(axisWords({ northDegrees: 40 })).toEqual({ east: 'Scene’s east', north: 'Scene’s north' });
});

it('no kit, which is turned with its scene, speaks of the compass', () => {
  const words = allKits.flatMap(({ says, fields }) => [
    says,
    ...fields.flatMap(({ label, choices = [] }) => [label, ...choices]),
  ]);
  expect(words.filter((each) => /\b(east|west|north|south)\b/i.test(each))).toEqual([]);
});
