import { describe, expect, it } from 'vitest';
import { tiltFactor } from '../../../../core/photometry/lm63/lamp-tilt.ts';
import { parseLm63 } from '../../../../core/photometry/lm63/parse-lm63.ts';
import { goodLines, goodWith, goodWithTilt, textOf } from './lm63-text.ts';

const good = goodLines.join('\n');

describe('parseLm63', () => {
  it('gives all that the file says, candela times multiplier 2 and ballast factor 0.9 (rel 1e-12)', () => {
    const file = parseLm63(good);
    expect(file).toMatchObject({ version: 2002, lampCount: 1, lumensPerLamp: 1000, watts: 12, tilt: null });
    expect(file).toMatchObject({ verticalDegrees: [0, 45, 90], horizontalDegrees: [0, 90] });
    expect(file.keywords).toEqual([
      { key: 'TEST', value: '17-A' },
      { key: 'LUMINAIRE', value: 'Barn torch\nwith a wide glass' },
    ]);
    expect(file.candela.map((row) => row.length)).toEqual([3, 3]);
    const written = [100, 50, 0, 80, 40, 10];
    for (const [k, value] of file.candela.flat().entries())
      expect(Math.abs(value - (written[k] as number) * 1.8)).toBeLessThanOrEqual(1.8e-10);
  });

  it('keeps rows whole where a plane of the file is longer than a line', () => {
    expect(parseLm63(goodWith({ 10: '100\n50 0 80', 11: '40\n\n10' }))).toEqual(parseLm63(good));
  });

  it('-1 lumens is absolute photometry', () => {
    expect(parseLm63(goodWith({ 6: '1 -1 2 3 2 1 2 0.1 0.2 0' })).lumensPerLamp).toBeNull();
  });

  it.each([
    ['IESNA91', 1991],
    ['IESNA:LM-63-1995', 1995],
    ['IESNA:LM-63-2002', 2002],
    ['IES:LM-63-2019', 2019],
    ['ies:lm-63-2019  ', 2019],
    ['\n\nIESNA91', 1991],
    ['Workshop, bench 3', 1986],
    ['IESNA member, bench 3', 1986],
    [null, 1986],
  ] as const)('first line %j is the edition of %d', (line, version) => {
    expect(parseLm63(goodWith({ 1: line })).version).toBe(version);
  });

  it('1986: free lines instead of keywords, TILT in the first or a later line, and the end-of-file mark of old systems', () => {
    const numbers = goodLines.slice(4);
    for (const head of [[], ['Bench 3', '', '[half a bracket', 'lamp no. 4']]) {
      const file = parseLm63([...head, ...numbers, '\u001a'].join('\r\n'));
      expect(file).toMatchObject({ version: 1986, keywords: [], name: 'Measured lamp' });
      expect(file.candela).toEqual(parseLm63(good).candela);
    }
  });

  it('keeps keywords of later editions beside lines without brackets', () => {
    const { keywords } = parseLm63(goodWith({ 2: 'a loose line\n[ _own key ]  x [y] ', 3: '[TESTLAB]', 4: null }));
    expect(keywords).toEqual([
      { key: '_OWN KEY', value: 'x [y]' },
      { key: 'TESTLAB', value: '' },
    ]);
  });
});

describe('the name of a file', () => {
  it.each([
    ['[LUMCAT] B-1\n[LUMINAIRE] Barn torch', 'Barn torch'],
    ['[LUMINAIRE]\n[LUMCAT] B-1\n[TEST] 4', 'B-1'],
    ['[LUMINAIRE] \u0000\u202e \n[TEST] 4', '4'],
    ['[LUMINAIRE] a\tb\u0007c\u2028d \ud800 e', 'a b c d e'],
    ['[OTHER] x', 'Measured lamp'],
    [`[TEST] ${'ab '.repeat(50)}`, `${'ab '.repeat(26)}a…`],
    [`[TEST] ${'a'.repeat(78)}\u{1f526}${'b'.repeat(9)}`, `${'a'.repeat(78)}…`],
  ])('%j is %j', (lines, name) => {
    expect(parseLm63(goodWith({ 2: lines, 3: null, 4: null })).name).toBe(name);
  });
});

