import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { renamed } from './plain-name.ts';

/** How many times light is followed from surface to surface: 0, 1 or 2. */
export const setBounces = (setup: Setup, bounces: number): Setup =>
  bounces === setup.bounces ? setup : { ...setup, bounces };

/** How bright a lit target should be, in stops from mid-grey; counts are worked out for it. */
export const setNightLevel = (setup: Setup, nightLevelStops: number): Setup =>
  nightLevelStops === setup.nightLevelStops ? setup : { ...setup, nightLevelStops };

/** Gives the setup another name; an empty one is not taken. */
export const renameSetup = (setup: Setup, typed: string): Setup => renamed(setup, typed);
