import type { Position } from '../../../core/setup/schema/setup.ts';
import { MetresField } from '../ui/MetresField.tsx';

interface PlaceFieldsProps {
  readonly position: Position;
  readonly onChange: (position: Position) => void;
  /** Put before each name: "Looks at". */
  readonly of?: string;
}

/** East, north and height of something. */
export const PlaceFields = ({ position: [east, north, up], onChange, of }: PlaceFieldsProps) => {
  const name = (plain: string) => (of ? `${of} ${plain}` : plain[0]?.toUpperCase() + plain.slice(1));
  return (
    <>
      <MetresField
        label={name('east')}
        value={east}
        min={-5000}
        max={5000}
        onChange={(v) => onChange([v, north, up])}
      />
      <MetresField
        label={name('north')}
        value={north}
        min={-5000}
        max={5000}
        onChange={(v) => onChange([east, v, up])}
      />
      <MetresField label={name('height')} value={up} onChange={(v) => onChange([east, north, v])} />
    </>
  );
};
