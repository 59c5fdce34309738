import type { Lamp } from '../../../core/setup/schema/setup.ts';
import { useApp } from '../state/app-store.ts';
import { type LampSize, setLampSize } from '../state/edits/lamp-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';

const sizes: Readonly<Record<Lamp['kind'], readonly (readonly [LampSize, string])[]>> = {
  torch: [['diameterMm', 'Front glass']],
  panel: [
    ['widthMm', 'Panel width'],
    ['heightMm', 'Panel height'],
  ],
  lantern: [['diameterMm', 'Globe']],
  tube: [
    ['lengthMm', 'Tube length'],
    ['diameterMm', 'Tube diameter'],
  ],
  point: [],
};

const sizeOf = (lamp: Lamp, size: LampSize): number => (lamp as Partial<Record<LampSize, number>>)[size] ?? 1;

/** How large the shining part is: the larger, the softer the edge of its shadows. */
export const SizeFields = ({ lamp }: { lamp: Lamp }) => {
  const { edit } = useApp.getState();
  return sizes[lamp.kind].map(([size, label]) => (
    <NumberField
      key={size}
      label={label}
      unit="mm"
      value={sizeOf(lamp, size)}
      min={1}
      max={5000}
      digits={1}
      step={5}
      onChange={(millimetres) => edit((s) => setLampSize(s, lamp.id, size, millimetres))}
    />
  ));
};
