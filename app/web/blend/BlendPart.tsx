import type { NamedEntry } from '../../../core/setup/blend-entries.ts';
import type { Frame, Scheme } from '../../../core/setup/schema/setup.ts';
import { Screen } from '../picture/Screen.tsx';
import { useApp, useSetup } from '../state/app-store.ts';
import { addToBlend, changeBlendEntry, leaveOutOfBlend, repeatInBlend } from '../state/edits/blend-edits.ts';
import { frameScreenName, useFrameScreens } from '../state/frame-screens.ts';
import { Check } from '../ui/Check.tsx';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { weightWords, whereChosen, whereOptions, whereValue } from './blend-words.ts';

interface BlendPartProps {
  readonly scheme: Scheme;
  readonly frame: Frame;
  /** Its entry in the blend and the place of that; null = it is left out. */
  readonly entry: NamedEntry | null;
  readonly index: number;
  /** Whether the frame has an entry before this one; one picture of it is enough. */
  readonly isAgain: boolean;
  /** Whether it is all that the blend has. */
  readonly isLast: boolean;
}

/** One frame on its own, and how it counts in the blend. */
export const BlendPart = ({ scheme, frame, entry, index, isAgain, isLast }: BlendPartProps) => {
  const setup = useSetup();
  const name = isAgain ? `${frame.name}, again` : frame.name;
  const { edit } = useApp.getState();
  const { onSize } = useFrameScreens.getState();
  const change = (part: Partial<NamedEntry>) => edit((s) => changeBlendEntry(s, scheme.id, index, part));
  const turn = (isOn: boolean) =>
    edit((s) => (isOn ? addToBlend(s, scheme.id, frame.id) : leaveOutOfBlend(s, scheme.id, index)));
  return (
    <fieldset className="blend-part" data-out={entry === null} aria-label={`${name} in the blend`}>
      <div className={isAgain ? 'blend-picture blend-again quiet' : 'blend-picture'}>
        {isAgain ? (
          'the same frame'
        ) : (
          <Screen name={frameScreenName(frame.id)} label={`${frame.name} alone`} onSize={onSize} />
        )}
      </div>
      {/* the last one can't be left out: a blend of nothing is no picture */}
      <fieldset className="plain" disabled={isLast}>
        <Check label={name} isOn={entry !== null} onChange={turn} />
      </fieldset>
      {entry && (
        <>
          <div className="blend-weight">
            <NumberField
              label="Weight"
              unit="×"
              value={entry.weight}
              min={0}
              max={4}
              step={0.1}
              onChange={(weight) => change({ weight })}
            />
            <span className="quiet">{weightWords(entry.weight)}</span>
          </div>
          <Choice
            label="Counts"
            value={whereValue(entry)}
            options={whereOptions(setup.subjects)}
            onChange={(value) => change(whereChosen(value))}
          />
          {entry.where !== 'everything' && (
            <>
              <NumberField
                label="Feather"
                unit="px"
                value={entry.featherPixels}
                min={0}
                max={500}
                digits={0}
                step={5}
                onChange={(pixels) => change({ featherPixels: Math.round(pixels) })}
              />
              <button type="button" className="small" onClick={() => edit((s) => repeatInBlend(s, scheme.id, index))}>
                And elsewhere
              </button>
            </>
          )}
        </>
      )}
    </fieldset>
  );
};
