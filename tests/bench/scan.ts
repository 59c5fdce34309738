import { mkdirSync, writeFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { NodeIO } from '@gltf-transform/core';
import { type Browser, chromium } from 'playwright-core';
import { groundDocument, png } from '../app/web/scans/made-documents.ts';
import { findChromium } from '../browser/find-chromium.ts';
import type { PageScan, ScanPage } from '../browser/scan-page/main.ts';
import { serveTestPage } from '../browser/serve-test-page.ts';

/** Times of bringing in one scan, in the worker of a built page. */
export interface ScanTimes {
  readonly megabytes: number;
  readonly triangles: number;
  /** From the chosen file to its summary, and from there to the text for the document. */
  readonly readMs: number;
  readonly packMs: number;
  readonly longestGapMs: number;
  readonly letters: number;
}

/** 387 squares a side, two triangles each, with a picture of 1024 by 1024. */
const largeFile = async (): Promise<Uint8Array> => {
  const { document, primitive } = groundDocument(387, 17);
  const image = png(1024, 1024, (x, y) => [(x * 7 + y * 3) % 200, (x ^ y) % 180, (x * y) % 160]);
  const texture = document.createTexture().setMimeType('image/png').setImage(image);
  primitive.setMaterial(document.createMaterial().setBaseColorTexture(texture));
  return new NodeIO().writeBinary(document);
};

export const scanTimes = async (browser: Browser): Promise<ScanTimes> => {
  const bytes = await largeFile();
  mkdirSync('.reports', { recursive: true });
  writeFileSync('.reports/bench-scan.glb', bytes);
  const server = await serveTestPage('scan-page');
  const page = await browser.newPage();
  await page.goto(server.url);
  await page.setInputFiles('input', '.reports/bench-scan.glb');
  const scan: PageScan = await page.evaluate(() =>
    (window as unknown as { scanPage: ScanPage }).scanPage.read({ unit: 'm', upAxis: 'y', turnDegrees: 0 }),
  );
  await page.close();
  await server.close();
  if (scan.why) throw new Error(scan.why);
  const { triangles, readMs, packMs, longestGapMs, letters } = scan;
  return { megabytes: bytes.length / 1e6, triangles, readMs, packMs, longestGapMs, letters };
};

export const scanLine = ({ megabytes, triangles, readMs, packMs, longestGapMs, letters }: ScanTimes): string =>
  `Scan of ${triangles} triangles, ${megabytes.toFixed(1)} MB: read in ${(readMs / 1000).toFixed(1)} s, packed in ${(packMs / 1000).toFixed(1)} s (bar: 5 s together), the page held up for ${longestGapMs.toFixed(0)} ms at most, ${(letters / 1e6).toFixed(2)} million letters in the document`;

// alone: npx tsx tests/bench/scan.ts
if (process.argv[1] && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const browser = await chromium.launch({ executablePath: findChromium(), args: ['--no-sandbox'] });
  console.log(scanLine(await scanTimes(browser)));
  await browser.close();
}
