import { FrameLine } from '../frames/FrameLine.tsx';
import { LevelKey } from '../picture/LevelKey.tsx';
import { LightNote } from '../picture/LightNote.tsx';
import { useScheme, useSetup } from '../state/app-store.ts';
import type { Pair } from '../state/compared-schemes.ts';
import { useComparedSchemes } from '../state/schemes-on-screen.ts';
import { useSession } from '../state/session.ts';
import { CompareBar } from './CompareBar.tsx';
import { DifferenceView } from './DifferenceView.tsx';
import { duplicateHere } from './duplicate-here.ts';
import { ExposureNote } from './ExposureNote.tsx';
import { PairBar } from './PairBar.tsx';
import { Tiles } from './Tiles.tsx';
import { usePair } from './use-pair.ts';
import { WipeView } from './WipeView.tsx';

const PairOnPage = ({ chosen }: { chosen: Pair }) => {
  const pair = usePair(chosen);
  return (
    <>
      <PairBar kind={chosen.kind} pair={pair} />
      {chosen.kind === 'wipe' ? <WipeView pair={pair} /> : <DifferenceView pair={pair} />}
    </>
  );
};

/** What there is to do where there is nothing to compare, or where what was chosen is not to be seen. */
const Hint = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const compared = useComparedSchemes();
  const { set } = useSession.getState();
  if (setup.schemes.length === 1)
    return (
      <p className="compare-hint">
        <span>There is one scheme only. Duplicate it, change one thing, and see both.</span>
        <button type="button" onClick={() => duplicateHere(scheme.id)}>
          Duplicate to compare
        </button>
      </p>
    );
  if (compared.some(({ id }) => id === scheme.id)) return null;
  const ids = [...compared.map(({ id }) => id).slice(0, 5), scheme.id];
  return (
    <p className="compare-hint">
      <span>Plan and lamps are those of {scheme.name}, which is not among the tiles.</span>
      <button type="button" onClick={() => set({ comparedIds: ids })}>
        Put it there
      </button>
    </p>
  );
};

/** Schemes of one setup side by side or laid over each other, with camera and exposure alike. */
export const CompareRoom = () => {
  const pair = useSession((state) => state.pair);
  const hidesAnswer = useSession((state) => state.hidesAnswer);
  const showsLevels = useSession((state) => state.marks.levels && state.pair?.kind !== 'difference');
  return (
    <section className="compare" aria-label="Compare">
      <CompareBar />
      <Hint />
      <ExposureNote />
      {showsLevels && <LevelKey of="levels" words="stops from mid-grey" />}
      {hidesAnswer && <p className="quiet">Hidden until you have pointed.</p>}
      {!hidesAnswer && (pair ? <PairOnPage chosen={pair} /> : <Tiles />)}
      <LightNote />
      <FrameLine />
    </section>
  );
};
