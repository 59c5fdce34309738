import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** A work of others that a package carries along under terms of its own. */
interface NestedWork {
  readonly name: string;
  readonly license: string;
  /** Where its makers give it out, with its notices. */
  readonly home: string;
  /** A file with the text of that licence, under node_modules: the work itself ships none. */
  readonly text: string;
}

/** Folders in which packages carry works of others. */
const carriers = /\/node_modules\/((?:three\/examples\/jsm|three-stdlib)\/libs\/[^/?]+)/;

const known: Readonly<Record<string, NestedWork>> = {
  // its own README, beside it, names licence and home
  'three/examples/jsm/libs/draco': {
    name: 'Draco decoder, carried by three',
    license: 'Apache-2.0',
    home: 'https://github.com/google/draco',
    text: 'geomagnetism/LICENSE',
  },
};

/**
 * The place, under node_modules, of the carried work that a module belongs to; null for what is no such work.
 *
 * @throws for a work whose terms are not known here, so that none is built in unseen
 */
export const nestedWork = (moduleId: string): string | null => {
  const place = carriers.exec(moduleId)?.[1];
  if (place === undefined) return null;
  if (!(place in known)) throw new Error(`${place} has terms of its own, which are not known here`);
  return place;
};

/** Name, licence, home and the text of the licence of a carried work. */
export const nestedEntry = (place: string, modules: string): string => {
  const work = known[place];
  if (!work) throw new Error(`${place} is not known here`);
  const text = readFileSync(join(modules, work.text), 'utf8').trimEnd();
  return `${work.name} · ${work.license} · ${work.home}\n\n${text}`;
};
