import { useState } from 'react';
import type { EvenDose } from '../../../core/passes/even-dose.ts';
import { type PathKind, pathKind } from '../../../core/passes/path-legs.ts';
import type { Pass } from '../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { isSteady, setDwell, setPathKind, setStrokes, takeEvened } from '../state/edits/path-edits.ts';
import type { PassPlace } from '../state/edits/within.ts';
import { evenedPass, evenedWaypoints } from '../state/evened-pass.ts';
import { useSession } from '../state/session.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { evenWords } from './even-words.ts';
import { pathKinds, speedWords } from './path-words.ts';
import { WaypointList } from './WaypointList.tsx';

interface PathFieldsProps {
  readonly place: PassPlace;
  readonly pass: Pass;
}

/** How the lamp moves during a pass: what moves, over which waypoints, how often, and how long it dwells where. */
export const PathFields = ({ place, pass }: PathFieldsProps) => {
  const setup = useSetup();
  const { edit } = useApp.getState();
  const isPainting = useSession((state) => state.paints?.passId === place.passId);
  const [evened, setEvened] = useState<EvenDose | null>(null);
  const kind = pathKind(pass.waypoints);
  const even = () => {
    const result = evenedPass(setup, place);
    setEvened(result);
    edit((s) => takeEvened(s, place, evenedWaypoints(result)));
  };
  const paint = () => useSession.getState().set({ paints: isPainting ? null : place, room: 'viewfinder' });
  const speed = speedWords(pass);
  const said = evened && evenWords(evened, pass.waypoints);
  return (
    <section className="group" aria-label="Path">
      <h3>Path</h3>
      <div className="fields">
        <Choice
          label="The lamp"
          value={kind}
          options={pathKinds}
          onChange={(to) => edit((s) => setPathKind(s, place, to as PathKind))}
        />
        {kind !== 'still' && (
          <>
            <NumberField
              label="Strokes"
              unit=""
              value={pass.strokes}
              min={1}
              max={64}
              digits={0}
              onChange={(count) => edit((s) => setStrokes(s, place, Math.round(count)))}
            />
            <Choice
              label="Dwell"
              value={pass.dwell}
              options={[
                ['typed', 'typed times'],
                ['even-speed', 'even speed'],
                ['even-dose', 'even dose'],
              ]}
              onChange={(to) => {
                if (to === 'even-dose') even();
                else edit((s) => setDwell(s, place, to === 'typed' ? 'typed' : 'even-speed'));
              }}
            />
          </>
        )}
        <button
          type="button"
          className="small"
          aria-pressed={isPainting}
          title="Drag in the picture over what the lamp should sweep, from where it stands"
          onClick={paint}
        >
          Paint the sweep
        </button>
      </div>
      {speed && <p className="path-speed">{speed}</p>}
      {evened && kind !== 'still' && pass.dwell === 'even-dose' && (
        <p role="status">{said ?? 'The path has changed since its dose was evened.'}</p>
      )}
      {pass.dwell === 'even-dose' && (
        <div className="actions">
          <button type="button" className="small" title="After anything has been moved" onClick={even}>
            Even the dose again
          </button>
        </div>
      )}
      {pass.dwell === 'even-speed' && !isSteady(pass) && (
        <div className="actions">
          <p className="quiet">
            On so long a leg the spot keeps its speed, not your hand: near places get less than they should, far ones
            more.
          </p>
          <button
            type="button"
            className="small"
            title="Puts waypoints into long legs"
            onClick={() => {
              edit((s) => setDwell(s, place, 'even-speed'));
              // what was open has another number now
              useSession.getState().set({ waypoint: null });
            }}
          >
            Even the speed again
          </button>
        </div>
      )}
      {isPainting && <p className="quiet">Drag over the subject in the picture. Escape leaves all as it is.</p>}
      {kind !== 'still' && <WaypointList place={place} pass={pass} kind={kind} />}
    </section>
  );
};
