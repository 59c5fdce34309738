import fc from 'fast-check';
import type { Loose } from './good-setup.ts';

/** Stand-ins for numbers that `JSON.stringify` can't write; `textOf` puts the raw token in. */
const raw: Readonly<Record<string, string>> = { '@inf': '1e999', '@nan': 'NaN', '@minus': '-0', '@tiny': '5e-324' };

const oddNumbers = [
  -1,
  -0.5,
  0,
  1e-9,
  0.05,
  0.5,
  1,
  1.5,
  2,
  7,
  90,
  128,
  180,
  360,
  5000,
  2 ** 31,
  2 ** 32,
  1e21,
  1e308,
  -1e308,
];
const oddValues: readonly unknown[] = [
  ...oddNumbers,
  ...Object.keys(raw),
  null,
  true,
  '',
  'x',
  'torch',
  'sky',
  'painted',
  '__proto__',
  'a'.repeat(300),
  '\ud800',
  'line\nbreak',
  [],
  {},
  [[]],
  [0, 0, 0],
  [1, 2],
  { kind: 'sphere', radiusMetres: 1 },
  { kind: 'stones', count: 3, heightMetres: [0.1, 0.2] },
];
const oddKeys = ['__proto__', 'constructor', 'toString', 'length', '', 'x y', 'id', 'count', 'kind', 'note', 'finish'];

/** One structured change: how to get to a place by repeated choice, and what to do there. */
const edit = fc.record({
  way: fc.array(fc.nat(1_000_000), { minLength: 1, maxLength: 10 }),
  act: fc.constantFrom('replace', 'replace', 'scale', 'scale', 'delete', 'copy', 'retype', 'insert', 'move'),
  pick: fc.nat(1_000_000),
});
type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

const of = <T>(list: readonly T[], pick: number): T => list[pick % list.length] as T;
const isOwner = (value: unknown): value is Loose => typeof value === 'object' && value !== null;

const placeOf = (document: Loose, way: readonly number[]): { owner: Loose; key: string } | null => {
  let found: { owner: Loose; key: string } | null = null;
  let at: Loose = document;
  for (const step of way) {
    const keys = isOwner(at) ? Object.keys(at) : [];
    if (keys.length === 0) break;
    found = { owner: at, key: of(keys, step) };
    at = at[found.key];
  }
  return found;
};

const retyped = (value: unknown): unknown => {
  if (typeof value === 'number') return String(value);
  if (typeof value === 'string') return value.length;
  if (Array.isArray(value)) return { ...value };
  return isOwner(value) ? Object.values(value) : [value];
};

const applyEdit = (document: Loose, { way, act, pick }: Edit): void => {
  const place = placeOf(document, way);
  if (!place) return;
  const { owner, key } = place;
  const value = owner[key];
  const set = (target: Loose, name: string, to: unknown) => {
    if (Array.isArray(target) && !(name in target && name !== 'length')) target.push(to);
    else Object.defineProperty(target, name, { value: to, enumerable: true, configurable: true, writable: true });
  };
  if (act === 'replace') set(owner, key, structuredClone(of(oddValues, pick)));
  else if (act === 'scale')
    set(owner, key, typeof value === 'number' ? value * of([-1, 0, 0.5, 0.99, 1.01, 2, 10], pick) : value);
  else if (act === 'retype') set(owner, key, retyped(value));
  else if (act === 'insert')
    set(isOwner(value) ? value : owner, of(oddKeys, pick), structuredClone(of(oddValues, pick >> 4)));
  else if (act === 'move') set(owner, of(Object.keys(owner), pick), structuredClone(value));
  else if (Array.isArray(owner))
    owner.splice(Number(key), act === 'delete' ? 1 : 0, ...(act === 'copy' ? [structuredClone(value)] : []));
  else if (act === 'delete') delete owner[key];
};

const textOf = (document: Loose): string =>
  JSON.stringify(document).replace(/"(@(?:inf|nan|minus|tiny))"/g, (_, name: string) => raw[name] as string);

const structured = (samples: readonly string[]) =>
  fc.tuple(fc.nat(samples.length - 1), fc.array(edit, { minLength: 1, maxLength: 2 })).map(([sample, edits]) => {
    const document = JSON.parse(samples[sample] as string) as Loose;
    for (const each of edits) applyEdit(document, each);
    return textOf(document);
  });

const damaged = (samples: readonly string[]) =>
  fc
    .tuple(
      fc.nat(samples.length - 1),
      fc.nat(1_000_000),
      fc.constantFrom('', ',', '}', '"', '0', '-', 'e', '\\', '\u0000', 'é'),
      fc.boolean(),
    )
    .map(([sample, at, put, cut]) => {
      const text = samples[sample] as string;
      const place = at % text.length;
      return cut ? text.slice(0, place) + put : text.slice(0, place) + put + text.slice(place + 1);
    });

/** Texts made from samples by one or two structured changes (four of five), or by damage to the text. */
export const mutatedText = (samples: readonly string[]): fc.Arbitrary<string> =>
  fc.oneof({ arbitrary: structured(samples), weight: 4 }, { arbitrary: damaged(samples), weight: 1 });
