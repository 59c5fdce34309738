import { useState } from 'react';
import type { GroundPoint } from '../../core/geometry/hull.ts';
import { Approaches } from './approach/Approaches.tsx';
import { BagSlot } from './bag/BagSlot.tsx';
import { BlendPanel } from './blend/BlendPanel.tsx';
import { GroundPlan } from './groundplan/GroundPlan.tsx';
import { TapeBar } from './groundplan/TapeBar.tsx';
import { BelowPlan, CompareRoom, FieldCardRoom, NightRun, SweepRoom, Walkaround } from './late-rooms.tsx';
import { LessonPanel } from './lessons/LessonPanel.tsx';
import { openAnyFile } from './library/open-any-file.ts';
import { SavingNotices } from './library/SavingNotices.tsx';
import { saveFile } from './library/save-file.ts';
import { PhoneRooms } from './PhoneRooms.tsx';
import { useKeys, useUnsavedGuard } from './page-keys.ts';
import { HourStrip } from './place/HourStrip.tsx';
import { Cautions } from './readings/Cautions.tsx';
import { FirstThings } from './readings/FirstThings.tsx';
import { Safety } from './readings/Safety.tsx';
import { Welcome } from './readings/Welcome.tsx';
import { graphicsCard } from './render/capability.ts';
import { ScanDialogSlot } from './scandialog/ScanDialogSlot.tsx';
import { ShareSlot } from './share/ShareSlot.tsx';
import { useApp } from './state/app-store.ts';
import { firstLack } from './state/first-lack.ts';
import { useLengths } from './state/lengths.ts';
import { useNightRun } from './state/night-run.ts';
import { useSession } from './state/session.ts';
import { TopBar } from './TopBar.tsx';
import { TestShotSlot } from './testshot/TestShotSlot.tsx';
import { TimeLine } from './timeline/TimeLine.tsx';
import { writeLengthsIn } from './ui/lengths.ts';
import { Notice } from './ui/Notice.tsx';
import { StepGesture } from './ui/step-gesture.ts';
import { useDroppedFile } from './ui/use-dropped-file.ts';
import { FrameMore } from './viewfinder/FrameMore.tsx';
import { Viewfinder } from './viewfinder/Viewfinder.tsx';

const canWalk = graphicsCard().isThere;

/** The user points at the ground in answer to a lesson. */
const onPoint = (at: GroundPoint) => {
  const { pointing, set } = useSession.getState();
  if (pointing) set({ pointing: { ...pointing, at } });
};

const leftRooms = { viewfinder: Viewfinder, compare: CompareRoom, sweep: SweepRoom, card: FieldCardRoom } as const;

const closeNotice = () => useApp.getState().tell(null);

/** A step held down in a field is one entry of the history. */
const stepGesture = { begin: () => useApp.getState().begin(), end: () => useApp.getState().commit() };

/** What is to be said of the frames, under the cautions. */
const BelowFrames = () => (
  <>
    <div className="below-frames">
      <BlendPanel />
      <Approaches />
      <HourStrip />
    </div>
    <FrameMore />
  </>
);

/** The page: viewfinder and plan large, everything else narrow. */
export const App = () => {
  const lengths = useLengths((state) => state.lengths);
  // all that is drawn from here on is written so; what is kept as it was drawn asks for them itself
  writeLengthsIn(lengths);
  useKeys();
  useUnsavedGuard();
  const notice = useApp((state) => state.notice);
  const [isWalking, setIsWalking] = useState(false);
  const Left = leftRooms[useSession((state) => state.room)];
  const pointing = useSession((state) => state.pointing);
  const lack = useApp((state) => firstLack(state.history.present));
  const isWide = useSession((state) => state.isWide);
  const room = useSession((state) => state.phoneRoom);
  const isRunning = useNightRun((state) => state.isOpen);
  useDroppedFile(isRunning ? null : openAnyFile);
  if (isRunning)
    return (
      <>
        <SavingNotices />
        <NightRun />
      </>
    );
  return (
    <StepGesture.Provider value={stepGesture}>
      <main className="page" data-room={room} data-wide={isWide && Left !== Viewfinder}>
        <TopBar />
        {notice && <Notice key={notice.text} {...notice} onClose={closeNotice} />}
        <div className="left">
          {Left === Viewfinder && (lack ? <FirstThings lack={lack} /> : <Welcome />)}
          <Left />
          {Left !== Viewfinder && <HourStrip />}
          <div className="notes">
            <LessonPanel />
            <Cautions />
          </div>
          {Left === Viewfinder && <BelowFrames />}
          <Safety />
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
        <PhoneRooms />
        <ScanDialogSlot />
        <ShareSlot onSaveFile={saveFile} />
        <TestShotSlot />
        <BagSlot />
        <SavingNotices />
      </main>
    </StepGesture.Provider>
  );
};
