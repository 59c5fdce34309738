import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

/**
 * A lesson of three steps on a post whose shadow is known by similar triangles (checkvalues.md 8a): 1 m high, its far top
 * edge 4.1 m from under a lamp 2 m high, so that the tip falls as far again beyond: 8.2 m west of the lamp, with the
 * corner 0.1 m aside brought out to 0.2 m.
 */
const stones = JSON.parse(readFileSync('assets/setups/three-stones.json', 'utf8'));
const [scheme] = stones.schemes;
const withLamp = (id: string, name: string, east: number) => {
  const copy = structuredClone({ ...scheme, id, name });
  const painted = copy.frames.find(({ purpose }: { purpose: string }) => purpose === 'painted');
  Object.assign(painted.passes[0], { waypoints: [{ position: [east, 0, 2], aim: [0, 0, 0.5] }] });
  return copy;
};
const passId = scheme.frames.find(({ purpose }: { purpose: string }) => purpose === 'painted').passes[0].id;
const lesson = {
  steps: [
    { title: 'From the right', text: 'The lamp is at three o’clock.', schemeIds: ['right'] },
    {
      title: 'Where does it end?',
      text: 'The post is half as high as the lamp.',
      schemeIds: ['right'],
      predict: { passId, subjectId: 'post' },
    },
    { title: 'Both sides', text: 'Right and left.', schemeIds: ['right', 'left'] },
  ],
};
const setup = {
  ...stones,
  id: 'post-lesson',
  name: 'A post and its shadow',
  place: { ...stones.place, sky: null },
  ground: { finish: { reflectance: 0.18 } },
  camera: { ...stones.camera, position: [0, -9, 1.5], aim: [0, 0, 0.5] },
  subjects: [
    {
      id: 'post',
      name: 'Gate post',
      position: [0, 0, 0],
      parts: [{ kind: 'box', position: [0, 0, 0], widthMetres: 0.2, depthMetres: 0.2, heightMetres: 1 }],
    },
  ],
  patch: null,
  lesson,
  schemes: [withLamp('right', 'Right', 4), withLamp('left', 'Left', -4)],
};
/** Of the plan: its middle, and pixels per metre, from the lamp's disc 4 m east of it. */
const planOf = async (app: AppPage) => {
  const middle = await app.planPlace(12, 0);
  const lamp = await app.lampPlace();
  return { middle, perMetre: (lamp.x - middle.x) / 4 };
};

const openLesson = async (browser: Browser, size: { width?: number; height?: number } = {}): Promise<AppPage> => {
  const app = await AppPage.open(browser, { samples: 1, ...size });
  await app.openText('post.json', JSON.stringify(setup));
  await app.page.locator('.lesson h3').waitFor();
  return app;
};
const heading = (app: AppPage) => app.page.locator('.lesson h3').innerText();
const button = (app: AppPage, name: string) => app.page.locator('.lesson').getByRole('button', { name });
const shadowPaths = (app: AppPage) => app.page.locator('.groundplan .shadow path').count();

