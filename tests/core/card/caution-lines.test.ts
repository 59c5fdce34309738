import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { cautionTexts, rangesText } from '../../../core/card/caution-lines.ts';
import { cautionShorts } from '../../../core/card/caution-shorts.ts';
import type { CardCaution } from '../../../core/card/field-card.ts';

const caution = (code: string, severity: CardCaution['severity'], rowNumber: number | null): CardCaution => ({
  code,
  severity,
  message: 'told at length',
  rowNumber,
  frameNumber: null,
});

describe('cautions on paper', () => {
  it('puts rows of one kind together, harm first, and calls nothing but harm a danger', () => {
    const texts = cautionTexts([
      caution('near-axis', 'danger', 1),
      caution('star-trails', 'note', null),
      ...[2, 3, 4, 7].map((row) => caution('cannot-walk', row === 7 ? 'warning' : 'danger', row)),
    ]);
    expect(texts).toEqual([
      'DANGER, rows 2–4, 7: can’t be walked in time: split the frame, or ask a helper.',
      'Watch, row 1: flat light: move the lamp round, 60° to 120°.',
      'Stars draw lines: expose shorter for points.',
    ]);
  });

  it('writes numbers in runs', () => {
    expect(rangesText([3, 1, 2, 9, 8])).toBe('1–3, 8, 9');
  });

  it('has words for every caution there is', () => {
    const folder = new URL('../../../core/cautions/', import.meta.url);
    const files = readdirSync(folder).filter((file) => file.endsWith('.ts'));
    const codes = files.flatMap((file) =>
      [...readFileSync(new URL(file, folder), 'utf8').matchAll(/code: '([\w-]+)'/g)].map(([, code]) => code),
    );
    expect(codes.length).toBeGreaterThan(30);
    for (const code of new Set(codes)) expect(cautionShorts, code).toHaveProperty(code as string);
  });
});
