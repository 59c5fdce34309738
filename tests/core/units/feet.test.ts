import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { feetText, inwardEnd, lengthsInFeet } from '../../../core/units/feet.ts';

describe('feetText', () => {
  // a foot is 0.3048 m (agreement of 1959)
  it.each([
    [0.3048, '1 ft'],
    [0.9144, '3 ft'],
    [4.8768, '16 ft'],
    [0.1524, '0.5 ft'],
    [0.3, '0.98 ft'],
    [6, '19.7 ft'],
    [20, '66 ft'],
    [0, '0 ft'],
  ])('%s m', (metres, text) => expect(feetText(metres)).toBe(text));
});

describe('inwardEnd', () => {
  it.each([
    [0.05 / 0.3048, 'least', 0.165],
    [10000 / 0.3048, 'most', 32800],
    [2000 / 0.3048, 'most', 6560],
    [-5000 / 0.3048, 'least', -16400],
    [0, 'least', 0],
    [1, 'most', 1],
  ] as const)('%s as %s', (value, end, told) => expect(inwardEnd(value, end)).toBe(told));
});

describe('lengthsInFeet', () => {
  it.each([
    ['Step back to 38 m.', 'Step back to 125 ft.'],
    ['sharp from 1.8 m to infinity', 'sharp from 5.9 ft to infinity'],
    [
      'the lamp is 0.50 m under the ground. Raise it above 0 m.',
      'the lamp is 1.6 ft under the ground. Raise it above 0 ft.',
    ],
    ['5 × 0.5 × 2.4 m', '16.4 × 1.6 × 7.9 ft'],
    ['31 to 50 s at 0.8 to 0.5 m/s in the dark', '31 to 50 s at 2.6 to 1.6 ft/s in the dark'],
    ['3.15 m² · 34.1 lm·s', '33.9 ft² · 34.1 lm·s'],
    ['Key at 3:00, 6.0 m; Fill at 8:00, 4.0 m', 'Key at 3:00, 19.7 ft; Fill at 8:00, 13.1 ft'],
    ['−0.50 m up, 4.83 m over the ground', '−1.6 ft up, 15.8 ft over the ground'],
    // a foot and three feet, as far as they were written
    ['shin · 0.30 m', 'shin · 1 ft'],
    ['knee · 0.91 m', 'knee · 3 ft'],
    ['0.05 m', '0.16 ft'],
    // 2.54 cm to the inch
    ['a stone that stands out 5 cm throws 28 cm', 'a stone that stands out 2 in throws 11 in'],
    ['“Wall 3 m” is 2 m away', '“Wall 3 m” is 6.6 ft away'],
  ])('%s', (metres, feet) => expect(lengthsInFeet(metres)).toBe(feet));

  it('leaves the name alone that a sentence is about', () => {
    const about = ['Key', 'Key 3 m', 'Land · focus 3.2 m'];
    expect(lengthsInFeet('Key 3 m: the lamp is 0.50 m deep.', about)).toBe('Key 3 m: the lamp is 1.6 ft deep.');
    expect(lengthsInFeet('Land · focus 3.2 m: sharp from 6.0 m on', about)).toBe(
      'Land · focus 3.2 m: sharp from 19.7 ft on',
    );
    // not a name where it does not stand first, nor one that only begins alike
    expect(lengthsInFeet('Key: 3 m: no', ['Key', '3 m'])).toBe('Key: 9.8 ft: no');
    expect(lengthsInFeet('Key 3 m away', about)).toBe('Key 9.8 ft away');
  });

  it.each(['24 mm · f/8 · 10 s', '12 km', '20.5 mag/arcsec²', '142 lm', '18.6 lx·s', 'at 22:10 moon up', '2 min'])(
    'leaves %s alone',
    (text) => expect(lengthsInFeet(text)).toBe(text),
  );

  it('leaves no metre and no centimetre in any lesson', () => {
    const texts = readdirSync('assets/setups').flatMap((file) => {
      const { lesson } = JSON.parse(readFileSync(`assets/setups/${file}`, 'utf8')) as {
        lesson?: { steps: { title: string; text: string }[] } | null;
      };
      return lesson?.steps.flatMap(({ title, text }) => [title, text]) ?? [];
    });
    const inMetres = /\d c?m\b|metre|\bmeters?\b/;
    expect(texts.filter((text) => inMetres.test(text)).length).toBeGreaterThan(15);
    expect(texts.map((text) => lengthsInFeet(text)).filter((text) => inMetres.test(text))).toEqual([]);
  });

  it('leaves no metre in any sentence that cautions and advice are made of', () => {
    const files = [
      ...readdirSync('core/cautions', { withFileTypes: true }).flatMap((entry) =>
        entry.isFile() ? [`core/cautions/${entry.name}`] : [],
      ),
      'core/readings/count-advice.ts',
    ];
    // what a sentence is made with stands for a number
    const sentences = files
      .flatMap((file) => readFileSync(file, 'utf8').match(/`(?:[^`\\]|\\.)*`/g) ?? [])
      .map((text) => text.replace(/\$\{[^{}]*\}/g, '2.5'))
      .filter((text) => / m\b/.test(text));
    expect(sentences.length).toBeGreaterThan(12);
    const left = sentences.map((text) => lengthsInFeet(text)).filter((text) => / (?:m|m²|m\/s)(?![a-z])/.test(text));
    expect(left).toEqual([]);
  });
});
