import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Setup } from '../../core/setup/schema/setup.ts';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

const bunny = 'tests/app/web/scans/fixtures/bunny.glb';

const bring = (app: AppPage, file: string | { name: string; mimeType: string; buffer: Buffer }) =>
  app.page.setInputFiles('input[aria-label="Scan file"]', file);

const saved = async (app: AppPage): Promise<Setup> => {
  const [download] = await Promise.all([
    app.page.waitForEvent('download'),
    app.page
      .locator('.menu summary')
      .click()
      .then(() => app.page.getByRole('button', { name: 'Save as a file' }).click()),
  ]);
  return JSON.parse(readFileSync(await download.path(), 'utf8'));
};

/** A file that needs another one from far away. */
const scattered = {
  asset: { version: '2.0' },
  buffers: [{ uri: 'https://example.invalid/parts.bin', byteLength: 36 }],
  bufferViews: [{ buffer: 0, byteLength: 36 }],
  accessors: [{ bufferView: 0, componentType: 5126, count: 3, type: 'VEC3', min: [0, 0, 0], max: [1, 1, 1] }],
  meshes: [{ primitives: [{ attributes: { POSITION: 0 } }] }],
  nodes: [{ mesh: 0 }],
  scenes: [{ nodes: [0] }],
  scene: 0,
};
const broken = [
  ['noise.glb', 'glTF\u0002\u0000\u0000\u0000 and then nothing that fits', /noise\.glb can’t be used/],
  ['words.ply', 'a letter to my aunt', /words\.ply can’t be used/],
  ['parts.gltf', JSON.stringify(scattered), /parts\.bin/],
] as const;

describe('bringing in a scan', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('asks how it stands, takes a measured side, draws it, saves it within the setup; undo takes it out', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    await app.settled();
    await bring(app, bunny);
    const dialog = app.page.getByRole('dialog');
    await expect.poll(() => dialog.innerText(), { timeout: 30_000 }).toMatch(/5,\d+ triangles/);
    const height = dialog.getByRole('textbox', { name: 'Height', exact: true });
    await height.fill('2.4');
    await height.press('Enter');
    await expect.poll(() => height.inputValue()).toBe('2.4');
    await app.keepScreenshot('scan-dialog-1440x900');
    await dialog.getByRole('button', { name: 'Bring it in' }).click();
    await dialog.waitFor({ state: 'detached' });
    const subject = app.page.getByRole('button', { name: /^bunny, a subject/ });
    await subject.waitFor();
    await app.settled();
    const setup = await saved(app);
    expect(setup.scans).toHaveLength(1);
    expect(setup.scans[0]?.sizeMetres[2]).toBeCloseTo(2.4, 3);
    expect(setup.subjects.at(-1)).toMatchObject({
      name: 'bunny',
      parts: [{ kind: 'scan', scanId: setup.scans[0]?.id }],
    });
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await subject.waitFor({ state: 'detached' });
    await app.openText('with-scan.lampfall.json', JSON.stringify(setup));
    await subject.waitFor();
    await app.settled();
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('says why a broken file is not taken, asks no one else for what it lacks, and leaves the setup alone', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const dialog = app.page.getByRole('dialog');
    const rows = () => app.page.getByRole('region', { name: 'Subjects' }).locator('.slip-head').allInnerTexts();
    const before = await rows();
    for (const [name, text, words] of broken) {
      await bring(app, { name, mimeType: 'application/octet-stream', buffer: Buffer.from(text) });
      await expect.poll(() => dialog.innerText(), { timeout: 30_000 }).toMatch(words);
      await expect.poll(() => dialog.getByRole('alert').innerText()).toContain('Your setup is unchanged');
      await dialog.getByRole('button', { name: 'Close' }).click();
      await dialog.waitFor({ state: 'detached' });
    }
    expect(await rows()).toEqual(before);
    // a request to anywhere else would be among them
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('says that it would be too long, and takes it once it is shorter; stays open while the setup has no room for it', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const dialog = app.page.getByRole('dialog');
    const type = async (label: string, value: string) => {
      const field = dialog.getByRole('textbox', { name: label, exact: true });
      await field.waitFor({ timeout: 30_000 });
      await field.fill(value);
      await field.press('Enter');
      await expect.poll(() => field.inputValue()).toBe(value);
    };
    const bringItIn = () => dialog.getByRole('button', { name: 'Bring it in' }).click();
    await bring(app, bunny);
    // the bunny is longer from east to west than from north to south
    await type('North to south', '5000');
    await bringItIn();
    await expect.poll(() => dialog.getByRole('alert').innerText()).toMatch(/m long; at most 5000 m/);
    await type('North to south', '2');
    expect(await dialog.getByRole('alert').count()).toBe(0);
    await bringItIn();
    await dialog.waitFor({ state: 'detached' });
    const setup = await saved(app);
    const [scan] = setup.scans;
    const subject = setup.subjects.at(-1);
    const ids = Array.from({ length: 8 }, (_, i) => `scan-${i}`);
    const full = {
      ...setup,
      scans: ids.map((id) => ({ ...scan, id })),
      subjects: ids.map((id) => ({ ...subject, id, name: id, parts: [{ kind: 'scan', scanId: id }] })),
      schemes: [{ id: 'a', name: 'A', frames: [{ id: 'f', name: 'F' }] }],
      lesson: null,
    };
    await app.openText('full.lampfall.json', JSON.stringify(full));
    await app.page.getByRole('button', { name: /^scan-7, a subject/ }).waitFor();
    await bring(app, bunny);
    await type('Height', '2');
    await bringItIn();
    await expect.poll(() => dialog.getByRole('alert').innerText()).toMatch(/8 scans already/);
    await dialog.getByRole('button', { name: 'Cancel' }).click();
    await dialog.waitFor({ state: 'detached' });
    expect(app.faults).toEqual([]);
    await app.page.close();
  });
});
