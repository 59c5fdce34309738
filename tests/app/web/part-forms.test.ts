import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { openingKinds, openingWord, withOpening } from '../../../app/web/inspector/parts/opening-words.ts';
import { partSpecs, shownNumber, withNumber } from '../../../app/web/inspector/parts/part-specs.ts';
import { pointAfter, roundedPoint } from '../../../app/web/inspector/parts/points.ts';
import { sizeText } from '../../../app/web/inspector/parts/size-text.ts';
import { subjectMatches, subjectWords } from '../../../app/web/inspector/subjects/subject-words.ts';
import { newPart, newPartKinds } from '../../../app/web/state/edits/new-parts.ts';
import { boxOfMeshes, meshOfOwnPart } from '../../../app/web/state/edits/own-box.ts';
import { partProblem } from '../../../app/web/state/edits/part-problem.ts';
import { part as partSchema } from '../../../core/setup/schema/part.ts';
import type { Part, PartKind, PartOf } from '../../../core/setup/schema/setup.ts';
import { subjectOf } from '../../core/support/scenes.ts';

interface Field {
  readonly minimum?: number;
  readonly maximum?: number;
  readonly type?: string;
  readonly anyOf?: readonly Field[];
}
interface Kind {
  readonly properties: Readonly<Record<string, Field & { readonly const?: string }>>;
}

/** The schema’s own ranges, as JSON schema tells them. */
const ranges = z.toJSONSchema(partSchema, { io: 'input' }) as unknown as { oneOf?: Kind[]; anyOf?: Kind[] };
const kinds = ranges.oneOf ?? ranges.anyOf ?? [];
const fieldOf = (kind: PartKind, key: string): Field => {
  const field = kinds.find(({ properties }) => properties['kind']?.const === kind)?.properties[key];
  if (!field) throw new Error(`the schema has no ${kind}.${key}`);
  return field.anyOf?.find(({ type }) => type !== 'null') ?? field;
};

describe('the table of a part’s numbers', () => {
  const all = (Object.keys(partSpecs) as PartKind[]).flatMap((kind) =>
    [...partSpecs[kind].sizes, ...partSpecs[kind].more].map((spec) => ({ kind, spec })),
  );

  it.each(all)('$kind $spec.key has the range of the schema', ({ kind, spec }) => {
    const { minimum, maximum } = fieldOf(kind, spec.key);
    expect(spec.min).toBeCloseTo((minimum as number) * spec.perUnit, 9);
    expect(spec.max).toBeCloseTo((maximum as number) * spec.perUnit, 9);
  });

  it('has every number of the schema, but those that have fields of their own', () => {
    const elsewhere = ['turnDegrees', 'tiltDegrees', 'rollDegrees'];
    for (const { properties } of kinds) {
      const kind = properties['kind']?.const as PartKind;
      const numbers = Object.keys(properties).filter((key) => {
        const { type } = fieldOf(kind, key);
        return (type === 'number' || type === 'integer') && !elsewhere.includes(key);
      });
      const shown = [...partSpecs[kind].sizes, ...partSpecs[kind].more].map(({ key }) => key);
      expect(shown.sort()).toEqual(numbers.sort());
    }
  });

  it('shows what null stands for, and gives null back when that is typed', () => {
    const egg = newPart('sphere') as PartOf<'sphere'>;
    const [, , height] = partSpecs.sphere.sizes;
    if (!height) throw new Error('a ball has a height');
    expect(shownNumber(egg, height)).toBe(1);
    const tall = withNumber(egg, height, 1.7);
    expect(tall).toEqual({ ...egg, heightMetres: 1.7 });
    expect(withNumber(tall, height, 1)).toEqual(egg);
  });

  it('holds percent as a share', () => {
    const [ridge] = partSpecs.wedge.more;
    if (!ridge) throw new Error('a roof has a ridge');
    expect(shownNumber(newPart('wedge'), ridge)).toBe(50);
    expect(withNumber(newPart('wedge'), ridge, 25)).toMatchObject({ ridgeShare: 0.25 });
  });
});