describe('the luminous opening', () => {
  // 1 ft = 0.3048 m exactly: international foot (NIST SP 811, appendix B)
  it.each([
    ['2 0.1 0.2 0.3', [0.1, 0.2, 0.3, false]],
    ['1 1 2 0.5', [0.3048, 0.6096, 0.1524, false]],
    ['1 -1 -1 0', [0.3048, 0.3048, 0, true]],
    ['2 -0.1 0 0', [0.1, 0.1, 0, true]],
    ['2 0 -0.1 0', [0.1, 0.1, 0, true]],
    ['2 -0.1 0.4 -0.1', [0.1, 0.4, 0.1, true]],
    ['2 0 0 0', [0, 0, 0, false]],
  ] as const)('%s is %j in metres, round or not (abs 1e-12)', (sizes, [width, length, height, isRound]) => {
    const { opening } = parseLm63(goodWith({ 6: `1 1000 2 3 2 1 ${sizes}` }));
    expect(Math.abs(opening.widthMetres - width)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(opening.lengthMetres - length)).toBeLessThanOrEqual(1e-12);
    expect(Math.abs(opening.heightMetres - height)).toBeLessThanOrEqual(1e-12);
    expect(opening.isRound).toBe(isRound);
  });
});

describe('free format', () => {
  const [head, numbers] = [goodLines.slice(0, 5), goodLines.slice(5)];
  const each = numbers.join(' ').split(' ');
  it.each([
    ['one number a line', [...head, ...each].join('\n')],
    ['all numbers in one line', [...head, each.join(' ')].join('\n')],
    ['commas', [...head, ...numbers.map((line) => line.replaceAll(' ', ','))].join('\n')],
    ['commas, spaces, tabs and form feeds mixed', [...head, each.join(' ,\t\f, ')].join('\n')],
    ['CR LF', goodLines.join('\r\n')],
    ['CR alone', goodLines.join('\r')],
    ['blank lines between', goodLines.join('\n \n\n')],
    ['a byte order mark, and blanks at the end', `\ufeff${good} \t\r\n\f\n,`],
    ['blanks before and behind lines', goodLines.map((line) => `\t ${line}  `).join('\n')],
    ['tilt line in small letters', goodWith({ 5: 'tilt = none' })],
    [
      'signs (minus nought too), exponents, bare points, leading noughts',
      goodWith({ 6: '+1 1.e3 .2E+1 03 2.0 1 2 1e-1 .2 -0', 7: '9E-1 1 12.', 8: '-0 45 90', 10: '1e2 +50 -0' }),
    ],
  ])('%s reads the same', (_, text) => {
    expect(parseLm63(text)).toEqual(parseLm63(good));
  });
});

describe('angles that may be', () => {
  it.each([
    [[0, 90], [0]],
    [[0, 45, 180], [0]],
    [
      [90, 180],
      [0, 45, 90],
    ],
    [
      [0, 3, 60],
      [0, 180],
    ],
    [
      [0, 0.5, 1],
      [90, 180, 270],
    ],
    [
      [0, 90],
      [0, 90, 360],
    ],
    [
      [0, 90],
      [0, 115, 345],
    ],
    [
      [0, 90],
      [0, 180.5],
    ],
  ])('vertical %j, horizontal %j', (vertical, horizontal) => {
    const file = parseLm63(textOf(vertical, horizontal, (v, h) => v + 1000 * h));
    expect(file).toMatchObject({ verticalDegrees: vertical, horizontalDegrees: horizontal });
    expect(file.candela).toEqual(horizontal.map((h) => vertical.map((v) => v + 1000 * h)));
  });
});

describe('TILT=INCLUDE', () => {
  const file = parseLm63(goodWithTilt('1', '3', '0 30,90', '1.0 0.9', '0.6'));
  it('is kept, and changes nothing else', () => {
    expect(file.tilt).toEqual({ geometry: 1, anglesDegrees: [0, 30, 90], factors: [1, 0.9, 0.6] });
    expect({ ...file, tilt: null }).toEqual(parseLm63(good));
  });
  // by hand from the angles and factors above
  it.each([
    [0, 1],
    [15, 0.95],
    [30, 0.9],
    [50, 0.8],
    [90, 0.6],
    [120, 0.6],
    [-5, 1],
  ])('tilted by %d degrees the factor is %d (abs 1e-12)', (degrees, factor) => {
    if (!file.tilt) throw new Error('no tilt');
    expect(Math.abs(tiltFactor(file.tilt, degrees) - factor)).toBeLessThanOrEqual(1e-12);
  });
});
