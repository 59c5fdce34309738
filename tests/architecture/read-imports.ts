import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';

/** One import as written in a file. Type-only imports are no exception. */
export interface Import {
  /** Importing file, from the repository's root. */
  readonly file: string;
  /** "node", "package" or a "file" of the repository. A "worker" is a file named by `new URL(..., import.meta.url)`. */
  readonly kind: 'node' | 'package' | 'file' | 'worker' | 'unreadable';
  /** Path from the root, package name or node module. */
  readonly target: string;
  readonly takesDefault: boolean;
}

const statement = /^[ \t]*(?:import|export)\b(?:([\w$\s,{}*]*?)\bfrom)?\s*['"]([^'"\n]+)['"]/gm;
const dynamic = /\bimport\(\s*(?:['"]([^'"\n]+)['"])?/g;
const worker = /\bnew URL\(\s*['"](\.[^'"\n]+)['"]\s*,\s*import\.meta\.url/g;
const commentLine = /^[ \t]*(?:\/\/|\/?\*).*$/gm;

const importOf = (file: string, specifier: string, clause: string): Import => {
  const takesDefault = /^\s*(?:type\s+)?(?!type\b|\{|\*)[\w$]+|\bdefault\b/.test(clause);
  const path = specifier.replace(/\?.*$/, '');
  if (path.startsWith('.'))
    return { file, kind: 'file', target: posix.normalize(posix.join(posix.dirname(file), path)), takesDefault };
  if (path.startsWith('node:')) return { file, kind: 'node', target: path, takesDefault };
  const name = path.split('/').slice(0, path.startsWith('@') ? 2 : 1);
  return { file, kind: 'package', target: name.join('/'), takesDefault };
};

/** All imports of a file, static and dynamic, and the workers that it starts. */
export const importsOf = (file: string, text: string): Import[] => {
  const code = text.replace(commentLine, '');
  const found: Import[] = [];
  for (const [, clause, specifier] of code.matchAll(statement))
    found.push(importOf(file, specifier as string, clause ?? ''));
  for (const [, specifier] of code.matchAll(dynamic))
    found.push(
      specifier
        ? importOf(file, specifier, '')
        : { file, kind: 'unreadable', target: 'import() of an expression', takesDefault: false },
    );
  for (const [, specifier] of code.matchAll(worker))
    found.push({ ...importOf(file, specifier as string, ''), kind: 'worker' });
  return found;
};

export interface SourceFile {
  readonly file: string;
  readonly text: string;
}

/** TypeScript files under the folders, from the repository's root. */
export const sourceFiles = (root: string, folders: readonly string[]): SourceFile[] =>
  folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
      .map((entry) => {
        const path = join(entry.parentPath, entry.name);
        return { file: posix.join(...path.slice(root.length + 1).split(/[\\/]/)), text: readFileSync(path, 'utf8') };
      }),
  );
