import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { errorFromIssues } from '../../../core/setup/field-error.ts';

/** What is said of a value that a schema without words of its own refuses. */
const saidOf = (schema: z.ZodType, value: unknown): string => {
  const { error } = schema.safeParse(value);
  if (!error) throw new Error('the value was taken');
  return errorFromIssues(value, error.issues).message;
};

describe('errorFromIssues', () => {
  it.each<[string, z.ZodType, unknown, string]>([
    ['a text', z.object({ a: z.string() }), { a: 1 }, 'a: must be a text'],
    ['a list', z.object({ a: z.array(z.string()) }), { a: 1 }, 'a: must be a list'],
    ['an object', z.object({ a: z.object({}) }), { a: 1 }, 'a: must be an object'],
    ['a number', z.object({ a: z.number() }), { a: 'x' }, 'a: must be a number'],
    ['nothing where a number is wanted', z.object({ a: z.number() }), {}, 'a: is missing; must be a number'],
    ['one of two words', z.object({ a: z.enum(['x', 'y']) }), { a: 'z' }, 'a: must be "x" or "y"'],
    ['too little', z.object({ a: z.number().min(5) }), { a: 1 }, 'a: is not as expected here'],
    ['what is no field', z.strictObject({}), { b: 1 }, 'b: is not a field of a setup'],
    ['words of the schema', z.object({ a: z.number('must be a length') }), { a: 'x' }, 'a: must be a length'],
  ])('%s: says in plain words what the field must be', (_, schema, value, words) => {
    expect(saidOf(schema, value)).toBe(words);
  });

  it('calls nothing missing that could not be there: a field of a number', () => {
    const issue: z.core.$ZodIssue = { code: 'custom', path: ['a', 'b'], message: 'must be even', input: undefined };
    expect(errorFromIssues({ a: 5 }, [issue]).message).toBe('a.b: must be even');
    expect(errorFromIssues({ a: {} }, [issue]).message).toBe('a.b: is missing; must be even');
  });
});
