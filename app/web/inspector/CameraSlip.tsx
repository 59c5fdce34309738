import { bodyHeightWord } from '../../../core/units/body-height.ts';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { aimCamera, cameraOf, changeCamera, moveCamera, setDrawn, setSensor } from '../state/edits/place-edits.ts';
import { lengthWords } from '../ui/lengths.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { Slip } from '../ui/Slip.tsx';
import { DrawnFields } from './DrawnFields.tsx';
import { OwnCamera } from './OwnCamera.tsx';
import { PlaceFields } from './PlaceFields.tsx';
import { PlacingFields } from './PlacingFields.tsx';
import { SensorFields } from './SensorFields.tsx';

/** The camera as a strip that opens. */
export const CameraSlip = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const isOpen = useApp((state) => state.selection?.kind === 'camera');
  const { edit, select } = useApp.getState();
  const camera = cameraOf(setup, scheme.id);
  const set = (part: Partial<typeof camera>) => edit((s) => changeCamera(s, scheme.id, (c) => ({ ...c, ...part })));
  const { position, aim, focalLengthMm, rollDegrees } = camera;
  const head = (
    <>
      <svg viewBox="-10 -10 20 18" width={12} height={12} aria-hidden="true">
        <path d="M-9 -4H-5L-3 -9H3L5 -4H9V7H-9Z" />
      </svg>
      <strong>{scheme.camera ? 'Own camera' : 'Camera'}</strong>
      <span>
        {focalLengthMm} mm · {lengthWords(position[2], 2)} · {bodyHeightWord(position[2])}
      </span>
    </>
  );
  return (
    <Slip head={head} isOpen={isOpen} onToggle={() => select(isOpen ? null : { kind: 'camera' })}>
      <PlacingFields schemeId={scheme.id} />
      <OwnCamera setup={setup} schemeId={scheme.id} schemeName={scheme.name} />
      <div className="fields">
        <NumberField
          label="Focal length"
          unit="mm"
          value={focalLengthMm}
          min={3}
          max={2000}
          onChange={(v) => set({ focalLengthMm: v })}
        />
        <NumberField
          label="Roll"
          unit="°"
          value={rollDegrees}
          min={-180}
          max={180}
          onChange={(v) => set({ rollDegrees: v })}
        />
        <PlaceFields position={position} onChange={(to) => edit((s) => moveCamera(s, scheme.id, to))} />
        <PlaceFields of="Looks at" position={aim} onChange={(to) => edit((s) => aimCamera(s, scheme.id, to))} />
      </div>
      <SensorFields
        camera={camera}
        onSensor={(part) => edit((s) => setSensor(s, scheme.id, part))}
        onSharpness={(sharpness) => set({ sharpness })}
      />
      <DrawnFields drawn={camera.drawn} onChange={(part) => edit((s) => setDrawn(s, scheme.id, part))} />
    </Slip>
  );
};
