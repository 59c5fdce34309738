import type { Beam, Lamp, Setup } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { setLampBeam, takesBeam } from '../state/edits/lamp-edits.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { reshapeBeam } from './reshape-beam.ts';

const shapesOf = (lamp: Lamp, hasFiles: boolean): (readonly [Beam['shape'], string])[] => {
  const shapes: (readonly [Beam['shape'], string])[] = [
    ['spot', 'hot spot and spill'],
    ['flood', 'even cone'],
    ['lobe', lamp.kind === 'panel' ? 'softbox or grid' : 'soft lobe'],
    ['open', 'open, no optics'],
    ['even', 'even all round'],
    ['measured', 'measured file'],
  ];
  return shapes.filter(([shape]) => takesBeam(lamp, shape) && (shape !== 'measured' || hasFiles));
};

/** How wide the beam is. Lanterns and tubes shine all round and have no such fields. */
export const BeamFields = ({ lamp, files }: { lamp: Lamp; files: Setup['measuredBeams'] }) => {
  const { edit } = useApp.getState();
  if (!('beam' in lamp)) return null;
  const { beam } = lamp;
  const set = (next: Beam | null) => next && edit((setup) => setLampBeam(setup, lamp.id, next));
  const angle = { unit: '°', min: 1, digits: 1 };
  return (
    <>
      <Choice
        label="Beam"
        value={beam.shape}
        options={shapesOf(lamp, files.length > 0)}
        onChange={(shape) => set(reshapeBeam(lamp, shape as Beam['shape'], files))}
      />
      {beam.shape === 'spot' && (
        <>
          <NumberField
            label="Hot spot"
            {...angle}
            value={beam.beamDegrees}
            max={170}
            onChange={(beamDegrees) => set({ ...beam, beamDegrees })}
          />
          <NumberField
            label="Spill"
            {...angle}
            value={beam.spillDegrees}
            max={180}
            step={5}
            onChange={(spillDegrees) => set({ ...beam, spillDegrees })}
          />
          <NumberField
            label="Light in the spill"
            unit="%"
            value={beam.spillShare * 100}
            min={0}
            max={100}
            step={5}
            digits={1}
            onChange={(percent) => set({ ...beam, spillShare: percent / 100 })}
          />
        </>
      )}
      {(beam.shape === 'flood' || beam.shape === 'lobe') && (
        <NumberField
          label={beam.shape === 'flood' ? 'Cone' : 'Half peak'}
          {...angle}
          value={beam.degrees}
          max={beam.shape === 'flood' ? 180 : 170}
          onChange={(degrees) => set({ ...beam, degrees })}
        />
      )}
    </>
  );
};
