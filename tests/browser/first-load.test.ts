import { readdirSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, it } from 'vitest';

/** The page as global-setup.ts has built it. */
const folder = '.reports/app';

/** Issue bar: code before the first picture, in bytes gzipped. */
const mostBytes = 450_000;

/** What else the page starts before its first picture. */
const earlyWorkers = /^keep\.worker-/;

const textOf = (name: string): string => readFileSync(join(folder, name), 'utf8');

/** A script and all that it imports before it runs. */
const withImports = (name: string, found: Set<string>): void => {
  if (found.has(name)) return;
  found.add(name);
  for (const [, path] of textOf(name).matchAll(/(?:\bfrom|\bimport)\s*["'](\.\/[^"']+\.js)["']/g))
    withImports(posix.join(posix.dirname(name), path as string), found);
};

it('on a first visit all code that the page loads before its first picture is at most 450 kB gzipped', () => {
  const html = textOf('index.html');
  const found = new Set(['index.html']);
  for (const [, path] of html.matchAll(/<link rel="(?:stylesheet|modulepreload)"[^>]*href="\.\/([^"]+)"/g))
    found.add(path as string);
  const scripts = [...html.matchAll(/<script[^>]*src="\.\/([^"]+)"/g)].map(([, path]) => path as string);
  expect(scripts).toHaveLength(1);
  const workers = readdirSync(join(folder, 'assets')).filter((name) => earlyWorkers.test(name));
  expect(workers).toHaveLength(1);
  for (const script of [...scripts, ...workers.map((name) => `assets/${name}`)]) withImports(script, found);
  const sizes = [...found].map((name) => ({ name, bytes: gzipSync(textOf(name), { level: 9 }).length }));
  // the page, React and three, to be sure that it was read at all
  const sum = sizes.reduce((all, { bytes }) => all + bytes, 0);
  expect(sum).toBeGreaterThan(200_000);
  const largest = sizes
    .sort((a, b) => b.bytes - a.bytes)
    .slice(0, 12)
    .map(({ name, bytes }) => `${(bytes / 1000).toFixed(1)} kB ${name}`);
  expect(sum, `${(sum / 1000).toFixed(1)} kB; the largest: ${largest.join(', ')}`).toBeLessThanOrEqual(mostBytes);
});
