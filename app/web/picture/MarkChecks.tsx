import { buildWorld } from '../../../core/world/world.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { removePatch, setPatch } from '../state/edits/patch-edits.ts';
import { retryMarks, useMarksStore } from '../state/marks.ts';
import { useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { Drop } from '../ui/Drop.tsx';
import { firstPatch } from './patch-moves.ts';

const checks = [
  ['levels', 'Levels', 'The picture as a map of stops from mid-grey, each with its number'],
  ['shadows', 'Shadows', 'Outlines and hatches the shadows that each lamp casts, as the camera sees them'],
  ['outline', 'Lit outline', 'A doubled line where a lamp lights a subject’s outline: the rim'],
  [
    'sharpness',
    'Sharpness',
    'Lines where the blur is 1, 2, 4 and 8 pixels of the sensor; of several frames, the sharpest counts',
  ],
] as const;
const lines = [
  ['thirds', 'Thirds', 'Lines at the thirds of the picture'],
  ['horizon', 'Horizon', 'Where level ground ends: what stands over the line stands against the sky'],
] as const;

/** What is marked over the picture, and the patch whose relief is read. */
export const MarkChecks = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const marks = useSession((state) => state.marks);
  const room = useSession((state) => state.room);
  const hasFailed = useMarksStore((state) => state.failed);
  const isByDay = useSession((state) => state.showsByDay);
  const { mark, set } = useSession.getState();
  const { edit, tell } = useApp.getState();
  const placePatch = () => {
    const corners = firstPatch(buildWorld(setup, scheme));
    if (!corners) {
      tell({ tone: 'problem', text: 'The middle of the picture shows no ground or wall that a patch could lie on.' });
      return;
    }
    edit((present) => setPatch(present, corners));
    // the patch is there once the page has been drawn again
    requestAnimationFrame(() => document.getElementById('patch')?.focus());
  };
  const checkOf = ([name, label, title]: (typeof checks | typeof lines)[number]) => (
    <span key={name} title={title}>
      <Check label={label} isOn={marks[name]} onChange={(isOn) => mark(name, isOn)} />
    </span>
  );
  return (
    <div className="mark-checks" role="group" aria-label="Marks over the picture">
      {checks.map(checkOf)}
      <Drop className="drop" label="Lines" listLabel="Lines to frame by">
        {lines.map(checkOf)}
      </Drop>
      {room === 'viewfinder' && (
        <span title="The place under an even sky, without lamps: to build and frame by">
          <Check label="By day" isOn={isByDay} onChange={(isOn) => set({ showsByDay: isOn })} />
        </span>
      )}
      <button
        id="patch-button"
        type="button"
        className="small"
        aria-pressed={setup.patch !== null}
        title="A piece of ground or wall whose relief is read: contrast, and how much of it lies in shadow. Drag on the picture to draw it"
        onClick={() => (setup.patch ? edit(removePatch) : placePatch())}
      >
        Patch
      </button>
      {hasFailed && (
        <p className="quiet" role="status">
          The marks could not be worked out.{' '}
          <button type="button" className="small" onClick={retryMarks}>
            Try again
          </button>
        </p>
      )}
    </div>
  );
};
