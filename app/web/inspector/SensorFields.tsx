import { useState } from 'react';
import { cocOfPixelMm, cocOfSensorMm } from '../../../core/camera/circle-of-confusion.ts';
import { pixelPitchMicrometres, type SensorPreset, sensorName, sensorPresets } from '../../../core/camera/sensors.ts';
import type { Camera } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { documentKeyOf } from '../state/document-key.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';

type Sensor = Camera['sensor'];

const other = 'other';

/** Trade name of a sensor whose well and noise are the usual ones too. */
const usualName = (sensor: Sensor): string => {
  const preset = sensorPresets.find(({ name }) => name === sensorName(sensor));
  const isUsual =
    preset?.fullWellElectrons === sensor.fullWellElectrons &&
    preset.baseIso === sensor.baseIso &&
    preset.readNoiseElectrons === sensor.readNoiseElectrons;
  return preset && isUsual ? preset.name : other;
};

const numbersOf = ({ name: _, ...numbers }: SensorPreset): Sensor => numbers;

/** A camera held upright stays so with another sensor. */
const heldLike = (before: Sensor, next: Sensor): Sensor =>
  before.heightMm > before.widthMm
    ? {
        ...next,
        widthMm: next.heightMm,
        heightMm: next.widthMm,
        pixelsWide: next.pixelsHigh,
        pixelsHigh: next.pixelsWide,
      }
    : next;

interface NumberSpec {
  readonly field: keyof Sensor;
  readonly label: string;
  readonly unit: string;
  readonly min: number;
  readonly max: number;
  readonly step: number;
  readonly digits: number;
}

/** Ranges are those of the document. */
const specs: readonly NumberSpec[] = [
  { field: 'widthMm', label: 'Sensor width', unit: 'mm', min: 1, max: 120, step: 0.1, digits: 2 },
  { field: 'heightMm', label: 'Sensor height', unit: 'mm', min: 1, max: 120, step: 0.1, digits: 2 },
  { field: 'pixelsWide', label: 'Pixels across', unit: '', min: 100, max: 30000, step: 100, digits: 0 },
  { field: 'pixelsHigh', label: 'Pixels down', unit: '', min: 100, max: 30000, step: 100, digits: 0 },
  { field: 'fullWellElectrons', label: 'A pixel holds', unit: 'e⁻', min: 500, max: 1e6, step: 1000, digits: 0 },
  { field: 'baseIso', label: 'Base ISO', unit: '', min: 25, max: 3200, step: 10, digits: 0 },
  { field: 'readNoiseElectrons', label: 'Read noise', unit: 'e⁻', min: 0, max: 100, step: 0.1, digits: 1 },
];

interface SensorFieldsProps {
  readonly camera: Camera;
  readonly onSensor: (part: Partial<Sensor>) => void;
  readonly onSharpness: (sharpness: Camera['sharpness']) => void;
}

/** The sensor by its trade name or its numbers, and what counts as sharp on it. */
export const SensorFields = ({ camera: { sensor, sharpness }, onSensor, onSharpness }: SensorFieldsProps) => {
  // "other" stays while the numbers are still those of a trade name, for the camera that it was chosen for
  const cameraKey = useApp((state) => `${documentKeyOf(state)} ${state.schemeId}`);
  const [typedFor, setTypedFor] = useState<string | null>(null);
  const name = typedFor === cameraKey ? other : usualName(sensor);
  const choose = (chosen: string) => {
    const preset = sensorPresets.find((each) => each.name === chosen);
    setTypedFor(preset ? null : cameraKey);
    if (preset) onSensor(heldLike(sensor, numbersOf(preset)));
  };
  const printMm = cocOfSensorMm(sensor.widthMm, sensor.heightMm);
  const pixelMm = cocOfPixelMm(pixelPitchMicrometres(sensor));
  return (
    <div className="fields fields-wide">
      <Choice
        label="Sensor"
        value={name}
        options={[...sensorPresets.map((preset) => [preset.name, preset.name] as const), [other, 'other: type it']]}
        onChange={choose}
      />
      <Choice
        label="Counts as sharp"
        value={sharpness}
        options={[
          ['sensor', `in a print: ${printMm.toFixed(3)} mm`],
          ['pixel', `to the pixel: ${pixelMm.toFixed(3)} mm`],
        ]}
        onChange={(value) => onSharpness(value as Camera['sharpness'])}
      />
      {name === other &&
        specs.map(({ field, ...spec }) => (
          <NumberField key={field} {...spec} value={sensor[field]} onChange={(value) => onSensor({ [field]: value })} />
        ))}
    </div>
  );
};
