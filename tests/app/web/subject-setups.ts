import { readFileSync } from 'node:fs';
import type { Kit } from '../../../core/kits/kit.ts';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup, Subject } from '../../../core/setup/schema/setup.ts';
import { onePassSetup, subjectOf } from '../../core/support/scenes.ts';

/** Invented scenes that the tests of subjects share. */

export const stones: Setup = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));

const block = (widthMetres: number, depthMetres: number, heightMetres: number) => ({
  kind: 'box',
  widthMetres,
  depthMetres,
  heightMetres,
});

export const blockSubject = (id: string, size: readonly [number, number, number], extra: object = {}): Subject =>
  subjectOf(id, [block(...size)], extra);

/** A camera that looks north and a little down from knee height at the ground 8 m off, with some subjects. */
export const placeWith = (...subjects: readonly Subject[]): Setup =>
  onePassSetup({
    camera: { position: [0, 0, 0.5], aim: [0, 8, 0] },
    pass: { waypoints: [{ position: [3, 4, 1], aim: [0, 8, 0] }] },
    subjects,
  });

/** The same setup with some of it replaced, checked by the parser. */
export const changed = (setup: Setup, part: object): Setup => validateSetup({ ...structuredClone(setup), ...part });

/** A kit for tests: posts in a row, as many as asked, their heights by the seed. */
export const postsKit: Kit = {
  name: 'posts',
  label: 'Posts',
  says: 'a row of posts',
  fields: [
    { key: 'count', label: 'Posts', unit: '', min: 1, max: 3000, initial: 3, step: 1 },
    { key: 'height', label: 'Height', unit: 'm', min: 0.5, max: 3, initial: 1, step: 0.1 },
  ],
  make: ({ count = 1, height = 1 }, random) => ({
    finish: { reflectance: 0.3 },
    parts: Array.from({ length: Math.round(count) }, (_, i) => ({
      kind: 'cylinder' as const,
      position: [i * 0.5, 0, 0] as [number, number, number],
      radiusMetres: 0.05,
      heightMetres: height * (0.9 + 0.2 * random()),
      sides: 8,
    })),
  }),
};
