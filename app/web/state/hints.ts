import { create } from 'zustand';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from './app-store.ts';
import { keepText, keptText } from './kept-text.ts';
import { firstSample } from './samples.ts';

/** What a new user is told once: what the page is, that lamps are dragged, that fields are typed into. */
export const hintNames = ['welcome', 'lamp', 'aperture'] as const;
export type HintName = (typeof hintNames)[number];

const storageKey = 'lampfall hints away';
const firstSampleId = firstSample().id;

const kept = (): readonly HintName[] => {
  const words = keptText(storageKey)?.split(' ') ?? [];
  return hintNames.filter((name) => words.includes(name));
};

interface Hints {
  /** Those that were done or put away: they never come again. */
  readonly away: readonly HintName[];
}

export const useHints = create<Hints>(() => ({ away: kept() }));

/** Puts hints away for good. */
export const putHintsAway = (...names: readonly HintName[]): void => {
  const before = useHints.getState().away;
  const away = hintNames.filter((name) => before.includes(name) || names.includes(name));
  if (away.length === before.length) return;
  useHints.setState({ away });
  keepText(storageKey, away.join(' '));
};

/** A lamp at six flattens the setup that the page opens on, which teaches; any other it would spoil. */
export const isLampHinted = ({ id }: Pick<Setup, 'id'>): boolean => id === firstSampleId;

/** Reads again what is kept. */
export const readHints = (): void => useHints.setState({ away: kept() });

type Frame = Setup['schemes'][number]['frames'][number];

/** Frames that a setup had before and has now, scheme by scheme. */
const framesOfBoth = (before: Setup, now: Setup): (readonly [Frame, Frame])[] =>
  now.schemes.flatMap((scheme) => {
    const old = before.schemes.find(({ id }) => id === scheme.id);
    return scheme.frames.flatMap((frame) => {
      const was = old?.frames.find(({ id }) => id === frame.id);
      return was && was !== frame ? [[was, frame] as const] : [];
    });
  });

const wasMoved = (was: Frame, now: Frame): boolean =>
  now.passes.some(({ id, waypoints }) => {
    const [to, from] = [waypoints[0], was.passes.find((pass) => pass.id === id)?.waypoints[0]];
    return from !== undefined && to !== undefined && from.position.some((v, i) => v !== to.position[i]);
  });

/** What was done needs no hint any more. Lamps and frames that come or go are no answer: nothing was moved or typed. */
const doneBetween = (before: Setup, now: Setup): HintName[] => {
  const both = framesOfBoth(before, now);
  return [
    ...(both.some((pair) => wasMoved(...pair)) ? (['lamp'] as const) : []),
    ...(both.some(([a, b]) => a.aperture !== b.aperture) ? (['aperture'] as const) : []),
  ];
};

useApp.subscribe((state, old) => {
  if (useHints.getState().away.length === hintNames.length) return;
  const [now, before] = [state.history, old.history];
  // a drag counts once it is done, so that nothing moves under the hand
  const isDone = now.gestureStart === null;
  const from = isDone && before.gestureStart ? before.gestureStart : before.present;
  if (!isDone || state.openings !== old.openings || from === now.present) return;
  putHintsAway(...doneBetween(from, now.present));
});
