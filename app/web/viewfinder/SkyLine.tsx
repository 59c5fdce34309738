import { useFrame, useSetup } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { ReadingInLine } from '../ui/Reading.tsx';
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
        <ReadingInLine about="unlit" name={`${frame.name}: unlit, 18 % grey land`}>
          {signed(own.unlitStops)} stops
        </ReadingInLine>
      )}
      {own.outlines.slice(0, 1).map(({ subjectId, skyOverUnlitStops, skyOverLitStops }) =>
        skyOverUnlitStops === null ? null : (
          <ReadingInLine key={subjectId} about="sky-behind" name={`${frame.name}: sky behind ${nameOf(subjectId)}`}>
            {signed(skyOverUnlitStops)} stops over it unlit
            {own.passes.length > 0 && skyOverLitStops !== null ? `, ${signed(skyOverLitStops)} lit` : ''}
          </ReadingInLine>
        ),
      )}
    </>
  );
};