describe('lessons', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));

  it('the menu lists lessons under a heading; one opens at its first step, and another setup ends it', async () => {
    const app = await AppPage.open(browser, { samples: 1 });
    const menu = app.page.locator('.menu summary').first();
    await menu.click();
    await app.page.getByRole('heading', { name: 'Lessons' }).waitFor();
    const first = app.page.locator('.menu-list [data-lesson]').first();
    const name = await first.innerText();
    await first.click();
    await app.page.locator('.lesson').waitFor();
    expect(await app.page.locator('.lesson h2').innerText()).toBe(`Lesson: ${name}`);
    await expect.poll(() => app.page.locator('.lesson-steps').innerText()).toMatch(/Step 1 of \d/);
    await menu.click();
    await app.page.locator('[data-sample="three-stones"]').click();
    await app.page.locator('.lesson').waitFor({ state: 'detached' });
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('steps choose what is seen: one scheme alone, several side by side; by button and by arrow keys', async () => {
    const app = await openLesson(browser);
    expect(await heading(app)).toBe('From the right');
    expect(await button(app, 'Back').isDisabled()).toBe(true);
    await button(app, 'Next').click();
    expect(await heading(app)).toBe('Where does it end?');
    // the focus stays in the lesson, so that the keys go on
    await app.page.keyboard.press('ArrowRight');
    expect(await heading(app)).toBe('Both sides');
    await app.page.locator('.tile[data-scheme="left"]').waitFor();
    expect(await app.page.locator('.tile[data-scheme]').count()).toBe(2);
    expect(await button(app, 'Next').isDisabled()).toBe(true);
    await app.page.keyboard.press('ArrowLeft');
    await app.page.keyboard.press('ArrowLeft');
    expect(await heading(app)).toBe('From the right');
    await app.page.locator('.picture canvas').waitFor();
    await button(app, 'Put away').click();
    expect(await app.page.locator('.lesson').count()).toBe(0);
    await app.page.getByRole('button', { name: 'Lesson: A post and its shadow' }).click();
    expect(await heading(app)).toBe('From the right');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a scheme that is removed leaves the lesson where it is, or put away; undo too; opened again it begins anew', async () => {
    const app = await openLesson(browser);
    const step = () => app.page.locator('.lesson-steps span').innerText();
    await button(app, 'Next').click();
    await button(app, 'Next').click();
    await app.page.locator('.tile[data-scheme="left"]').waitFor();
    await app.page.getByRole('tab', { name: 'Left' }).click();
    await app.page.getByRole('button', { name: 'Remove', exact: true }).click();
    expect(await step()).toBe('Step 3 of 3');
    await button(app, 'Put away').click();
    await app.page.getByRole('button', { name: 'Undo' }).click();
    await app.page.getByRole('tab', { name: 'Left' }).waitFor();
    expect(await app.page.locator('.lesson').count()).toBe(0);
    await app.openText('post.json', JSON.stringify(setup));
    await app.page.locator('.lesson').waitFor();
    expect(await step()).toBe('Step 1 of 3');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('a question hides picture and shadows until one has pointed; the answer says how far off by similar triangles', async () => {
    const app = await openLesson(browser);
    await app.settled();
    expect(await shadowPaths(app)).toBeGreaterThan(0);
    await button(app, 'Next').click();
    await app.page.getByText('Hidden until you have pointed').waitFor();
    // what is seen meanwhile is the sky's light alone
    expect((await app.settled()).layers).toBe(1);
    expect(await shadowPaths(app)).toBe(0);
    expect(await button(app, 'Reveal').isDisabled()).toBe(true);
    // the tip is 8.2 m from the lamp at 4 m east: 4.2 m west; pointed 3 m short of it
    const { middle, perMetre } = await planOf(app);
    await app.page.mouse.click(middle.x - 1.2 * perMetre, middle.y);
    await button(app, 'Reveal').click();
    const words = await app.page.locator('.lesson-answer').innerText();
    const [, off = '', degrees = '', long = ''] =
      /^You were ([\d.]+) m and (\d+)° off; the shadow is ([\d.]+) m long\.$/.exec(words) ?? [];
    // a pixel is some 4 cm, and figures are rounded
    expect(Math.abs(Number(off) - Math.hypot(3, 0.2))).toBeLessThanOrEqual(0.11);
    expect(Number(degrees)).toBeLessThanOrEqual(6);
    expect(Number(long)).toBeCloseTo(4.1, 1);
    expect((await app.settled()).layers).toBe(2);
    expect(await shadowPaths(app)).toBeGreaterThan(0);
    expect(await app.page.locator('.pointed-truth circle').count()).toBe(1);
    await app.keepScreenshot('lesson-revealed');
    // moved lamps make another shadow: the old answer goes
    await app.lamp().focus();
    await app.page.keyboard.press('ArrowUp');
    await app.page.locator('.pointed-truth').waitFor({ state: 'detached' });
    expect(await app.page.locator('.lesson-answer').innerText()).toBe('');
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('the same by keyboard alone: arrows move the cross, Enter reveals; Skip shows all without a guess', async () => {
    const app = await openLesson(browser);
    await app.page.keyboard.press('ArrowRight');
    expect(await heading(app)).toBe('Where does it end?');
    await button(app, 'To the plan').focus();
    await app.page.keyboard.press('Enter');
    for (let i = 0; i < 4; i++) await app.page.keyboard.press('Shift+ArrowLeft');
    await app.page.keyboard.press('Enter');
    // pointed at 4 m west exactly; the tip is at 4.2 m west and 0.2 m aside: 0.28 m off
    await expect.poll(() => app.page.locator('.lesson-answer').innerText()).toMatch(/^You were 0\.3 m and 3° off; /);
    await app.page.keyboard.press('ArrowLeft');
    await app.page.keyboard.press('ArrowRight');
    await app.page.getByText('Hidden until you have pointed').waitFor();
    await button(app, 'Skip').click();
    await app.page.locator('.picture canvas').waitFor();
    expect(await app.page.locator('.lesson-answer').innerText()).toBe('');
    expect(await shadowPaths(app)).toBeGreaterThan(0);
    expect(app.faults).toEqual([]);
    await app.close();
  });

  it('on a phone: fits without sideways scrolling, buttons of 44 px', async () => {
    const app = await openLesson(browser, { width: 390, height: 844 });
    await button(app, 'Next').click();
    await button(app, 'To the plan').waitFor();
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
      0,
    );
    const heights = await app.page
      .locator('.lesson button')
      .evaluateAll((buttons) => buttons.map((b) => b.getBoundingClientRect().height));
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
    await app.keepScreenshot('lesson-390x844');
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
