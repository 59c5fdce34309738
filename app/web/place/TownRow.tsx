import { useApp } from '../state/app-store.ts';
import { changeGlowDome, type GlowDome, removeGlowDome } from '../state/edits/glow-dome-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { TextField } from '../ui/TextField.tsx';
import { threeFigures } from '../ui/words.ts';
import { TownFromPeople } from './TownFromPeople.tsx';
import { brightestMagnitude, faintestMagnitude, glowOfMagnitude, glowWord, magnitudeOfGlow } from './town-glow.ts';

/** Lamps of towns (common practice, no published source). */
const lampColours: readonly (readonly [kelvin: number, word: string])[] = [
  [2000, 'Sodium'],
  [2700, 'Warm white'],
  [4000, 'White'],
];

/** The glow of one town. */
export const TownRow = ({ dome, index }: { dome: GlowDome; index: number }) => {
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
          label="Brightness 10° up"
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
      <p className="quiet">
        Ten degrees above the horizon: {threeFigures(dome.luminanceAt10DegreesCdM2 * 1000)} mcd/m²,{' '}
        {glowWord(magnitude)}
      </p>
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
      <TownFromPeople onTake={(glow) => set({ luminanceAt10DegreesCdM2: Number(glow.toPrecision(4)) })} />
      <button type="button" className="small" onClick={() => edit((s) => removeGlowDome(s, index))}>
        Delete {name || 'this town'}
      </button>
    </fieldset>
  );
};
