import { beamDistanceFromPeak } from '../../../core/photometry/beam.ts';
import type { Lamp } from '../../../core/setup/schema/setup.ts';
import { emitterOf, fluxOf, peakPerLumen } from '../../../core/world/lamp-light.ts';
import { useApp } from '../state/app-store.ts';
import * as lamps from '../state/edits/lamp-edits.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { TextField } from '../ui/TextField.tsx';
import { threeFigures } from '../ui/words.ts';
import { BeamFields } from './BeamFields.tsx';

type Output = Lamp['output'];

const kinds: readonly (readonly [Output['from'], string])[] = [
  ['lumens', 'lumens'],
  ['beam-distance', 'beam distance'],
  ['peak-candela', 'peak candela'],
  ['lux-at-1-metre', 'lux at 1 m'],
];

/** The same light told another way, so that switching what the box says does not change the lamp. */
const restate = (lamp: Lamp, from: Output['from']): Output => {
  const lumens = fluxOf(lamp);
  const candela = lumens * peakPerLumen(emitterOf(lamp));
  const round = (v: number) => Number(v.toPrecision(4));
  if (from === 'lumens') return { from, lumens: round(lumens) };
  if (from === 'beam-distance') return { from, distanceMetres: round(beamDistanceFromPeak(candela)) };
  return from === 'peak-candela' ? { from, candela: round(candela) } : { from, lux: round(candela) };
};

const OutputField = ({ lamp, set }: { lamp: Lamp; set: (output: Output) => void }) => {
  const { output } = lamp;
  switch (output.from) {
    case 'lumens':
      return (
        <NumberField
          label="Output"
          unit="lm"
          value={output.lumens}
          min={0.001}
          max={1e7}
          step={10}
          onChange={(lumens) => set({ from: 'lumens', lumens })}
        />
      );
    case 'beam-distance':
      return (
        <NumberField
          label="Beam distance"
          unit="m"
          value={output.distanceMetres}
          min={0.5}
          max={20000}
          step={1}
          onChange={(distanceMetres) => set({ from: 'beam-distance', distanceMetres })}
        />
      );
    case 'peak-candela':
      return (
        <NumberField
          label="Peak"
          unit="cd"
          value={output.candela}
          min={0.01}
          max={1e9}
          step={10}
          onChange={(candela) => set({ from: 'peak-candela', candela })}
        />
      );
    case 'lux-at-1-metre':
      return (
        <NumberField
          label="At one metre"
          unit="lx"
          value={output.lux}
          min={0.01}
          max={1e9}
          step={10}
          onChange={(lux) => set({ from: 'lux-at-1-metre', lux })}
        />
      );
    case 'measured':
      return null;
  }
};

/** The lamp itself: what its box says. Changing it changes every pass that uses it. */
export const LampFields = ({ lamp }: { lamp: Lamp }) => {
  const { edit } = useApp.getState();
  const candela = fluxOf(lamp) * peakPerLumen(emitterOf(lamp));
  return (
    <fieldset className="lamp-fields">
      <legend>
        The {lamp.kind}: {threeFigures(fluxOf(lamp))} lm, {threeFigures(candela)} cd, throws{' '}
        {threeFigures(beamDistanceFromPeak(candela))} m
      </legend>
      <div className="fields">
        <TextField
          label="Name of the lamp"
          value={lamp.name}
          onChange={(name) => edit((s) => lamps.setLampName(s, lamp.id, name))}
        />
        <Choice
          label="The box says"
          value={lamp.output.from}
          options={kinds}
          onChange={(from) => edit((s) => lamps.setLampOutput(s, lamp.id, restate(lamp, from as Output['from'])))}
        />
        <OutputField lamp={lamp} set={(output) => edit((s) => lamps.setLampOutput(s, lamp.id, output))} />
        <BeamFields lamp={lamp} />
        <NumberField
          label="Colour"
          unit="K"
          value={lamp.temperatureKelvin}
          min={1667}
          max={25000}
          digits={0}
          step={100}
          onChange={(kelvin) => edit((s) => lamps.setLampKelvin(s, lamp.id, kelvin))}
        />
        <NumberField
          label="Lowest level"
          unit="%"
          value={lamp.lowestLevelPercent}
          min={0}
          max={100}
          digits={3}
          step={1}
          onChange={(level) => edit((s) => lamps.setLowestLevel(s, lamp.id, level))}
        />
      </div>
    </fieldset>
  );
};
