import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setCard } from '../../../app/web/state/edits/card-edits.ts';
import { duplicateScheme, renameScheme } from '../../../app/web/state/edits/frame-edits.ts';
import { renameFrame } from '../../../app/web/state/edits/frame-list.ts';
import { addGlowDome, changeGlowDome } from '../../../app/web/state/edits/glow-dome-edits.ts';
import { addHazard, renameHazard } from '../../../app/web/state/edits/hazard-edits.ts';
import { setLampName } from '../../../app/web/state/edits/lamp-edits.ts';
import { lightBy } from '../../../app/web/state/edits/light-by.ts';
import { addRun, noteNight } from '../../../app/web/state/edits/night-edits.ts';
import { changePart } from '../../../app/web/state/edits/part-edits.ts';
import { duplicatePass, setPassName } from '../../../app/web/state/edits/pass-edits.ts';
import { renameSetup } from '../../../app/web/state/edits/setup-edits.ts';
import { renameSubject } from '../../../app/web/state/edits/subject-edits.ts';
import { groupWith, renameGroup } from '../../../app/web/state/edits/subject-groups.ts';
import { formatSetup } from '../../../core/setup/format-setup.ts';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import { cutTo, plainLine } from '../../../core/setup/plain-text.ts';
import type { Part, Scheme, Setup } from '../../../core/setup/schema/setup.ts';

const sample = parseSetup(readFileSync('assets/setups/three-stones.json', 'utf8'));
const [one, other] = sample.subjects.map(({ id }) => id) as [string, string];
const place = { schemeId: 'side', frameId: 'painted', passId: 'key' };
const run = {
  at: '2026-10-12T22:30:00',
  frameId: 'painted',
  frameName: 'Painted',
  passId: 'key',
  passName: 'Key',
  seconds: 8,
  strokes: 1,
  distanceTimes: 1,
  hoursMoved: 0,
  heightTimes: 1,
  levelTimes: 1,
  verdict: 'good',
} as const;
/** With a hazard, a town, a group and a night to name. */
const full = addRun(
  addHazard(groupWith(addGlowDome(sample, 90), one, other), 'side', 'Edge').setup,
  null,
  sample.schemes[0] as Scheme,
  run,
);
const hazardId = full.hazards.at(-1)?.id as string;
const lampId = full.lamps[0]?.id as string;
const group = full.subjects[0]?.group as string;
const part = full.subjects[0]?.parts[0] as Part;
const night = full.nights[0]?.id as string;

/** Every edit that takes text. */
const edits: Readonly<Record<string, (text: string) => Setup>> = {
  renameSetup: (text) => renameSetup(full, text),
  setCard: (permission) => setCard(full, { permission }),
  setLampName: (text) => setLampName(full, lampId, text),
  renameScheme: (text) => renameScheme(full, 'side', text),
  'renameScheme, then copies': (text) => {
    const named = renameScheme(full, 'side', text);
    return lightBy(duplicateScheme(named, 'side').setup, 'side', 'one-frame').setup;
  },
  renameFrame: (text) => renameFrame(full, place, text),
  setPassName: (text) => setPassName(full, place, text),
  'setPassName, then a copy': (text) => duplicatePass(setPassName(full, place, text), place),
  renameSubject: (text) => renameSubject(full, one, text),
  renameGroup: (text) => renameGroup(full, group, text),
  renameHazard: (text) => renameHazard(full, hazardId, text),
  addHazard: (text) => addHazard(full, 'side', text).setup,
  changeGlowDome: (name) => changeGlowDome(full, full.place.glowDomes.length - 1, { name }),
  changePart: (name) => changePart(full, one, 0, { ...part, name }),
  noteNight: (text) => noteNight(full, night, text),
};

const odd = ['\u0007', '\0', '\ud83d', '\ude00', '\u{1f319}', '\u2028', '\u2029', '\u0085', '\t', '\n', ' ', 'ä'];
const texts = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 200 }),
  fc.string({ unit: fc.constantFrom(...odd, 'a'), maxLength: 200 }),
  // a pair that the longest length would cut
  fc.constantFrom(...[74, 75, 78, 79, 80, 159, 1999].map((n) => `${'a'.repeat(n)}\u{1f319}\u{1f319}`)),
);

describe('typed and pasted text', () => {
  it.each(Object.entries(edits))('%s makes a setup that can be read back, whatever is typed (seed 1)', (_, edit) => {
    fc.assert(
      fc.property(texts, (text) => {
        const made = edit(text);
        expect(parseSetup(formatSetup(made))).toEqual(made);
      }),
      { seed: 1, numRuns: 60 },
    );
  });

  it('an empty name is not taken, and what is plain stays as it is', () => {
    expect(setLampName(full, lampId, ' \u0007 ')).toBe(full);
    expect(renameScheme(full, 'side', '')).toBe(full);
    expect(plainLine(' Moon 🌙 over\u0007the\u2028ridge ', 80)).toBe('Moon 🌙 over the ridge');
    expect(cutTo('ab\u{1f319}', 3)).toBe('ab');
  });

  it('the line of the permission refuses what would break it', () => {
    const text = formatSetup({ ...sample, card: { ...sample.card, permission: 'yes\u2028no' } });
    expect(() => parseSetup(text)).toThrow(/card\.permission.*one line/s);
  });
});
