/** A work with terms of its own that lies inside another's package. */
export interface NestedWork {
  /** Its name, and whose package it lies in. */
  readonly name: string;
  readonly license: string;
  readonly holder: string;
  /** Folder of its files, as their module ids have it after `node_modules/`. */
  readonly folder: string;
  /** A file under `node_modules` with the text of that licence, where its own package has none. */
  readonly text: string;
}

/** Checked by hand against three’s `examples/jsm/libs`: only what the build takes in need stand here. */
export const nestedWorks: readonly NestedWork[] = [
  {
    name: 'Draco 3D data compression, decoder (in three)',
    license: 'Apache-2.0',
    holder: 'The Draco Authors',
    folder: 'three/examples/jsm/libs/draco/',
    text: 'geomagnetism/LICENSE',
  },
];

/** A module of a folder that collects other people’s works. */
const inCollection = /\/node_modules\/((?:three|three-stdlib)\/(?:examples\/jsm\/)?libs\/.*)$/;

/** The nested work that a module belongs to; null for none. Throws for one of a folder of others’ works that is not listed. */
export const nestedWorkOf = (moduleId: string): NestedWork | null => {
  const path = inCollection.exec(moduleId)?.[1];
  if (path === undefined) return null;
  const work = nestedWorks.find(({ folder }) => path.startsWith(folder));
  if (!work) throw new Error(`${path} is a work of its own: name it and its licence in app/build/nested-works.ts`);
  return work;
};
