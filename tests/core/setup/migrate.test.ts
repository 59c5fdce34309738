import { describe, expect, it } from 'vitest';
import { migrateSetup } from '../../../core/setup/migrate.ts';
import { validateSetup } from '../../../core/setup/parse-setup.ts';
import { setupVersion } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { goodSetup } from './good-setup.ts';

type Document = Record<string, unknown>;
const steps = {
  1: (document: Document) => ({ ...document, trail: [...((document['trail'] as number[] | undefined) ?? []), 1] }),
  2: (document: Document) => ({ ...document, trail: [...(document['trail'] as number[]), 2] }),
};

const errorOf = (act: () => unknown): SetupError => {
  try {
    act();
  } catch (error) {
    if (error instanceof SetupError) return error;
    throw error;
  }
  throw new Error('nothing was thrown');
};

describe('migrateSetup', () => {
  it('goes 1 -> 2 -> 3, each step once and in order, and writes the version', () => {
    expect(migrateSetup({ version: 1, name: 'a' }, steps, 3)).toEqual({ version: 3, name: 'a', trail: [1, 2] });
  });

  it('starts at the version that the document has', () => {
    expect(migrateSetup({ version: 2, trail: [] }, steps, 3)).toEqual({ version: 3, trail: [2] });
  });

  it('leaves a document of the target version as it is', () => {
    const document = { version: 3, trail: [9] };
    expect(migrateSetup(document, steps, 3)).toBe(document);
  });

  it('does not change the document that goes in', () => {
    const document = Object.freeze({ version: 1 });
    migrateSetup(document, steps, 3);
    expect(document).toEqual({ version: 1 });
  });

  it('writes the version itself, whatever a step says', () => {
    expect(migrateSetup({ version: 1 }, { 1: () => ({ version: 77 }) }, 2)).toEqual({ version: 2 });
  });

  it('names the step that is missing', () => {
    const error = errorOf(() => migrateSetup({ version: 1 }, { 1: steps[1] }, 3));
    expect(error.kind).toBe('version');
    expect(error.message).toBe('version: is 1; no way is known from version 2 to 3');
  });

  it.each([new TypeError('boom'), 'boom', undefined])(
    'turns what a step throws (%s) into a SetupError that names the step',
    (fault) => {
      const throwing = {
        ...steps,
        2: () => {
          throw fault;
        },
      };
      const error = errorOf(() => migrateSetup({ version: 1 }, throwing, 3));
      expect([error.kind, error.path]).toEqual(['version', 'version']);
      expect(error.expected).toBe('is 1; the file could not be brought from version 2 to 3');
    },
  );

  it('lets a SetupError of a step pass: it names the field', () => {
    const own = new SetupError('field', 'lamps[0].id', 'must be an id');
    const throwing = {
      1: () => {
        throw own;
      },
    };
    expect(errorOf(() => migrateSetup({ version: 1 }, throwing, 2))).toBe(own);
  });

  it.each([0, -1, 1.5, Number.NaN, '1', null, undefined])('refuses version %s', (version) => {
    expect(errorOf(() => migrateSetup({ version }, steps, 3)).expected).toBe('must be a whole number from 1 to 3');
  });

  it('refuses a version from the future and says so', () => {
    expect(errorOf(() => migrateSetup({ version: setupVersion + 1 })).expected).toContain('A newer Lampfall');
  });
});

describe('version 1 to 2', () => {
  const old = (dome: unknown, more: object = {}) => ({
    version: 1,
    place: { latitudeDegrees: 1, glowDomes: [dome], ...more },
  });

  it('tells a glow ten degrees up, where it is ((2 + 6) / 16)^2.9 of what it was at the horizon, and keeps the rest', () => {
    const dome = {
      bearingDegrees: 12,
      widthDegrees: 40,
      heightDegrees: 8,
      luminanceCdM2: 0.01,
      temperatureKelvin: 2200,
    };
    const { place } = migrateSetup(old(dome)) as {
      place: { latitudeDegrees: number; glowDomes: Record<string, number>[] };
    };
    const [renewed] = place.glowDomes;
    expect(place.latitudeDegrees).toBe(1);
    expect(renewed).toMatchObject({ bearingDegrees: 12, widthDegrees: 40, temperatureKelvin: 2200 });
    expect(renewed?.['luminanceAt10DegreesCdM2']).toBeCloseTo(0.01 * 0.5 ** 2.9, 5);
    expect(Object.keys(renewed ?? {})).not.toContain('heightDegrees');
  });

  it('turns the bearing with the scene, as it was told from its north, and keeps the colour that was meant', () => {
    const { place } = migrateSetup(old({ bearingDegrees: 300, luminanceCdM2: 0.1 }, { northDegrees: 90 })) as {
      place: { glowDomes: Record<string, number>[] };
    };
    expect(place.glowDomes[0]).toMatchObject({ bearingDegrees: 30, temperatureKelvin: 2200 });
  });

  it.each([['a text'], [null], [{ bearingDegrees: 'x', temperatureKelvin: 2200 }]])(
    'lets %j pass, for the schema to refuse',
    (dome) => {
      expect(migrateSetup(old(dome))).toMatchObject({ version: setupVersion, place: { glowDomes: [dome] } });
    },
  );
});

describe('version 1 to 2 of what has no glow', () => {
  it.each([
    [{}],
    [{ place: null }],
    [{ place: 'here' }],
    [{ place: { northDegrees: 5 } }],
    [{ place: { glowDomes: 3 } }],
  ])('takes %j over as it is, for the schema to judge', (more) => {
    expect(migrateSetup({ version: 1, name: 'a', ...more })).toMatchObject({
      version: setupVersion,
      name: 'a',
      ...more,
    });
  });
});

describe('version 2 to 3', () => {
  it('reads a setup of version 2: lamps as stated, no nights, a pace of 0.75 m', () => {
    const old = structuredClone(goodSetup()) as Document & { lamps: Document[]; walking: Document };
    old['version'] = 2;
    for (const field of ['card', 'nights']) delete old[field];
    for (const lamp of old.lamps) for (const field of ['correctionStops', 'testShots']) delete lamp[field];
    const setup = validateSetup(old);
    expect(setup).toMatchObject({
      version: setupVersion,
      card: { lengths: 'metres', paper: 'a4', permission: '' },
      nights: [],
      walking: { paceMetres: 0.75 },
    });
    expect(setup.lamps.length).toBeGreaterThan(0);
    for (const lamp of setup.lamps) expect(lamp).toMatchObject({ correctionStops: 0, testShots: [] });
  });
});
