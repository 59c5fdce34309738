import { readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { gzipSync } from 'node:zlib';
import { servedPolicy } from '../../app/build/page-policy.ts';

const types: Record<string, readonly [kind: string, mime: string]> = {
  '.html': ['html', 'text/html'],
  '.js': ['js', 'text/javascript'],
  '.css': ['css', 'text/css'],
  '.json': ['json', 'application/json'],
  '.webmanifest': ['json', 'application/manifest+json'],
  '.woff2': ['fonts', 'font/woff2'],
  '.woff': ['fonts', 'font/woff'],
  '.png': ['pictures', 'image/png'],
  '.bin': ['stars', 'application/octet-stream'],
};

/** A file that a page asked for, and when, in milliseconds of this machine's clock. */
export interface Asked {
  readonly name: string;
  readonly kind: string;
  readonly gzipBytes: number;
  readonly at: number;
}

/** Serves a built page as a careful server would, and notes what is asked for. */
export const serveCounting = async (folder: string) => {
  const packed = new Map<string, Buffer>();
  const asked: Asked[] = [];
  const server = createServer(({ url }, response) => {
    const at = Date.now();
    const path = new URL(url ?? '/', 'http://localhost').pathname;
    const name = normalize(path === '/' ? 'index.html' : path.slice(1));
    try {
      const bytes = packed.get(name) ?? gzipSync(readFileSync(join(folder, name)), { level: 9 });
      packed.set(name, bytes);
      const [kind, mime] = types[extname(name)] ?? ['other', 'application/octet-stream'];
      asked.push({ name, kind, gzipBytes: bytes.length, at });
      response.writeHead(200, {
        'Content-Type': mime,
        'Content-Encoding': 'gzip',
        'Content-Security-Policy': servedPolicy,
      });
      response.end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const { port } = server.address() as AddressInfo;
  return { url: `http://127.0.0.1:${port}/`, asked, close: () => server.close() };
};
