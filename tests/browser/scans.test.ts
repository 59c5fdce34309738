import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { EXTMeshoptCompression } from '@gltf-transform/extensions';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { groundDocument, squareDocument } from '../app/web/scans/made-documents.ts';
import { measuredByTransform, transformIO } from '../app/web/scans/oracles.ts';
import { launch, leave, openPage } from './browser.ts';
import type { PageScan, ScanPage } from './scan-page/main.ts';
import { serveTestPage } from './serve-test-page.ts';

declare global {
  interface Window {
    scanPage?: ScanPage;
  }
}

const folder = '.reports/scans';

describe('scans read in the page’s worker, under the app’s content security policy', () => {
  let browser: Browser;
  let page: Page;
  let faults: string[];
  let server: Awaited<ReturnType<typeof serveTestPage>>;
  const requests: string[] = [];
  beforeAll(async () => {
    mkdirSync(folder, { recursive: true });
    server = await serveTestPage('scan-page');
    browser = await launch();
    ({ page, faults } = await openPage(browser, server.url, 400, 300));
    page.on('request', (request) => requests.push(request.url()));
  });
  afterAll(async () => {
    await leave(browser);
    await server.close();
  });

  const choose = (name: string, bytes: Uint8Array) => {
    writeFileSync(`${folder}/${name}`, bytes);
    return page.setInputFiles('input', `${folder}/${name}`);
  };
  const read = async (name: string, bytes: Uint8Array): Promise<PageScan> => {
    await choose(name, bytes);
    const scan = await page.evaluate(() => window.scanPage?.read({ unit: 'm', upAxis: 'y', turnDegrees: 0 }));
    if (!scan) throw new Error('the page has no reader');
    return scan;
  };

  it('unpacks Draco: triangles and size as glTF Transform has them', async () => {
    const bytes = new Uint8Array(readFileSync('tests/app/web/scans/fixtures/bunny.glb'));
    const theirs = measuredByTransform(await (await transformIO()).readBinary(bytes));
    const scan = await read('bunny.glb', bytes);
    expect(scan.why).toBeNull();
    expect(scan.triangles).toBe(theirs.triangles);
    const [x, y, z] = theirs.high.map((value, k) => value - (theirs.low[k] ?? 0));
    [x, z, y].forEach((side, k) => {
      expect(scan.sizeMetres[k]).toBeCloseTo(side ?? 0, 6);
    });
  });

  it('unpacks meshopt and thins 312,050 triangles to 300,000', async () => {
    const { document } = groundDocument(395, 91);
    document.createExtension(EXTMeshoptCompression).setRequired(true);
    const scan = await read('meshopt.glb', await (await transformIO()).writeBinary(document));
    expect(scan.why).toBeNull();
    expect(scan.triangles).toBeLessThanOrEqual(300_000);
    expect(scan.triangles).toBeGreaterThan(290_000);
    expect(scan.leftOut.join()).toMatch(/^312,050 triangles were thinned to /);
  });

  it('takes colours from a JPEG with the browser’s own decoder (3 bytes)', async () => {
    const jpeg = Buffer.from((await page.evaluate(() => window.scanPage?.jpeg('rgb(180, 90, 40)'))) ?? '', 'base64');
    const document = squareDocument((made) =>
      made
        .createMaterial()
        .setBaseColorTexture(made.createTexture().setMimeType('image/jpeg').setImage(Uint8Array.from(jpeg))),
    );
    const scan = await read('jpeg.glb', await (await transformIO()).writeBinary(document));
    expect(scan.leftOut).toEqual([]);
    [180, 90, 40].forEach((byte, k) => {
      expect(Math.abs((scan.colours[k] ?? 0) - byte)).toBeLessThanOrEqual(3);
    });
  });

  it('says what is wrong with a broken file, and stops when it is closed', async () => {
    expect((await read('cut.glb', readFileSync('tests/app/web/scans/fixtures/hand.glb').subarray(0, 5000))).why).toBe(
      'ScanError: The file breaks off: it is shorter than it says',
    );
    await choose('large.glb', readFileSync(`${folder}/meshopt.glb`));
    expect(await page.evaluate(() => window.scanPage?.readAndClose())).toBe('Reading it was stopped');
    await expect.poll(() => page.workers().length).toBe(0);
  });

  it('asked for nothing but the page’s own parts, and nothing went wrong', () => {
    expect(requests.length).toBeGreaterThan(0);
    for (const url of requests) expect(url).toMatch(new RegExp(`^(blob:|data:|${server.url}assets/[\\w.-]+\\.js$)`));
    expect(faults).toEqual([]);
  });
});
