import { describe, expect, it } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, errorOf, expectError, goodSetup, type Loose } from './good-setup.ts';

const gone = Symbol('taken away');

/** Puts a value at a path such as "lamps[0].id", or takes the field away. */
const put = (setup: Loose, path: string, value: unknown): void => {
  const keys = path.split(/[.[\]]+/).filter((key) => key !== '');
  const last = keys.pop() as string;
  const owner = keys.reduce((inner, key) => inner[key], setup);
  if (value === gone) delete owner[last];
  else owner[last] = value;
};

/** What is put where, what the error says, and the error's path where that is another one. */
type FieldCase = readonly [name: string, path: string, value: unknown, words: string, errorPath?: string];

const camera = 'camera';
const box = 'subjects[0].parts[0]';
const relief = 'ground.relief[0]';
const frame = 'schemes[0].frames[1]';
const pass = `${frame}.passes[0]`;
const blend = 'schemes[0].blend.frames[0]';
const good = goodSetup();
const first = good.schemes[0];
const waypoint = first.frames[1].passes[0].waypoints[0];
const manySchemes = Array.from({ length: 25 }, (_, i) => ({ ...first, id: `s${i}` }));

const cases: readonly FieldCase[] = [
  ['no format', 'format', gone, 'expected "lampfall-setup"'],
  ['another format', 'format', 'other', 'expected "lampfall-setup"'],
  ['no name', 'name', gone, 'is missing; must be a text'],
  ['an empty name', 'name', '', 'must not be empty'],
  ['a name of 81 characters', 'name', 'a'.repeat(81), 'at most 80 characters'],
  ['a name with a bell', 'name', 'a\u0007b', 'without control characters'],
  ['a name with an escape sequence', 'lamps[0].name', '\u001b[2J', 'without control characters'],
  ['a name of two lines', 'name', 'a\nb', 'plain text on one line'],
  ['a name with a line separator', 'name', 'a\u2028b', 'plain text on one line'],
  ['a name with half a character', 'name', 'a\ud83c', 'plain text on one line'],
  ['a note with half a character', 'note', '\udf19', 'plain text'],
  ['a note with a null', 'note', 'a\u0000', 'without control characters'],
  ['a note of 4001 characters', 'note', 'a'.repeat(4001), 'at most 4000 characters'],
  ['a note that is a number', 'note', 5, 'must be a text'],
  ['an id with a space', 'id', 'my barn', 'letters, digits, - and _'],
  ['an id with half a character', 'subjects[0].id', 'a\ud800', 'letters, digits, - and _'],
  ['an id of 65 letters', 'lamps[0].id', 'a'.repeat(65), 'at most 64'],
  ['no camera', camera, gone, 'is missing; must be an object'],
  ['camera as a list', camera, [1], 'must be an object'],
  ['camera null', camera, null, 'must be an object'],
  ['camera aim equal to its position', 'camera.aim', [0, 0, 1.5], 'must differ from position'],
  ['a place of two numbers', 'camera.position', [0, 0], 'must be three numbers'],
  ['a place of four numbers', 'camera.position', [0, 0, 1, 1], 'must be three numbers'],
  ['a place as an object', 'camera.position', { x: 0 }, 'must be three numbers'],
  ['a place with a text in it', 'camera.position[1]', '0', 'must be a number in metres'],
  ['a place with null in it', 'camera.position[2]', null, 'must be a number in metres'],
  ['a place far away', 'camera.aim[0]', 5001, 'at most 5000 metres'],
  ['a focal length of nought', 'camera.focalLengthMm', 0, 'at least 3 mm'],
  ['a focal length below nought', 'camera.focalLengthMm', -24, 'at least 3 mm'],
  ['half a pixel', 'camera.sensor', { pixelsWide: 600.5 }, 'must be a whole number', 'camera.sensor.pixelsWide'],
  ['a box of negative width', `${box}.widthMetres`, -1, 'at least 0.001 metres'],
  ['a box without height', `${box}.heightMetres`, gone, 'is missing; must be a number in metres'],
  ['a part of unknown kind', `${box}.kind`, 'torus', 'must be a part with kind "box"'],
  ['a part without kind', `${box}.kind`, gone, 'is missing; must be a part with kind "box"'],
  ['a subject without parts', 'subjects[0].parts', [], 'at least one part'],
  ['subjects as an object', 'subjects', { wall: {} }, 'must be a list'],
  ['two sides', 'subjects[1].parts[0].sides', 2, 'must be at least 3'],
  ['reflectance over one', 'ground.finish', { reflectance: 1.5 }, 'must be at most 1', 'ground.finish.reflectance'],
  ['two colours', 'ground.finish', { reflectance: [1, 1] }, 'or three of them', 'ground.finish.reflectance'],
  ['relief heights upside down', `${relief}.heightMetres`, [0.2, 0.1], 'must be [smallest, largest]'],
  ['relief heights of one number', `${relief}.heightMetres`, [0.2], 'must be two numbers'],
  ['relief of bricks', `${relief}.kind`, 'bricks', 'must be a relief with kind "stones", "tufts"'],
  ['20 001 stones', `${relief}.count`, 20001, 'at most 20000'],
  ['nine reliefs', 'ground.relief', Array(9).fill(good.ground.relief[0]), 'at most 8'],
  ['a lamp of unknown kind', 'lamps[0].kind', 'candle', 'must be a lamp with kind "torch"'],
  ['a lamp that is a number', 'lamps[0]', 7, 'must be a lamp with kind "torch"'],
  ['a lamp without output', 'lamps[0].output', gone, 'is missing; must say from what'],
  ['output from nowhere', 'lamps[0].output.from', 'watts', 'must say from what'],
  ['a torch without beam', 'lamps[0].beam', gone, 'is missing; must be a beam'],
  ['a lamp of nought lumens', 'lamps[0].output.lumens', 0, 'at least 0.001 lumens'],
  ['65 lamps', 'lamps', Array(65).fill(good.lamps[0]), 'at most 64'],
  ['no schemes', 'schemes', [], 'at least one scheme'],
  ['25 schemes', 'schemes', manySchemes, 'at most 24'],
  ['a scheme without frames', 'schemes[0].frames', [], 'at least one frame'],
  ['a shutter time as text', `${frame}.seconds`, '10 s', 'must be a number in seconds'],
  ['a shutter time of nought', `${frame}.seconds`, 0, 'must be at least 0.000125 seconds'],
  ['an aperture of nought', `${frame}.aperture`, 0, 'at least 0.7'],
  ['a purpose that is not known', `${frame}.purpose`, 'moon', 'must be one of "sky", "land", "painted"'],
  ['a pass without off', `${pass}.off`, gone, 'is missing; must be a number in seconds'],
  ['a pass held by the teeth', `${pass}.held`, 'teeth', 'must be one of "hand", "stand"'],
  ['a level of 101 %', `${pass}.levelPercent`, 101, 'at most 100 %'],
  ['a gel that adds light', `${pass}.gels[0].transmission`, 1.2, 'at most 1'],
  ['no waypoints', `${pass}.waypoints`, [], 'at least one waypoint'],
  ['257 waypoints', `${pass}.waypoints`, Array(257).fill(waypoint), 'at most 256'],
  ['no strokes', `${pass}.strokes`, 0, 'must be at least 1'],
  ['65 strokes', `${pass}.strokes`, 65, 'must be at most 64'],
  ['half a stroke', `${pass}.strokes`, 1.5, 'must be a whole number'],
  ['a dwell that is not known', `${pass}.dwell`, 'slow', 'must be one of "typed", "even-speed", "even-dose"'],
  ['a lamp aimed at itself', `${pass}.waypoints[0].aim`, [5, 6, 1], 'must differ from position'],
  ['a day that is not', 'place', { localTime: '2026-02-30T22:00' }, 'day and time that exist', 'place.localTime'],
  ['a day in words', 'place', { localTime: 'tonight' }, 'such as 2026-10-09T22:30', 'place.localTime'],
  ['latitude 91', 'place', { latitudeDegrees: 91 }, 'at most 90 degrees', 'place.latitudeDegrees'],
  ['an unknown field', 'camera.focalLenghtMm', 24, 'is not a field of a setup'],
  ['a field called constructor', 'camera.constructor', 1, 'is not a field of a setup'],
  ['a field called toString', 'toString', 1, 'is not a field of a setup'],
  ['a field with spaces', 'camera.my lens', 1, 'is not a field of a setup', 'camera["my lens"]'],
  ['a field with an endless name', `x\n${'y'.repeat(999)}`, 1, 'is not a field', `["x\ufffd${'y'.repeat(37)}…"]`],
  ['an odd blend', `${blend}.where`, 'left', 'must be one of "everything", "sky"'],
  ['two faults', camera, {}, '(and 1 more)', 'camera.position'],
];

describe('parseSetup on fields of the wrong shape', () => {
  it('takes the setup that the cases start from', () => {
    expect(parseSetup(JSON.stringify(good)).id).toBe('barn');
  });

  for (const [name, path, value, words, errorPath] of cases)
    it(`${name}: names the field and what was expected, in a line of 200`, () => {
      const text = changed((setup) => put(setup, path, value));
      expectError(errorOf(text), 'field', errorPath ?? path, words);
    });
});
