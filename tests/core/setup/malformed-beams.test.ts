import { describe, expect, it } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { maxBeamValues } from '../../../core/setup/schema/measured-beam.ts';
import type { SetupErrorKind } from '../../../core/setup/setup-error.ts';
import { changed, errorOf, expectError, type Loose } from './good-setup.ts';

const beam = (): Loose => ({
  id: 'file',
  name: 'From a file',
  verticalDegrees: [0, 30, 90],
  horizontalDegrees: [0, 90],
  candela: [
    [100, 50, 0],
    [100, 40, 0],
  ],
});
/** The good setup with a measured beam that the torch has, after a change of the beam and of the setup. */
const withBeam = (change: (beam: Loose, setup: Loose) => void): string =>
  changed((setup) => {
    const measured = beam();
    setup.measuredBeams = [measured];
    setup.lamps[0].beam = { shape: 'measured', beamId: 'file' };
    setup.lamps[0].output = { from: 'measured' };
    change(measured, setup);
  });
const file = 'measuredBeams[0]';
const spans = 'must be 0 alone, or run from 0 to 90, 180 or beyond, or from 90 to 270';
const rising = 'must rise from one to the next';
const flat = (rows: number, columns: number) => Array.from({ length: rows }, () => Array(columns).fill(1));
const stepsTo = (last: number, count: number) => Array.from({ length: count }, (_, i) => (last * i) / (count - 1));

type Case = readonly [name: string, change: (beam: Loose, setup: Loose) => void, path: string, words: string];
const put =
  (fields: object) =>
  (target: Loose): void => {
    Object.assign(target, fields);
  };

const fieldCases: readonly Case[] = [
  ['one vertical angle', put({ verticalDegrees: [0] }), `${file}.verticalDegrees`, 'at least two angles'],
  ['no horizontal angle', put({ horizontalDegrees: [] }), `${file}.horizontalDegrees`, 'at least one angle'],
  ['vertical angles that fall', put({ verticalDegrees: [0, 40, 30] }), `${file}.verticalDegrees`, rising],
  ['two equal angles', put({ horizontalDegrees: [0, 0] }), `${file}.horizontalDegrees`, rising],
  ['angles too close for any light', put({ verticalDegrees: [0, 1e-9, 90] }), `${file}.verticalDegrees`, rising],
  [
    'a vertical angle of 181',
    put({ verticalDegrees: [0, 90, 181] }),
    `${file}.verticalDegrees[2]`,
    'at most 180 degrees',
  ],
  [
    'a horizontal angle below nought',
    put({ horizontalDegrees: [-90, 90] }),
    `${file}.horizontalDegrees[0]`,
    'at least 0',
  ],
  ['0 to 120', put({ horizontalDegrees: [0, 120] }), `${file}.horizontalDegrees`, spans],
  ['90 to 180', put({ horizontalDegrees: [90, 180] }), `${file}.horizontalDegrees`, spans],
  ['a single plane at 45', put({ horizontalDegrees: [45] }), `${file}.horizontalDegrees`, spans],
  ['a plane too few', put({ candela: flat(1, 3) }), `${file}.candela`, 'must have 2 lists'],
  ['a value too many', put({ candela: flat(2, 4) }), `${file}.candela`, 'must have 3 values in each list'],
  ['candela as one list', put({ candela: [1, 2, 3] }), `${file}.candela[0]`, 'must be a list'],
  [
    'candela below nought',
    put({
      candela: [
        [1, -1, 0],
        [1, 1, 1],
      ],
    }),
    `${file}.candela[0][1]`,
    'at least 0 candela',
  ],
  ['candela as text', put({ candela: 'bright' }), `${file}.candela`, 'must be a list of lists of candela'],
  [
    'a beam that is dark',
    put({
      candela: [
        [0, 0, 0],
        [0, 0, 0],
      ],
    }),
    `${file}.candela`,
    'must shine somewhere',
  ],
  [
    'a beam too weak to scale',
    put({
      candela: [
        [5e-324, 0, 0],
        [0, 0, 0],
      ],
    }),
    `${file}.candela`,
    'must shine somewhere',
  ],
  [
    'more values than a setup holds',
    put({ verticalDegrees: stepsTo(180, 500), horizontalDegrees: stepsTo(360, 201), candela: flat(201, 500) }),
    `${file}.candela`,
    `at most ${maxBeamValues} values`,
  ],
  [
    'nine measured beams',
    (_, setup) => {
      setup.measuredBeams = Array.from({ length: 9 }, (_, i) => ({ ...beam(), id: `b${i}` }));
    },
    'measuredBeams',
    'at most 8',
  ],
  [
    'a turn of 400',
    (_, s) => put({ turnDegrees: 400 })(s.lamps[0].beam),
    'lamps[0].beam.turnDegrees',
    'at most 360 degrees',
  ],
  [
    'a lobe of 171',
    (_, s) => put({ beam: { shape: 'lobe', degrees: 171 } })(s.lamps[0]),
    'lamps[0].beam.degrees',
    'at most 170',
  ],
  [
    'a point with a flood',
    (_, s) => {
      s.lamps[1] = {
        kind: 'point',
        id: 'panel',
        name: 'P',
        output: { from: 'lumens', lumens: 1 },
        beam: { shape: 'flood', degrees: 9 },
      };
    },
    'lamps[1].beam.shape',
    'must be a beam with shape "even" or "measured"',
  ],
  [
    'a torch that is even',
    (_, s) => put({ beam: { shape: 'even' } })(s.lamps[0]),
    'lamps[0].beam.shape',
    'must be a beam with shape',
  ],
  [
    'a tube of no thickness',
    (_, s) => {
      s.lamps[1] = {
        kind: 'tube',
        id: 'panel',
        name: 'T',
        output: { from: 'lumens', lumens: 1 },
        lengthMm: 500,
        diameterMm: 0,
      };
    },
    'lamps[1].diameterMm',
    'at least 1 mm',
  ],
];

