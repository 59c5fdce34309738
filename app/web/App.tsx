import { type DragEvent, lazy, Suspense, useEffect, useState } from 'react';
import type { GroundPoint } from '../../core/geometry/hull.ts';
import { Approaches } from './approach/Approaches.tsx';
import { BagSlot, loadBag } from './bag/BagSlot.tsx';
import { BlendPanel } from './blend/BlendPanel.tsx';
import { CompareRoom } from './compare/CompareRoom.tsx';
import { SchemeTabs } from './compare/SchemeTabs.tsx';
import { fetchCardFiles, loadFieldCard } from './fieldcard/fetch-early.ts';
import { GroundPlan } from './groundplan/GroundPlan.tsx';
import { TapeBar } from './groundplan/TapeBar.tsx';
import { Slips } from './inspector/Slips.tsx';
import { Subjects } from './inspector/subjects/Subjects.tsx';
import { LessonPanel } from './lessons/LessonPanel.tsx';
import { openAnyFile } from './library/open-any-file.ts';
import { SavingNotices } from './library/SavingNotices.tsx';
import { fetchLibraryFiles, SetupMenu } from './library/SetupMenu.tsx';
import { saveFile } from './library/save-file.ts';
import { NightChoice } from './NightChoice.tsx';
import { fetchNightRunFiles, loadNightRun } from './nightrun/fetch-early.ts';
import { fetchPlaceFiles } from './place/fetch-early.ts';
import { HourStrip } from './place/HourStrip.tsx';
import { PlaceSlip } from './place/PlaceSlip.tsx';
import { RoomChoice } from './RoomChoice.tsx';
import { Cautions } from './readings/Cautions.tsx';
import { FirstThings } from './readings/FirstThings.tsx';
import { Welcome } from './readings/Welcome.tsx';
import { graphicsCard } from './render/capability.ts';
import { ScanDialogSlot } from './scandialog/ScanDialog.tsx';
import { fetchShareFiles, ShareSlot } from './share/ShareSlot.tsx';
import { useApp } from './state/app-store.ts';
import { firstLack } from './state/empty-setup.ts';
import { useNightRun } from './state/night-run.ts';
import { pageSaving } from './state/page-saving.ts';
import { useReport } from './state/reports.ts';
import { fetchKept } from './state/samples.ts';
import { useSession } from './state/session.ts';
import { SweepRoom } from './sweep/SweepRoom.tsx';
import { loadTestShot, TestShotSlot } from './testshot/TestShotSlot.tsx';
import { TimeLine } from './timeline/TimeLine.tsx';
import { isTyping } from './ui/is-typing.ts';
import { Notice } from './ui/Notice.tsx';
import { StepGesture } from './ui/step-gesture.ts';
import { Viewfinder } from './viewfinder/Viewfinder.tsx';

const loadWalkaround = () => import('./walkaround/Walkaround.tsx');
const Walkaround = lazy(() =>
  loadWalkaround().catch(() => ({ default: () => <p className="quiet">The walkaround could not be loaded.</p> })),
);
const FieldCard = lazy(() =>
  loadFieldCard().catch(() => ({ default: () => <p className="quiet">The card could not be loaded.</p> })),
);
const NightRun = lazy(() =>
  loadNightRun().catch(() => ({ default: () => <p className="quiet">This page could not be loaded.</p> })),
);
const canWalk = graphicsCard().isThere;

const useKeys = () => {
  useEffect(() => {
    const onKeyDown = (event: KeyboardEvent) => {
      const { undo, redo, cancel } = useApp.getState();
      const key = event.key.toLowerCase();
      if (event.key === 'Escape') cancel();
      // a field with half-typed text undoes its own letters
      if (!(event.ctrlKey || event.metaKey) || isTyping(event.target)) return;
      if (key === 'z' || key === 'y') event.preventDefault();
      if (key === 'y' || (key === 'z' && event.shiftKey)) redo();
      else if (key === 'z') undo();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, []);
};

/** The browser asks before it throws away what could not be kept. */
const useUnsavedGuard = () => {
  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      if (pageSaving.wouldLose) event.preventDefault();
    };
    window.addEventListener('beforeunload', onLeave);
    return () => window.removeEventListener('beforeunload', onLeave);
  }, []);
};

/** What comes in files of its own is fetched once the page is at rest, so that it is there when the network is not. */
const useEarlyFiles = () => {
  useEffect(() => {
    const timer = setTimeout(() => {
      void loadWalkaround().catch(() => undefined);
      void fetchKept();
      void fetchPlaceFiles();
      void fetchShareFiles();
      void fetchNightRunFiles();
      void fetchCardFiles();
      void loadTestShot().catch(() => undefined);
      void loadBag().catch(() => undefined);
      void fetchLibraryFiles();
    }, 4000);
    return () => clearTimeout(timer);
  }, []);
};

