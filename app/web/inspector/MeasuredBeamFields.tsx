import { useMemo, useRef, useState } from 'react';
import { isMeasured } from '../../../core/photometry/beam.ts';
import { beamAngleRadians } from '../../../core/photometry/beam-angle.ts';
import type { Lamp, Setup } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import { emitterOf } from '../../../core/world/lamp-light.ts';
import { useApp } from '../state/app-store.ts';
import { measuredBeamOf, setLampBeam } from '../state/edits/lamp-edits.ts';
import { Choice } from '../ui/Choice.tsx';
import { FilePicker } from '../ui/FilePicker.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { threeFigures } from '../ui/words.ts';
import { beamDegreesText } from './beam-width-text.ts';
import { readBeamFile } from './read-beam-file.ts';

/** What the file says by itself, whatever the box says. */
const measuredText = (lamp: Lamp, files: Setup['measuredBeams']): string => {
  const emitter = emitterOf(lamp, files);
  const { beam } = emitter;
  if (!isMeasured(beam)) return '';
  const angle = beamAngleRadians(emitter);
  const width = angle === null ? '' : `, beam angle ${beamDegreesText(degreesFromRadians(angle))}`;
  return `${threeFigures(1 / beam.perLumen)} lm, peak ${threeFigures(beam.peakPerLumen / beam.perLumen)} cd${width}`;
};

/** A beam as a photometric file has it: reading one, which one, and its turn. */
export const MeasuredBeamFields = ({ lamp, files }: { lamp: Lamp; files: Setup['measuredBeams'] }) => {
  const { edit } = useApp.getState();
  const picker = useRef<HTMLInputElement>(null);
  const [isOver, setIsOver] = useState(false);
  const beam = measuredBeamOf(lamp);
  const text = useMemo(() => measuredText(lamp, files), [lamp, files]);
  const file = files.find(({ id }) => id === beam?.beamId);
  const set = (part: Partial<NonNullable<typeof beam>>) =>
    beam && edit((s) => setLampBeam(s, lamp.id, { ...beam, ...part }));
  const read = (given: File | undefined) => given && void readBeamFile(given, lamp.id);
  return (
    <section
      className={isOver ? 'beam-file beam-file-over' : 'beam-file'}
      aria-label="Beam from a file"
      onDragOver={(event) => {
        event.preventDefault();
        setIsOver(true);
      }}
      onDragLeave={() => setIsOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        // the page would take it for a setup
        event.stopPropagation();
        setIsOver(false);
        read(event.dataTransfer.files[0]);
      }}
    >
      {beam && file && (
        <div className="fields">
          {files.length > 1 && (
            <Choice
              label="Measured beam"
              value={file.id}
              options={files.map(({ id, name }) => [id, name] as const)}
              onChange={(beamId) => set({ beamId })}
            />
          )}
          <NumberField
            label="Turn about the axis"
            unit="°"
            value={beam.turnDegrees}
            min={-360}
            max={360}
            step={5}
            digits={1}
            onChange={(turnDegrees) => set({ turnDegrees })}
          />
        </div>
      )}
      {file && (
        <p>
          {file.name} <span className="quiet">as measured: {text}</span>
        </p>
      )}
      <p className="beam-file-read">
        <button type="button" onClick={() => picker.current?.click()}>
          Read a photometric file…
        </button>{' '}
        <span className="quiet">.ies, or drop one here</span>
      </p>
      <FilePicker label="Photometric file" accept=".ies" picker={picker} onFile={read} />
    </section>
  );
};
