import type { Position } from '../../../core/setup/schema/setup.ts';
import { MetresField } from '../ui/MetresField.tsx';
import { useAxisWords } from './axis-words.ts';

interface PlaceFieldsProps {
  readonly position: Position;
  readonly onChange: (position: Position) => void;
  /** Put before each name: "Looks at". */
  readonly of?: string;
}

/** East, north and height of something. */
export const PlaceFields = ({ position: [east, north, up], onChange, of }: PlaceFieldsProps) => {
  const axes = useAxisWords();
  const name = (plain: string) => (of ? `${of} ${plain[0]?.toLowerCase()}${plain.slice(1)}` : plain);
  return (
    <>
      <MetresField
        label={name(axes.east)}
        value={east}
        min={-5000}
        max={5000}
        onChange={(v) => onChange([v, north, up])}
      />
      <MetresField
        label={name(axes.north)}
        value={north}
        min={-5000}
        max={5000}
        onChange={(v) => onChange([east, v, up])}
      />
      <MetresField label={name('Height')} value={up} onChange={(v) => onChange([east, north, v])} />
    </>
  );
};
