import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { nightUnderWay } from '../../../app/web/nightrun/night-under-way.ts';
import { EditRefused } from '../../../app/web/state/edits/edit-refused.ts';
import {
  addRun,
  dayWords,
  deleteNight,
  dropLastRun,
  noteNight,
  schemeFromNight,
} from '../../../app/web/state/edits/night-edits.ts';
import { localText } from '../../../app/web/state/local-text.ts';
import { cardData } from '../../../core/card/card-data.ts';
import { movedStand } from '../../../core/card/moved-stand.ts';
import { goingOf, runOf } from '../../../core/card/tonight.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import { parseSetup, validateSetup } from '../../../core/setup/parse-setup.ts';
import type { NightRun, Scheme, Setup } from '../../../core/setup/schema/setup.ts';

const setup = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const scheme = setup.schemes[0] as Scheme;
const card = cardData(setup, scheme, reportScheme(setup, scheme));
const [row] = card.rows;
if (!row) throw new Error('the sample has no pass');

/** A night in which the first row was gone so often, and each time said so. */
const goneAs = (...verdicts: NightRun['verdict'][]) =>
  verdicts.reduce((s, verdict, i) => {
    const night = s.nights.at(-1) ?? null;
    const run = runOf(card, row, goingOf(card, row, night), verdict, `2026-10-12T22:${30 + i}:00`);
    return addRun(s, night?.id ?? null, scheme, run);
  }, setup);

describe('the log of a night', () => {
  it('keeps each pass as it was gone, and the next one follows what was said', () => {
    const after = goneAs('too-bright', 'too-bright', 'flat', 'good');
    const [night] = after.nights;
    expect(after.nights).toHaveLength(1);
    expect(night?.startedAt).toBe('2026-10-12T22:30:00');
    expect(night?.runs.map(({ seconds }) => seconds)).toEqual([8, 4, 2, 2]);
    expect(night?.runs.map(({ hoursMoved, heightTimes }) => [hoursMoved, heightTimes])).toEqual([
      [0, 1],
      [0, 1],
      [0, 1],
      // at three o’clock already
      [0, 0.5],
    ]);
    // what is kept is a good document
    expect(validateSetup(structuredClone(after)).nights).toEqual(after.nights);
    expect(after.schemes).toBe(setup.schemes);
  });

  it('takes the last tap back, and the next pass with it; an empty night goes', () => {
    const after = goneAs('too-bright', 'too-dark');
    const id = after.nights[0]?.id as string;
    expect(goingOf(card, row, after.nights[0] ?? null).seconds).toBe(8);
    const back = dropLastRun(after, id);
    expect(goingOf(card, row, back.nights[0] ?? null).seconds).toBe(4);
    expect(dropLastRun(back, id).nights).toEqual([]);
  });

  it('takes notes as plain text, and goes when it is deleted', () => {
    const after = goneAs('good');
    const id = after.nights[0]?.id as string;
    const noted = noteNight(after, id, 'dew from 23:00\n\u0007second try <b>better</b>');
    expect(noted.nights[0]?.note).toBe('dew from 23:00\nsecond try <b>better</b>');
    expect(noteNight(noted, id, noted.nights[0]?.note ?? '')).toBe(noted);
    expect(deleteNight(noted, id).nights).toEqual([]);
  });

  it('says why when a setup has room for no more nights', () => {
    const night = goneAs('good').nights[0];
    if (!night) throw new Error('no night');
    const full = { ...setup, nights: Array.from({ length: 60 }, (_, i) => ({ ...night, id: `n${i}` })) };
    const run = night.runs[0] as NightRun;
    expect(() => addRun(full, null, scheme, run)).toThrow(EditRefused);
    expect(addRun(full, 'n7', scheme, run).nights[7]?.runs).toHaveLength(2);
  });
});

