import type { Frame, Lamp, Pass } from '../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { duplicatePass, removePass } from '../state/edits/pass-edits.ts';
import { useSession } from '../state/session.ts';
import { FrontFields } from './FrontFields.tsx';
import type { PerhapsTimed } from './HolderRows.tsx';
import { LampFields } from './LampFields.tsx';
import { PassFields } from './PassFields.tsx';
import { PassNumbers } from './PassNumbers.tsx';
import { PathFields } from './PathFields.tsx';

interface LampInspectorProps {
  readonly schemeId: string;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly lamp: Lamp;
  readonly reading: PerhapsTimed | undefined;
}

/** Everything about one pass and its lamp that can be typed. */
export const LampInspector = ({ schemeId, frame, pass, lamp, reading }: LampInspectorProps) => {
  const setup = useSetup();
  const { edit, select } = useApp.getState();
  const place = { schemeId, frameId: frame.id, passId: pass.id };
  return (
    <>
      <section className="group">
        <h3>This pass</h3>
        <PassFields place={place} frame={frame} pass={pass} lamp={lamp} />
      </section>
      <PathFields place={place} pass={pass} />
      {reading && (
        <section className="group" aria-label="Numbers of this pass">
          <PassNumbers reading={reading} setup={setup} />
        </section>
      )}
      <FrontFields place={place} frame={frame} pass={pass} lamp={lamp} />
      <LampFields lamp={lamp} />
      <div className="actions">
        <button
          type="button"
          onClick={() => useSession.getState().set({ testShot: { file: null, lampId: lamp.id, frameId: frame.id } })}
        >
          Test shot…
        </button>
        <button type="button" onClick={() => edit((s) => duplicatePass(s, place))}>
          Duplicate pass
        </button>
        <button
          type="button"
          onClick={() => {
            edit((s) => removePass(s, place));
            select(null);
          }}
        >
          Remove pass
        </button>
      </div>
    </>
  );
};
