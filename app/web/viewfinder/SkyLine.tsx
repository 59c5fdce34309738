import { useFrame, useSetup } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { signed } from '../ui/words.ts';

/** What the night gives without lamps in this frame: open land, and the subject before its sky. */
export const SkyLine = () => {
  const frame = useFrame();
  const { subjects } = useSetup();
  const own = useReport()?.frames.find(({ id }) => id === frame.id);
  if (!own) return null;
  const nameOf = (id: string) => subjects.find((subject) => subject.id === id)?.name ?? id;
  return (
    <>
      {own.unlitStops !== null && (
        <span title="Level ground of 18 % under moon and sky alone, from mid-grey">
          {frame.name}: unlit, 18 % grey land {signed(own.unlitStops)} stops
        </span>
      )}
      {own.outlines.slice(0, 1).map(({ subjectId, skyOverUnlitStops, skyOverLitStops }) =>
        skyOverUnlitStops === null ? null : (
          <span key={subjectId} title="The sky right behind its outline against what is seen of it: the median of each">
            {frame.name}: sky behind {nameOf(subjectId)} {signed(skyOverUnlitStops)} stops over it unlit
            {own.passes.length > 0 && skyOverLitStops !== null ? `, ${signed(skyOverLitStops)} lit` : ''}
          </span>
        ),
      )}
    </>
  );
};
