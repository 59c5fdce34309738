import { useMemo, useState } from 'react';
import { beamFromTaps } from '../../../core/photometry/beam-from-taps.ts';
import type { Lamp } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { statedLumens } from '../state/bag-twins.ts';
import type { KeptLamp } from '../storage/records.ts';
import { Check } from '../ui/Check.tsx';
import { Choice } from '../ui/Choice.tsx';
import { MetresField } from '../ui/MetresField.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { threeFigures } from '../ui/words.ts';
import { newTorch, withTappedBeam } from './bag-lamps.ts';
import type { PhotoTaps } from './photo-taps.ts';
import { TapsInPhoto } from './TapsInPhoto.tsx';

interface BeamTapsProps {
  readonly lamps: readonly KeptLamp[];
  readonly onNew: (lamp: Lamp) => void;
  readonly onChange: (id: string, change: (kept: KeptLamp) => KeptLamp) => void;
}

const isNew = ':new';

/** A beam measured on a wall: three radii, typed or tapped in a photo of the spot. */
export const BeamTaps = ({ lamps, onNew, onChange }: BeamTapsProps) => {
  const [distance, setDistance] = useState(3);
  const [half, setHalf] = useState(0.4);
  const [hasSpill, setHasSpill] = useState(true);
  const [edge, setEdge] = useState(2.2);
  const [edgeToCentre, setEdgeToCentre] = useState<number | null>(null);
  const [edgeDoubt, setEdgeDoubt] = useState<number | null>(null);
  const [lux, setLux] = useState(0);
  const [target, setTarget] = useState(isNew);
  const tapped = useMemo(
    () =>
      beamFromTaps({
        distanceMetres: distance,
        halfRadiusMetres: half,
        edgeRadiusMetres: hasSpill ? edge : null,
        edgeToCentre: hasSpill ? edgeToCentre : null,
        centreLux: lux > 0 ? lux : null,
      }),
    [distance, half, hasSpill, edge, edgeToCentre, lux],
  );
  const takers = lamps.filter(({ lamp }) => lamp.kind === 'torch' || lamp.kind === 'panel');
  const kept = takers.find(({ id }) => id === target);
  const takePhoto = (taps: PhotoTaps) => {
    const radius = (radians: number) => Number(Math.min(distance * Math.tan(radians), 1000).toFixed(3));
    setHalf(radius(taps.halfRadians));
    setHasSpill(taps.edgeRadians !== null);
    if (taps.edgeRadians !== null) setEdge(radius(taps.edgeRadians));
    setEdgeToCentre(taps.edgeToCentre);
    setEdgeDoubt(taps.edgeDoubtStops);
  };
  const give = () => {
    if ('refused' in tapped) return;
    if (!kept) onNew(withTappedBeam(newTorch(), tapped));
    else
      onChange(kept.id, (now) => ({
        ...now,
        lamp: withTappedBeam(now.lamp, tapped, now.beam),
        beam: null,
        keptAt: Date.now(),
      }));
  };
  return (
    <details className="bag-taps">
      <summary>Measure a beam on a wall</summary>
      <p className="quiet">
        Stand the lamp square to a flat, even wall and measure, or tap in a photo: the bright centre, where it is half
        as bright, where the wide spill ends. Don’t look into the lamp.
      </p>
      <div className="fields">
        <MetresField label="Lamp to wall" value={distance} min={0.2} max={100} onChange={setDistance} />
        <MetresField label="Centre to half" value={half} min={0.01} max={100} onChange={setHalf} />
        {hasSpill && (
          <MetresField
            label="Centre to edge"
            value={edge}
            min={0.02}
            max={1000}
            onChange={(metres) => {
              setEdge(metres);
              setEdgeToCentre(null);
            }}
          />
        )}
        <NumberField
          label="Lux at the centre"
          unit="lx"
          value={lux}
          min={0}
          max={1e6}
          digits={1}
          step={1}
          onChange={setLux}
        />
        <Choice
          label="For"
          value={kept ? target : isNew}
          options={[
            [isNew, 'a new torch'],
            ...takers.map((each) => [each.id, `${each.lamp.name}, ${threeFigures(statedLumens(each))} lm`] as const),
          ]}
          onChange={setTarget}
        />
      </div>
      <Check label="It has a wide spill" isOn={hasSpill} onChange={setHasSpill} />
      <TapsInPhoto onTaps={takePhoto} />
      {'refused' in tapped ? (
        <p role="status">{tapped.refused}</p>
      ) : (
        <div className="actions">
          <span role="status">
            {tapped.shape === 'spot' ? 'Hot spot' : 'Soft lobe'} {degreesFromRadians(tapped.beamRadians).toFixed(1)}°
            {tapped.shape === 'spot' &&
              `, spill ${degreesFromRadians(tapped.spillRadians).toFixed(0)}° with ${Math.round(100 * tapped.spillShare)} % of the light${edgeToCentre === null ? ' (the usual share)' : ` (±${(edgeDoubt ?? 0).toFixed(1)} stop in the photo: its tone curve is not known)`}`}
            {tapped.peakCandela !== null && `, ${threeFigures(tapped.peakCandela)} cd`}
          </span>
          <button type="button" className="strong" onClick={give}>
            {kept ? `Give it to ${kept.lamp.name}` : 'Keep as a new torch'}
          </button>
        </div>
      )}
    </details>
  );
};
