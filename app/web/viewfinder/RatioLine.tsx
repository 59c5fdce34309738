import { useFrame } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { ReadingInLine } from '../ui/Reading.tsx';
import { signed } from '../ui/words.ts';

/** By how much the main light leads in this frame, and what all its light together makes of the patch. */
export const RatioLine = () => {
  const frame = useFrame();
  const report = useReport()?.frames.find(({ id }) => id === frame.id);
  if (!report) return null;
  const { keyToFillStops, keyPassId, fillPassId, patch } = report;
  const nameOf = (id: string | null) => frame.passes.find((pass) => pass.id === id)?.name ?? 'moon and sky';
  return (
    <>
      {keyToFillStops !== null && (
        <ReadingInLine about="key-to-fill" name={`${frame.name}: ${nameOf(keyPassId)} over ${nameOf(fillPassId)}`}>
          {signed(keyToFillStops)} stops
        </ReadingInLine>
      )}
      {patch && (
        <ReadingInLine about="patch-all-light" name={`${frame.name}: patch in all light,`}>
          contrast {patch.rmsContrast.toFixed(2)}
        </ReadingInLine>
      )}
    </>
  );
};
