import { useId, useState } from 'react';
import type { Camera } from '../../../core/setup/schema/setup.ts';
import { glowFromTown } from '../../../core/sky/glow-from-town.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import {
  addGlowDome,
  changeGlowDome,
  type GlowDome,
  mostGlowDomes,
  removeGlowDome,
} from '../state/edits/glow-dome-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { TextField } from '../ui/TextField.tsx';
import { useRowKeys } from '../ui/use-row-keys.ts';
import { threeFigures } from '../ui/words.ts';
import { aimBearing } from './aim-bearing.ts';
import { brightestMagnitude, faintestMagnitude, glowOfMagnitude, glowWord, magnitudeOfGlow } from './town-glow.ts';

/** Lamps of towns (common practice, no published source). */
const lampColours: readonly (readonly [kelvin: number, word: string])[] = [
  [2000, 'Sodium'],
  [2700, 'Warm white'],
  [4000, 'White'],
];

/** Works the glow out from people and distance, where nobody has measured it. */
const FromPeople = ({ onTake }: { onTake: (luminanceCdM2: number) => void }) => {
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

const TownRow = ({ dome, index }: { dome: GlowDome; index: number }) => {
  const { edit } = useApp.getState();
  const set = (part: Partial<GlowDome>, run?: string) => edit((s) => changeGlowDome(s, index, part), run);
  const magnitude = magnitudeOfGlow(dome.luminanceAt10DegreesCdM2);
  const { name } = dome;
  return (
    <fieldset className="town-row" aria-label={`Glow of ${name || 'a town'}`}>
      <div className="fields">
        <TextField label="Name" value={name} onChange={(to) => set({ name: to })} />
        <NumberField
          label="Bearing, true"
          unit="°"
          value={dome.bearingDegrees}
          min={0}
          max={360}
          digits={1}
          wraps
          onChange={(to) => set({ bearingDegrees: to % 360 })}
        />
        <NumberField
          label="Width"
          unit="°"
          value={dome.widthDegrees}
          min={0}
          max={180}
          digits={1}
          onChange={(to) => set({ widthDegrees: to })}
        />
        <NumberField
          label={`10° up · ${glowWord(magnitude)}`}
          unit="mag/arcsec²"
          value={magnitude}
          min={brightestMagnitude}
          max={faintestMagnitude}
          digits={1}
          step={0.1}
          onChange={(to) => set({ luminanceAt10DegreesCdM2: glowOfMagnitude(to) })}
        />
        <NumberField
          label="Colour of its lamps"
          unit="K"
          value={dome.temperatureKelvin}
          min={1667}
          max={25_000}
          step={100}
          digits={0}
          onChange={(to) => set({ temperatureKelvin: to })}
        />
      </div>
      <p className="quiet">{threeFigures(dome.luminanceAt10DegreesCdM2 * 1000)} mcd/m² ten degrees above the horizon</p>
      <div className="actions">
        {lampColours.map(([kelvin, word]) => (
          <button
            key={kelvin}
            type="button"
            className="small"
            aria-pressed={dome.temperatureKelvin === kelvin}
            onClick={() => set({ temperatureKelvin: kelvin })}
          >
            {word} {kelvin} K
          </button>
        ))}
      </div>
      <FromPeople onTake={(glow) => set({ luminanceAt10DegreesCdM2: Number(glow.toPrecision(4)) })} />
      <button type="button" className="small" onClick={() => edit((s) => removeGlowDome(s, index))}>
        Delete {name || 'this town'}
      </button>
    </fieldset>
  );
};

/** Glow of towns over the horizon: what black outlines stand against. */
export const Towns = ({ camera }: { camera: Camera }) => {
  const { place } = useSetup();
  const { edit } = useApp.getState();
  const heading = useId();
  const keys = useRowKeys(place.glowDomes);
  return (
    <section className="towns" aria-labelledby={heading}>
      <h3 id={heading} className="quiet">
        Glow of towns
      </h3>
      {place.glowDomes.map((dome, index) => (
        <TownRow key={keys[index]} dome={dome} index={index} />
      ))}
      <div className="actions">
        <button
          type="button"
          disabled={place.glowDomes.length >= mostGlowDomes}
          onClick={() => edit((s) => addGlowDome(s, aimBearing(camera, place.northDegrees)))}
        >
          Add a town
        </button>
        {place.glowDomes.length === 0 && <span className="quiet">none: what stands there is dark on dark</span>}
      </div>
    </section>
  );
};
