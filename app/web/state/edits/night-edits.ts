import { movedPlace } from '../../../../core/card/moved-place.ts';
import type { GroundPoint } from '../../../../core/geometry/hull.ts';
import { litFrom } from '../../../../core/passes/lit-from.ts';
import { plainLines } from '../../../../core/setup/plain-text.ts';
import type { Night, NightRun, Pass, Position, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { buildWorld } from '../../../../core/world/world.ts';
import { EditRefused } from './edit-refused.ts';
import { duplicateScheme, renameScheme } from './frame-edits.ts';
import { freshName } from './plain-name.ts';
import { areApart, changeScheme, replaceById, withinWorld } from './within.ts';

const mostNights = 60;
const mostRuns = 400;

/** An id that no night has yet. */
export const nightId = ({ nights }: Setup): string => {
  for (let n = nights.length + 1; ; n++) if (!nights.some(({ id }) => id === `night-${n}`)) return `night-${n}`;
};

/** Writes down a pass as it was gone: in the night under way, or in a new one where there is none. */
export const addRun = (setup: Setup, inNightId: string | null, scheme: Scheme, run: NightRun): Setup => {
  const night = setup.nights.find(({ id }) => id === inNightId);
  if (night && night.runs.length >= mostRuns)
    throw new EditRefused(
      `A night keeps at most ${mostRuns} passes. Delete an old night under “Nights” first, or this one.`,
    );
  if (night) {
    const nights = replaceById(setup.nights, night.id, (it) => ({ ...it, runs: [...it.runs, run] }));
    return { ...setup, nights };
  }
  if (setup.nights.length >= mostNights)
    throw new EditRefused(`A setup keeps at most ${mostNights} nights. Delete an old one under “Nights” first.`);
  const begun: Night = {
    id: nightId(setup),
    startedAt: run.at,
    schemeId: scheme.id,
    schemeName: scheme.name,
    note: '',
    runs: [run],
    photos: [],
  };
  return { ...setup, nights: [...setup.nights, begun] };
};

/** Takes the last pass of a night back; a night that has nothing left goes with it. */
export const dropLastRun = (setup: Setup, id: string): Setup => {
  const nights = setup.nights.flatMap((night) => {
    if (night.id !== id) return [night];
    const runs = night.runs.slice(0, -1);
    return runs.length > 0 || night.photos.length > 0 || night.note ? [{ ...night, runs }] : [];
  });
  return { ...setup, nights };
};

export const deleteNight = (setup: Setup, id: string): Setup => ({
  ...setup,
  nights: setup.nights.filter((night) => night.id !== id),
});

const longestNote = 2000;

export const noteNight = (setup: Setup, id: string, note: string): Setup => {
  const text = plainLines(note, longestNote);
  const nights = replaceById(setup.nights, id, (night) => (night.note === text ? night : { ...night, note: text }));
  return nights === setup.nights ? setup : { ...setup, nights };
};

const isWherePlanned = ({ distanceTimes, hoursMoved, heightTimes }: NightRun): boolean =>
  distanceTimes === 1 && hoursMoved === 0 && heightTimes === 1;

/** The level that a run comes to now, no lower than the lamp goes, unless the plan is there already. */
const levelAsGone = ({ levelPercent }: Pass, { levelTimes }: NightRun, lowestPercent: number): number =>
  Math.min(100, Math.max(levelPercent * levelTimes, Math.min(lowestPercent, levelPercent)));

const asGone = (
  pass: Pass,
  run: NightRun,
  frameSeconds: number,
  lowestPercent: number,
  moved: (waypoint: Pass['waypoints'][number]) => Position,
): Pass => {
  const lit = {
    ...litFrom(pass, pass.on, Math.min(frameSeconds, pass.on + Math.max(run.seconds, 0.01))),
    levelPercent: levelAsGone(pass, run, lowestPercent),
  };
  if (isWherePlanned(run)) return lit;
  const waypoints = lit.waypoints.map((waypoint) => {
    // farther off than the world reaches there is no place to go to
    const position = withinWorld(moved(waypoint));
    return areApart(position, waypoint.aim) ? { ...waypoint, position } : waypoint;
  });
  return { ...lit, waypoints };
};

/** "12 October" of 2026-10-12T22:30. */
export const dayWords = (localTime: string): string =>
  new Date(`${localTime.slice(0, 10)}T00:00Z`).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  });

/** Of runs of one pass, the one to go on from: the last that was good, or else the last. */
const bestRun = (runs: readonly NightRun[], frameId: string, passId: string): NightRun | undefined => {
  const own = runs.filter((run) => run.frameId === frameId && run.passId === passId);
  return own.findLast(({ verdict }) => verdict === 'good') ?? own.at(-1);
};

/**
 * A copy of the scheme that a night was gone by, with counts, levels and places as they were gone, counted from the plan as it is now.
 *
 * @param mark what places are counted from, [east, north] in metres
 */
export const schemeFromNight = (
  setup: Setup,
  { schemeId, startedAt, runs }: Night,
  mark: GroundPoint,
): { setup: Setup; schemeId: string } => {
  const scheme = setup.schemes.find(({ id }) => id === schemeId);
  if (!scheme) throw new EditRefused('The scheme of that night is not in this setup any more.');
  const { stage } = buildWorld(setup, scheme);
  const copy = duplicateScheme(setup, schemeId);
  if (copy.schemeId === schemeId) throw new EditRefused('A setup has at most 24 schemes. Delete one first.');
  const names = setup.schemes.map(({ name }) => name);
  const named = renameScheme(copy.setup, copy.schemeId, freshName(names, `As run on ${dayWords(startedAt)}`));
  const changed = changeScheme(named, copy.schemeId, (scheme) => ({
    ...scheme,
    frames: scheme.frames.map((frame) => ({
      ...frame,
      passes: frame.passes.map((pass) => {
        const run = bestRun(runs, frame.id, pass.id);
        if (!run) return pass;
        const lowest = setup.lamps.find(({ id }) => id === pass.lampId)?.lowestLevelPercent ?? 0;
        return asGone(pass, run, frame.seconds, lowest, (waypoint) => movedPlace(stage, waypoint, mark, run));
      }),
    })),
  }));
  return { setup: changed, schemeId: copy.schemeId };
};