describe('sizeText', () => {
  // an arch says how wide it is alone
  it.each(newPartKinds.filter((kind) => kind !== 'ring'))('of a new %s is the box round its mesh (1 cm)', (kind) => {
    const part = { ...newPart(kind), position: [0, 0, 0] } as Part;
    const { low, high } = boxOfMeshes([meshOfOwnPart(part, [])]);
    const [width, up, depth] = [0, 1, 2].map((axis) => (high[axis] as number) - (low[axis] as number));
    const told = sizeText(part).replace(' m', '').split(' × ').map(Number);
    const box = kind === 'plane' ? [width, depth] : [width, depth, up];
    told.forEach((metres, i) => {
      // round things have flat sides that lie a little inside their radius
      expect(Math.abs(metres - (box[i] as number))).toBeLessThanOrEqual(0.011);
    });
  });
});

describe('withOpening', () => {
  const wall = { ...newPart('wall'), openings: [] } as unknown as PartOf<'wall'>;

  it('puts one after the other where there is room, until there is none', () => {
    let filled = wall;
    let next: PartOf<'wall'> | null = wall;
    while (next && filled.openings.length < 24) {
      filled = next;
      next = withOpening(filled, 'doorway');
    }
    // doorways of 0.9 m in a wall of 5 m
    expect(filled.openings.length).toBeGreaterThanOrEqual(4);
    expect(filled.openings.length).toBeLessThanOrEqual(5);
    expect(partProblem(filled)).toBeNull();
    expect(next).toBeNull();
  });

  it.each(openingKinds)('a %s is called so', (kind) => {
    const [opening] = withOpening(wall, kind)?.openings ?? [];
    expect(opening && openingWord(opening).toLowerCase()).toBe(kind);
  });

  it('none in a wall that is too low', () => {
    expect(withOpening({ ...wall, heightMetres: 1.5 }, 'doorway')).toBeNull();
  });
});

describe('points of a drawing', () => {
  it('are put halfway to the next one; the last of an open line is drawn on, never past the axis', () => {
    const line = [
      [0, 0],
      [1, 0],
      [0.2, 2],
    ] as const;
    expect(pointAfter(line, 0, false)).toEqual([0.5, 0]);
    expect(pointAfter(line, 2, true)).toEqual([0.1, 1]);
    expect(pointAfter(line, 2, false)).toEqual([0, 3]);
  });

  it('are rounded to a centimetre, to a millimetre in what is small', () => {
    expect(roundedPoint([1.23456, -0.0001], 5)).toEqual([1.23, 0]);
    expect(roundedPoint([1.23456, 0.0006], 1)).toEqual([1.235, 0.001]);
  });
});

describe('words of a subject', () => {
  const post = { kind: 'cylinder', radiusMetres: 0.5, heightMetres: 2 };
  it('say what it is unless its name does, and what is special about it', () => {
    expect(subjectWords(subjectOf('a', [post], { name: 'Post 2' }))).toBe('1 × 1 × 2 m');
    expect(subjectWords(subjectOf('a', [post], { name: 'Menhir', hidden: true, locked: true, group: 'Ring' }))).toBe(
      'post · 1 × 1 × 2 m · hidden · locked · Ring',
    );
    expect(subjectWords(subjectOf('a', [post, post]))).toBe('2 parts');
  });

  it('a search finds words of name, kind and group in any order and case', () => {
    const subject = subjectOf('a', [post], { name: 'Old Menhir', group: 'Ring' });
    for (const found of ['menhir', 'OLD', 'ring', 'post', 'ring men', '', ' '])
      expect(subjectMatches(subject, found), found).toBe(true);
    for (const not of ['hut', 'menhir hut', '1 × 1']) expect(subjectMatches(subject, not), not).toBe(false);
  });
});
