import { Empty } from '../frames/Empty.tsx';
import { NoPicture } from '../picture/NoPicture.tsx';
import { useCardLost } from '../picture/use-scene.ts';
import { useScreenSizes } from '../picture/use-screen-sizes.ts';
import { canDrawPicture } from '../render/capability.ts';
import { type SweepRun, useSweeps } from '../state/sweeps.ts';
import { OpenCell } from './OpenCell.tsx';
import { Sheet } from './Sheet.tsx';
import { SheetHead } from './SheetHead.tsx';
import { SweepBar } from './SweepBar.tsx';
import { useSheet } from './use-sheet.ts';
import { useSweptPass } from './use-swept-pass.ts';

const able = canDrawPicture();

/** A sweep that was started, with the picture that is seen large. */
const Started = ({ run }: { run: SweepRun }) => {
  const openId = useSweeps((state) => state.openId);
  const [sizes, onSize] = useScreenSizes();
  useSheet(run, sizes);
  const isLost = useCardLost(able);
  const open = run.cells.find(({ id }) => id === openId);
  return (
    <>
      <SheetHead run={run} />
      {!able && <NoPicture />}
      {isLost && <p role="status">The graphics card was lost for a moment. The pictures go on when it is back.</p>}
      {open && <OpenCell run={run} cell={open} onSize={onSize} />}
      <Sheet run={run} onSize={onSize} />
    </>
  );
};

/** A lamp walked round its subject, raised, moved off, gelled or dimmed in steps: a sheet of small pictures. */
export const SweepRoom = () => {
  const run = useSweeps((state) => state.run);
  const place = useSweptPass();
  return (
    <section className="sweep-room" aria-label="Sweep">
      {place ? (
        <SweepBar place={place} />
      ) : (
        <Empty lacks="lamp">A sweep walks one lamp round in steps, and this scheme has none yet.</Empty>
      )}
      {run && <Started run={run} />}
    </section>
  );
};
