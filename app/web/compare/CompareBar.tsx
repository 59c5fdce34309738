import { SaveSheet } from '../sheets/SaveSheet.tsx';
import { useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { MakeSchemes } from './MakeSchemes.tsx';
import { MarkDrop } from './MarkDrop.tsx';
import { SchemeChecks } from './SchemeChecks.tsx';
import { sheetOfTiles } from './sheet-of-tiles.ts';

const views = [
  ['Side by side', null],
  ['Wipe', 'wipe'],
  ['Difference', 'difference'],
] as const;

/** How schemes are compared, which of them, and what is held alike. */
export const CompareBar = () => {
  const { pair, showsUnlit, locksExposure, isWide, set } = useSession();
  return (
    <div className="compare-bar">
      <div className="choices" role="group" aria-label="How they are compared">
        {views.map(([name, kind]) => (
          <button
            key={name}
            type="button"
            aria-pressed={(pair?.kind ?? null) === kind}
            onClick={() => set({ pair: kind && { kind, a: pair?.a ?? '', b: pair?.b ?? '' } })}
          >
            {name}
          </button>
        ))}
      </div>
      <div className="choices">
        <SchemeChecks />
        <MakeSchemes />
        {pair?.kind !== 'difference' && <MarkDrop />}
        {!pair && <SaveSheet describe={sheetOfTiles} />}
      </div>
      <div className="compare-checks">
        {!pair && <Check label="Unlit" isOn={showsUnlit} onChange={(isOn) => set({ showsUnlit: isOn })} />}
        <Check label="Lock exposure" isOn={locksExposure} onChange={(isOn) => set({ locksExposure: isOn })} />
        <Check label="Tiles only" isOn={isWide} onChange={(isOn) => set({ isWide: isOn })} />
      </div>
    </div>
  );
};
