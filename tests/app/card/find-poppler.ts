import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** The independent reader of PDF that tests hold ours to: the tools of poppler. */
const tools = ['pdftotext', 'pdftoppm', 'pdffonts', 'pdfinfo'] as const;
type Tool = (typeof tools)[number];

const advice = `No poppler was found and none could be installed.
Install its tools (${tools.join(', ')}) and run npm test again.
  Debian or Ubuntu: sudo apt-get install poppler-utils     macOS: brew install poppler`;

const isThere = (tool: Tool): boolean => {
  try {
    execFileSync(tool, ['-v'], { stdio: 'ignore' });
    return true;
  } catch {
    return false;
  }
};

const attempt = (args: readonly string[], minutes: number): void => {
  try {
    const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
    execFileSync('apt-get', args, { stdio: 'ignore', timeout: minutes * 60_000, env });
  } catch {
    // whether the tools are there is looked at after
  }
};

/** Makes sure that poppler is there: installed, else installed by this where we are root. Throws with advice. */
export const findPoppler = (): void => {
  if (tools.every(isThere)) return;
  if (process.getuid?.() === 0) {
    attempt(['update', '-qq'], 4);
    attempt(['install', '-y', '-qq', '--no-install-recommends', 'poppler-utils'], 10);
  }
  if (!tools.every(isThere)) throw new Error(advice);
};

/** What one of the tools prints about a PDF. */
export const poppler = (
  tool: Tool,
  pdf: Uint8Array,
  before: readonly string[] = [],
  after: readonly string[] = [],
): string => {
  const folder = mkdtempSync(join(tmpdir(), 'lampfall-pdf-'));
  try {
    const file = join(folder, 'card.pdf');
    writeFileSync(file, pdf);
    return execFileSync(tool, [...before, file, ...after], { encoding: 'utf8', maxBuffer: 1e8 });
  } finally {
    rmSync(folder, { recursive: true });
  }
};

/** A picture of the first page, red, green and blue of each pixel. */
export const pixelsOfPdf = (pdf: Uint8Array, dotsPerInch: number) => {
  const folder = mkdtempSync(join(tmpdir(), 'lampfall-pdf-'));
  try {
    const file = join(folder, 'card.pdf');
    writeFileSync(file, pdf);
    execFileSync('pdftoppm', ['-r', String(dotsPerInch), '-singlefile', file, join(folder, 'page')]);
    const ppm = readFileSync(join(folder, 'page.ppm'));
    // "P6", width, height, 255, then the bytes
    const [head = '', width, height] = /^P6\s(\d+)\s(\d+)\s255\s/.exec(ppm.subarray(0, 40).toString('latin1')) ?? [];
    return { width: Number(width), height: Number(height), data: ppm.subarray(head.length) };
  } finally {
    rmSync(folder, { recursive: true });
  }
};
