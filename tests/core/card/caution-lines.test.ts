import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { CardRow } from '../../../core/card/card-row.ts';
import { walkText } from '../../../core/card/card-words.ts';
import { cautionTexts, rangesText, stepCautions } from '../../../core/card/caution-lines.ts';
import { cautionShorts } from '../../../core/card/caution-shorts.ts';
import type { CardCaution } from '../../../core/card/field-card.ts';
import { cardOf, passFrom, stoneSetup } from './card-setups.ts';

const caution = (code: string, severity: CardCaution['severity'], rowNumber: number | null): CardCaution => ({
  code,
  severity,
  message: 'told at length',
  short: cautionShorts[code] ?? '',
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

describe('cautions at a step of the night', () => {
  // two stands 20 m apart on either side of a stone, 1 s between them in one frame of 10 s
  const card = cardOf(stoneSetup(passFrom('left', 9, 10, 1.2), passFrom('right', 3, 10, 1.2, { on: 4, off: 7 })));
  const [left, right] = card.rows as unknown as [CardRow, CardRow];
  const at = (row: CardRow) => stepCautions(card, { kind: 'pass', row });

  it('says the danger of a walk that is too long at the pass it leads to, first, with the seconds', () => {
    expect(at(right)[0]).toMatchObject({ code: 'cannot-walk', severity: 'danger', word: 'DANGER' });
    expect(at(right)[0]?.text).toBe('Can’t be walked in time: split the frame, or ask a helper.');
    expect(at(left).map(({ code }) => code)).not.toContain('cannot-walk');
    expect(walkText(left)).toBeNull();
    // 20 m and a detour at 1.2 m/s or less, in 1 s
    expect(walkText(right)).toMatch(/^\d\d s · \d\d s too late$/);
    const walk = { walkSeconds: 4.2, isWalkFromCamera: false, slackSeconds: 8 };
    expect(walkText(walk)).toBe('4.2 s · 8.0 s to spare');
    expect(walkText({ ...walk, isWalkFromCamera: true })).toBe('4.2 s from the camera · 8.0 s to spare');
  });

  it('leaves out notes, says each once, and what is of the frame at its first pass alone', () => {
    const given = {
      ...card,
      cautions: [
        caution('twilight', 'note', 1),
        caution('burnt', 'danger', 1),
        caution('eye', 'danger', 1),
        { ...caution('out-of-depth', 'warning', null), frameNumber: 1 },
        { ...caution('out-of-depth', 'warning', null), frameNumber: 1 },
      ],
    };
    const codes = (row: CardRow) => stepCautions(given, { kind: 'pass', row }).map(({ code }) => code);
    expect(codes(left)).toEqual(['eye', 'burnt', 'out-of-depth']);
    expect(codes(right)).toEqual([]);
  });
});
