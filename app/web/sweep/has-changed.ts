import type { Pass, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import type { SweepRun } from '../state/sweeps.ts';

/** What of a setup its pictures and numbers hang on, schemes and scans apart. */
const causes = [
  'bounces',
  'nightLevelStops',
  'place',
  'ground',
  'subjects',
  'camera',
  'lamps',
  'measuredBeams',
  'patch',
] as const satisfies readonly (keyof Setup)[];

const isSame = (a: unknown, b: unknown) => a === b || JSON.stringify(a) === JSON.stringify(b);

/** Scans are large and never changed in place: the same ones are the same objects. */
const areSameScans = (a: Setup['scans'], b: Setup['scans']) =>
  a.length === b.length && a.every((scan, i) => scan === b[i]);

const schemeIn = ({ schemes }: Setup, { schemeId }: SweepRun['place']) => schemes.find(({ id }) => id === schemeId);

/** The pass that is swept, as a setup has it now. */
export const sweptPass = (setup: Setup, place: SweepRun['place']): Pass | undefined =>
  schemeIn(setup, place)
    ?.frames.find(({ id }) => id === place.frameId)
    ?.passes.find(({ id }) => id === place.passId);

/** What of the scheme is in every picture alike. */
const besides = ({ camera, frames, blend }: Scheme, { frameId, passId }: SweepRun['place']) => [
  camera,
  blend,
  frames.map((frame) => ({
    ...frame,
    passes: frame.passes.filter(({ id }) => frame.id !== frameId || id !== passId),
  })),
];

/**
 * Whether a sweep would show something else than it does, now that the setup is another. The pass may have been put on
 * one of the sweep's own cells.
 */
export const hasChanged = ({ setup: before, place, cells }: SweepRun, now: Setup): boolean => {
  if (now === before) return false;
  if (causes.some((cause) => !isSame(now[cause], before[cause]))) return true;
  if (!areSameScans(now.scans, before.scans)) return true;
  const [schemeNow, schemeBefore] = [schemeIn(now, place), schemeIn(before, place)];
  if (!schemeNow || !schemeBefore || !isSame(besides(schemeNow, place), besides(schemeBefore, place))) return true;
  const pass = sweptPass(now, place);
  return ![sweptPass(before, place), ...cells.map((cell) => cell.pass)].some((each) => isSame(pass, each));
};
