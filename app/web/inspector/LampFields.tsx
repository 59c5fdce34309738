import { useMemo } from 'react';
import { beamDistanceFromPeak } from '../../../core/photometry/beam.ts';
import { emitterPeakPerLumen } from '../../../core/photometry/emitter.ts';
import type { Lamp } from '../../../core/setup/schema/setup.ts';
import { emitterOf, fluxOf } from '../../../core/world/lamp-light.ts';
import { useApp, useSetup } from '../state/app-store.ts';
import * as lamps from '../state/edits/lamp-edits.ts';
import { useLampPart } from '../state/lamp-part.ts';
import { kindWords } from '../ui/lamp-kind-words.ts';
import { worded } from '../ui/lengths.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { realWords } from '../ui/real-words.ts';
import { TextField } from '../ui/TextField.tsx';
import { threeFigures } from '../ui/words.ts';
import { BeamFields } from './BeamFields.tsx';
import { LampBagLine } from './LampBagLine.tsx';
import { LampShots } from './LampShots.tsx';
import { MeasuredBeamFields } from './MeasuredBeamFields.tsx';
import { OutputField } from './OutputField.tsx';
import { SizeFields } from './SizeFields.tsx';

const LampNumbers = ({ lamp }: { lamp: Lamp }) => {
  const setup = useSetup();
  const files = setup.measuredBeams;
  const { edit } = useApp.getState();
  const lumens = useMemo(() => fluxOf(lamp, files), [lamp, files]);
  const candela = useMemo(() => lumens * emitterPeakPerLumen(emitterOf(lamp, files)), [lumens, lamp, files]);
  return (
    <fieldset className="lamp-fields">
      <legend>
        The {kindWords[lamp.kind]}: {threeFigures(lumens)} lm, {threeFigures(candela)} cd, throws{' '}
        {worded(`${threeFigures(beamDistanceFromPeak(candela))} m`)}
      </legend>
      <div className="fields">
        <TextField
          label="Name of the lamp"
          value={lamp.name}
          onChange={(name) => edit((s) => lamps.setLampName(s, lamp.id, name))}
        />
        <OutputField lamp={lamp} />
        <BeamFields lamp={lamp} files={files} />
        <SizeFields lamp={lamp} />
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
      <LampShots lamp={lamp} boxLumens={lumens} />
      <LampBagLine lamp={lamp} setup={setup} />
      {lamps.takesBeam(lamp, 'measured') && <MeasuredBeamFields lamp={lamp} files={files} />}
    </fieldset>
  );
};

/** The lamp itself: what its box says. Changing it changes every pass that uses it. */
export const LampFields = ({ lamp }: { lamp: Lamp }) => {
  const isOpen = useLampPart((state) => state.isOpen);
  return (
    <details
      className="lamp-part group"
      open={isOpen}
      onToggle={(event) => useLampPart.setState({ isOpen: event.currentTarget.open })}
    >
      <summary>
        <h3>The lamp</h3>{' '}
        <span className="quiet">
          {lamp.name}
          {lamp.correctionStops !== 0 && ` · ${realWords(lamp.correctionStops, lamp.testShots.length)}`}
        </span>
      </summary>
      {isOpen && <LampNumbers lamp={lamp} />}
    </details>
  );
};
