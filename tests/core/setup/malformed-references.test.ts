import { describe, expect, it } from 'vitest';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { changed, errorOf, expectError, type Loose } from './good-setup.ts';

const passes = 'schemes[0].frames[1].passes';
const passOf = (setup: Loose) => setup.schemes[0].frames[1].passes[0];
const longId = 'a'.repeat(64);

const cases: readonly (readonly [string, (setup: Loose) => void, string, string])[] = [
  [
    'two subjects of one id',
    (s) => {
      s.subjects[1].id = 'wall';
    },
    'subjects[1].id',
    '"wall" is used twice',
  ],
  [
    'two lamps of one id',
    (s) => {
      s.lamps[1].id = 'torch';
    },
    'lamps[1].id',
    '"torch" is used twice',
  ],
  [
    'two schemes of one id',
    (s) => {
      s.schemes.push(s.schemes[0]);
    },
    'schemes[1].id',
    '"side" is used twice',
  ],
  [
    'two frames of one id',
    (s) => {
      s.schemes[0].frames[1].id = 'sky';
    },
    'schemes[0].frames[1].id',
    '"sky" is used twice',
  ],
  [
    'two passes of one id',
    (s) => {
      s.schemes[0].frames[1].passes[1].id = 'key';
    },
    `${passes}[1].id`,
    '"key" is used twice',
  ],
  [
    'two subjects of one long id',
    (s) => {
      s.subjects[0].id = longId;
      s.subjects[1].id = longId;
    },
    'subjects[1].id',
    'is used twice',
  ],
  [
    'a pass of a lamp that is not there',
    (s) => {
      passOf(s).lampId = 'moon';
    },
    `${passes}[0].lampId`,
    'no lamp has the id "moon"',
  ],
  [
    'a lamp named like a built-in',
    (s) => {
      passOf(s).lampId = 'constructor';
    },
    `${passes}[0].lampId`,
    'no lamp has the id',
  ],
  [
    'a blend of a frame that is not there',
    (s) => {
      s.schemes[0].blend.frames[0].frameId = 'dusk';
    },
    'schemes[0].blend.frames[0].frameId',
    'no frame of this scheme has the id "dusk"',
  ],
  [
    'a blend over a subject that is not there',
    (s) => {
      s.schemes[0].blend.frames[1].subjectId = 'roof';
    },
    'schemes[0].blend.frames[1].subjectId',
    'no subject has the id "roof"',
  ],
  [
    'a blend over no subject',
    (s) => {
      s.schemes[0].blend.frames[1].subjectId = null;
    },
    'schemes[0].blend.frames[1].subjectId',
    'must name a subject',
  ],
  [
    'on after off',
    (s) => {
      passOf(s).on = 6;
    },
    `${passes}[0].on`,
    'must be before off',
  ],
  [
    'on at off',
    (s) => {
      passOf(s).on = 5;
    },
    `${passes}[0].on`,
    'must be before off',
  ],
  [
    'off after the frame closes',
    (s) => {
      passOf(s).off = 10.5;
    },
    `${passes}[0].off`,
    "within the frame's 10 seconds",
  ],
  [
    'waypoints out of order',
    (s) => {
      passOf(s).waypoints[0].time = 5;
    },
    `${passes}[0].waypoints[1].time`,
    'must be after the waypoint before it (5 s)',
  ],
  [
    'two waypoints at one time',
    (s) => {
      passOf(s).waypoints[1].time = 0;
    },
    `${passes}[0].waypoints[1].time`,
    'must be after the waypoint before it',
  ],
  [
    '5001 parts in all',
    (s) => {
      for (const subject of s.subjects) subject.parts = Array(2000).fill(subject.parts[0]);
      s.subjects.push({ ...s.subjects[0], id: 'third', parts: Array(1001).fill(s.subjects[0].parts[0]) });
    },
    'subjects',
    '5001 parts in all; at most 5000',
  ],
];

describe('parseSetup on references and times', () => {
  it.each(cases)('%s: a reference error that names the field and what was expected', (_, change, path, words) => {
    expectError(errorOf(changed(change)), 'reference', path, words);
  });

  it('says it as the terminal does: "schemes[0].frames[1].passes[0].on: must be before off"', () => {
    const { message } = errorOf(
      changed((s) => {
        passOf(s).on = 6;
      }),
    );
    expect(message).toBe('schemes[0].frames[1].passes[0].on: must be before off');
  });

  it('takes a pass from shutter to shutter, and equal pass ids in different frames', () => {
    const text = changed((s) => {
      Object.assign(passOf(s), { on: 0, off: 10 });
      s.schemes[0].frames[0].passes = [{ ...passOf(s), off: 3 }];
    });
    expect(parseSetup(text).schemes[0]?.frames.map((frame) => frame.passes[0]?.id)).toEqual(['key', 'key']);
  });
});
