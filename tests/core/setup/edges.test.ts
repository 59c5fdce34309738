import { describe, expect, it } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { SetupError } from '../../../core/setup/setup-error.ts';
import { tracePicture } from '../../../core/trace/picture.ts';
import { buildWorld } from '../../../core/world/world.ts';
import { errorOf, type Loose } from './good-setup.ts';
import { nonFinite } from './non-finite.ts';
import { richSetup } from './rich-setup.ts';

/** The rich setup with all defaults written out, so that every field can be set. */
const full = (): Loose => JSON.parse(JSON.stringify(parseSetup(JSON.stringify(richSetup()))));

const numberPaths = (value: Loose, path: readonly string[] = []): (readonly string[])[] => {
  if (typeof value === 'number') return [path];
  if (typeof value !== 'object' || value === null) return [];
  return Object.keys(value).flatMap((key) => numberPaths(value[key], [...path, key]));
};

const withNumber = (path: readonly string[], value: number): string => {
  const setup = full();
  const owner = path.slice(0, -1).reduce((inner, key) => inner[key], setup);
  owner[path.at(-1) as string] = value;
  return JSON.stringify(setup);
};

/**
 * One path for each field; of lists that hold the same kind of thing, the last. Parts and lamps differ, so all of theirs,
 * but for where a part stands.
 */
const paths = [
  ...new Map(
    numberPaths(full())
      .filter(([first]) => first !== 'version')
      .map((path) => [
        path
          .join('.')
          .replace(/(schemes|frames|passes|waypoints|gels|outline|profile|sections|holes)\.\d+/g, '$1')
          .replace(/parts\.\d+\.(position|turnDegrees|tiltDegrees|rollDegrees)/, 'parts.$1'),
        path,
      ]),
  ).values(),
];

/** The end of a field's range, as its own error message states it. */
const endOf = (path: readonly string[], beyond: number): number => {
  const { expected } = errorOf(withNumber(path, beyond));
  const end = /at (?:least|most) (-?[\d.e+-]+)/.exec(expected)?.[1];
  if (end === undefined) throw new Error(`${path.join('.')} states no end of its range: ${expected}`);
  return Number(end);
};

const fewerThings = (setup: Setup): Setup => ({
  ...setup,
  ground: {
    ...setup.ground,
    relief: setup.ground.relief.map((r) => ('count' in r ? { ...r, count: Math.min(r.count, 10) } : r)),
  },
});

const plain = fewerThings(parseSetup(JSON.stringify(richSetup())));

/** A setup with fewer things; what lies beside the changed field are the plain setup's own objects, so that stages are shared. */
const sharing = (setup: Setup, [changed]: readonly string[]): Setup => {
  const { ground, subjects, scans } = plain;
  return {
    ...fewerThings(setup),
    ...(changed !== 'ground' && { ground }),
    ...(changed !== 'subjects' && { subjects }),
    ...(changed !== 'scans' && { scans }),
  };
};

/** Paths of what is not finite in the worlds of a setup, and in 4 x 3 pixels of every frame. */
const faultsOf = (setup: Setup): string[] =>
  setup.schemes.flatMap((scheme) => {
    const world = buildWorld(setup, scheme);
    const size = { width: 4, height: 3, samples: 2 };
    return [
      ...nonFinite(world),
      ...world.frames.flatMap((frame) => nonFinite(tracePicture(world, frame, size), frame.id)),
    ];
  });

describe('setups at the ends of their ranges', () => {
  it('reaches more than 100 number fields', () => {
    expect(paths.length).toBeGreaterThan(100);
  });

  it.each([
    ['lower', -1e12],
    ['upper', 1e12],
  ])(
    'every number in turn at its %s end: taken, or refused for what it refers to; world and picture stay finite',
    (_, beyond) => {
      let taken = 0;
      for (const path of paths) {
        const end = endOf(path, beyond);
        const text = withNumber(path, end);
        try {
          const setup = parseSetup(text);
          taken++;
          expect({ path: path.join('.'), end, faults: faultsOf(sharing(setup, path)) }).toMatchObject({ faults: [] });
        } catch (error) {
          // on after off, heights upside down and the like
          if (!(error instanceof SetupError)) throw error;
        }
      }
      expect(taken).toBeGreaterThan(paths.length * 0.85);
    },
    120_000,
  );
});