const onDrop = (event: DragEvent) => {
  event.preventDefault();
  const [file] = event.dataTransfer.files;
  if (file) openAnyFile(file);
};

/** The user points at the ground in answer to a lesson. */
const onPoint = (at: GroundPoint) => {
  const { pointing, set } = useSession.getState();
  if (pointing) set({ pointing: { ...pointing, at } });
};

const leftRooms = { viewfinder: Viewfinder, compare: CompareRoom, sweep: SweepRoom, card: FieldCard } as const;

/** What a phone shows under the picture, one at a time. */
const rooms = [
  ['plan', 'Plan'],
  ['lamps', 'Lamps'],
  ['subjects', 'Subjects'],
  ['exposure', 'Exposure'],
  ['time', 'Time'],
  ['notes', 'Cautions'],
] as const;

const closeNotice = () => useApp.getState().tell(null);

/** A step held down in a field is one entry of the history. */
const stepGesture = { begin: () => useApp.getState().begin(), end: () => useApp.getState().commit() };

/** What is to be said of the frames, right under them. */
const belowFrames = (
  <div className="below-frames">
    <BlendPanel />
    <Approaches />
    <HourStrip />
  </div>
);

/** The page: viewfinder and plan large, everything else narrow. */
export const App = () => {
  useKeys();
  useUnsavedGuard();
  useEarlyFiles();
  const notice = useApp((state) => state.notice);
  const canUndo = useApp((state) => state.history.past.length > 0);
  const canRedo = useApp((state) => state.history.future.length > 0);
  const cautionCount = useReport()?.cautions.length ?? 0;
  const { undo, redo } = useApp.getState();
  const [isWalking, setIsWalking] = useState(false);
  const Left = leftRooms[useSession((state) => state.room)];
  const pointing = useSession((state) => state.pointing);
  const lack = useApp((state) => firstLack(state.history.present));
  const isWide = useSession((state) => state.isWide);
  const [room, setRoom] = useState<(typeof rooms)[number][0]>('plan');
  const isRunning = useNightRun((state) => state.isOpen);
  if (isRunning)
    return (
      <>
        <SavingNotices />
        <Suspense fallback={<p className="quiet">Coming…</p>}>
          <NightRun />
        </Suspense>
      </>
    );
  return (
    <StepGesture.Provider value={stepGesture}>
      <main
        className="page"
        data-room={room}
        data-wide={isWide && Left !== Viewfinder}
        onDragOver={(event) => event.preventDefault()}
        onDrop={onDrop}
      >
        <header className="top">
          <SetupMenu />
          <SchemeTabs />
          <RoomChoice />
          <div className="choices steps">
            <NightChoice />
            <button type="button" disabled={!canUndo} onClick={undo}>
              Undo
            </button>
            <button type="button" disabled={!canRedo} onClick={redo}>
              Redo
            </button>
          </div>
        </header>
        {notice && <Notice key={notice.text} {...notice} onClose={closeNotice} />}
        <div className="left">
          {Left === Viewfinder ? (
            <Viewfinder belowFrames={belowFrames} />
          ) : (
            <Suspense fallback={<p className="quiet">Coming…</p>}>
              <Left />
            </Suspense>
          )}
          {Left !== Viewfinder && <HourStrip />}
          <div className="notes">
            {Left === Viewfinder && lack && <FirstThings lack={lack} />}
            <LessonPanel />
            <Cautions />
            {Left === Viewfinder && !lack && <Welcome />}
          </div>
        </div>
        <div className="right">
          <div className="ground">
            {isWalking && !pointing ? (
              <Suspense fallback={<p className="quiet">Coming…</p>}>
                <Walkaround />
              </Suspense>
            ) : (
              <GroundPlan {...(pointing ? { pointing: { ...pointing, onPoint } } : {})} />
            )}
            {!pointing && (
              <button
                type="button"
                className="walk"
                disabled={!canWalk}
                title={canWalk ? undefined : 'The view from any side needs WebGL2, which this browser does not give'}
                aria-pressed={isWalking}
                onClick={() => setIsWalking(!isWalking)}
              >
                {isWalking ? 'From above' : 'Any side'}
              </button>
            )}
          </div>
          {!pointing && <TapeBar />}
          <Slips />
          <PlaceSlip />
          <Subjects />
        </div>
        {!pointing && <TimeLine />}
        <nav className="switch" aria-label="Rooms">
          {rooms.map(([id, name]) => (
            <button key={id} type="button" aria-pressed={room === id} onClick={() => setRoom(id)}>
              {id === 'notes' && cautionCount > 0 ? `${name} · ${cautionCount}` : name}
            </button>
          ))}
        </nav>
        <ScanDialogSlot />
        <ShareSlot onSaveFile={saveFile} />
        <TestShotSlot />
        <BagSlot />
        <SavingNotices />
      </main>
    </StepGesture.Provider>
  );
};
