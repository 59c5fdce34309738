import type { Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import {
  cameraOf,
  dropOwnCamera,
  giveOwnCamera,
  sameSizeCamera,
  setFocalLengthSameSize,
} from '../state/edits/place-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';

/** Lenses that are tried most, full frame. */
const lensesMm = [24, 35, 50, 85] as const;

interface OwnCameraProps {
  readonly setup: Setup;
  readonly schemeId: string;
  readonly schemeName: string;
}

/** Whose camera the scheme is seen with, and other lenses with the subject kept the same size. */
export const OwnCamera = ({ setup, schemeId, schemeName }: OwnCameraProps) => {
  const { edit, tell } = useApp.getState();
  const camera = cameraOf(setup, schemeId);
  const hasOwn = setup.schemes.some(({ id, camera: own }) => id === schemeId && own !== null);
  const tryLens = (mm: number) => {
    if (sameSizeCamera(camera, mm)) edit((s) => setFocalLengthSameSize(s, schemeId, mm));
    else
      tell({
        tone: 'problem',
        text: `No place for ${mm} mm: the camera would have to come nearer than its height lets it. Bring its height nearer to that of what it looks at.`,
      });
  };
  return (
    <fieldset className="camera-group">
      <legend>Seen with</legend>
      <div className="choices">
        <button type="button" aria-pressed={!hasOwn} onClick={() => edit((s) => dropOwnCamera(s, schemeId))}>
          The setup’s camera
        </button>
        <button type="button" aria-pressed={hasOwn} onClick={() => edit((s) => giveOwnCamera(s, schemeId))}>
          A camera of its own
        </button>
      </div>
      <p className="quiet">
        {hasOwn
          ? `What is changed here is changed in ${schemeName} alone.`
          : 'What is changed here is changed in every scheme without a camera of its own.'}
      </p>
      <div className="same-size" role="group" aria-label="Another lens, subject kept the same size">
        <span>Another lens, subject kept the same size, mm:</span>
        {lensesMm.map((mm) => (
          <button
            key={mm}
            type="button"
            aria-label={`${mm} mm`}
            aria-pressed={Math.abs(camera.focalLengthMm - mm) < 0.05}
            onClick={() => tryLens(mm)}
          >
            {mm}
          </button>
        ))}
        <NumberField label="Other lens" unit="mm" value={camera.focalLengthMm} min={3} max={2000} onChange={tryLens} />
      </div>
    </fieldset>
  );
};
