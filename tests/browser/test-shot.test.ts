import { readFileSync } from 'node:fs';
import piexif from 'piexifjs';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { jpegOf, photoOf, withRealLamps } from '../app/web/testshot/test-photo.ts';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

/** White, red, green and blue quarters as the eye should have them: left above, right above, left below, right below. */
const quarters = [
  [240, 240, 240],
  [220, 20, 20],
  [20, 200, 20],
  [20, 20, 220],
] as const;
const [wide, high] = [48, 32];

/** Which sides of the picture the first row and the first column of the file are (Exif 2.32, 4.6.5, Orientation). */
const sides = [
  ['top', 'left'],
  ['top', 'right'],
  ['bottom', 'right'],
  ['bottom', 'left'],
  ['left', 'top'],
  ['right', 'top'],
  ['right', 'bottom'],
  ['left', 'bottom'],
] as const;

/** The quarters as they lie in a file of that orientation. */
const turned = (orientation: number): Buffer => {
  const [row0, column0] = sides[orientation - 1] as (typeof sides)[number];
  const isUpright = orientation <= 4;
  const [width, height] = isUpright ? [wide, high] : [high, wide];
  const rgb = new Uint8Array(width * height * 3);
  for (let r = 0; r < height; r++)
    for (let c = 0; c < width; c++) {
      const along = (side: string, n: number, length: number) =>
        side === 'top' || side === 'left' ? n : length - 1 - n;
      const [x, y] = isUpright
        ? [along(column0, c, wide), along(row0, r, high)]
        : [along(row0, r, wide), along(column0, c, high)];
      const quarter = quarters[(x < wide / 2 ? 0 : 1) + (y < high / 2 ? 0 : 2)] as readonly number[];
      rgb.set(quarter, 3 * (r * width + c));
    }
  return jpegOf(rgb, width, height, { '0th': { [piexif.ImageIFD.Orientation]: orientation } }, 98);
};

/** Middle of each quarter of the drawn photo. */
const drawnQuarters = (page: Page): Promise<number[][]> =>
  page.evaluate(() => {
    const canvas = document.querySelector('section[aria-label="Photo"] canvas') as HTMLCanvasElement;
    const pen = canvas.getContext('2d') as CanvasRenderingContext2D;
    const at = (x: number, y: number) => [
      ...pen.getImageData(x * canvas.width, y * canvas.height, 1, 1).data.slice(0, 3),
    ];
    return [at(0.25, 0.25), at(0.75, 0.25), at(0.25, 0.75), at(0.75, 0.75)];
  });

/** The next day: the frame of the three stones as a torch 0.8 stop weaker than its box gives it. */
const dayAfter = () => {
  const text = readFileSync('assets/setups/three-stones.json', 'utf8');
  return photoOf(withRealLamps(text, -0.8), 1, 240, 160, 1);
};

describe('a test shot', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('corrects the torch, here and in the bag, whichever way the photo was held; undo gives the box back', async () => {
    const app = await AppPage.open(browser, { samples: 1, isOwn: true });
    const { page } = app;
    const dialog = page.getByRole('dialog');
    await page.locator('.lamp-part > summary').first().click();
    await page.getByRole('button', { name: 'Keep in my bag' }).click();
    await expect.poll(() => page.locator('.lamp-bag').innerText()).toBe('In your bag as it is here.');

    // dropped on the page
    const bytes = [...dayAfter()];
    await page.evaluate((data) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([new Uint8Array(data)], 'night.jpg', { type: 'image/jpeg' }));
      document.querySelector('main')?.dispatchEvent(new DragEvent('drop', { bubbles: true, dataTransfer }));
    }, bytes);
    await expect.poll(() => dialog.innerText()).toContain('f/8 · 10 s · ISO 400 · 24 mm · 2026-10-09 22:41');
    const photo = dialog.getByRole('button', { name: /^The photo: press the lit spot/ });
    const box = await photo.boundingBox();
    if (!box) throw new Error('no photo');
    // no spot of the rehearsal is pressed before it stands
    await page.locator('canvas[data-drawn=true]').waitFor();
    await page.mouse.click(box.x + 0.515 * box.width, box.y + 0.53 * box.height);
    await photo.press('ArrowRight');
    await photo.press('ArrowRight');
    expect(Number((await photo.getAttribute('data-place'))?.split(' ')[0])).toBeCloseTo(0.525, 2);
    const sentence = dialog.locator('.shot-sentence');
    await expect
      .poll(() => sentence.innerText())
      .toMatch(
        /^The photo is 0\.[789] stop darker here than predicted \(±0\.\d\)\. Your “Small torch” gives 5\d % of what its box says\.$/,
      );
    await app.keepScreenshot('test-shot');

    // held another way, and files that are none, in between
    const input = page.getByLabel('Photo of a test frame');
    for (let orientation = 1; orientation <= 8; orientation++) {
      const name = `held-${orientation}.jpg`;
      await input.setInputFiles({ name, mimeType: 'image/jpeg', buffer: turned(orientation) });
      await expect
        .poll(async () => {
          if (!(await dialog.innerText()).includes(name) || (await photo.count()) === 0) return null;
          const drawn = await drawnQuarters(page);
          return Math.max(
            ...drawn.flatMap((colour, q) => colour.map((v, c) => Math.abs(v - (quarters[q]?.[c] as number)))),
          );
        })
        .toBeLessThan(40);
    }
    await input.setInputFiles({ name: 'a.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('II*\0and more') });
    await expect.poll(() => dialog.innerText()).toMatch(/a\.jpg can’t be used\. It is a raw file/);
    await input.setInputFiles({ name: 'night.jpg', mimeType: 'image/jpeg', buffer: Buffer.from(bytes) });
    await expect.poll(() => sentence.count()).toBe(1);

    await dialog.getByRole('button', { name: /^Correct the lamp: real −0\.\d stop, 1 shot/ }).click();
    await expect.poll(() => page.locator('.notice').innerText()).toContain('in your bag too');
    await expect
      .poll(() => page.locator('.lamp-shots').innerText())
      .toMatch(/Box 180 lm · real −0\.8 stop, 1 shot: 10\d lm/);
    await expect.poll(() => page.locator('.lamp-bag').innerText()).toBe('In your bag as it is here.');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('.lamp-shots').count()).toBe(0);
    await page.getByText('from my bag').click();
    await expect
      .poll(() => page.getByRole('button', { name: /^Small torch · real −0\.8 stop, 1 shot/ }).count())
      .toBe(1);

    // focus stays with what can be done
    await page.getByRole('button', { name: 'Open my bag…' }).click();
    await page.locator('.bag-row button').click();
    const focused = () => page.evaluate(() => document.activeElement?.textContent);
    await expect.poll(focused).toBe('Put it back');
    await page.keyboard.press('Enter');
    await expect.poll(focused).toBe('My lamp bag');
    await expect.poll(() => page.locator('.bag-row').count()).toBe(1);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
