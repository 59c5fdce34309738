import { build, type PreviewServer, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { servedPolicy } from '../../app/build/page-policy.ts';
import { findChromium } from './find-chromium.ts';

declare module 'vitest' {
  export interface ProvidedContext {
    chromiumPath: string;
    appUrl: string;
    harnessUrl: string;
  }
}

const serve = async (outDir: string, port: number): Promise<PreviewServer> =>
  preview({
    configFile: false,
    logLevel: 'error',
    root: '.',
    build: { outDir },
    preview: {
      host: '127.0.0.1',
      port,
      strictPort: false,
      headers: { 'Content-Security-Policy': servedPolicy },
    },
  });

/** Builds under the name that libraries know a build for users by: the runner has named it a test. */
const asShipped = async (make: () => Promise<unknown>): Promise<void> => {
  const was = process.env['NODE_ENV'];
  process.env['NODE_ENV'] = 'production';
  await make();
  process.env['NODE_ENV'] = was;
};

const addressOf = (server: PreviewServer): string => {
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('the preview server did not say its address');
  return url;
};

/** Finds a browser, builds the app as it ships and the render harness, and serves both on loopback. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  project.provide('chromiumPath', findChromium());
  await asShipped(() => build({ logLevel: 'error', build: { outDir: '../../.reports/app', emptyOutDir: true } }));
  await build({
    configFile: false,
    logLevel: 'error',
    root: 'tests/browser/harness',
    base: './',
    build: { outDir: '../../../.reports/harness', emptyOutDir: true, target: 'es2023', chunkSizeWarningLimit: 2000 },
  });
  const servers = [await serve('.reports/app', 4401), await serve('.reports/harness', 4402)] as const;
  project.provide('appUrl', addressOf(servers[0]));
  project.provide('harnessUrl', addressOf(servers[1]));
  return async () => {
    for (const server of servers) await server.close();
  };
}
