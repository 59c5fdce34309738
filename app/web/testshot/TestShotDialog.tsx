import { useEffect, useRef, useState } from 'react';
import { useApp } from '../state/app-store.ts';
import { correctedKept, pageBag, twinOf, useBag } from '../state/bag.ts';
import { addTestShot, correctCounts } from '../state/edits/test-shot-edits.ts';
import { type TestShotWish, useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { realWords } from '../ui/shot-words.ts';
import { countChanges } from './count-changes.ts';
import { ShotPanes } from './ShotPanes.tsx';
import { useTestShot } from './use-test-shot.ts';
import { Verdict } from './Verdict.tsx';

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
  const counts = found && lamp ? countChanges(frame, lamp.id, found.stops) : null;
  const keep = (withCount: boolean) => {
    if (!lamp || !found) return;
    const verdict = {
      at: photo.settings?.at ?? null,
      stops: lamp.correctionStops + found.stops,
      uncertaintyStops: found.uncertaintyStops,
    };
    edit((setup) =>
      withCount && counts
        ? correctCounts(
            setup,
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
          <ShotPanes shot={shot} settings={photo.settings} picture={photo.picture} />
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
