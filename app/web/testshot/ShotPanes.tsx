import type { NightPhoto } from '../../../core/setup/schema/setup.ts';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import type { PhotoSettings } from '../../../core/testshot/photo-settings.ts';
import { CrossPicture } from '../photo/CrossPicture.tsx';
import { DrawnPhoto } from '../photo/DrawnPhoto.tsx';
import { useApp } from '../state/app-store.ts';
import { logPhoto } from '../state/edits/night-photo-edits.ts';
import { changeCamera } from '../state/edits/place-edits.ts';
import { takePhotoSettings } from '../state/edits/test-shot-edits.ts';
import { localText } from '../state/local-text.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { FramePicture } from './FramePicture.tsx';
import { spotRadius } from './judge-shot.ts';
import { PhotoFacts } from './PhotoFacts.tsx';
import type { TestShot } from './use-test-shot.ts';

const looks: readonly (readonly [PhotoLook, string])[] = [
  ['unknown', 'not known'],
  ['neutral', 'neutral, no curve'],
  ['standard', 'the camera’s standard'],
];

interface ShotPanesProps {
  readonly shot: TestShot;
  readonly settings: PhotoSettings;
  readonly picture: ImageBitmap;
  /** For the log of nights. */
  readonly taken: NightPhoto | null;
}

/** The photo and the rehearsal side by side, each with its cross, and what is known of them. */
export const ShotPanes = ({ shot, settings, picture, taken }: ShotPanesProps) => {
  const { scheme, frame, lamp } = shot;
  const { edit } = useApp.getState();
  const place = { schemeId: scheme.id, frameId: frame.id };
  return (
    <div className="shot-panes">
      <section aria-label="Photo">
        <CrossPicture
          label="The photo: press the lit spot."
          place={shot.inPhoto}
          radius={spotRadius}
          aspect={picture.width / picture.height}
          onPlace={shot.setInPhoto}
        >
          <DrawnPhoto photo={picture} />
        </CrossPicture>
        <PhotoFacts
          settings={settings}
          frameName={frame.name}
          focalLengthMm={shot.camera.focalLengthMm}
          isTaken={shot.isTaken}
          onTake={() =>
            edit((s) => {
              const exposed = takePhotoSettings(s, place, settings);
              return taken ? logPhoto(exposed, scheme.id, taken, localText(new Date())) : exposed;
            })
          }
          onTakeFocalLength={() =>
            edit((s) =>
              changeCamera(s, scheme.id, (camera) => ({
                ...camera,
                focalLengthMm: settings.focalLengthMm ?? camera.focalLengthMm,
              })),
            )
          }
        />
      </section>
      <section aria-label="Rehearsal">
        <CrossPicture
          label={`“${frame.name}” as rehearsed: press the same spot.`}
          place={shot.framePicture.picture ? shot.inPicture : null}
          radius={spotRadius}
          aspect={shot.aspect}
          onPlace={shot.setInPicture}
        >
          <FramePicture seen={shot.framePicture} />
        </CrossPicture>
        <div className="shot-choices">
          {scheme.frames.length > 1 && (
            <Choice
              label="Frame"
              value={frame.id}
              options={scheme.frames.map(({ id, name }) => [id, name] as const)}
              onChange={shot.setFrameId}
            />
          )}
          {shot.lamps.length > 0 && lamp && (
            <Choice
              label="Lamp"
              value={lamp.id}
              options={shot.lamps.map(({ id, name }) => [id, name] as const)}
              onChange={shot.setLampId}
            />
          )}
          {shot.held.map(({ pass, seconds }) => (
            <NumberField
              key={pass.id}
              label={shot.held.length > 1 ? `Counted, ${pass.name}` : 'Counted'}
              value={seconds}
              unit="s"
              min={0.05}
              max={shot.frameAsShot.seconds}
              digits={1}
              onChange={(value) => shot.setHeld(pass.id, value)}
            />
          ))}
          <Choice
            label="Look of the photo"
            value={shot.look}
            options={looks}
            onChange={(look) => shot.setLook(look as PhotoLook)}
          />
        </div>
      </section>
    </div>
  );
};
