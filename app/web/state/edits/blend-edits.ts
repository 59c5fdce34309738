import { type Blend, fullEntry, type NamedEntry, namedEntries } from '../../../../core/setup/blend-entries.ts';
import type { Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { mostFrames } from './most-frames.ts';
import { changeScheme } from './within.ts';

export const setBlendMode = (setup: Setup, schemeId: string, mode: Blend['mode']): Setup =>
  changeScheme(setup, schemeId, (scheme) =>
    mode === scheme.blend.mode ? scheme : { ...scheme, blend: { ...scheme.blend, mode } },
  );

/** The first change writes the list out. */
const withEntries = (scheme: Scheme, frames: readonly NamedEntry[]): Scheme => {
  if (frames.length > mostFrames) throw new EditRefused(`A blend takes at most ${mostFrames} frames.`);
  return { ...scheme, blend: { ...scheme.blend, frames: [...frames] } };
};

/** Changes one entry of a blend, by its place in `namedEntries`. A subject is named only where the frame counts on one. */
export const changeBlendEntry = (
  setup: Setup,
  schemeId: string,
  index: number,
  part: Partial<Omit<NamedEntry, 'frameId'>>,
): Setup =>
  changeScheme(setup, schemeId, (scheme) => {
    const entries = namedEntries(scheme);
    const before = entries[index];
    if (!before) return scheme;
    const after = { ...before, ...part };
    const entry = after.where === 'subject' ? after : { ...after, subjectId: null };
    const isSame = (Object.keys(entry) as (keyof NamedEntry)[]).every((key) => entry[key] === before[key]);
    return isSame ? scheme : withEntries(scheme, entries.toSpliced(index, 1, entry));
  });

/** Takes a frame into the blend, everywhere. */
export const addToBlend = (setup: Setup, schemeId: string, frameId: string): Setup =>
  changeScheme(setup, schemeId, (scheme) => {
    const entries = namedEntries(scheme);
    if (!scheme.frames.some(({ id }) => id === frameId)) return scheme;
    return withEntries(scheme, [...entries, fullEntry(frameId)]);
  });

/** Has a frame count in the blend once more, in another place that is chosen next: after the entry at its place in `namedEntries`. */
export const repeatInBlend = (setup: Setup, schemeId: string, index: number): Setup =>
  changeScheme(setup, schemeId, (scheme) => {
    const entries = namedEntries(scheme);
    const entry = entries[index];
    return entry ? withEntries(scheme, entries.toSpliced(index + 1, 0, { ...entry })) : scheme;
  });

/** Leaves an entry out of the blend, by its place in `namedEntries`; the last one stays, for a blend of nothing is no picture. */
export const leaveOutOfBlend = (setup: Setup, schemeId: string, index: number): Setup =>
  changeScheme(setup, schemeId, (scheme) => {
    const entries = namedEntries(scheme);
    if (!entries[index] || entries.length === 1) return scheme;
    return withEntries(scheme, entries.toSpliced(index, 1));
  });
