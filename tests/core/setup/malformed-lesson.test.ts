import { describe, expect, it } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, errorOf, expectError, type Loose } from './good-setup.ts';

const goodCorners = [
  [-1, 4, 0],
  [1, 4, 0],
  [1, 6, 0],
  [-1, 6, 0],
];
const goodStep = { title: 'Look', text: 'Low light shows the stones.', schemeIds: ['side'] };
const goodPredict = { passId: 'key', subjectId: 'post' };

const withPatch = (patch: unknown) => (s: Loose) => {
  s.patch = patch;
};
const withSteps = (steps: unknown) => (s: Loose) => {
  s.lesson = { steps };
};
const withStep = (fields: object) => withSteps([goodStep, { ...goodStep, ...fields }]);
const step = 'lesson.steps[1]';

type Case = readonly [name: string, change: (setup: Loose) => void, path: string, words: string];

const fieldCases: readonly Case[] = [
  ['a patch as a list', withPatch(goodCorners), 'patch', 'must be an object'],
  ['a patch without corners', withPatch({}), 'patch.corners', 'four places'],
  ['a patch of three corners', withPatch({ corners: goodCorners.slice(1) }), 'patch.corners', 'four places'],
  ['a patch of five corners', withPatch({ corners: [...goodCorners, [0, 0, 0]] }), 'patch.corners', 'four places'],
  [
    'a corner of two numbers',
    withPatch({ corners: [[0, 0], ...goodCorners.slice(1)] }),
    'patch.corners[0]',
    'three numbers',
  ],
  [
    'a corner far away',
    withPatch({ corners: [[0, 5001, 0], ...goodCorners.slice(1)] }),
    'patch.corners[0][1]',
    'at most 5000 metres',
  ],
  [
    'a patch with a colour',
    withPatch({ corners: goodCorners, colour: 1 }),
    'patch.colour',
    'is not a field of a setup',
  ],
  ['a lesson as a text', (s) => Object.assign(s, { lesson: 'look' }), 'lesson', 'must be an object'],
  ['a lesson without steps', withSteps([]), 'lesson.steps', 'at least one step'],
  ['a lesson of 25 steps', withSteps(Array(25).fill(goodStep)), 'lesson.steps', 'at most 24'],
  ['a step without title', withStep({ title: '' }), `${step}.title`, 'must not be empty'],
  ['a title of two lines', withStep({ title: 'a\nb' }), `${step}.title`, 'on one line'],
  ['a step without text', withStep({ text: 7 }), `${step}.text`, 'must be a text'],
  ['a text of 1201 characters', withStep({ text: 'a'.repeat(1201) }), `${step}.text`, 'at most 1200 characters'],
  ['a step of no scheme', withStep({ schemeIds: [] }), `${step}.schemeIds`, 'at least one scheme'],
  ['a step of seven schemes', withStep({ schemeIds: Array(7).fill('side') }), `${step}.schemeIds`, 'at most 6'],
  ['a scheme by number', withStep({ schemeIds: [1] }), `${step}.schemeIds[0]`, 'must be an id'],
  [
    'a question without subject',
    withStep({ predict: { passId: 'key' } }),
    `${step}.predict.subjectId`,
    'must be an id',
  ],
  ['a question as a word', withStep({ predict: 'where' }), `${step}.predict`, 'must be an object'],
];

const referenceCases: readonly Case[] = [
  [
    'a scheme that is not there',
    withStep({ schemeIds: ['side', 'back'] }),
    `${step}.schemeIds[1]`,
    'no scheme has the id "back"',
  ],
  ['a scheme named twice', withStep({ schemeIds: ['side', 'side'] }), `${step}.schemeIds[1]`, '"side" is named twice'],
  [
    'a pass that is not there',
    withStep({ predict: { ...goodPredict, passId: 'rim' } }),
    `${step}.predict.passId`,
    'no pass of the scheme "side" has the id "rim"',
  ],
  [
    'a subject that is not there',
    withStep({ predict: { ...goodPredict, subjectId: 'oak' } }),
    `${step}.predict.subjectId`,
    'no subject has the id "oak"',
  ],
];

describe('parseSetup on patches and lessons', () => {
  it.each(fieldCases)('%s: names the field and what was expected', (_, change, path, words) => {
    expectError(errorOf(changed(change)), 'field', path, words);
  });

  it.each(referenceCases)('%s: a reference error that names it', (_, change, path, words) => {
    expectError(errorOf(changed(change)), 'reference', path, words);
  });

  it('a pass of another scheme than the step’s first is not there either', () => {
    const text = changed((s) => {
      const [side] = s.schemes;
      const frames = [side.frames[0]];
      s.schemes.push({ ...side, id: 'dark', frames, blend: { frames: [{ frameId: 'sky' }] } });
      s.lesson = { steps: [{ ...goodStep, schemeIds: ['dark', 'side'], predict: goodPredict }] };
    });
    expectError(errorOf(text), 'reference', 'lesson.steps[0].predict.passId', 'no pass of the scheme "dark"');
  });

  it('takes both, keeps them as they are, and fills in that there are none', () => {
    const none = parseSetup(changed(() => undefined));
    expect([none.patch, none.lesson]).toEqual([null, null]);
    const setup = parseSetup(
      changed((s) => {
        s.patch = { corners: goodCorners };
        s.lesson = { steps: [goodStep, { ...goodStep, predict: goodPredict }] };
      }),
    );
    expect(setup.patch).toEqual({ corners: goodCorners });
    expect(setup.lesson?.steps).toEqual([
      { ...goodStep, predict: null },
      { ...goodStep, predict: goodPredict },
    ]);
  });
});
