import { create } from 'zustand';
import type { Lengths } from '../../../core/units/feet.ts';
import { keepText, keptText } from './kept-text.ts';

const storageKey = 'lampfall lengths';

const kept = (): Lengths => (keptText(storageKey) === 'feet' ? 'feet' : 'metres');

/** In what the page writes lengths. The document keeps metres; the card has a choice of its own, which is saved with it. */
export const useLengths = create<{ readonly lengths: Lengths }>(() => ({ lengths: kept() }));

/** Chooses, and keeps that on this machine. */
export const chooseLengths = (lengths: Lengths): void => {
  useLengths.setState({ lengths });
  keepText(storageKey, lengths);
};

/** Reads again what is kept. */
export const readLengths = (): void => useLengths.setState({ lengths: kept() });
