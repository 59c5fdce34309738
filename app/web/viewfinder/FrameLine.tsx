import { stepThird } from '../../../core/units/third-stops.ts';
import { useApp, useFrame, useScheme } from '../state/app-store.ts';
import { type FrameNumber, setFrameNumber, setWhiteBalance } from '../state/edits/frame-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';

const shutter = (seconds: number) =>
  seconds < 0.3 ? `1/${Math.round(1 / seconds)}` : String(Number(seconds.toFixed(2)));

/** Which frame is seen, and its aperture, seconds, ISO, white balance and focus. Nothing here traces anything. */
export const FrameLine = () => {
  const scheme = useScheme();
  const frame = useFrame();
  const showsBlend = useApp((state) => state.showsBlend);
  const { chooseFrame, showBlend, edit } = useApp.getState();
  const place = { schemeId: scheme.id, frameId: frame.id };
  const set = (field: FrameNumber) => (value: number) => edit((setup) => setFrameNumber(setup, place, field, value));
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
          format={shutter}
          step={(v, d) => stepThird('seconds', v, d)}
          onChange={set('seconds')}
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
          onChange={(kelvin) => edit((setup) => setWhiteBalance(setup, place, kelvin))}
        />
        <NumberField
          label="Focus"
          unit="m"
          value={frame.focusMetres}
          min={0.05}
          max={10000}
          digits={2}
          step={0.1}
          onChange={set('focusMetres')}
        />
      </div>
    </div>
  );
};
