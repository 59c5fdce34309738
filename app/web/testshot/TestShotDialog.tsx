import { useEffect, useRef, useState } from 'react';
import type { PhotoLook } from '../../../core/testshot/photo-look.ts';
import { CrossPicture } from '../photo/CrossPicture.tsx';
import { DrawnPhoto } from '../photo/DrawnPhoto.tsx';
import { useApp } from '../state/app-store.ts';
import { correctedKept, pageBag, twinOf, useBag } from '../state/bag.ts';
import { changeCamera } from '../state/edits/place-edits.ts';
import { addTestShot, correctCounts, takePhotoSettings } from '../state/edits/test-shot-edits.ts';
import { type TestShotWish, useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { Choice } from '../ui/Choice.tsx';
import { realWords } from '../ui/shot-words.ts';
import { countChanges } from './count-changes.ts';
import { FramePicture } from './FramePicture.tsx';
import { spotRadius } from './judge-shot.ts';
import { PhotoFacts } from './PhotoFacts.tsx';
import { useTestShot } from './use-test-shot.ts';
import { Verdict } from './Verdict.tsx';

const looks: readonly (readonly [PhotoLook, string])[] = [
  ['unknown', 'not known'],
  ['neutral', 'neutral, no curve'],
  ['standard', 'the camera’s standard'],
];

const close = () => useSession.getState().set({ testShot: null });

/** A photo of a test frame beside the rehearsal: the same spot in both says what the lamp really gives. */
export const TestShotDialog = ({ wish }: { wish: TestShotWish }) => {
  const dialog = useRef<HTMLDialogElement>(null);
  const picker = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState(wish.file);
  const shot = useTestShot(file, wish);
  const { edit, tell } = useApp.getState();
  useEffect(() => {
    dialog.current?.showModal();
    void pageBag.load();
  }, []);
  const { photo, scheme, frame, lamp, answer } = shot;
  const bag = useBag((state) => state.lamps);
  const twin = lamp && twinOf(bag, lamp);
  const [goesIntoBag, setGoesIntoBag] = useState(true);
  const place = { schemeId: scheme.id, frameId: frame.id };
  const found = answer && 'lamp' in answer && 'stops' in answer.lamp ? answer.lamp : null;
  const counts = found && lamp ? countChanges(shot.frameAsShot, lamp.id, found.stops) : null;
  const keep = (withCount: boolean) => {
    if (!lamp || !found || !photo.settings) return;
    const { settings } = photo;
    const verdict = {
      at: settings.at,
      stops: lamp.correctionStops + found.stops,
      uncertaintyStops: found.uncertaintyStops,
    };
    edit((setup) =>
      withCount && counts
        ? correctCounts(
            takePhotoSettings(setup, place, settings),
            lamp.id,
            verdict,
            counts.map(({ passId, to }) => ({ place: { ...place, passId }, seconds: to })),
          )
        : addTestShot(setup, lamp.id, verdict),
    );
    if (twin && goesIntoBag) void pageBag.put(correctedKept(twin, verdict));
    close();
    const after = useApp.getState().history.present.lamps.find(({ id }) => id === lamp.id);
    if (after)
      tell({
        tone: 'done',
        text: `${lamp.name}: ${realWords(after.correctionStops, after.testShots.length)}${twin && goesIntoBag ? ', in your bag too' : ''}. Undo takes it back here`,
      });
  };
  return (
    <dialog
      ref={dialog}
      className="shot-dialog"
      aria-labelledby="shot-title"
      onClose={close}
      onDragOver={(event) => event.preventDefault()}
      onDrop={(event) => {
        event.preventDefault();
        event.stopPropagation();
        setFile(event.dataTransfer.files[0] ?? file);
      }}
    >
      <div className="shot-top">
        <h2 id="shot-title">{file ? `Test shot: ${file.name}` : 'Test shot'}</h2>
        <button type="button" onClick={() => picker.current?.click()}>
          {file ? 'Another photo…' : 'Choose a JPEG…'}
        </button>
        <button type="button" onClick={close}>
          Close
        </button>
      </div>
      <input
        ref={picker}
        type="file"
        accept="image/jpeg,.jpg,.jpeg"
        aria-label="Photo of a test frame"
        data-test-shot
        hidden
        onChange={(event) => {
          const [given] = event.currentTarget.files ?? [];
          event.currentTarget.value = '';
          if (given) setFile(given);
        }}
      />
      <p className="quiet">
        The photo stays on this machine: it is neither sent nor saved. JPEG only; raw files would need a converter for
        every camera.
      </p>
      {file && photo.fault && (
        <p role="alert">
          {file.name} can’t be used. {photo.fault}. Your setup is unchanged.
        </p>
      )}
      {file && !photo.fault && !photo.picture && <p role="status">Reading the photo…</p>}
      {photo.settings && photo.picture && (
        <>
          <div className="shot-panes">
            <section aria-label="Photo">
              <CrossPicture
                label="The photo: press the lit spot."
                place={shot.inPhoto}
                radius={spotRadius}
                aspect={photo.picture.width / photo.picture.height}
                onPlace={shot.setInPhoto}
              >
                <DrawnPhoto photo={photo.picture} />
              </CrossPicture>
              <PhotoFacts
                settings={photo.settings}
                frameName={frame.name}
                focalLengthMm={shot.camera.focalLengthMm}
                isTaken={shot.frameAsShot === frame}
                onTake={() => photo.settings && edit((s) => takePhotoSettings(s, place, photo.settings as never))}
                onTakeFocalLength={() =>
                  edit((s) =>
                    changeCamera(s, scheme.id, (camera) => ({
                      ...camera,
                      focalLengthMm: photo.settings?.focalLengthMm ?? camera.focalLengthMm,
                    })),
                  )
                }
              />
            </section>
            <section aria-label="Rehearsal">
              <CrossPicture
                label={`“${frame.name}” as rehearsed: press the same spot.`}
                place={shot.inPicture}
                radius={spotRadius}
                aspect={shot.aspect}
                onPlace={shot.setInPicture}
              >
                <FramePicture
                  setup={shot.setupAsShot}
                  scheme={shot.schemeAsShot}
                  frame={shot.frameAsShot}
                  aspect={shot.aspect}
                />
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
                <Choice
                  label="Look of the photo"
                  value={shot.look}
                  options={looks}
                  onChange={(look) => shot.setLook(look as PhotoLook)}
                />
              </div>
            </section>
          </div>
          {lamp ? (
            <Verdict
              answer={answer}
              lamp={lamp}
              frame={frame}
              counts={counts}
              onLamp={() => keep(false)}
              onCount={() => keep(true)}
            />
          ) : (
            <p role="status">No lamp shines in “{frame.name}”. Choose the frame that this is a photo of.</p>
          )}
          {twin && found && <Check label="Correct it in my bag too" isOn={goesIntoBag} onChange={setGoesIntoBag} />}
        </>
      )}
    </dialog>
  );
};
