import type { Beam, Lamp } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { setLampBeam } from '../state/edits/lamp-edits.ts';
import { drawnBeamDegrees } from '../ui/beam-width.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';

const shapes: readonly (readonly [Beam['shape'], string])[] = [
  ['spot', 'hot spot and spill'],
  ['flood', 'even cone'],
  ['open', 'open, no optics'],
];

const reshape = (width: number, shape: Beam['shape']): Beam => {
  if (shape === 'spot') return { shape, beamDegrees: width, spillDegrees: 100, spillShare: 0.3 };
  if (shape === 'flood' || shape === 'lobe') return { shape, degrees: width };
  return { shape: 'open' };
};

/** How wide the beam is. Lanterns and tubes shine all round and have no such fields. */
export const BeamFields = ({ lamp }: { lamp: Lamp }) => {
  const { edit } = useApp.getState();
  if (lamp.kind !== 'torch' && lamp.kind !== 'panel') return null;
  const { beam } = lamp;
  const set = (next: Beam) => edit((setup) => setLampBeam(setup, lamp.id, next));
  return (
    <>
      <Choice
        label="Beam"
        value={beam.shape}
        options={shapes}
        onChange={(shape) => set(reshape(drawnBeamDegrees(lamp), shape as Beam['shape']))}
      />
      {beam.shape === 'spot' && (
        <>
          <NumberField
            label="Hot spot"
            unit="°"
            value={beam.beamDegrees}
            min={1}
            max={170}
            step={1}
            digits={1}
            onChange={(beamDegrees) => set({ ...beam, beamDegrees })}
          />
          <NumberField
            label="Spill"
            unit="°"
            value={beam.spillDegrees}
            min={1}
            max={180}
            step={5}
            digits={1}
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
      {beam.shape === 'flood' && (
        <NumberField
          label="Cone"
          unit="°"
          value={beam.degrees}
          min={1}
          max={180}
          step={1}
          digits={1}
          onChange={(degrees) => set({ shape: 'flood', degrees })}
        />
      )}
    </>
  );
};
