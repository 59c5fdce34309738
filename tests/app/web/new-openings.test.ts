import fc from 'fast-check';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { type OpeningKind, openingKinds, withOpening } from '../../../app/web/inspector/parts/opening-words.ts';
import { newPart } from '../../../app/web/state/edits/new-parts.ts';
import * as problems from '../../../app/web/state/edits/part-problem.ts';
import type { Opening, PartOf } from '../../../core/setup/schema/setup.ts';

type Wall = PartOf<'wall'>;

vi.mock('../../../app/web/state/edits/part-problem.ts', async (importOriginal) => {
  const original = await importOriginal<typeof problems>();
  return { partProblem: vi.fn(original.partProblem) };
});
const asked = vi.mocked(problems.partProblem);
beforeEach(() => asked.mockClear());

const bare: Wall = { ...(newPart('wall') as Wall), openings: [] };
const first = (kind: OpeningKind): Opening => withOpening({ ...bare, widthMetres: 20 }, kind)?.openings[0] as Opening;

/** Brute force: every tenth of a metre from the middle outward, the east first. */
const nearestByTrying = (wall: Wall, opening: Opening): number | null => {
  for (let tenths = 0; tenths <= wall.widthMetres * 5; tenths++)
    for (const across of [tenths / 10, -tenths / 10])
      if (
        problems.partProblem({ ...wall, openings: [...wall.openings, { ...opening, acrossMetres: across }] }) === null
      )
        return across + 0;
  return null;
};

describe('the place of a new opening', () => {
  it('is the nearest to the middle on a tenth of a metre, as trying each finds it (300 walls, seed 7)', () => {
    const found = { some: 0, none: 0 };
    const other = fc.record({
      acrossMetres: fc.integer({ min: -80, max: 80 }).map((n) => n / 16),
      sillMetres: fc.constantFrom(0, 0.5, 1, 2.2),
      widthMetres: fc.integer({ min: 2, max: 30 }).map((n) => n / 20),
      heightMetres: fc.constantFrom(0.3, 1, 1.9),
      head: fc.constant<'flat'>('flat'),
    });
    const wallWith = fc.record({
      widthMetres: fc.integer({ min: 8, max: 110 }).map((n) => n / 10),
      heightMetres: fc.constantFrom(1.9, 2.1, 2.3, 3),
      gableMetres: fc.constantFrom(0, 0, 1.5),
      wished: fc.array(other, { maxLength: 7 }),
    });
    fc.assert(
      fc.property(wallWith, fc.constantFrom(...openingKinds), ({ wished, ...size }, kind) => {
        let wall: Wall = { ...bare, ...size };
        for (const next of wished) {
          const tried = { ...wall, openings: [...wall.openings, next] };
          if (problems.partProblem(tried) === null) wall = tried;
        }
        const across = withOpening(wall, kind)?.openings.at(-1)?.acrossMetres ?? null;
        found[across === null ? 'none' : 'some']++;
        expect(across).toBe(nearestByTrying(wall, first(kind)));
      }),
      { numRuns: 300, seed: 7 },
    );
    expect(found.some).toBeGreaterThan(60);
    expect(found.none).toBeGreaterThan(60);
  });

  it('a wall that is too low is looked at once, however long', () => {
    const long = { ...bare, widthMetres: 2000, heightMetres: 1.5 };
    expect(withOpening(long, 'doorway')).toBeNull();
    expect(asked).toHaveBeenCalledTimes(1);
  });

  it('a wall full of openings is looked at a few times for each of them', () => {
    const openings = Array.from({ length: 23 }, (_, i) => ({ ...first('doorway'), acrossMetres: i - 11 }));
    const long = { ...bare, widthMetres: 2000, openings };
    asked.mockClear();
    // the doorways stand a metre apart: 0.1 m of wall between, so the next one is beyond the last
    expect(withOpening(long, 'doorway')?.openings.at(-1)?.acrossMetres).toBe(12);
    expect(asked.mock.calls.length).toBeLessThanOrEqual(1 + 4 * 24);
  });
});
