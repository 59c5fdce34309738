import { infinityMetres } from '../../../core/units/focus-range.ts';
import { stepThird } from '../../../core/units/third-stops.ts';
import { useApp, useFrame, useScheme, useSetup } from '../state/app-store.ts';
import { type FrameNumber, setFrameNumber, setTint, setWhiteBalance } from '../state/edits/frame-edits.ts';
import { putHintsAway, useHints } from '../state/hints.ts';
import { Hint } from '../ui/Hint.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { parseQuantity } from '../ui/parse-quantity.ts';
import { shutterText } from '../ui/words.ts';
import { cutCounts } from './cut-counts.ts';
import { FramesDrop } from './FramesDrop.tsx';
import { useExposureEdit } from './use-exposure-edit.ts';

const tintWord = (tint: number) => (tint === 0 ? '' : tint < 0 ? ' · green' : ' · magenta');

/** Beside the fields: that they are typed into. */
const ApertureHint = () => {
  const isAway = useHints(({ away }) => away.includes('aperture'));
  const { frames } = useScheme();
  if (isAway || frames.every(({ passes }) => passes.length === 0)) return null;
  return (
    <Hint label="Fields are typed into" onPutAway={() => putHintsAway('aperture')}>
      <em>Type 2.8</em> as the aperture
    </Hint>
  );
};

/**
 * Which frame is seen, and its aperture, seconds, ISO, white balance and focus; those of all compared schemes while their
 * exposure is locked; focus in those of the same camera. Only what the focus blur needs traces anything.
 */
export const FrameLine = () => {
  const setup = useSetup();
  const scheme = useScheme();
  const frame = useFrame();
  // one frame alone is its own blend
  const showsBlend = useApp((state) => state.showsBlend) && scheme.frames.length > 1;
  const { chooseFrame, showBlend, tell } = useApp.getState();
  const { schemeIds, change, changeFocus } = useExposureEdit();
  const set = (field: FrameNumber) => (value: number) => change((s, place) => setFrameNumber(s, place, field, value));
  const setShutter = (seconds: number) => {
    const cut = cutCounts(setup, frame, schemeIds, seconds);
    set('seconds')(seconds);
    if (cut.length > 0)
      tell({
        tone: 'problem',
        text: `The shutter is shorter than a count. Cut to ${shutterText(seconds)} s: ${cut.join(', ')}. Undo gives it back.`,
      });
  };
  /** Focus on the stars is a distance too. */
  const parseFocus = (text: string) =>
    /^\s*(∞|inf(inity)?)\s*$/i.test(text) ? infinityMetres : parseQuantity(text, 'm');
  return (
    <div className="frame-line">
      <div className="choices" role="group" aria-label="What the viewfinder shows">
        {scheme.frames.map(({ id, name }) => (
          <button key={id} type="button" aria-pressed={!showsBlend && id === frame.id} onClick={() => chooseFrame(id)}>
            {name}
          </button>
        ))}
        {scheme.frames.length > 1 && (
          <button type="button" aria-pressed={showsBlend} onClick={showBlend}>
            Blend
          </button>
        )}
        <FramesDrop />
      </div>
      <div className="frame-fields" role="group" aria-label={`Camera settings of the frame ${frame.name}`}>
        {showsBlend && <span className="frame-of">{frame.name}:</span>}
        <NumberField
          label="Aperture"
          prefix="f/"
          unit=""
          value={frame.aperture}
          min={0.7}
          max={64}
          digits={1}
          step={(v, d) => stepThird('aperture', v, d)}
          onChange={set('aperture')}
        />
        <NumberField
          label="Shutter"
          unit="s"
          value={frame.seconds}
          min={1 / 8000}
          max={36000}
          format={shutterText}
          step={(v, d) => stepThird('seconds', v, d)}
          onChange={setShutter}
        />
        <NumberField
          label="ISO"
          unit=""
          value={frame.iso}
          min={25}
          max={409600}
          digits={0}
          step={(v, d) => stepThird('iso', v, d)}
          onChange={set('iso')}
        />
        <NumberField
          label="White balance"
          unit="K"
          value={frame.whiteBalance.kelvin}
          min={2000}
          max={12000}
          digits={0}
          step={100}
          onChange={(kelvin) => change((s, place) => setWhiteBalance(s, place, kelvin))}
        />
        <NumberField
          label={`Tint${tintWord(frame.whiteBalance.tint)}`}
          unit=""
          value={frame.whiteBalance.tint}
          min={-5}
          max={5}
          digits={1}
          step={0.1}
          onChange={(tint) => change((s, place) => setTint(s, place, tint))}
        />
        <NumberField
          label="Focus"
          parse={parseFocus}
          format={(metres) => (metres >= infinityMetres ? '∞' : String(Number(metres.toFixed(2))))}
          unit="m"
          value={frame.focusMetres}
          min={0.05}
          max={infinityMetres}
          digits={2}
          step={0.1}
          onChange={(metres) => changeFocus((s, place) => setFrameNumber(s, place, 'focusMetres', metres))}
        />
        <ApertureHint />
      </div>
    </div>
  );
};
