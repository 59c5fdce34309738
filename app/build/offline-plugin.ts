import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { type HtmlTagDescriptor, type Plugin, transformWithOxc } from 'vite';
import { appManifest, iconFiles } from './app-manifest.ts';
import { pagePolicy } from './page-policy.ts';

/** A file of the build: its address from the page, and SHA-256 of what it holds, in base64. */
type KeptFile = readonly [address: string, hash: string];

const workerName = 'offline.js';

const sha256 = (bytes: Uint8Array | string): string => createHash('sha256').update(bytes).digest('base64');

/** All files that were built, in the order of their names; the page itself goes by the address of its folder. */
const filesIn = (folder: string): KeptFile[] =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name !== workerName)
    .map((entry) => join(entry.parentPath, entry.name))
    .sort()
    .map((path) => {
      const address = relative(folder, path).split(sep).join('/');
      return [address === 'index.html' ? './' : `./${address}`, sha256(readFileSync(path))] as const;
    });

/** The worker’s text for a build. Its name for the build changes with any file, and with what the worker does. */
export const workerText = (files: readonly KeptFile[], code: string): string => {
  const list = JSON.stringify(files);
  return `const build = ${JSON.stringify(sha256(list + code))};\nconst files = ${list};\n${code}`;
};

const link = (attrs: Record<string, string>): HtmlTagDescriptor => ({ tag: 'link', attrs, injectTo: 'head' });

/** Before all that it is about. */
const policy: HtmlTagDescriptor = {
  tag: 'meta',
  attrs: { 'http-equiv': 'Content-Security-Policy', content: pagePolicy },
  injectTo: 'head-prepend',
};

/**
 * Makes the built page one that can be installed and that works without a network: its security policy, its manifest and
 * icons, and a service worker that knows every file of the build by its content.
 */
export const offlinePlugin = (): Plugin => ({
  name: 'offline',
  apply: 'build',
  transformIndexHtml: () => [
    policy,
    link({ rel: 'manifest', href: './manifest.webmanifest' }),
    link({ rel: 'icon', type: 'image/svg+xml', href: './icons/lampfall.svg' }),
    link({ rel: 'apple-touch-icon', href: './icons/lampfall-192.png' }),
  ],
  generateBundle() {
    this.emitFile({ type: 'asset', fileName: 'manifest.webmanifest', source: JSON.stringify(appManifest) });
    for (const name of iconFiles)
      this.emitFile({
        type: 'asset',
        fileName: `icons/${name}`,
        source: readFileSync(join(import.meta.dirname, '../../assets/icons', name)),
      });
  },
  async writeBundle({ dir }) {
    if (!dir) return;
    const files = filesIn(dir);
    const path = join(import.meta.dirname, 'offline-worker.ts');
    const { code } = await transformWithOxc(readFileSync(path, 'utf8'), path);
    writeFileSync(join(dir, workerName), workerText(files, code.replace(/^export \{\};?$/m, '')));
  },
});
