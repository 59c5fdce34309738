import { describe, expect, it } from 'vitest';
import { addLampWithPass } from '../../../app/web/inspector/add-lamp-with-pass.ts';
import { newLamps } from '../../../app/web/inspector/new-lamps.ts';
import { addPartSubject } from '../../../app/web/state/edits/add-subjects.ts';
import { renameSetup } from '../../../app/web/state/edits/setup-edits.ts';
import { setSubjectHidden } from '../../../app/web/state/edits/subject-edits.ts';
import { emptySetup } from '../../../app/web/state/empty-setup.ts';
import { firstLack } from '../../../app/web/state/first-lack.ts';
import { reportSetup } from '../../../core/cautions/setup-report.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Frame, Lamp, Scheme } from '../../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../../core/units/body-height.ts';

const empty = emptySetup();
const scheme = empty.schemes[0] as Scheme;

describe('emptySetup', () => {
  it('is bare ground under a 24 mm camera at knee height, with one frame and nothing in it', () => {
    expect(parseSetup(formatSetup(empty))).toEqual(empty);
    expect(empty).toMatchObject({ subjects: [], lamps: [], scans: [], ground: { relief: [] } });
    expect(empty.camera.focalLengthMm).toBe(24);
    expect(bodyHeightWord(empty.camera.position[2])).toBe('knee');
    expect(empty.schemes.map(({ frames }) => frames.map(({ passes }) => passes))).toEqual([[[]]]);
  });

  it('can be read: no cautions where nothing is', () => {
    const report = reportSetup(empty);
    expect(report.schemes[0]?.cautions).toEqual([]);
    expect(report.schemes[0]?.frames[0]?.passes).toEqual([]);
  });

  it.each(Object.keys(newLamps) as Lamp['kind'][])(
    'takes a %s and can be read with it, also when all is hidden',
    (kind) => {
      const added = addLampWithPass(empty, scheme, scheme.frames[0] as Frame, kind);
      const withBlock = addPartSubject(added.setup, scheme.id, 'box');
      for (const setup of [
        added.setup,
        withBlock.setup,
        setSubjectHidden(withBlock.setup, withBlock.subjectId, true),
      ]) {
        expect(parseSetup(formatSetup(setup))).toEqual(setup);
        expect(reportSetup(setup).schemes[0]?.frames[0]?.passes).toHaveLength(1);
      }
    },
  );
});

describe('the first subject', () => {
  const lit = addLampWithPass(empty, scheme, scheme.frames[0] as Frame, 'torch').setup;
  const aimsOf = (setup: typeof empty) => setup.schemes[0]?.frames[0]?.passes.map(({ waypoints }) => waypoints[0]?.aim);

  it('has lamps that were there before aimed at its middle; a second one leaves them as they are', () => {
    const { setup } = addPartSubject(lit, scheme.id, 'box');
    const [block] = setup.subjects;
    const part = block?.parts[0];
    if (!block || part?.kind !== 'box') throw new Error('no block');
    expect(aimsOf(setup)).toEqual([[block.position[0], block.position[1], part.heightMetres / 2]]);
    expect(aimsOf(addPartSubject(setup, scheme.id, 'box').setup)).toEqual(aimsOf(setup));
  });
});

describe('a second lamp in the same hand', () => {
  it('goes on after the first where the frame leaves it time enough, else with the shutter', () => {
    const frameOf = (setup: typeof empty) => setup.schemes[0]?.frames[0] as Frame;
    const long = {
      ...empty,
      schemes: empty.schemes.map((each) => ({
        ...each,
        frames: each.frames.map((frame) => ({ ...frame, seconds: 20 })),
      })),
    };
    const first = addLampWithPass(long, long.schemes[0] as typeof scheme, frameOf(long), 'torch').setup;
    const second = addLampWithPass(first, first.schemes[0] as typeof scheme, frameOf(first), 'lantern').setup;
    expect(frameOf(second).passes.map(({ on, off }) => [on, off])).toEqual([
      [0, 5],
      [5, 10],
    ]);
    const short = { ...frameOf(first), seconds: 9 };
    const cramped = { ...first, schemes: first.schemes.map((each) => ({ ...each, frames: [short] })) };
    const third = addLampWithPass(cramped, cramped.schemes[0] as typeof scheme, short, 'lantern').setup;
    expect(frameOf(third).passes.map(({ on }) => on)).toEqual([0, 0]);
  });
});

describe('firstLack', () => {
  it('is something to light, then a light', () => {
    const withBlock = addPartSubject(empty, scheme.id, 'box').setup;
    const lit = addLampWithPass(withBlock, scheme, scheme.frames[0] as Frame, 'torch').setup;
    expect([empty, withBlock, lit].map(firstLack)).toEqual(['subject', 'lamp', null]);
  });
});

describe('renameSetup', () => {
  it('takes a name of one line, and no empty one', () => {
    expect(renameSetup(empty, ' Our\thut ').name).toBe('Our hut');
    expect(renameSetup(empty, '  ')).toBe(empty);
  });
});
