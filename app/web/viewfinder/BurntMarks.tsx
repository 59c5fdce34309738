import { useApp, useFrame, useScheme } from '../state/app-store.ts';
import { useReport } from '../state/reports.ts';
import { useSession } from '../state/session.ts';
import { Check } from '../ui/Check.tsx';
import { useWhy } from '../ui/use-why.tsx';
import { burntWords } from './burnt-words.ts';

/** The strokes that the renderer draws, as in app/web/render/shaders/develop.frag.ts. */
const strokes = [
  ['red', 'M-2 6L6 -2M2 14L14 2M10 14L14 10'],
  ['green', 'M6 -2L14 6M-2 2L10 14M-2 10L2 14'],
  ['blue', 'M0 2H12M0 6H12M0 10H12'],
] as const;

/** Whether full channels are marked in the picture; which are full, in words; and what the marks mean while they are on. */
export const BurntMarks = () => {
  const scheme = useScheme();
  const frame = useFrame();
  const report = useReport();
  const marksFull = useSession((state) => state.marks.full);
  const showsBlend = useApp((state) => state.showsBlend);
  const { mark } = useSession.getState();
  const seen = showsBlend ? scheme.frames : [frame];
  const frames = seen.flatMap(({ id, name }) => {
    const of = report?.frames.find((each) => each.id === id);
    return of ? [{ name, clipped: of.clipped }] : [];
  });
  const why = useWhy({ reading: 'burnt' }, burntWords(frames));
  return (
    <div className="burnt">
      <Check label="Mark burnt" isOn={marksFull} onChange={(isOn) => mark('full', isOn)} />
      {frames.length > 0 && <span className="burnt-words">{why.button}</span>}
      {why.text}
      {marksFull && (
        <ul className="burnt-key" aria-label="What the strokes mean">
          {strokes.map(([channel, path]) => (
            <li key={channel}>
              <svg viewBox="0 0 12 12" width={12} height={12} aria-hidden="true">
                <path d={path} />
              </svg>{' '}
              {channel} full
            </li>
          ))}
        </ul>
      )}
    </div>
  );
};
