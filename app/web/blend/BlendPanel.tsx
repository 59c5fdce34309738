import { type CSSProperties, useState } from 'react';
import { namedEntries } from '../../../core/setup/blend-entries.ts';
import { Screen } from '../picture/Screen.tsx';
import { useApp, useScheme, useSetup } from '../state/app-store.ts';
import { setBlendMode } from '../state/edits/blend-edits.ts';
import { cameraOf } from '../state/edits/place-edits.ts';
import { blendScreen, frameScreenName, useFrameScreens } from '../state/frame-screens.ts';
import { BlendPart } from './BlendPart.tsx';
import { modeWords } from './blend-words.ts';

/** How the frames of a scheme become one picture: each alone, what it counts for, and the blend beside them. */
export const BlendPanel = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const showsBlend = useApp((state) => state.showsBlend);
  const [isOpen, setIsOpen] = useState(false);
  const { edit } = useApp.getState();
  const { onSize } = useFrameScreens.getState();
  if (!showsBlend || scheme.frames.length < 2) return null;
  const { widthMm, heightMm } = cameraOf(setup, scheme.id).sensor;
  const entries = namedEntries(scheme);
  const [mode, name, says] = modeWords.find(([each]) => each === scheme.blend.mode) ?? (modeWords[0] as never);
  const taken = new Set(entries.map(({ frameId }) => frameId)).size;
  const all = scheme.frames.length;
  const count = taken < all ? `${taken} of ${all} frames` : all === 2 ? 'both frames' : `all ${all} frames`;
  const parts = scheme.frames.flatMap((frame) => {
    const own = entries.flatMap((entry, index) => (entry.frameId === frame.id ? [{ entry, index }] : []));
    return (own.length > 0 ? own : [{ entry: null, index: -1 }]).map((each, i) => ({ ...each, frame, i }));
  });
  return (
    <section className="blend" aria-label="Blend" data-open={isOpen}>
      <button type="button" className="unfold" aria-expanded={isOpen} onClick={() => setIsOpen(!isOpen)}>
        How it is blended: <strong>{name.toLowerCase()}</strong> · {count}
      </button>
      {isOpen && (
        <>
          <div className="blend-modes">
            <div className="choices" role="group" aria-label="How the frames are blended">
              {modeWords.map(([each, word]) => (
                <button
                  key={each}
                  type="button"
                  aria-pressed={each === mode}
                  onClick={() => edit((s) => setBlendMode(s, scheme.id, each))}
                >
                  {word}
                </button>
              ))}
            </div>
            <p>{says}</p>
          </div>
          <div className="blend-parts" style={{ '--aspect': widthMm / heightMm } as CSSProperties}>
            {parts.map(({ frame, entry, index, i }) => (
              <BlendPart
                key={`${frame.id}/${i}`}
                scheme={scheme}
                frame={frame}
                entry={entry}
                index={index}
                isAgain={i > 0}
                isLast={entry !== null && entries.length === 1}
              />
            ))}
            <figure className="blend-part blend-whole">
              <div className="blend-picture">
                <Screen name={frameScreenName(blendScreen)} label="The blend" onSize={onSize} />
              </div>
              <figcaption>The blend</figcaption>
            </figure>
          </div>
        </>
      )}
    </section>
  );
};
