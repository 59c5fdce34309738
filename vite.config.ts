import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { licencesPlugin } from './app/build/licences-plugin.ts';
import { offlinePlugin } from './app/build/offline-plugin.ts';
import { servedPolicy } from './app/build/page-policy.ts';
import { samplePlugin } from './app/build/sample-plugin.ts';
import { starsPlugin } from './app/build/stars-plugin.ts';

const licences = licencesPlugin();

const project = (name: string, include: string, extra: object = {}) => ({
  extends: true as const,
  root: '.',
  test: { name, include: [include], environment: 'node', hookTimeout: 60_000, maxWorkers: 2, ...extra },
});

// The page is app/web; tests are split so that `npm run check` can run the architecture test alone.
export default defineConfig({
  root: 'app/web',
  base: './',
  plugins: [react(), samplePlugin(), starsPlugin(), licences.page, offlinePlugin()],
  build: { outDir: '../../dist', emptyOutDir: true, target: 'es2023', chunkSizeWarningLimit: 2000 },
  worker: { format: 'es', plugins: () => [starsPlugin(), licences.collect()] },
  preview: { port: 4317, headers: { 'Content-Security-Policy': servedPolicy, 'X-Content-Type-Options': 'nosniff' } },
  server: { port: 4318 },
  test: {
    root: '.',
    // `npm run coverage`: what of core the tests in Node go through
    coverage: {
      include: ['core/**/*.ts'],
      // the pattern finds tests/core too
      exclude: ['tests/**'],
      reporter: ['text-summary', 'json'],
      reportsDirectory: '.reports/coverage',
      reportOnFailure: true,
      thresholds: { branches: 95 },
    },
    reporters: ['default', ['json', { outputFile: '.reports/tests.json' }]],
    projects: [
      project('architecture', 'tests/architecture/**/*.test.ts'),
      // pure functions: files may share what they import
      project('core', 'tests/core/**/*.test.ts', { testTimeout: 180_000, isolate: false }),
      project('reference', 'tests/reference/**/*.test.ts', {
        globalSetup: ['tests/reference/support/global-setup.ts'],
        testTimeout: 180_000,
        isolate: false,
      }),
      project('app', 'tests/app/**/*.test.{ts,tsx}', { testTimeout: 180_000 }),
      project('browser', 'tests/browser/**/*.test.ts', {
        globalSetup: ['tests/browser/global-setup.ts'],
        testTimeout: 240_000,
        hookTimeout: 240_000,
        // what comes from a worker comes late on a busy machine
        expect: { poll: { timeout: 20_000 } },
        // of CI’s machine nobody knows how busy it is: a race that is lost there once is run once more, and is told of
        retry: process.env['CI'] ? 1 : 0,
        // one at a time, after all others: software GL takes both cores; files share one browser and its pages
        maxWorkers: 1,
        isolate: false,
        sequence: { groupOrder: 1 },
      }),
    ],
  },
});
