import type { Browser } from 'playwright-core';
import { build, type PreviewServer, preview } from 'vite';

/** Where the built page lies; the same folder is packed for a graphics card elsewhere. */
export const pageFolder = '.reports/bench-page';

/** The machine that a page ran on. */
export interface Machine {
  readonly card: string;
  readonly cores: number;
  readonly date: string;
}

/** What a page posts: one of its results, or that it is done, or why it can’t be. */
export interface Posted {
  readonly bench: string;
  readonly machine: Machine;
  readonly result?: Readonly<Record<string, unknown>>;
  readonly doneSeconds?: number;
  readonly error?: string;
}

/** What one bench found, in order. */
export const resultsOf = <T>(posted: readonly Posted[], bench: string): T[] =>
  posted.flatMap((each) => (each.bench === bench && each.result ? [each.result as unknown as T] : []));

export const buildPage = () =>
  build({
    configFile: false,
    logLevel: 'error',
    root: 'tests/bench/page',
    base: './',
    build: { outDir: `../../../${pageFolder}`, emptyOutDir: true, target: 'es2023', chunkSizeWarningLimit: 3000 },
    worker: { format: 'es' },
  });

/** Serves the built page on loopback and hands on what it posts. */
export class PageRuns {
  readonly posted: Posted[] = [];
  private server: PreviewServer | null = null;
  private readonly browser: Browser;
  private onPost: (posted: Posted) => void = () => undefined;

  constructor(browser: Browser) {
    this.browser = browser;
  }

  async open(port: number): Promise<void> {
    this.server = await preview({
      configFile: false,
      logLevel: 'error',
      root: '.',
      build: { outDir: pageFolder },
      preview: { host: '127.0.0.1', port },
      plugins: [
        {
          name: 'results',
          configurePreviewServer: ({ middlewares }) => {
            middlewares.use('/result', (request, response) => {
              const parts: Buffer[] = [];
              request.on('data', (part: Buffer) => parts.push(part));
              request.on('end', () => {
                response.end();
                this.onPost(JSON.parse(Buffer.concat(parts).toString()) as Posted);
              });
            });
          },
        },
      ],
    });
  }

  /** Runs one bench in a page of its own until it says that it is done. */
  async run(bench: string, query: Readonly<Record<string, string | number>>): Promise<void> {
    const url = this.server?.resolvedUrls?.local[0] ?? '';
    const page = await this.browser.newPage();
    const address = new URLSearchParams({
      bench,
      ...Object.fromEntries(Object.entries(query).map(([k, v]) => [k, `${v}`])),
    });
    await new Promise<void>((resolve, reject) => {
      this.onPost = (posted) => {
        if (posted.error) reject(new Error(`${bench}: ${posted.error}`));
        this.posted.push(posted);
        if (posted.doneSeconds !== undefined) resolve();
      };
      page.on('pageerror', reject);
      page.goto(`${url}?${address}`, { waitUntil: 'commit' }).catch(reject);
    });
    await page.close();
  }

  async close(): Promise<void> {
    await this.server?.close();
  }
}
