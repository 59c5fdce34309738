import { describe, expect, it } from 'vitest';
import { Lm63Error } from '../../../../core/photometry/lm63/lm63-error.ts';
import { maxLm63Characters, parseLm63 } from '../../../../core/photometry/lm63/parse-lm63.ts';
import { goodLines, goodWith, goodWithTilt } from './lm63-text.ts';

const counts = (vertical: string, horizontal: string) =>
  goodWith({ 6: `1 1000 2 ${vertical} ${horizontal} 1 2 0.1 0.2 0` });
const lamp = (text: string) => goodWith({ 6: text });
const good = goodLines.join('\n');

/** What it is, the text, the line that the error must name, and words that it must hold. */
const cases: readonly (readonly [string, string, number, string])[] = [
  ['nothing', '', 1, 'TILT=NONE or TILT=INCLUDE; the file ends here'],
  ['blanks', ' \n\n ', 1, 'the file ends here'],
  ['plain words', 'two lamps\nleft and right\n', 2, 'TILT=NONE or TILT=INCLUDE; the file ends here'],
  ['JSON', '{"format": "lampfall-setup"}', 1, 'TILT=NONE'],
  ['an unknown edition', goodWith({ 1: 'IESNA:LM-63-2031' }), 1, 'IESNA:LM-63-2002 or IES:LM-63-2019'],
  ['an edition of 1992', goodWith({ 1: 'IESNA92' }), 1, 'found "IESNA92"'],
  ['words after the edition', goodWith({ 1: 'IESNA91 x' }), 1, 'must be IESNA91'],
  ['a bracket that does not close', goodWith({ 2: '[TEST 17' }), 2, 'a keyword in square brackets'],
  ['an empty bracket', goodWith({ 2: '[ ] 17' }), 2, 'a keyword in square brackets'],
  ['[MORE] with nothing before it', goodWith({ 2: '[MORE] 17' }), 2, '[MORE] can go on from'],
  ['no TILT line', goodWith({ 5: null }), 10, 'TILT=NONE or TILT=INCLUDE; the file ends here'],
  ['TILT= alone', goodWith({ 5: 'TILT=' }), 5, 'nothing follows TILT='],
  ['tilt in another file', goodWith({ 5: 'TILT=HALIDE.TLT' }), 5, '"HALIDE.TLT" names another file'],
  ['nothing after TILT=NONE', goodLines.slice(0, 5).join('\n'), 5, 'go on with the number of lamps'],
  ['nothing after TILT=INCLUDE', 'TILT=INCLUDE\n\n', 1, 'go on with the way the lamp lies'],
  ['tilt geometry 4', goodWithTilt('4', '1', '0', '1'), 6, 'the way the lamp lies: 1, 2 or 3; found "4"'],
  ['no tilt angles', goodWithTilt('1', '0'), 7, 'tilt angles, a whole number from 1'],
  ['1e9 tilt angles', goodWithTilt('1', '1e9', '0', '1'), 7, 'tilt angles, a whole number from 1'],
  ['tilt angles that fall', goodWithTilt('1', '2', '0', '0', '1 1'), 9, 'a tilt angle above 0'],
  ['a tilt of 190 degrees', goodWithTilt('1', '2', '0 190', '1 1'), 8, 'up to 180; found "190"'],
  ['a negative tilt factor', goodWithTilt('1', '2', '0 90', '1', '-1'), 10, 'a tilt factor from 0'],
  ['half a lamp', lamp('0.5 1000 2 3 2 1 2 0 0 0'), 6, 'the number of lamps, a whole number'],
  ['lumens of 0', lamp('1 0 2 3 2 1 2 0 0 0'), 6, 'lumens per lamp, above 0, or -1'],
  ['lumens of -2', lamp('1\n-2 2 3 2 1 2 0 0 0'), 7, 'lumens per lamp, above 0, or -1'],
  ['multiplier 0', lamp('1 1000 0 3 2 1 2 0 0 0'), 6, 'the candela multiplier, above 0'],
  ['multiplier -1', lamp('1 1000 -1 3 2 1 2 0 0 0'), 6, 'the candela multiplier, above 0'],
  ['multiplier NaN', lamp('1 1000 NaN 3 2 1 2 0 0 0'), 6, 'found "NaN"'],
  ['multiplier Infinity', lamp('1 1000 Infinity 3 2 1 2 0 0 0'), 6, 'found "Infinity"'],
  ['a hexadecimal number', lamp('0x1 1000 2 3 2 1 2 0 0 0'), 6, 'found "0x1"'],
  ['a Fortran exponent', lamp('1 1D3 2 3 2 1 2 0 0 0'), 6, 'found "1D3"'],
  ['a lone point', lamp('1 . 2 3 2 1 2 0 0 0'), 6, 'found "."'],
  ['a lone exponent', lamp('1 1e 2 3 2 1 2 0 0 0'), 6, 'found "1e"'],
  ['two signs', lamp('1 --1 2 3 2 1 2 0 0 0'), 6, 'found "--1"'],
  ['a number beyond all bounds', lamp('1 1e999 2 3 2 1 2 0 0 0'), 6, 'found "1e999"'],
  ['a decimal semicolon', lamp('1 1000;5 2 3 2 1 2 0 0 0'), 6, 'found "1000;5"'],
  ['one vertical angle', counts('1', '2'), 6, 'vertical angles, a whole number from 2 to 4000'],
  ['2.5 vertical angles', counts('2.5', '2'), 6, 'vertical angles, a whole number'],
  ['4001 vertical angles', counts('4001', '2'), 6, 'vertical angles, a whole number from 2 to 4000'],
  ['-3 vertical angles', counts('-3', '2'), 6, 'vertical angles, a whole number'],
  ['no horizontal angles', counts('3', '0'), 6, 'horizontal angles, a whole number from 1 to 4000'],
  ['1e15 horizontal angles', counts('3', '1e15'), 6, 'horizontal angles, a whole number'],
  ['4000 x 251 values', counts('4000', '251'), 6, 'from 1 to 250 (at most 1000000 values in all)'],
  ['type B', lamp('1 1000 2 3 2 2 2 0 0 0'), 6, 'this is type B'],
  ['type A', lamp('1 1000 2 3 2 3 2 0 0 0'), 6, 'this is type A'],
  ['type 4', lamp('1 1000 2 3 2 4 2 0 0 0'), 6, '1 for C, 2 for B or 3 for A'],
  ['unit 3', lamp('1 1000 2 3 2 1 3 0 0 0'), 6, '1 for feet or 2 for metres'],
  ['an opening of 1e6', lamp('1 1000 2 3 2 1 2 0 1e6 0'), 6, 'the length of the luminous opening'],
  ['ballast factor 0', goodWith({ 7: '0 1 12' }), 7, 'the ballast factor, above 0'],
  ['a word for the third factor', goodWith({ 7: '1 one 12' }), 7, 'between ballast factor and watts'],
  ['watts of -1', goodWith({ 7: '1 1 -1' }), 7, 'the input watts, 0 or more'],
  ['vertical angles from 5', goodWith({ 8: '5 45 90' }), 8, 'the first vertical angle, 0 or 90'],
  ['vertical angles that stand still', goodWith({ 8: '0 45\n45' }), 9, 'vertical angle above the one before, 45'],
  ['vertical angles to 190', goodWith({ 8: '0 45 190' }), 8, 'end at 180 or before, as vertical angles do, not 190'],
  ['vertical angles from 90 to 170', goodWith({ 8: '90 135 170' }), 8, 'end at 180, as vertical angles from 90 do'],
  ['one horizontal angle, not 0', goodWith({ 6: '1 1 2 3 1 1 2 0 0 0', 9: '90' }), 9, 'first horizontal angle, 0 deg'],
  ['horizontal angles from 10', goodWith({ 9: '10 90' }), 9, 'the first horizontal angle, 0 or 90'],
  ['horizontal angles from -90', goodWith({ 9: '-90 90' }), 9, 'the first horizontal angle, 0 or 90'],
  ['horizontal angles that fall', goodWith({ 9: '90 0' }), 9, 'horizontal angle above the one before, 90'],
  ['horizontal angles 0 to 100', goodWith({ 9: '0 100' }), 9, 'must end at 90, 180 or between 180 and 360'],
  ['horizontal angles 0 to 361', goodWith({ 9: '0 361' }), 9, 'must end at 90, 180 or between 180 and 360'],
  ['horizontal angles 90 to 180', goodWith({ 9: '90 180' }), 9, 'must end at 270'],
  ['a negative candela', goodWith({ 10: '100 -0.001 0' }), 10, 'a candela value, from 0'],
  ['a candela NaN', goodWith({ 11: '80 nan 10' }), 11, 'a candela value, from 0'],
  ['1e12 candela times 1.8', goodWith({ 11: '80 40 1e12' }), 11, 'from 0 to 1e12 once multiplied'],
  ['two numbers grown together', goodWith({ 10: '100 50.0.1 0' }), 10, 'found "50.0.1"'],
  ['a value too few', goodWith({ 11: '80 40\n\n' }), 11, 'go on with a candela value'],
  ['a value too many', `${good}\n\n7`, 13, 'blank after the last of the 6 candela values; found "7"'],
  ['words after the end', `${good}\nend of data`, 12, 'blank after the last of the 6 candela values; found "end"'],
  ['CR LF line ends', goodWith({ 10: '100 x 0' }).replaceAll('\n', '\r\n'), 10, 'found "x"'],
  ['CR line ends', goodWith({ 10: '100 x 0' }).replaceAll('\n', '\r'), 10, 'found "x"'],
  ['a nought byte among the numbers', goodWith({ 10: '100 \u0000 0' }), 10, 'found "\ufffd"'],
  ['a number of a million digits and a letter', goodWith({ 10: `100 ${'1'.repeat(1_000_000)}x 0` }), 10, '1111…"'],
  ['a text too long', 'x'.repeat(maxLm63Characters + 1), 1, 'at most 16 million characters'],
];

describe(`parseLm63 on ${cases.length} broken files`, () => {
  it.each(cases)('%s: an error that names its line and what was expected', (_, text, line, words) => {
    let error: unknown;
    try {
      parseLm63(text);
    } catch (thrown) {
      error = thrown;
    }
    if (!(error instanceof Lm63Error)) throw new Error(`no Lm63Error: ${String(error)}`);
    expect(error.message).toBe(`line ${line}: ${error.expected}`);
    expect(error.expected).toMatch(/^must /);
    expect(error.expected).toContain(words);
    expect(error.message.length).toBeLessThanOrEqual(200);
  });

  it('has at least 40 cases, no two of the same text', () => {
    expect(new Set(cases.map(([, text]) => text)).size).toBe(cases.length);
    expect(cases.length).toBeGreaterThanOrEqual(40);
  });
});
