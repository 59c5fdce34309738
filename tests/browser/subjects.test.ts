import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';
import { SubjectsSection } from './subjects-section.ts';

describe('subjects', () => {
  let browser: Browser;
  let app: AppPage;
  let subjects: SubjectsSection;
  beforeAll(async () => {
    browser = await launch();
  });
  afterAll(() => leave(browser));
  const start = async (width = 1440, height = 900) => {
    app = await AppPage.open(browser, { samples: 1, width, height });
    subjects = new SubjectsSection(app);
    await app.page.locator('.menu summary').click();
    await app.page.getByRole('button', { name: /^New setup/ }).click();
    if (width < 900) await app.page.getByRole('button', { name: 'Subjects', exact: true }).click();
  };
  const close = async () => {
    expect(app.faults).toEqual([]);
    await app.close();
  };

  it('a hut is added, typed to 6.4 x 4.2 m, stands in the picture and on the plan; undone step by step', async () => {
    await start();
    await expect.poll(() => app.page.getByLabel('First things').innerText()).toContain('Add what you measured');
    await subjects.add(/^Hut/);
    expect(await subjects.names()).toEqual([expect.stringMatching(/^Hut/)]);
    // the focus is on the new row: typing goes on from there
    await expect.poll(() => app.page.evaluate(() => document.activeElement?.textContent)).toMatch(/^Hut/);
    expect(await subjects.type('Width', '6.4')).toBe('6.4');
    expect(await subjects.type('Depth', '4.2 m')).toBe('4.2');
    await subjects.type('Name', 'My hut');
    expect(await subjects.rows()).toEqual([expect.stringMatching(/^My hut\s+hut.* · \d+ parts$/)]);
    await app.page.getByRole('button', { name: /^My hut, a subject/ }).waitFor();
    await expect.poll(() => app.page.getByLabel('First things').innerText()).toContain('add a lamp');
    const parts = await subjects.rows();
    await subjects.press('Another');
    expect(await subjects.field('Variant').inputValue()).toBe('2');
    await subjects.undo();
    expect(await subjects.field('Variant').inputValue()).toBe('1');
    expect(await subjects.rows()).toEqual(parts);
    await app.settled();
    await app.keepScreenshot('subjects-hut');
    for (let step = 0; step < 3; step++) await subjects.undo();
    expect(await subjects.names()).toEqual([expect.stringMatching(/^Hut/)]);
    await subjects.undo();
    expect(await subjects.names()).toEqual([]);
    await close();
  });

  it('an empty place: every room stands without subjects, without lamps, and with a lamp that lights nothing', async () => {
    await start();
    const visit = async () => {
      for (const room of ['Compare', 'Sweep', 'Picture'])
        await app.page.getByRole('button', { name: room, exact: true }).click();
      for (const mark of ['Levels', 'Shadows', 'Lit outline']) await app.page.getByLabel(mark, { exact: true }).check();
      await app.page.getByRole('button', { name: 'Any side' }).click();
      await app.page.locator('.walkaround canvas').waitFor();
      await app.page.getByRole('button', { name: 'From above' }).click();
      await app.settled();
    };
    await visit();
    await app.page.getByRole('button', { name: 'torch', exact: true }).click();
    await visit();
    await expect.poll(() => app.page.locator('.slip-light').innerText()).toMatch(/sky|lx at the target/);
    await app.page.locator('.menu summary').click();
    const name = app.page.getByLabel('Name of this setup');
    await name.fill('Our hut');
    await name.press('Enter');
    await expect.poll(() => app.page.locator('.menu summary').innerText()).toContain('Our hut');
    await close();
  });

  it('a wall: openings where there is room, refused in place where not; an arrow held down is one step', async () => {
    await start();
    await subjects.add('Wall with openings');
    const openings = subjects.open.locator('.opening');
    expect(await openings.locator('h4').allInnerTexts()).toEqual(['1 · Doorway']);
    await subjects.press('Add a window');
    expect(await openings.locator('h4').allInnerTexts()).toEqual(['1 · Doorway', '2 · Window']);
    const across = openings.nth(1).getByLabel('Across');
    const free = await across.inputValue();
    await across.fill('0.3');
    await across.press('Enter');
    await expect.poll(() => openings.nth(1).getByRole('alert').innerText()).toMatch(/must not run into another/i);
    expect(await across.inputValue()).toBe(free);
    await subjects.press('Add an archway');
    expect(await openings.nth(2).getByLabel('Head').inputValue()).toBe('round');
    for (let i = 0; i < 2; i++) await subjects.press('Add an archway');
    await expect.poll(() => subjects.open.getByRole('alert').innerText()).toMatch(/No room for another archway/);
    await subjects.press(/^Take out doorway 1/);
    expect(await openings.count()).toBe(2);
    const width = subjects.open.getByLabel('Width', { exact: true }).first();
    await width.focus();
    await app.page.keyboard.down('ArrowUp');
    for (let i = 0; i < 4; i++) await app.page.keyboard.down('ArrowUp');
    await app.page.keyboard.up('ArrowUp');
    expect(await width.inputValue()).toBe('5.5');
    await subjects.undo();
    expect(await width.inputValue()).toBe('5');
    await close();
  });

  it('a kit’s part changed by hand makes the parts the user’s own, which was said before', async () => {
    await start();
    await subjects.add(/^Bench/);
    await subjects.open.locator('summary', { hasText: 'parts' }).click();
    await expect.poll(() => subjects.open.innerText()).toContain('from then on the parts are yours');
    await subjects.open.locator('.parts .slip-head').first().click();
    expect(await subjects.field('Variant').count()).toBe(1);
    const height = subjects.open.locator('.parts .part-form').getByLabel('Height', { exact: true }).first();
    await height.fill('0.6');
    await height.press('Enter');
    expect(await subjects.field('Variant').count()).toBe(0);
    const count = await subjects.open.locator('.parts > li').count();
    await subjects.press('Duplicate part');
    expect(await subjects.open.locator('.parts > li').count()).toBe(count + 1);
    await subjects.press('Delete part');
    await subjects.undo();
    await subjects.undo();
    await subjects.undo();
    expect(await subjects.field('Variant').count()).toBe(1);
    await close();
  });

  it('hide, lock, duplicate, group, delete: the rows say so, a locked one says that it is, undo brings all back', async () => {
    await start();
    await subjects.add('Block');
    await subjects.press('Duplicate');
    expect(await subjects.names()).toEqual(['Block', 'Block 2']);
    await subjects.section.locator('summary', { hasText: 'Group with' }).click();
    await app.page.getByRole('group', { name: 'Group Block 2 with' }).getByRole('button', { name: 'Block' }).click();
    expect(await subjects.rows()).toEqual([expect.stringContaining('Group 1'), expect.stringContaining('Group 1')]);
    // a group moves together
    const east = Number(await subjects.field('East').inputValue());
    await subjects.type('East', String(east + 1));
    await subjects.head('Block').click();
    expect(Number(await subjects.field('East').inputValue())).toBe(1);
    await subjects.press('Lock Block');
    await expect.poll(() => subjects.open.innerText()).toContain('Locked: it stays as it is');
    for (const label of ['East', 'Width']) expect(await subjects.field(label).isDisabled(), label).toBe(true);
    for (const name of ['Mirror', 'Set down', 'Delete'])
      expect(await subjects.section.getByRole('button', { name, exact: true }).isDisabled(), name).toBe(true);
    // by keys on the plan it does not move either, nor go
    await app.page.getByRole('button', { name: /^Block, a subject/ }).press('ArrowUp');
    expect(await subjects.field('East').inputValue()).toBe('1');
    await app.page.getByRole('button', { name: /^Block, a subject/ }).press('Delete');
    expect(await subjects.notice()).toContain('Block is locked');
    await app.page.getByRole('button', { name: 'Close this message' }).click();
    await subjects.press('Hide Block 2');
    expect((await subjects.rows())[0]).toContain('locked');
    expect((await subjects.rows())[1]).toContain('hidden');
    expect(await app.page.getByRole('button', { name: /^Block 2, a subject/ }).count()).toBe(0);
    await subjects.press('Lock Block');
    await subjects.press('Delete');
    expect(await subjects.notice()).toBe('Block is deleted. Undo brings it back.\nClose');
    expect(await subjects.names()).toEqual(['Block 2']);
    await subjects.undo();
    expect(await subjects.names()).toEqual(['Block', 'Block 2']);
    // delete, unlock, hide, lock, move, group, duplicate and add are a step each; then the setup before
    for (let step = 0; step < 7; step++) await subjects.undo();
    expect(await subjects.names()).toEqual([]);
    await subjects.undo();
    await expect.poll(() => app.page.locator('.menu summary').innerText()).toContain('Three standing stones');
    await close();
  });

  it('by keys alone: add, name, size, points of an outline, search and delete', async () => {
    await start();
    const { keyboard } = app.page;
    await subjects.section.locator('.add-subject summary').focus();
    await keyboard.press('Enter');
    await app.page
      .getByRole('group', { name: 'Add a subject' })
      .getByRole('button', { name: 'Outline drawn up' })
      .focus();
    await keyboard.press('Enter');
    await subjects.field('Name').waitFor();
    await keyboard.press('Tab');
    await keyboard.press('Tab');
    await keyboard.press('Tab');
    expect(await app.page.evaluate(() => (document.activeElement as HTMLInputElement).value)).toBe('Outline drawn up');
    // a field that is reached by Tab has its text selected
    await keyboard.type('Flat stone');
    await keyboard.press('Enter');
    const point = subjects.open.getByRole('button', { name: /^Point 1:/ });
    const before = await point.getAttribute('aria-label');
    await point.press('ArrowLeft');
    expect(await point.getAttribute('aria-label')).not.toBe(before);
    // across the far side of the outline: refused, and said so
    for (let i = 0; i < 6; i++) await point.press('Shift+ArrowUp');
    await expect.poll(() => subjects.open.getByRole('alert').innerText()).toMatch(/must not cross, touch/i);
    for (let i = 0; i < 6; i++) {
      await subjects.section.locator('.add-subject summary').focus();
      await keyboard.press('Enter');
      await app.page.getByRole('group', { name: 'Add a subject' }).getByRole('button', { name: 'Cone' }).focus();
      await keyboard.press('Enter');
    }
    const search = subjects.section.getByLabel('Find a subject');
    await search.fill('outline');
    await expect.poll(() => subjects.names()).toEqual(['Flat stone', 'Cone 6']);
    await search.press('Escape');
    await expect.poll(async () => (await subjects.names()).length).toBe(7);
    expect(await search.inputValue()).toBe('');
    await subjects.section.getByRole('button', { name: 'Delete', exact: true }).press('Enter');
    expect((await subjects.names()).length).toBe(6);
    await close();
  });

  it('on a phone: a room of its own, big targets, no sideways scrolling, a point dragged by touch is one step', async () => {
    await start(390, 844);
    await subjects.add('Outline drawn up');
    const small = await subjects.section.locator('button, summary, .field-box').evaluateAll((elements) =>
      elements.flatMap((element) => {
        const { height, width } = element.getBoundingClientRect();
        return height > 0 && (height < 43.5 || width < 24) ? [element.outerHTML.slice(0, 80)] : [];
      }),
    );
    expect(small).toEqual([]);
    const point = subjects.open.getByRole('button', { name: /^Point 4:/ });
    await point.scrollIntoViewIfNeeded();
    const box = await point.locator('circle').last().boundingBox();
    if (!box) throw new Error('no point');
    const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
    await app.page.mouse.move(x, y);
    await app.page.mouse.down();
    for (let i = 1; i <= 5; i++) await app.page.mouse.move(x + 4 * i, y - 3 * i);
    await app.page.mouse.up();
    expect(await point.getAttribute('aria-label')).not.toContain('East 0.00 m, North 0.90 m');
    await app.keepScreenshot('subjects-phone');
    await subjects.undo();
    expect(await point.getAttribute('aria-label')).toBe('Point 4: East 0.00 m, North 0.90 m');
    expect(await app.page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
      0,
    );
    await close();
  });
});
