import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const css = readFileSync('app/web/ui/night-themes.css', 'utf8');
const page = readFileSync('app/web/index.html', 'utf8');

const colourOf = (name: string): number => {
  const hex = new RegExp(`--${name}: #(..)(..)(..);`).exec(css);
  if (!hex) throw new Error(`no --${name}`);
  const [red, green, blue] = hex.slice(1).map((pair) => Number.parseInt(pair, 16));
  expect([green, blue], `--${name} is a grey`).toEqual([red, red]);
  return red as number;
};

/** Relative luminance of an sRGB value of 0 to 255 (WCAG 2.2, "relative luminance"). */
const linear = (value: number): number => {
  const v = value / 255;
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
};

const contrast = (a: number, b: number): number => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);

const matrix = (/<feColorMatrix values="([^"]+)"/.exec(page)?.[1] ?? '').trim().split(/\s+/).map(Number);
const brightness = Number(/brightness\(([\d.]+)\)/.exec(css)?.[1]);

/** Luminance that reaches the eye of a grey of the page, through each theme's filter. */
const seen = {
  red: (grey: number) => 0.2126 * linear(grey * ((matrix[0] ?? 0) + (matrix[1] ?? 0) + (matrix[2] ?? 0))),
  dim: (grey: number) => linear(grey * brightness),
};

describe('night themes', () => {
  it.each(['red', 'dim'] as const)(
    '%s: words have a contrast of 4.5 and more on each ground (WCAG 2.2, 1.4.3)',
    (name) => {
      for (const text of ['text', 'quiet'])
        for (const ground of ['ground', 'step-1', 'step-2'])
          expect(
            contrast(seen[name](colourOf(text)), seen[name](colourOf(ground))),
            `${text} on ${ground}`,
          ).toBeGreaterThanOrEqual(4.5);
    },
  );

  it.each(['red', 'dim'] as const)(
    '%s: the edges of buttons in the run have a contrast of 3 and more on the ground (WCAG 2.2, 1.4.11)',
    (name) => {
      expect(readFileSync('app/web/nightrun/night-run.css', 'utf8')).toMatch(
        /\.night-run button {[^}]*border-color: var\(--edge, /,
      );
      for (const ground of ['ground', 'step-1', 'step-2'])
        expect(contrast(seen[name](colourOf('edge')), seen[name](colourOf(ground))), ground).toBeGreaterThanOrEqual(3);
    },
  );

  it('red: green and blue get nothing of anything, and red gets the luma of Rec. ITU-R BT.709', () => {
    expect(matrix.slice(0, 5)).toEqual([0.2126, 0.7152, 0.0722, 0, 0]);
    expect(matrix.slice(5, 15)).toEqual(Array(10).fill(0));
    expect(matrix.slice(15)).toEqual([0, 0, 0, 1, 0]);
  });
});
