import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';

// Draws the icons' pixels from assets/icons/lampfall.svg: `npx tsx app/build/draw-icons.ts PATH-OF-A-CHROMIUM`.

const folder = join(import.meta.dirname, '../../assets/icons');
const drawing = readFileSync(join(folder, 'lampfall.svg'), 'utf8');

/** A maskable icon is cut to a circle of 80 % by some devices: the ground runs out to the edge, the drawing is smaller. */
const maskable = drawing.replace('viewBox="0 0 512 512"', 'viewBox="-64 -64 640 640"').replace(/<rect[^>]*\/>/, '');

const icons = [
  ['lampfall-192.png', 192, drawing, 'transparent'],
  ['lampfall-512.png', 512, drawing, 'transparent'],
  ['lampfall-maskable-512.png', 512, maskable, '#0f1012'],
] as const;

const browser = await chromium.launch({
  executablePath: process.argv[2] ?? '/usr/bin/chromium',
  args: ['--no-sandbox'],
});
for (const [name, size, svg, ground] of icons) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(
    `<style>body{margin:0;background:${ground}}svg{display:block;width:100vw;height:100vh}</style>${svg}`,
  );
  writeFileSync(join(folder, name), await page.screenshot({ omitBackground: ground === 'transparent' }));
  await page.close();
}
await browser.close();
