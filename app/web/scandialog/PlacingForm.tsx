import type { ScanUnit, UpAxis } from '../scans/place-scan.ts';
import type { ScanSummary } from '../scans/summarize-scan.ts';
import { Choice } from '../ui/Choice.tsx';
import { NumberField } from '../ui/NumberField.tsx';
import { PointsView } from './PointsView.tsx';
import type { ScanFile } from './use-scan-file.ts';

const units = [
  ['m', 'metres'],
  ['cm', 'centimetres'],
  ['mm', 'millimetres'],
  ['ft', 'feet'],
  ['in', 'inches'],
] as const;
const ups = [
  ['y', 'y'],
  ['z', 'z'],
  ['x', 'x'],
  ['-y', 'y, upside down'],
  ['-z', 'z, upside down'],
  ['-x', 'x, upside down'],
] as const;
const sides = ['East to west', 'North to south', 'Height'] as const;

/** How the scan stands: unit, which way is up, turn, and its real size where one side was measured. */
export const PlacingForm = ({ scan, summary }: { scan: ScanFile; summary: ScanSummary }) => {
  const { placing, sizeMetres, place } = scan;
  if (!placing) return null;
  return (
    <div className="scan-placing">
      <PointsView points={summary.somePoints} placing={placing} />
      <div>
        <div className="fields">
          <Choice
            label="One unit of the file is"
            value={placing.unit}
            options={units}
            onChange={(unit) => place({ unit: unit as ScanUnit })}
          />
          <Choice
            label="Up in the file is"
            value={placing.upAxis}
            options={ups}
            onChange={(upAxis) => place({ upAxis: upAxis as UpAxis })}
          />
          <NumberField
            label="Turn"
            unit="°"
            value={placing.turnDegrees}
            min={-180}
            max={180}
            step={15}
            onChange={(turnDegrees) => place({ turnDegrees })}
          />
        </div>
        <p className="quiet">{summary.guess.words}.</p>
        <h3>Its size, true where you measured one</h3>
        <div className="fields">
          {sizeMetres &&
            sides.map((label, axis) => {
              const metres = sizeMetres[axis] as number;
              return (
                <NumberField
                  key={label}
                  label={label}
                  unit="m"
                  value={metres}
                  min={0.001}
                  max={5000}
                  digits={metres < 1 ? 3 : 2}
                  step={0.1}
                  onChange={(real) => metres > 0 && place({ scale: ((placing.scale ?? 1) * real) / metres })}
                />
              );
            })}
        </div>
        <p className="quiet">
          Type the side that you measured: the others follow. Later, Measure between two points of it gives a length
          that can be set right as well.
        </p>
      </div>
    </div>
  );
};
