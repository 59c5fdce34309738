import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin, Rolldown } from 'vite';
import { type NestedWork, nestedWorkOf } from './nested-works.ts';

/** What of a package's own description is told. */
interface Described {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly author?: string | { readonly name?: string };
}

const root = join(import.meta.dirname, '../..');
export const licencesName = 'licences.txt';
/** Packages whose data are packed into the build without any of their code. */
const packedData = ['d3-celestial'].map((name) => join(root, 'node_modules', name));

/** The folder of the package that a module lies in; null for what is our own. */
export const packageFolder = (moduleId: string): string | null =>
  /^\0?(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(moduleId)?.[1] ?? null;

/** The licence as its short name stands for it, for packages that ship no text of it: our own is the same one. */
const plainMit = (holder: string): string =>
  readFileSync(join(root, 'LICENSE'), 'utf8').replace(/^Copyright .*$/m, `Copyright (c) ${holder}`);

/** Name, version, short name of the licence, and its text. Throws for a package whose terms are not known. */
const entryOf = (folder: string): string => {
  const { name, version, license, author }: Described = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const texts = readdirSync(folder)
    .filter((file) => /^(licen[cs]e|notice|copying)(\.|-|$)/i.test(file))
    .map((file) => readFileSync(join(folder, file), 'utf8').trim());
  const holder = (typeof author === 'string' ? author : author?.name) ?? `the authors of ${name}`;
  if (texts.length === 0 && license === 'MIT') texts.push(plainMit(holder).trim());
  if (texts.length === 0) throw new Error(`${name} ships no licence text, and “${license}” is not known here`);
  return [`${name} ${version}${license ? ` · ${license}` : ''}`, ...texts].join('\n\n');
};

/** Of a work inside another’s package. */
const nestedEntryOf = ({ name, license, holder, text }: NestedWork): string =>
  [
    `${name} · ${license}`,
    `Copyright ${holder}`,
    readFileSync(join(root, 'node_modules', text), 'utf8').trimEnd(),
  ].join('\n\n');

const ruler = '-'.repeat(64);

/** All entries in the order of their names, each under a line. */
export const licencesText = (folders: Iterable<string>, nested: Iterable<NestedWork> = []): string =>
  `${[...[...new Set(folders)].map(entryOf), ...[...new Set(nested)].map(nestedEntryOf)].sort().join(`\n\n${ruler}\n\n`)}\n`;

/**
 * Writes the licences of all packages that are in the build, workers included, into one file beside the page. One `collect` goes
 * to each build of a worker, which all come before the page's own ends.
 */
export const licencesPlugin = (): { readonly page: Plugin; readonly collect: () => Plugin } => {
  const folders = new Set<string>(packedData);
  const nested = new Set<NestedWork>();
  const add = (bundle: Rolldown.OutputBundle, known: Iterable<string>) => {
    const written = Object.values(bundle).flatMap((output) =>
      output.type === 'chunk'
        ? Object.entries(output.modules).filter(([, { renderedLength }]) => renderedLength > 0)
        : [],
    );
    // of style sheets, fonts come from packages
    const sheets = [...known].filter((id) => /\.css(\?|$)/.test(id));
    for (const id of [...written.map(([id]) => id), ...sheets]) {
      const folder = packageFolder(id);
      if (folder) folders.add(folder);
      const work = nestedWorkOf(id);
      if (work) nested.add(work);
    }
  };
  return {
    collect: () => ({
      name: 'licences-of-workers',
      generateBundle(_, bundle) {
        add(bundle, this.getModuleIds());
      },
    }),
    page: {
      name: 'licences',
      apply: 'build',
      generateBundle(_, bundle) {
        add(bundle, this.getModuleIds());
        this.emitFile({ type: 'asset', fileName: licencesName, source: licencesText(folders, nested) });
      },
    },
  };
};
