import type { Frame, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp, useFrame, useScheme } from '../state/app-store.ts';
import { editTook } from '../state/edit-took.ts';
import { frameKinds, framePurposes } from '../state/edits/frame-kinds.ts';
import {
  addFrame,
  duplicateFrame,
  moveFrame,
  removeFrame,
  renameFrame,
  type WithFrame,
} from '../state/edits/frame-list.ts';
import type { FramePlace } from '../state/edits/within.ts';
import { Drop } from '../ui/Drop.tsx';
import { TextField } from '../ui/TextField.tsx';

/** Puts another frame into the scheme and shows it. */
const put = (make: (setup: Setup) => WithFrame) => {
  let made = '';
  const took = editTook((setup) => {
    const next = make(setup);
    made = next.frameId;
    return next.setup;
  });
  if (took) useApp.getState().chooseFrame(made);
};

/** Deletes a frame, and says what went with it. */
const remove = ({ name, passes }: Frame, place: FramePlace) => {
  if (!editTook((setup) => removeFrame(setup, place))) return;
  const lamps = passes.map((pass) => pass.name).join(', ');
  const withLamps = passes.length > 0 ? ` with ${lamps}` : '';
  useApp.getState().tell({ tone: 'done', text: `${name} is deleted${withLamps}. Undo brings it back.` });
};

/** Adds frames to a scheme, and names, copies, moves and deletes the one that is shown. */
export const FramesDrop = () => {
  const scheme = useScheme();
  const frame = useFrame();
  const { edit } = useApp.getState();
  const place = { schemeId: scheme.id, frameId: frame.id };
  const at = scheme.frames.indexOf(frame);
  const add = (purpose: Frame['purpose']) => put((setup) => addFrame(setup, place, purpose));
  return (
    <Drop label="Frames" className="drop frames-drop" listLabel="Frames of this scheme">
      {(close) => (
        <>
          <h3>Add a frame</h3>
          {framePurposes.map((purpose) => (
            <button
              key={purpose}
              type="button"
              className="kit-button"
              onClick={() => {
                close();
                add(purpose);
              }}
            >
              <span>{frameKinds[purpose].label}</span>
              <span className="quiet">{frameKinds[purpose].says}</span>
            </button>
          ))}
          <h3>
            {frame.name}: frame {at + 1} of {scheme.frames.length}
          </h3>
          <TextField
            label="Name of the frame"
            value={frame.name}
            onChange={(name) => edit((setup) => renameFrame(setup, place, name))}
          />
          <div className="actions">
            <button
              type="button"
              onClick={() => {
                close();
                put((setup) => duplicateFrame(setup, place));
              }}
            >
              Duplicate
            </button>
            <button type="button" disabled={at === 0} onClick={() => edit((setup) => moveFrame(setup, place, at - 1))}>
              Earlier
            </button>
            <button
              type="button"
              disabled={at === scheme.frames.length - 1}
              onClick={() => edit((setup) => moveFrame(setup, place, at + 1))}
            >
              Later
            </button>
            {scheme.frames.length > 1 && (
              <button
                type="button"
                onClick={() => {
                  close();
                  remove(frame, place);
                }}
              >
                Delete
              </button>
            )}
          </div>
        </>
      )}
    </Drop>
  );
};
