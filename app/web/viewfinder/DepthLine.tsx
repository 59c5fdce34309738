import { useApp, useFrame, useScheme } from '../state/app-store.ts';
import { focusAt } from '../state/edits/frame-edits.ts';
import { useReport } from '../state/reports.ts';
import { unsharpWords } from '../ui/depth-words.ts';
import { ReadingInLine } from '../ui/Reading.tsx';
import { metresText } from '../ui/words.ts';
import { FocusFrames } from './FocusFrames.tsx';

/** What is sharp, and where to focus when that is not enough. */
export const DepthLine = () => {
  const scheme = useScheme();
  const frame = useFrame();
  const depth = useReport()?.frames.find(({ id }) => id === frame.id)?.depth;
  const { edit } = useApp.getState();
  if (depth === null) return <div className="depth-line">No lens focuses nearer than its focal length.</div>;
  if (!depth) return null;
  const focus = (metres: number | null) =>
    edit((setup) => focusAt(setup, { schemeId: scheme.id, frameId: frame.id }, metres));
  const unsharp = unsharpWords(depth);
  const { steps, complete } = depth;
  return (
    <div className="depth-line">
      <ReadingInLine about="depth" name="Sharp">
        from {metresText(depth.nearMetres)} to {metresText(depth.farMetres)} · hyperfocal{' '}
        {metresText(depth.hyperfocalMetres)}
      </ReadingInLine>
      <button type="button" className="small" onClick={() => focus(depth.hyperfocalMetres)}>
        Focus there
      </button>
      {unsharp && <span>{unsharp}</span>}
      {unsharp && steps.length > 0 && (
        <span className="depth-steps" role="group" aria-label="Focus steps">
          {steps.length === 1 ? 'One focus does it:' : `Needs ${steps.length} focus steps:`}
          {steps.map(({ focusMetres }) => (
            <button key={focusMetres} type="button" className="small" onClick={() => focus(focusMetres)}>
              {metresText(focusMetres)}
            </button>
          ))}
          {!complete && <span>and more</span>}
        </span>
      )}
      <FocusFrames />
    </div>
  );
};
