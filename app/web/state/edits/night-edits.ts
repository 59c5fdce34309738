import type { Night, Run } from '../../../../core/card/tonight.ts';
import type { GroundPoint } from '../../../../core/geometry/hull.ts';
import { litFrom } from '../../../../core/passes/lit-from.ts';
import type { Pass, Position, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { duplicateScheme, renameScheme } from './frame-edits.ts';
import { changeScheme, replaceById } from './within.ts';

const mostNights = 60;
const mostRuns = 400;

/** An id that no night has yet. */
export const nightId = ({ nights }: Setup): string => {
  for (let n = nights.length + 1; ; n++) if (!nights.some(({ id }) => id === `night-${n}`)) return `night-${n}`;
};

/** Writes down a pass as it was gone: in the night under way, or in a new one where there is none. */
export const addRun = (setup: Setup, inNightId: string | null, scheme: Scheme, run: Run): Setup => {
  const night = setup.nights.find(({ id }) => id === inNightId);
  if (night && night.runs.length >= mostRuns)
    throw new EditRefused(`A night keeps at most ${mostRuns} passes. Start a new one.`);
  if (night) {
    const nights = replaceById(setup.nights, night.id, (it) => ({ ...it, runs: [...it.runs, run] }));
    return { ...setup, nights };
  }
  if (setup.nights.length >= mostNights)
    throw new EditRefused(`A setup keeps at most ${mostNights} nights. Delete one from the log first.`);
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
  const text = note.replace(/(?![\t\n\r])[\p{Cc}\p{Cs}]/gu, '').slice(0, longestNote);
  const nights = replaceById(setup.nights, id, (night) => (night.note === text ? night : { ...night, note: text }));
  return nights === setup.nights ? setup : { ...setup, nights };
};

/** A place as far round a mark, away from it and over the ground as it was stood on the night. */
const movedPlace = ([east, north, up]: Position, [markEast, markNorth]: GroundPoint, run: Run): Position => {
  const turn = (run.hoursMoved * Math.PI) / 6;
  const [de, dn] = [east - markEast, north - markNorth];
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  // clockwise seen from above
  return [
    markEast + run.distanceTimes * (de * cos + dn * sin),
    markNorth + run.distanceTimes * (dn * cos - de * sin),
    up * run.heightTimes,
  ];
};

const isAsPlanned = ({ distanceTimes, hoursMoved, heightTimes }: Run): boolean =>
  distanceTimes === 1 && hoursMoved === 0 && heightTimes === 1;

const asGone = (pass: Pass, run: Run, frameSeconds: number, mark: GroundPoint): Pass => {
  const lit = litFrom(pass, pass.on, Math.min(frameSeconds, pass.on + Math.max(run.seconds, 0.01)));
  if (isAsPlanned(run)) return lit;
  return { ...lit, waypoints: lit.waypoints.map((w) => ({ ...w, position: movedPlace(w.position, mark, run) })) };
};

/** "12 October" of 2026-10-12T22:30. */
export const dayWords = (localTime: string): string =>
  new Date(`${localTime.slice(0, 10)}T00:00Z`).toLocaleDateString('en-GB', {
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  });

/** Of runs of one pass, the one to go on from: the last that was good, or else the last. */
const bestRun = (runs: readonly Run[], frameId: string, passId: string): Run | undefined => {
  const own = runs.filter((run) => run.frameId === frameId && run.passId === passId);
  return own.findLast(({ verdict }) => verdict === 'good') ?? own.at(-1);
};

/**
 * A copy of the scheme that a night was gone by, with counts and places as they were gone.
 *
 * @param mark what places were counted from that night, [east, north] in metres
 */
export const schemeFromNight = (
  setup: Setup,
  { schemeId, startedAt, runs }: Night,
  mark: GroundPoint,
): { setup: Setup; schemeId: string } => {
  if (!setup.schemes.some(({ id }) => id === schemeId))
    throw new EditRefused('The scheme of that night is not in this setup any more.');
  const copy = duplicateScheme(setup, schemeId);
  if (copy.schemeId === schemeId) throw new EditRefused('A setup has at most 24 schemes. Delete one first.');
  const named = renameScheme(copy.setup, copy.schemeId, `As run on ${dayWords(startedAt)}`);
  const changed = changeScheme(named, copy.schemeId, (scheme) => ({
    ...scheme,
    frames: scheme.frames.map((frame) => ({
      ...frame,
      passes: frame.passes.map((pass) => {
        const run = bestRun(runs, frame.id, pass.id);
        return run ? asGone(pass, run, frame.seconds, mark) : pass;
      }),
    })),
  }));
  return { setup: changed, schemeId: copy.schemeId };
};