describe('schemeFromNight', () => {
  const after = goneAs(...Array(10).fill('too-bright'), 'flat', 'good');
  const night = after.nights[0];
  if (!night) throw new Error('no night');

  it('makes a scheme whose card reads as it was run: count, level, clock, paces, height', () => {
    const { setup: next, schemeId } = schemeFromNight(after, night, card.mark.place);
    const made = next.schemes.find(({ id }) => id === schemeId) as Scheme;
    expect(made.name).toBe('As run on 12 October');
    expect(next.schemes).toHaveLength(setup.schemes.length + 1);
    const ran = goingOf(card, row, night);
    const told = movedStand(card, row.start, ran);
    const [newRow] = cardData(next, made, reportScheme(next, made)).rows;
    expect(ran.distanceTimes).toBeGreaterThan(1.4);
    expect(newRow?.countSeconds).toBeCloseTo(ran.seconds, 9);
    expect(ran.levelTimes).toBeLessThan(1);
    expect(newRow?.levelPercent).toBeCloseTo(row.levelPercent * ran.levelTimes, 9);
    expect(newRow?.start.clock).toBe(told.clock);
    expect(newRow?.start.distanceMetres).toBeCloseTo(told.distanceMetres, 6);
    expect(newRow?.start.heightMetres).toBeCloseTo(told.heightMetres, 6);
    expect(validateSetup(structuredClone(next)).schemes).toEqual(next.schemes);
  });

  it('turns a lamp no lower than it goes, where the plan or the lamp has changed since the night', () => {
    const levelOf = (lowestLevelPercent: number, levelPercent: number) => {
      const pass = scheme.frames.flatMap(({ passes }) => passes).find(({ id }) => id === row.passId);
      const changed = {
        ...after,
        lamps: after.lamps.map((lamp) => (lamp.id === pass?.lampId ? { ...lamp, lowestLevelPercent } : lamp)),
        schemes: after.schemes.map((each) => ({
          ...each,
          frames: each.frames.map((frame) => ({
            ...frame,
            passes: frame.passes.map((own) => (own.id === row.passId ? { ...own, levelPercent } : own)),
          })),
        })),
      } as Setup;
      const { setup: next, schemeId } = schemeFromNight(changed, night, card.mark.place);
      const made = next.schemes.find(({ id }) => id === schemeId) as Scheme;
      return made.frames.flatMap(({ passes }) => passes).find(({ id }) => id === row.passId)?.levelPercent;
    };
    expect(levelOf(100, 100)).toBe(100);
    // a plan that is lower already stays as it is
    expect(levelOf(60, 40)).toBe(40);
    expect(levelOf(0, 100)).toBeCloseTo(100 * goingOf(card, row, night).levelTimes, 9);
  });

  it('made twice, has two names', () => {
    const once = schemeFromNight(after, night, card.mark.place);
    const twice = schemeFromNight(once.setup, night, card.mark.place).setup.schemes.map(({ name }) => name);
    expect(new Set(twice).size).toBe(twice.length);
    expect(twice).toContain('As run on 12 October 2');
  });

  it('goes on from the last good try, not from a later one that was not', () => {
    const mixed = goneAs('good', 'too-dark');
    const { setup: next, schemeId } = schemeFromNight(mixed, mixed.nights[0] as typeof night, card.mark.place);
    const made = next.schemes.find(({ id }) => id === schemeId) as Scheme;
    const passes = made.frames.flatMap((frame) => frame.passes);
    expect(passes.find(({ id }) => id === row.passId)).toEqual(
      scheme.frames.flatMap((frame) => frame.passes).find(({ id }) => id === row.passId),
    );
  });

  it('says why when its scheme is gone', () => {
    const lost = { ...night, schemeId: 'gone' };
    expect(() => schemeFromNight(after, lost, card.mark.place)).toThrow(/not in this setup any more/);
  });
});

describe('clocks', () => {
  it('a night goes on for twelve hours with its scheme, past midnight', () => {
    const begun = { schemeId: 'a', startedAt: '2026-10-12T22:30:00' };
    expect(nightUnderWay([begun], 'a', new Date('2026-10-13T03:00:00'))).toBe(begun);
    expect(nightUnderWay([begun], 'a', new Date('2026-10-13T11:00:00'))).toBeNull();
    expect(nightUnderWay([begun], 'b', new Date('2026-10-12T23:00:00'))).toBeNull();
    expect(nightUnderWay([begun], 'a', new Date('2026-10-12T22:00:00'))).toBeNull();
  });

  it('writes the clock here as the document does, and a day in words', () => {
    expect(localText(new Date(2026, 0, 5, 3, 4, 9))).toBe('2026-01-05T03:04:09');
    expect(dayWords('2026-10-12T22:30:00')).toBe('12 October');
  });
});
