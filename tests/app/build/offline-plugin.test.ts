import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { decode } from 'fast-png';
import { build } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import { offlinePlugin, workerText } from '../../../app/build/offline-plugin.ts';
import { pagePolicy } from '../../../app/build/page-policy.ts';

const outDir = mkdtempSync(join(tmpdir(), 'lampfall-build-'));
const read = (name: string) => readFileSync(join(outDir, name));

describe('offlinePlugin', () => {
  beforeAll(() =>
    build({
      configFile: false,
      logLevel: 'error',
      root: 'tests/browser/offline-page',
      base: './',
      define: { buildName: '"tested"' },
      plugins: [offlinePlugin()],
      build: { outDir, emptyOutDir: true },
    }),
  );

  it('puts the policy into the page before everything that it is about', () => {
    const html = read('index.html').toString().replaceAll('&#39;', "'");
    expect(html).toContain(`<meta http-equiv="Content-Security-Policy" content="${pagePolicy}">`);
    expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.search(/<(script|link)/));
    expect(html).not.toMatch(/ style=|<style|<script(?![^>]* src=)/);
    // a browser looks for the encoding in the first 1024 bytes (HTML Standard, 13.2.3.2)
    expect(html.indexOf('<meta charset')).toBeLessThan(1000);
  });

  it('lists every file of the build with its SHA-256, but the worker itself', () => {
    const [head = '', list = ''] = read('offline.js').toString().split('\n');
    const files = runInNewContext(`${head} ${list} files`) as [string, string][];
    const built = readdirSync(outDir, { recursive: true, withFileTypes: true }).filter((entry) => entry.isFile());
    expect(files).toHaveLength(built.length - 1);
    for (const [address, hash] of files) {
      const bytes = read(address === './' ? 'index.html' : address);
      expect(createHash('sha256').update(bytes).digest('base64'), address).toBe(hash);
    }
  });

  it('names a build after its files and after the worker, so that a newer worker never takes an older one’s cache', () => {
    const buildOf = (text: string) => runInNewContext(`${text.split('\n')[0]} build`);
    const files = [['./', 'a']] as const;
    const names = [
      workerText(files, 'work'),
      workerText(files, 'other work'),
      workerText([['./', 'b']], 'work'),
      read('offline.js').toString(),
    ].map(buildOf);
    expect(new Set(names).size).toBe(4);
    expect(buildOf(workerText(files, 'work'))).toBe(names[0]);
  });

  it.each([
    ['that was there before, as a page may live on it', true],
    ['that it began itself', false],
  ])('when an install fails for want of room, has a cache %s', async (_, isThere) => {
    const deleted: string[] = [];
    const listeners = new Map<string, (event: { waitUntil: (work: Promise<void>) => void }) => void>();
    const cache = { put: async () => Promise.reject(new Error('QuotaExceededError')) };
    runInNewContext(read('offline.js').toString(), {
      self: {
        registration: { scope: 'http://x.test/' },
        addEventListener: (name: string, listener: never) => listeners.set(name, listener),
      },
      caches: {
        has: async () => isThere,
        open: async () => cache,
        match: async () => undefined,
        delete: async (name: string) => deleted.push(name),
      },
      fetch: async (url: string) => {
        const address = url.slice('http://x.test/'.length) || 'index.html';
        return new Response(read(address), { headers: { 'content-type': 'text/plain' } });
      },
      crypto,
      URL,
      Response,
      Headers,
      btoa,
    });
    let installed: Promise<void> = Promise.resolve();
    listeners.get('install')?.({
      waitUntil: (work) => {
        installed = work;
      },
    });
    await expect(installed).rejects.toThrow('Quota');
    expect(deleted).toHaveLength(isThere ? 0 : 1);
  });

  it('brings a manifest without an id of its own: a relative one would go by the origin, not by the folder', () => {
    const manifest = JSON.parse(read('manifest.webmanifest').toString());
    expect(manifest).not.toHaveProperty('id');
    // W3C Web Application Manifest, "processing the id member": without one, the start_url is the identity
    expect(new URL(manifest.start_url, 'https://x.test/one/').href).toBe('https://x.test/one/');
  });

  it('brings icons that are as large as the manifest says', () => {
    const { icons } = JSON.parse(read('manifest.webmanifest').toString());
    for (const { src, sizes, type } of icons) {
      if (type !== 'image/png') continue;
      const { width, height } = decode(read(src));
      expect(`${width}x${height}`, src).toBe(sizes);
    }
  });
});
