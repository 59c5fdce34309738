import { describe, expect, it } from 'vitest';
import { whereChosen, whereOptions, whereValue } from '../../../app/web/blend/blend-words.ts';
import {
  addToBlend,
  changeBlendEntry,
  leaveOutOfBlend,
  repeatInBlend,
  setBlendMode,
} from '../../../app/web/state/edits/blend-edits.ts';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { addFrame } from '../../../app/web/state/edits/frame-list.ts';
import { framesShown } from '../../../app/web/state/frames-shown.ts';
import { fullEntry, namedEntries } from '../../../core/setup/blend-entries.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { stones } from './subject-setups.ts';

const schemeIn = (setup: Setup) => setup.schemes.find(({ id }) => id === 'side') as Scheme;
const entriesIn = (setup: Setup) => schemeIn(setup).blend.frames;
const asFile = (setup: Setup) => parseSetup(formatSetup(setup));
const subjectId = stones.subjects[0]?.id as string;
/** Names and weights of what the picture of the blend shows. */
const shown = (setup: Setup) => framesShown(schemeIn(setup), null).map(({ frame, weight }) => [frame.id, weight]);

describe('a blend', () => {
  it('is written out by the first change, and shows the same frames but for it', () => {
    expect(entriesIn(stones)).toEqual([]);
    const changed = changeBlendEntry(stones, 'side', 1, { weight: 2 });
    expect(entriesIn(changed)).toEqual([fullEntry('sky'), { ...fullEntry('painted'), weight: 2 }]);
    expect(shown(changed)).toEqual([
      ['sky', 1],
      ['painted', 2],
    ]);
    expect(shown(stones)).toEqual([
      ['sky', 1],
      ['painted', 1],
    ]);
    expect(changed.schemes.slice(1)).toEqual(stones.schemes.slice(1));
    expect(asFile(changed)).toEqual(changed);
  });

  it('stays as it is where nothing changes', () => {
    expect(changeBlendEntry(stones, 'side', 1, { weight: 1 })).toBe(stones);
    expect(changeBlendEntry(stones, 'side', 9, { weight: 2 })).toBe(stones);
    expect(setBlendMode(stones, 'side', 'lighten')).toBe(stones);
    expect(addToBlend(stones, 'side', 'gone')).toBe(stones);
  });

  it('names a subject only where a frame counts on one', () => {
    const on = changeBlendEntry(stones, 'side', 0, { where: 'subject', subjectId, featherPixels: 12 });
    expect(entriesIn(on)[0]).toEqual({ ...fullEntry('sky'), where: 'subject', subjectId, featherPixels: 12 });
    expect(asFile(on)).toEqual(on);
    const off = changeBlendEntry(on, 'side', 0, { where: 'ground' });
    expect(entriesIn(off)[0]).toMatchObject({ where: 'ground', subjectId: null, featherPixels: 12 });
    expect(asFile(off)).toEqual(off);
  });

  it('lets a frame count in two places', () => {
    const ground = changeBlendEntry(stones, 'side', 1, { where: 'ground', weight: 2 });
    const twice = changeBlendEntry(repeatInBlend(ground, 'side', 1), 'side', 2, { where: 'subject', subjectId });
    expect(entriesIn(twice).slice(1)).toEqual([
      { ...fullEntry('painted'), where: 'ground', weight: 2 },
      { ...fullEntry('painted'), where: 'subject', subjectId, weight: 2 },
    ]);
    expect(asFile(twice)).toEqual(twice);
    expect(leaveOutOfBlend(twice, 'side', 2)).toEqual(ground);
  });

  it('leaves frames out and takes them back, but never all of them out', () => {
    const out = leaveOutOfBlend(stones, 'side', 0);
    expect(shown(out)).toEqual([['painted', 1]]);
    expect(leaveOutOfBlend(out, 'side', 0)).toBe(out);
    expect(shown(addToBlend(out, 'side', 'sky'))).toEqual([
      ['painted', 1],
      ['sky', 1],
    ]);
  });

  it('is refused in words beyond as many entries as the document takes', () => {
    let full = stones;
    while (namedEntries(schemeIn(full)).length < 64) full = addToBlend(full, 'side', 'sky');
    expect(asFile(full)).toEqual(full);
    expect(() => addToBlend(full, 'side', 'sky')).toThrow(EditRefused);
    expect(() => repeatInBlend(full, 'side', 0)).toThrow(EditRefused);
    const withFrame = addFrame(full, { schemeId: 'side', frameId: 'sky' }, 'land').setup;
    expect(asFile(withFrame)).toEqual(withFrame);
  });

  it.each(['lighten', 'add', 'average'] as const)('takes the mode %s', (mode) => {
    const set = setBlendMode(stones, 'side', mode);
    expect(schemeIn(set).blend.mode).toBe(mode);
    expect(asFile(set)).toEqual(set);
  });
});

describe('where a frame counts', () => {
  it('comes back from every choice of the list as it was chosen', () => {
    const options = whereOptions(stones.subjects);
    expect(options.length).toBe(4 + stones.subjects.length);
    for (const [value] of options) expect(whereValue({ ...fullEntry('sky'), ...whereChosen(value) })).toBe(value);
  });
});