const referenceCases: readonly Case[] = [
  [
    'a beam that is not there',
    (_, s) => put({ beamId: 'other' })(s.lamps[0].beam),
    'lamps[0].beam.beamId',
    'no measured beam has the id "other"',
  ],
  [
    'a measured output without such a beam',
    (_, s) => put({ beam: { shape: 'open' } })(s.lamps[0]),
    'lamps[0].output.from',
    'only with a measured beam',
  ],
  [
    'a lantern whose output is measured',
    (_, s) => {
      s.lamps[1] = { kind: 'lantern', id: 'panel', name: 'L', output: { from: 'measured' } };
    },
    'lamps[1].output.from',
    'only with a measured beam',
  ],
  ['two beams of one id', (_, s) => s.measuredBeams.push(beam()), 'measuredBeams[1].id', '"file" is used twice'],
];

describe('parseSetup on beams', () => {
  const all = [
    ...fieldCases.map((each) => ['field', ...each] as const),
    ...referenceCases.map((each) => ['reference', ...each] as const),
  ];
  it.each(all)('%s error, %s: names the place and what was expected', (kind, _, change, path, words) => {
    expectError(errorOf(withBeam(change)), kind as SetupErrorKind, path, words);
  });

  it('takes the setup that the cases start from, and fills in no turn', () => {
    const setup = parseSetup(withBeam(() => undefined));
    expect(setup.measuredBeams[0]).toEqual(beam());
    expect(setup.lamps[0]).toMatchObject({ beam: { shape: 'measured', beamId: 'file', turnDegrees: 0 } });
  });

  it.each([[[0]], [[0, 90]], [[0, 45, 180]], [[90, 180, 270]], [[0, 120, 240]], [[0, 180, 360]]])(
    'takes horizontal angles %j',
    (horizontalDegrees) => {
      const text = withBeam(put({ horizontalDegrees, candela: flat(horizontalDegrees.length, 3) }));
      expect(parseSetup(text).measuredBeams[0]?.horizontalDegrees).toEqual(horizontalDegrees);
    },
  );

  it('takes as many values as are allowed', () => {
    const most = put({
      verticalDegrees: stepsTo(180, 500),
      horizontalDegrees: stepsTo(360, 200),
      candela: flat(200, 500),
    });
    expect(parseSetup(withBeam(most)).measuredBeams[0]?.candela.length).toBe(200);
  });
});
