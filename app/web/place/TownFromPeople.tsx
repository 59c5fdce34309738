import { useState } from 'react';
import { glowFromTown } from '../../../core/sky/glow-from-town.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { magnitudeOfGlow } from './town-glow.ts';

/** Works the glow out from people and distance, where nobody has measured it. */
export const TownFromPeople = ({ onTake }: { onTake: (luminanceCdM2: number) => void }) => {
  const [people, setPeople] = useState(10_000);
  const [km, setKm] = useState(30);
  const glow = glowFromTown(people, km);
  return (
    <details className="town-from">
      <summary>From people and distance</summary>
      <div className="fields">
        <NumberField
          label="People"
          unit=""
          value={people}
          min={100}
          max={40_000_000}
          digits={0}
          step={(v, way) => Math.max(v * (way > 0 ? 1.25 : 0.8), 100)}
          format={(v) => Math.round(v).toLocaleString('en')}
          parse={(text) => {
            const value = Number(text.replace(/[\s,]/g, ''));
            return text.trim() === '' || !Number.isFinite(value) ? null : value;
          }}
          onChange={(v) => setPeople(Math.round(v))}
        />
        <NumberField label="Distance" unit="km" value={km} min={8} max={250} onChange={setKm} />
        <button type="button" className="small" onClick={() => onTake(Math.min(glow, 1))}>
          Take {magnitudeOfGlow(glow).toFixed(1)} mag/arcsec²
        </button>
      </div>
      <p className="quiet">A thousand lumens a head; towns differ threefold. A meter at the place knows better.</p>
    </details>
  );
};
