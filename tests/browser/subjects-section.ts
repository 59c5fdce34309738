import type { Locator } from 'playwright-core';
import type { AppPage } from './app-page.ts';

/** The section of subjects with what these tests press, type and read. */
export class SubjectsSection {
  readonly app: AppPage;
  constructor(app: AppPage) {
    this.app = app;
  }

  get section(): Locator {
    return this.app.page.getByRole('region', { name: 'Subjects' });
  }
  get open(): Locator {
    return this.section.locator('.slip-open').first();
  }
  /** Heads of the rows, as they read. */
  rows(): Promise<string[]> {
    return this.section.locator(':scope > ul > li > .slip-line > .slip-head').allInnerTexts();
  }
  async names(): Promise<(string | undefined)[]> {
    return (await this.rows()).map((text) => text.split('\n')[0]);
  }
  /** The strip of the subject of that name. */
  head(name: string): Locator {
    return this.section.locator('.slip-head', { has: this.app.page.getByText(name, { exact: true }) });
  }
  async add(name: string | RegExp): Promise<void> {
    await this.section.locator('.add-subject summary').click();
    await this.app.page.getByRole('group', { name: 'Add a subject' }).getByRole('button', { name }).click();
  }
  field(label: string): Locator {
    return this.open.getByLabel(label, { exact: true });
  }
  async type(label: string, text: string): Promise<string> {
    await this.field(label).fill(text);
    await this.field(label).press('Enter');
    return this.field(label).inputValue();
  }
  press(name: string | RegExp): Promise<void> {
    return this.section.getByRole('button', { name, ...(typeof name === 'string' ? { exact: true } : {}) }).click();
  }
  undo(): Promise<void> {
    return this.app.page.getByRole('button', { name: 'Undo' }).click();
  }
  notice(): Promise<string> {
    return this.app.page.locator('.notice').innerText();
  }
}
