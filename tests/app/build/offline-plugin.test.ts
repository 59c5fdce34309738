import { createHash } from 'node:crypto';
import { mkdtempSync, readdirSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { runInNewContext } from 'node:vm';
import { decode } from 'fast-png';
import { build } from 'vite';
import { beforeAll, describe, expect, it } from 'vitest';
import { offlinePlugin } from '../../../app/build/offline-plugin.ts';
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

  it('brings icons that are as large as the manifest says', () => {
    const { icons } = JSON.parse(read('manifest.webmanifest').toString());
    for (const { src, sizes, type } of icons) {
      if (type !== 'image/png') continue;
      const { width, height } = decode(read(src));
      expect(`${width}x${height}`, src).toBe(sizes);
    }
  });
});
