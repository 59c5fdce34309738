import { describe, expect, it } from 'vitest';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, errorOf, expectError, type Loose } from './good-setup.ts';

const withWalking = (walking: unknown) =>
  changed((setup: Loose) => {
    setup.walking = walking;
  });

describe('walking', () => {
  it('is a path’s 0.8 m/s in dark clothes, paces of 0.75 m, in setups that say nothing of it', () => {
    expect(parseSetup(changed(() => {})).walking).toEqual({
      metresPerSecond: 0.8,
      keepsOutOfPicture: false,
      paceMetres: 0.75,
      clothes: 'dark',
    });
  });
  it('is kept as it is written', () => {
    const walking = { metresPerSecond: 1.2, keepsOutOfPicture: true, paceMetres: 0.6, clothes: 'light' };
    const setup = parseSetup(withWalking(walking));
    expect(parseSetup(formatSetup(setup)).walking).toEqual(walking);
  });
  it.each([
    [{ metresPerSecond: 0.1 }, 'walking.metresPerSecond', 'at least 0.2 m/s'],
    [{ metresPerSecond: 2.1 }, 'walking.metresPerSecond', 'at most 2 m/s'],
    [{ keepsOutOfPicture: 'yes' }, 'walking.keepsOutOfPicture', 'true or false'],
    [{ clothes: 'red' }, 'walking.clothes', '"dark", "light"'],
  ])('%j is refused', (walking, path, words) => {
    expectError(errorOf(withWalking(walking)), 'field', path, words);
  });
});
