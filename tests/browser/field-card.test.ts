import { readFileSync } from 'node:fs';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findPoppler, pixelsOfPdf, poppler } from '../app/card/find-poppler.ts';
import { AppPage } from './app-page.ts';
import { launch, leave } from './browser.ts';

describe('the field card', () => {
  let browser: Browser;
  let app: AppPage;
  beforeAll(async () => {
    findPoppler();
    browser = await launch();
    app = await AppPage.open(browser, { samples: 1 });
  });
  afterAll(() => leave(browser));

  it('opens from the top edge, prints one page of its paper, and is saved as a PDF and as the plan alone', async () => {
    const { page } = app;
    const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
    await page.evaluate(() => Object.assign(window, { print: () => Object.assign(window, { asked: true }) }));
    await press('Card');
    // pressed while its pictures are on their way, it waits for them and then goes on by itself
    await press('Print');
    await page.getByText('The print comes by itself').waitFor();
    expect(await page.evaluate(() => 'asked' in window)).toBe(false);
    await page.waitForFunction(() => 'asked' in window);
    await page.getByRole('combobox', { name: 'Lengths' }).selectOption('feet');
    await page.getByRole('textbox', { name: 'Permission' }).fill('Asked at the farm');
    await page.keyboard.press('Enter');
    await page.getByText('Print it at 100 %').waitFor();
    const paper = page.locator('.field-card .card-paper');
    await expect.poll(() => paper.textContent()).toContain('Asked at the farm');
    expect(await paper.textContent()).toContain('19.7 ft');
    expect(await paper.locator('image').count()).toBe(2);
    // no letter is set in a stand-in typeface: both weights of the card's own are there (check() is true for any name)
    const loaded = () =>
      page.evaluate(() =>
        [...document.fonts]
          .filter(({ family, status }) => family.replaceAll('"', '') === 'Field Card' && status === 'loaded')
          .map(({ weight }) => weight),
      );
    await expect.poll(loaded).toEqual(expect.arrayContaining(['400', '700']));
    // those who don't see the paper have its words
    await page.getByText('The card as text').click();
    await expect.poll(() => page.locator('.card-words pre').innerText()).toContain('Asked at the farm');
    await page.getByText('The card as text').click();

    // the browser's own way to print gives the card and nothing else
    const printed = await page.pdf({ preferCSSPageSize: true });
    expect(poppler('pdfinfo', printed)).toMatch(/Pages:\s+1\n[\s\S]*\(A4\)/);
    const { data } = pixelsOfPdf(printed, 50);
    expect(data.every((value, i) => value === data[i - (i % 3)])).toBe(true);
    // the two pictures are there: greys that letters alone don't have
    expect(data.filter((value) => value > 40 && value < 200).length / data.length).toBeGreaterThan(0.05);
    await page.getByRole('textbox', { name: 'One pace' }).fill('2 ft 6 in');
    await page.keyboard.press('Enter');
    await expect.poll(() => paper.textContent()).toContain('pace is 2.5 ft');

    const [pdf] = await Promise.all([page.waitForEvent('download'), press('PDF')]);
    expect(pdf.suggestedFilename()).toBe('three-standing-stones-side-card.pdf');
    const bytes = readFileSync(await pdf.path());
    expect(poppler('pdfinfo', bytes)).toMatch(/Pages:\s+1\n/);
    expect(poppler('pdftotext', bytes, ['-layout'], ['-'])).toContain('Asked at the farm');
    const [plan] = await Promise.all([page.waitForEvent('download'), press('Plan as SVG')]);
    expect(readFileSync(await plan.path(), 'utf8')).toContain('id="scale-bar"');
    expect(app.faults).toEqual([]);
    await app.close();
  });
});
