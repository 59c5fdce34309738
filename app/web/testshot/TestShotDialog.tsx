import { useEffect, useRef, useState } from 'react';
import { useApp } from '../state/app-store.ts';
import { pageBag, useBag } from '../state/bag.ts';
import { beamOfLamp, twinOf } from '../state/bag-twins.ts';
import { correctedKept } from '../state/edits/corrected-kept.ts';
import { logPhoto } from '../state/edits/night-photo-edits.ts';
import { correctCounts } from '../state/edits/test-shot-edits.ts';
import { type TestShotWish, useSession } from '../state/session.ts';
import { FilePicker } from '../ui/FilePicker.tsx';
import { realWords } from '../ui/real-words.ts';
import '../ui/test-shot.css';
import { localText } from '../state/local-text.ts';
import { useModal } from '../ui/use-modal.ts';
import { BagCheck } from './BagCheck.tsx';
import { photoTaken } from './photo-taken.ts';
import { ShotPanes } from './ShotPanes.tsx';
import { shotOutcome } from './shot-outcome.ts';
import { useTestShot } from './use-test-shot.ts';
import { Verdict } from './Verdict.tsx';

const close = () => useSession.getState().set({ testShot: null });

/** A photo of a test frame beside the rehearsal: the same spot in both says what the lamp really gives. */
export const TestShotDialog = ({ wish }: { wish: TestShotWish }) => {
  const dialog = useModal();
  const picker = useRef<HTMLInputElement>(null);
  const [file, setFile] = useState(wish.file);
  const shot = useTestShot(file, wish);
  const { edit, tell } = useApp.getState();
  useEffect(() => {
    void pageBag.load();
  }, []);
  const { photo, scheme, frame, lamp, answer } = shot;
  const bag = useBag((state) => state.lamps);
  const own = lamp && { lamp, beam: beamOfLamp(shot.setupAsShot, lamp) };
  const twin = own && twinOf(bag, own);
  // null = not said: only one that is stated to give the same is taken for the same lamp
  const [isWanted, setIsWanted] = useState<boolean | null>(null);
  const goesIntoBag = isWanted ?? twin?.isAlike ?? false;
  const found = answer && 'lamp' in answer && 'stops' in answer.lamp ? answer.lamp : null;
  const outcome = found && lamp && shotOutcome(lamp, frame, found, photo.settings?.at ?? null);
  const taken = photoTaken(shot, file);
  const keep = (withCount: boolean) => {
    if (!own || !outcome) return;
    const { verdict, after, counts } = outcome;
    const places = (withCount && counts) || [];
    const place = { schemeId: scheme.id, frameId: frame.id };
    const counted = places.map(({ passId, to }) => ({ place: { ...place, passId }, seconds: to }));
    edit((setup) => {
      const corrected = correctCounts(setup, own.lamp.id, verdict, counted);
      return taken ? logPhoto(corrected, scheme.id, taken, localText(new Date())) : corrected;
    });
    const inBag = twin && goesIntoBag ? correctedKept(twin.kept, own, verdict).lamp : null;
    if (twin && inBag) void pageBag.correct(twin.kept.id, (kept) => correctedKept(kept, own, verdict));
    close();
    const words = realWords(after.correctionStops, after.testShots.length);
    const bagWords = inBag && realWords(inBag.correctionStops, inBag.testShots.length);
    const inBagToo = !bagWords
      ? ''
      : bagWords === words
        ? ', in your bag too'
        : `, in your bag too (there ${bagWords})`;
    tell({ tone: 'done', text: `${own.lamp.name}: ${words}${inBagToo}. Undo takes it back here` });
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
      <FilePicker picker={picker} label="Photo of a test frame" accept="image/jpeg,.jpg,.jpeg" onFile={setFile} />
      <p className="quiet">
        The photo stays on this machine: it is neither sent nor saved. JPEG only; raw files would need a converter for
        every camera.
      </p>
      {!file && (
        <p>
          The photo that you choose is put beside the rehearsal. You press the same lit spot in both, and read what the
          lamp really gives.
        </p>
      )}
      {file && photo.fault && (
        <p role="alert">
          {file.name} can’t be used. {photo.fault}. Your setup is unchanged.
        </p>
      )}
      {file && !photo.fault && !photo.picture && <p role="status">Reading the photo…</p>}
      {photo.settings && photo.picture && (
        <>
          <ShotPanes shot={shot} settings={photo.settings} picture={photo.picture} taken={taken} />
          {lamp ? (
            <Verdict
              isDrawn={shot.framePicture.picture !== null}
              answer={answer}
              isPointed={shot.isPointed}
              lamp={lamp}
              frame={frame}
              outcome={outcome}
              onLamp={() => keep(false)}
              onCount={() => keep(true)}
            />
          ) : (
            <p role="status">No lamp shines in “{frame.name}”. Choose the frame that this is a photo of.</p>
          )}
          {own && twin && found && <BagCheck own={own} twin={twin} isOn={goesIntoBag} onChange={setIsWanted} />}
        </>
      )}
    </dialog>
  );
};
