import { bodyHeights } from '../../../core/units/body-height.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import {
  cameraSteps,
  isPortrait,
  lowCamera,
  setCameraHeight,
  setPortrait,
  turnCamera,
  walkCamera,
} from '../state/edits/camera-placing.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { worded } from '../ui/lengths.ts';
import { SubjectInPicture } from './SubjectInPicture.tsx';

const { walkMetres: stepMetres, turnDegrees: stepDegrees } = cameraSteps;

const walks = [
  ['Walk left', '←', 0, -1],
  ['Walk ahead', '↑', 1, 0],
  ['Walk back', '↓', -1, 0],
  ['Walk right', '→', 0, 1],
] as const;
const turns = [
  ['Turn left', '←', -1, 0],
  ['Tilt up', '↑', 0, 1],
  ['Tilt down', '↓', 0, -1],
  ['Turn right', '→', 1, 0],
] as const;
const heights = [...bodyHeights.filter(({ word }) => word !== 'overhead'), { word: 'eye', metres: 1.6 }];

/** Walks and turns the camera, sets its height by a word, and says how the picture lies. */
export const PlacingFields = ({ schemeId }: { schemeId: string }) => {
  const setup = useSetup();
  const { edit } = useApp.getState();
  const camera = cameraOf(setup, schemeId);
  const portrait = isPortrait(camera);
  return (
    <fieldset className="camera-group placing">
      <legend>Place it</legend>
      <div className="placing-row" role="group" aria-label={worded(`Walk the camera, ${stepMetres} m a press`)}>
        <span>{worded(`Walk ${stepMetres} m`)}</span>
        {walks.map(([name, arrow, ahead, right]) => (
          <button
            key={name}
            type="button"
            aria-label={name}
            title={name}
            onClick={() => edit((s) => walkCamera(s, schemeId, ahead * stepMetres, right * stepMetres), 'walk camera')}
          >
            {arrow}
          </button>
        ))}
      </div>
      <div className="placing-row" role="group" aria-label={`Turn the camera, ${stepDegrees}° a press`}>
        <span>Turn {stepDegrees}°</span>
        {turns.map(([name, arrow, pan, tilt]) => (
          <button
            key={name}
            type="button"
            aria-label={name}
            title={name}
            onClick={() => edit((s) => turnCamera(s, schemeId, pan * stepDegrees, tilt * stepDegrees), 'turn camera')}
          >
            {arrow}
          </button>
        ))}
      </div>
      <div className="placing-row" role="group" aria-label="Height of the lens">
        <span>Height</span>
        {heights.map(({ word, metres }) => (
          <button
            key={word}
            type="button"
            title={worded(`${metres} m`)}
            aria-pressed={Math.abs(camera.position[2] - metres) < 0.005}
            onClick={() => edit((s) => setCameraHeight(s, schemeId, metres))}
          >
            {word}
          </button>
        ))}
      </div>
      <div className="placing-row" role="group" aria-label="How the picture lies">
        <span>Picture</span>
        <button type="button" aria-pressed={!portrait} onClick={() => edit((s) => setPortrait(s, schemeId, false))}>
          Landscape
        </button>
        <button type="button" aria-pressed={portrait} onClick={() => edit((s) => setPortrait(s, schemeId, true))}>
          Portrait
        </button>
        <button
          type="button"
          title={worded('0.3 m over what it stands on, the horizon on the lower third: for silhouettes')}
          onClick={() => edit((s) => lowCamera(s, schemeId))}
        >
          Low, against the sky
        </button>
      </div>
      <SubjectInPicture schemeId={schemeId} />
      <p className="quiet">
        With the picture pressed: W A S D walk, arrow keys turn, Page Up and Page Down lift; with Shift five times as
        far.
      </p>
    </fieldset>
  );
};
