import { type DragEvent, useEffect, useState } from 'react';
import type { GroundPoint } from '../../core/geometry/hull.ts';
import { Approaches } from './approach/Approaches.tsx';
import { BagSlot } from './bag/BagSlot.tsx';
import { BlendPanel } from './blend/BlendPanel.tsx';
import { SchemeTabs } from './compare/SchemeTabs.tsx';
import { GroundPlan } from './groundplan/GroundPlan.tsx';
import { TapeBar } from './groundplan/TapeBar.tsx';
import { BelowPlan, CompareRoom, FieldCardRoom, NightRun, SweepRoom, Walkaround } from './late-rooms.tsx';
import { LessonPanel } from './lessons/LessonPanel.tsx';
import { openAnyFile } from './library/open-any-file.ts';
import { SavingNotices } from './library/SavingNotices.tsx';
import { SetupMenu } from './library/SetupMenu.tsx';
import { saveFile } from './library/save-file.ts';
import { NightChoice } from './NightChoice.tsx';
import { HourStrip } from './place/HourStrip.tsx';
import { RoomChoice } from './RoomChoice.tsx';
import { Cautions } from './readings/Cautions.tsx';
import { FirstThings } from './readings/FirstThings.tsx';
import { Welcome } from './readings/Welcome.tsx';
import { graphicsCard } from './render/capability.ts';
import { ScanDialogSlot } from './scandialog/ScanDialogSlot.tsx';
import { ShareSlot } from './share/ShareSlot.tsx';
import { useApp } from './state/app-store.ts';
import { firstLack } from './state/first-lack.ts';
import { useLengths } from './state/lengths.ts';
import { useNightRun } from './state/night-run.ts';
import { pageSaving } from './state/page-saving.ts';
import { useReport } from './state/reports.ts';
import { type PhoneRoom, useSession } from './state/session.ts';
import { TestShotSlot } from './testshot/TestShotSlot.tsx';
import { TimeLine } from './timeline/TimeLine.tsx';
import { Icon } from './ui/Icon.tsx';
import { isTyping } from './ui/is-typing.ts';
import { writeLengthsIn } from './ui/lengths.ts';
import { Notice } from './ui/Notice.tsx';
import { StepGesture } from './ui/step-gesture.ts';
import { Viewfinder } from './viewfinder/Viewfinder.tsx';

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

const leftRooms = { viewfinder: Viewfinder, compare: CompareRoom, sweep: SweepRoom, card: FieldCardRoom } as const;

/** What a phone shows under the picture, one at a time. */
const rooms = [
  ['plan', 'Plan'],
  ['lamps', 'Lamps'],
  ['subjects', 'Subjects'],
  ['exposure', 'Exposure'],
  ['time', 'Time'],
  ['notes', 'Cautions'],
] as const satisfies readonly (readonly [PhoneRoom, string])[];

const closeNotice = () => useApp.getState().tell(null);

/** A step held down in a field is one entry of the history. */
const stepGesture = { begin: () => useApp.getState().begin(), end: () => useApp.getState().commit() };

/** What is to be said of the frames, right under them. */
const belowFrames = () => (
  <div className="below-frames">
    <BlendPanel />
    <Approaches />
    <HourStrip />
  </div>
);

/** The page: viewfinder and plan large, everything else narrow. */
export const App = () => {
  const lengths = useLengths((state) => state.lengths);
  // all that is drawn from here on is written so; what is kept as it was drawn asks for them itself
  writeLengthsIn(lengths);
  useKeys();
  useUnsavedGuard();
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
  const room = useSession((state) => state.phoneRoom);
  const isRunning = useNightRun((state) => state.isOpen);
  if (isRunning)
    return (
      <>
        <SavingNotices />
        <NightRun />
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
          {Left === Viewfinder && (lack ? <FirstThings lack={lack} /> : <Welcome />)}
          {Left === Viewfinder ? <Viewfinder belowFrames={belowFrames()} /> : <Left />}
          {Left !== Viewfinder && <HourStrip />}
          <div className="notes">
            <LessonPanel />
            <Cautions />
          </div>
        </div>
        <div className="right">
          <div className="ground">
            {isWalking && !pointing ? (
              <Walkaround />
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
          <BelowPlan />
        </div>
        {!pointing && <TimeLine />}
        <nav className="switch" aria-label="Rooms">
          {rooms.map(([id, name]) => (
            <button
              key={id}
              type="button"
              aria-pressed={room === id}
              onClick={() => useSession.getState().set({ phoneRoom: id })}
            >
              <Icon name={id} />
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
