import { Empty } from '../frames/Empty.tsx';
import { LightNote } from '../picture/LightNote.tsx';
import { useScreenSizes } from '../picture/use-screen-sizes.ts';
import { type SweepRun, useSweeps } from '../state/sweeps.ts';
import { OpenCell } from './OpenCell.tsx';
import { Sheet } from './Sheet.tsx';
import { SheetHead } from './SheetHead.tsx';
import { SweepBar } from './SweepBar.tsx';
import { useSheet } from './use-sheet.ts';
import { useSweptPass } from './use-swept-pass.ts';

/** A sweep that was started, with the picture that is seen large. */
const Started = ({ run }: { run: SweepRun }) => {
  const openId = useSweeps((state) => state.openId);
  const [sizes, onSize] = useScreenSizes();
  useSheet(run, sizes);
  const open = run.cells.find(({ id }) => id === openId);
  return (
    <>
      <SheetHead run={run} />
      <LightNote />
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
