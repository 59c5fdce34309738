import type { Frame, Pass } from '../../../core/setup/schema/setup.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import { movePassEdge, type PassEdge } from '../state/edits/pass-times.ts';
import { cssColourOfLight } from '../ui/light-colour.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { PassBar } from './PassBar.tsx';
import { heldWords } from './pass-words.ts';
import { clockSeconds, dragStepSeconds, type Track } from './track.ts';
import { WalkLine } from './WalkLine.tsx';
import { WalkWords } from './WalkWords.tsx';
import type { WalkFit } from './walk-fit.ts';

interface PassLaneProps {
  readonly schemeId: string;
  readonly frame: Frame;
  readonly pass: Pass;
  readonly track: Track;
  readonly fit: WalkFit | null;
}

const height = 40;

/** One pass on its frame's clock: its name, its bar, when it goes on and off, and the walk to it. */
export const PassLane = ({ schemeId, frame, pass, track, fit }: PassLaneProps) => {
  const { lamps } = useSetup();
  const { edit, select } = useApp.getState();
  const isSelected = useApp(
    ({ selection }) => selection?.kind === 'pass' && selection.passId === pass.id && selection.frameId === frame.id,
  );
  const kelvin = lamps.find(({ id }) => id === pass.lampId)?.temperatureKelvin ?? 5500;
  const light = cssColourOfLight(kelvin, pass.gels, frame.whiteBalance);
  const onSelect = () => select({ kind: 'pass', frameId: frame.id, passId: pass.id });
  const place = { schemeId, frameId: frame.id, passId: pass.id };
  const moveTo = (edge: PassEdge, seconds: number, run?: string) =>
    edit((setup) => movePassEdge(setup, place, edge, seconds), run);
  /** Dragged or by keys an end stops a step short of the other: shorter counts are typed. */
  const onMove = (edge: PassEdge, seconds: number, run?: string) => {
    const least = Math.min(dragStepSeconds, pass.off - pass.on);
    if (edge === 'on') moveTo(edge, Math.min(seconds, pass.off - least), run);
    else moveTo(edge, edge === 'off' ? Math.max(seconds, pass.on + least) : seconds, run);
  };
  const time = (edge: 'on' | 'off', label: string, min: number, max: number) => (
    <NumberField
      label={label}
      unit="s"
      value={pass[edge]}
      min={min}
      max={max}
      step={dragStepSeconds}
      format={clockSeconds}
      onChange={(seconds) => moveTo(edge, seconds)}
    />
  );
  return (
    <div className="time-row" role="group" aria-label={pass.name}>
      <button type="button" className="time-name" aria-pressed={isSelected} onClick={onSelect}>
        <svg viewBox="0 0 12 12" width={12} height={12} aria-hidden="true">
          <circle cx={6} cy={6} r={5} fill={light} />
        </svg>
        <span>{pass.name}</span>
        {heldWords(pass) && <span className="quiet">{heldWords(pass)}</span>}
      </button>
      <svg className="time-lane" viewBox={`0 0 ${track.width} ${height}`} height={height} role="presentation">
        <path className="time-shutter" d={`M${track.x(0)} 0V${height}M${track.x(track.seconds)} 0V${height}`} />
        <PassBar {...{ track, pass, light, isSelected, onSelect, onMove }} />
        {fit && <WalkLine track={track} fit={fit} />}
      </svg>
      <div className="time-side">
        {time('on', 'On', 0, pass.off - 0.01)}
        {time('off', 'Off', pass.on + 0.01, frame.seconds)}
        {fit && <WalkWords fit={fit} />}
      </div>
    </div>
  );
};
