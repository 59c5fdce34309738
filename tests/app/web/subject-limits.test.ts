import { describe, expect, it, vi } from 'vitest';
import { addPartSubject, duplicateSubject } from '../../../app/web/state/edits/add-subjects.ts';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import { newPart } from '../../../app/web/state/edits/new-parts.ts';
import { addPart, duplicatePart } from '../../../app/web/state/edits/part-edits.ts';
import { createAppStore } from '../../../app/web/state/store.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Part, Setup } from '../../../core/setup/schema/setup.ts';
import { blockSubject, changed, placeWith } from './subject-setups.ts';

const one = placeWith(blockSubject('rock', [1, 1, 1], { position: [0, 8, 0], turnDegrees: 10 }));

describe('limits of the document', () => {
  const parts = (count: number) => Array.from({ length: count }, () => newPart('box'));

  it('the 501st subject is refused; the store says why and changes nothing', () => {
    const many = changed(one, {
      subjects: Array.from({ length: 500 }, (_, i) => ({ ...one.subjects[0], id: `rock-${i}` })),
    });
    const store = createAppStore(many);
    store.getState().edit((setup) => addPartSubject(setup, 'scheme', 'box').setup);
    expect(store.getState().history.present).toBe(many);
    expect(store.getState().history.past).toEqual([]);
    expect(store.getState().notice).toEqual({ tone: 'problem', text: expect.stringMatching(/500 subjects already/) });
    const room = changed(many, { subjects: many.subjects.slice(1) });
    expect(addPartSubject(room, 'scheme', 'box').setup.subjects).toHaveLength(500);
  });

  it('the 2001st part of a subject, the 5001st of all, and a triangle over a million are refused', () => {
    const full = changed(one, { subjects: [{ ...one.subjects[0], parts: parts(2000) }] });
    expect(() => addPart(full, 'rock', 'box')).toThrow(/The rock has 2000 parts already/);
    const three = [2000, 2000, 1000].map((count, i) => ({ ...one.subjects[0], id: `rock-${i}`, parts: parts(count) }));
    const all = changed(one, { subjects: three });
    expect(() => addPart(all, 'rock-2', 'box')).toThrow(/5001 parts in all; at most 5000/);
    expect(() => duplicateSubject(all, 'scheme', 'rock-2')).toThrow(EditRefused);
    // a finely divided block has up to 4 * 3 * 64 * 64 triangles
    const fine = { ...newPart('box'), widthMetres: 9, depthMetres: 9, heightMetres: 9, roundMetres: 0.1 } as Part;
    const heavy = changed(one, { subjects: [{ ...one.subjects[0], parts: new Array(20).fill(fine) }] });
    expect(() => duplicatePart(heavy, 'rock', 0)).toThrow(/million triangles.*Nothing was changed/);
  });

  describe('a setup of nearly 12 MB, the most that is read', () => {
    // coordinates of all their digits: some 15 kB and 1020 triangles a prism
    const outline = Array.from({ length: 256 }, (_, i) => [
      Math.cos((Math.PI * i) / 128),
      Math.sin((Math.PI * i) / 128),
    ]);
    const prism = { kind: 'prism', outline, heightMetres: 1 };
    const drawn = (id: string, count: number) => ({ id, name: id, parts: new Array(count).fill(prism) });
    const bytesOf = (setup: Setup) => Buffer.byteLength(formatSetup(setup));
    const withPrisms = (count: number) =>
      changed(one, { subjects: [...one.subjects, drawn('a', count), drawn('b', 50)] });
    const perPrism = (bytesOf(withPrisms(11)) - bytesOf(withPrisms(1))) / 10;
    const full = withPrisms(Math.floor((12e6 - bytesOf(withPrisms(1))) / perPrism));

    it('is read again, and takes edits that leave it so', () => {
      expect(bytesOf(full)).toBeGreaterThan(11.9e6);
      expect(parseSetup(formatSetup(addPart(full, 'rock', 'box'))).subjects[0]?.parts).toHaveLength(2);
    });

    it('refuses a subject or a part that would bring the file over, in words', () => {
      expect(() => duplicateSubject(full, 'scheme', 'b')).toThrow(EditRefused);
      expect(() => duplicateSubject(full, 'scheme', 'b')).toThrow(
        /^With this the file has 12\.\d MB; at most 12 MB are read\. Nothing was changed\.$/,
      );
      const twice = () => duplicatePart(duplicatePart(full, 'a', 0), 'a', 0);
      expect(twice).toThrow(/With this the file has 12\.0 MB/);
    });

    it('counts what an edit changed, not all again', () => {
      const before = addPart(full, 'rock', 'box');
      const stringify = vi.spyOn(JSON, 'stringify');
      addPart(before, 'rock', 'box');
      const letters = stringify.mock.results.reduce((sum, { value }) => sum + String(value).length, 0);
      stringify.mockRestore();
      expect(letters).toBeGreaterThan(0);
      expect(letters).toBeLessThan(20_000);
    });
  });
});
