import { describe, expect, it } from 'vitest';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, errorOf, expectError, type Loose } from './good-setup.ts';

const bog = { id: 'bog', name: 'Bog', position: [3, -2], radiusMetres: 4 };
const withHazards = (hazards: unknown) =>
  changed((setup: Loose) => {
    setup.hazards = hazards;
  });

describe('hazards', () => {
  it('are none in setups that say nothing of them, and kept as they are written', () => {
    expect(parseSetup(changed(() => {})).hazards).toEqual([]);
    const setup = parseSetup(withHazards([bog, { ...bog, id: 'edge' }]));
    expect(parseSetup(formatSetup(setup)).hazards).toEqual([bog, { ...bog, id: 'edge' }]);
  });
  it.each([
    [[{ ...bog, radiusMetres: 0.4 }], 'hazards[0].radiusMetres', 'at least 0.5 metres'],
    [[{ ...bog, radiusMetres: 501 }], 'hazards[0].radiusMetres', 'at most 500 metres'],
    [[{ ...bog, position: [1, 2, 3] }], 'hazards[0].position', '[east, north]'],
    [[{ ...bog, name: '' }], 'hazards[0].name', 'must not be empty'],
    [Array.from({ length: 65 }, (_, k) => ({ ...bog, id: `bog-${k}` })), 'hazards', 'at most 64'],
  ])('%j is refused', (hazards, path, words) => {
    expectError(errorOf(withHazards(hazards)), 'field', path, words);
  });
  it('of one id are refused', () => {
    expectError(errorOf(withHazards([bog, bog])), 'reference', 'hazards[1].id', '"bog" is used twice');
  });
});
