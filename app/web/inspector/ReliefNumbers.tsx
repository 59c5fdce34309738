import { drawnReach } from '../../../core/geometry/relief/drawn-reach.ts';
import { densityOfCount, maxSheetTriangles, trianglesOfRelief } from '../../../core/setup/relief-detail.ts';
import type { Relief } from '../../../core/setup/schema/setup.ts';
import { withDensity, withHeights } from '../state/edits/ground-edits.ts';
import { NumberField } from '../ui/NumberField.tsx';
import { metresText } from '../ui/words.ts';

type Strewn = Extract<Relief, { count: number }>;
type Sheet = Exclude<Relief, { count: number }>;
type Put = (relief: Relief) => void;

interface SmallLengthProps {
  readonly label: string;
  readonly metres: number;
  readonly min: number;
  readonly max: number;
  readonly onChange: (metres: number) => void;
}

/** A length shown in centimetres, as one measures stones and ripples. */
const Centimetres = ({ label, metres, min, max, onChange }: SmallLengthProps) => (
  <NumberField
    label={label}
    unit="cm"
    value={100 * metres}
    min={100 * min}
    max={100 * max}
    digits={1}
    step={0.5}
    onChange={(centimetres) => onChange(Number((centimetres / 100).toFixed(5)))}
  />
);

/** How many stones, pebbles or tufts, and how high. */
export const StrewnFields = ({ relief, put }: { relief: Strewn; put: Put }) => {
  const [low, high] = relief.heightMetres;
  return (
    <>
      <div className="fields">
        <NumberField
          label="Per square metre"
          unit=""
          value={densityOfCount(relief.count, relief.radiusMetres)}
          min={0}
          max={1_000_000}
          digits={1}
          onChange={(density) => put(withDensity(relief, density))}
        />
        <NumberField
          label="How many"
          unit=""
          value={relief.count}
          min={0}
          max={20_000}
          digits={0}
          step={50}
          onChange={(count) => put({ ...relief, count: Math.round(count) })}
        />
        <Centimetres
          label="Smallest, high"
          metres={low}
          min={0.002}
          max={3}
          onChange={(to) => put(withHeights(relief, [to, Math.max(to, high)]))}
        />
        <Centimetres
          label="Largest, high"
          metres={high}
          min={0.002}
          max={3}
          onChange={(to) => put(withHeights(relief, [Math.min(low, to), to]))}
        />
      </div>
      <p className="quiet">{trianglesOfRelief(relief).toLocaleString('en')} triangles</p>
    </>
  );
};

const words: Readonly<Record<Sheet['kind'], readonly [height: string, spacing: string, bearing: string | null]>> = {
  ripples: ['Height', 'Crest to crest', 'Wind blows to'],
  drifts: ['Height', 'Drift to drift', 'Wind blows to'],
  cracks: ['Depth', 'Crack to crack', null],
  pool: ['Waves, high', 'Crest to crest', 'Waves run to'],
};

/** Says what the triangles leave undrawn; null where they are enough. */
const reachText = (relief: Sheet): string | null => {
  const drawn = drawnReach(relief.kind, { ...relief, maxTriangles: maxSheetTriangles });
  if (drawn.radiusMetres < 0.99 * relief.radiusMetres)
    return `Drawn within ${metresText(drawn.radiusMetres)}: ${maxSheetTriangles.toLocaleString('en')} triangles reach no farther. Wider spacing reaches farther.`;
  if (relief.heightMetres > 0 && Math.abs(drawn.spacingMetres - relief.spacingMetres) > 0.01 * relief.spacingMetres)
    return `Drawn ${metresText(drawn.spacingMetres)} apart, as fits this radius.`;
  return null;
};

/** How high and how far apart ripples, drifts, cracks or waves are, and where they run to. */
export const SheetFields = ({ relief, put }: { relief: Sheet; put: Put }) => {
  const [height, spacing, bearing] = words[relief.kind];
  const reach = reachText(relief);
  return (
    <>
      <div className="fields">
        <Centimetres
          label={height}
          metres={relief.heightMetres}
          min={0}
          max={3}
          onChange={(heightMetres) => put({ ...relief, heightMetres })}
        />
        <Centimetres
          label={spacing}
          metres={relief.spacingMetres}
          min={0.02}
          max={50}
          onChange={(spacingMetres) => put({ ...relief, spacingMetres })}
        />
        {bearing && (
          <NumberField
            label={bearing}
            unit="°"
            value={relief.bearingDegrees}
            min={0}
            max={360}
            step={5}
            wraps
            onChange={(bearingDegrees) => put({ ...relief, bearingDegrees })}
          />
        )}
      </div>
      {reach && <p className="quiet">{reach}</p>}
    </>
  );
};
