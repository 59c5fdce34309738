import { build, preview } from 'vite';
import { pagePolicy, servedPolicy } from '../../app/build/page-policy.ts';

const policy = `<meta http-equiv="Content-Security-Policy" content="${pagePolicy}">`;

/** Builds the page that reads scans, under the content security policy of the app, and serves it on loopback. */
export const serveScanPage = async (): Promise<{ url: string; close: () => Promise<void> }> => {
  const outDir = '.reports/scan-page';
  await build({
    configFile: false,
    logLevel: 'error',
    root: 'tests/browser/scan-page',
    base: './',
    plugins: [{ name: 'policy', transformIndexHtml: (html) => html.replace('<head>', `<head>${policy}`) }],
    build: { outDir: `../../../${outDir}`, emptyOutDir: true, target: 'es2023', chunkSizeWarningLimit: 2000 },
    worker: { format: 'es' },
  });
  const server = await preview({
    configFile: false,
    logLevel: 'error',
    root: '.',
    build: { outDir },
    preview: { host: '127.0.0.1', port: 4405, strictPort: false, headers: { 'Content-Security-Policy': servedPolicy } },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('the preview server did not say its address');
  return { url, close: () => server.close() };
};
