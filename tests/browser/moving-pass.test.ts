import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('a moving pass', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  /** Drags over the picture from one place to another, in shares of it. */
  const dragOver = async (app: AppPage, from: readonly [number, number], to: readonly [number, number], end = true) => {
    const box = await app.page.locator('.sweep-tool').boundingBox();
    if (!box) throw new Error('no sweep is being painted');
    const at = ([x, y]: readonly [number, number]) => [box.x + x * box.width, box.y + y * box.height] as const;
    await app.page.mouse.move(...at(from));
    await app.page.mouse.down();
    for (let i = 1; i <= 20; i++) {
      const t = i / 20;
      await app.page.mouse.move(...at([from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t]));
    }
    if (end) await app.page.mouse.up();
  };

  it('a sweep painted over the wall, evened, in two strokes: seen on the plan, typed, walked to, and taken back', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    await page.locator('.menu summary').click();
    await page.locator('[data-sample="drystone-wall"]').click();
    await page.getByRole('tab', { name: /^B/ }).click();
    const path = page.getByRole('region', { name: 'Path' });
    const undo = page.getByRole('button', { name: 'Undo' });
    await page.getByLabel('Count', { exact: true }).fill('4');
    await page.keyboard.press('Enter');

    // Escape leaves all as it is, also half-way through a drag
    await path.getByRole('button', { name: 'Paint the sweep' }).click();
    await dragOver(app, [0.1, 0.52], [0.4, 0.51], false);
    await page.keyboard.press('Escape');
    await page.mouse.up();
    expect(await page.locator('.sweep-tool').count()).toBe(0);
    expect(await path.getByLabel('The lamp').inputValue()).toBe('still');

    await path.getByRole('button', { name: 'Paint the sweep' }).click();
    // a line in the sky meets nothing; that is said, and nothing changes
    await dragOver(app, [0.1, 0.1], [0.6, 0.1]);
    await expect.poll(() => page.locator('.notice').innerText()).toMatch(/meets nothing/);
    expect(await path.getByLabel('The lamp').inputValue()).toBe('still');
    await dragOver(app, [0.1, 0.52], [0.67, 0.5]);
    expect(await path.getByLabel('The lamp').inputValue()).toBe('sweep');
    expect(await path.getByLabel('Dwell').inputValue()).toBe('even-speed');
    expect(await path.innerText()).toMatch(/One stroke of 4 s · [\d.]+/);
    const plan = page.locator('.groundplan');
    expect(await plan.locator('.path-aim').count()).toBe(1);
    // a straight drag along a wall: its hand goes evenly over more waypoints than its two ends
    const painted = await path.locator('.waypoint-head').count();
    expect(painted).toBeGreaterThan(3);
    expect(painted).toBeLessThanOrEqual(24);
    expect(await path.getByRole('button', { name: 'Even the speed again' }).count()).toBe(0);

    // the dose is more even than at even speed, and the page says by how much
    await path.getByLabel('Dwell').selectOption('even-dose');
    const said = await path.getByRole('status').innerText();
    const [, now, before] = /even within ([\d.]+) stops; ([\d.]+) at even speed/.exec(said) ?? [];
    expect(Number(now)).toBeLessThan(Number(before));
    expect(await path.locator('.waypoint-head').count()).toBeGreaterThanOrEqual(painted);

    // three strokes of four seconds do not fit into what is left of ten: they are quicker; two do
    await path.getByLabel('Strokes').fill('3');
    await page.keyboard.press('Enter');
    await expect.poll(() => path.innerText()).toMatch(/Each stroke 3 s/);
    await undo.click();
    await path.getByLabel('Strokes').fill('2');
    await page.keyboard.press('Enter');
    expect(await page.getByLabel('Count', { exact: true }).inputValue()).toBe('8');
    expect(await path.innerText()).toMatch(/Each stroke 4 s/);

    // numbered aims on the plan can be moved by keys; the open waypoint of the slip is the same one
    const aim = plan.locator('.mark[aria-label^="Aim at waypoint"]').last();
    const number = Number((await aim.locator('.path-number').textContent()) ?? 0);
    await aim.focus();
    await page.keyboard.press('ArrowUp');
    expect(await path.locator('.waypoint-head[aria-expanded="true"] .waypoint-number').innerText()).toBe(`${number}`);
    await undo.click();

    // the way on foot from the camera, with metres and seconds
    await expect
      .poll(() => plan.locator('.walk-line-own text').allTextContents())
      .toEqual([expect.stringMatching(/^[\d.]+ m · \d+ s/)]);
    await page.getByRole('checkbox', { name: 'Walks' }).uncheck();
    expect(await plan.locator('.walk-line').count()).toBe(0);
    await page.getByRole('checkbox', { name: 'Walks' }).check();

    // strokes, dwell and the painting are one step back each
    await undo.click();
    expect(await path.getByLabel('Strokes').inputValue()).toBe('1');
    await undo.click();
    expect(await path.getByLabel('Dwell').inputValue()).toBe('even-speed');
    await undo.click();
    expect(await path.getByLabel('The lamp').inputValue()).toBe('still');
    expect(await plan.locator('.path-aim').count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('without a pointer: a walk from the list, a waypoint put in, its time and place typed', async () => {
    const app = await AppPage.open(browser, { samples: 1, width: 1440, height: 900 });
    const { page } = app;
    const path = page.getByRole('region', { name: 'Path' });
    await path.getByLabel('The lamp').selectOption('walk');
    expect(await path.innerText()).toMatch(/m\/s/);
    expect(await page.locator('.groundplan .path-lamp').count()).toBe(1);
    await path.locator('.waypoint-head').first().click();
    await path.getByRole('button', { name: 'Add after it' }).click();
    expect(await path.locator('.waypoint-head').count()).toBe(3);
    await path.getByLabel('Height', { exact: false }).fill('shin');
    await page.keyboard.press('Enter');
    expect(await path.locator('.waypoint-head').nth(1).innerText()).toMatch(/shin/);
    await path.getByLabel('Time').fill('1.25');
    await page.keyboard.press('Enter');
    expect(await path.locator('.waypoint-time').allInnerTexts()).toContain('1.25 s');
    expect(await path.getByLabel('Dwell').inputValue()).toBe('typed');
    await path.getByRole('button', { name: 'Remove waypoint' }).click();
    expect(await path.locator('.waypoint-head').count()).toBe(2);
    await path.getByLabel('The lamp').selectOption('still');
    expect(await page.locator('.groundplan .path-lamp').count()).toBe(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
