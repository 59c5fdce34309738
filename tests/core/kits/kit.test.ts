import { describe, expect, it } from 'vitest';
import { allKits, kitNamed } from '../../../core/kits/all-kits.ts';
import { initialValues, settledValues } from '../../../core/kits/kit.ts';
import { silo } from '../../../core/kits/silo.ts';

describe('kitNamed', () => {
  it('finds every kit by its name, and none of a later program', () => {
    for (const kit of allKits) expect(kitNamed(kit.name)).toBe(kit);
    expect(kitNamed('airship')).toBeNull();
  });
});

describe('settledValues', () => {
  it('takes the first value for what is missing or no number', () => {
    expect(settledValues(silo, {})).toEqual(initialValues(silo));
    expect(settledValues(silo, { heightMetres: Number.NaN })).toEqual(initialValues(silo));
  });

  it('brings numbers into their range, choices to the nearest, and drops what is no field', () => {
    const { heightMetres, roof, hoops, ...rest } = settledValues(silo, {
      heightMetres: 1000,
      roof: 0.7,
      hoops: -3,
      x: 1,
    });
    expect([heightMetres, roof, hoops]).toEqual([40, 1, 0]);
    expect(rest).not.toHaveProperty('x');
  });
});
