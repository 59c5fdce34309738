import type { ReadingName } from '../../../core/readings/about/all-readings.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { SweepKind } from '../../../core/sweep/sweep-plan.ts';
import { useSweeps } from '../state/sweeps.ts';
import { Reading } from '../ui/Reading.tsx';
import { metresText, percentText, senseOfStops, signed } from '../ui/words.ts';
import type { CellReading } from '../workers/sweep-messages.ts';
import { settingText } from './cell-words.ts';

const sideWord = (degrees: number) => (degrees < 60 ? 'front' : degrees < 120 ? 'side' : 'back');

type Row = readonly [label: string, words: string, about: ReadingName | null];

/** A row that is there only where there is something to tell. */
const rows = (isThere: boolean, ...row: Row): Row[] => (isThere ? [row] : []);

/** The numbers of a picture as rows of a label and its words. */
const rowsOf = (kind: SweepKind, cell: SweepCell, { reading }: CellReading): Row[] => {
  const { target, rim, relief, evennessStops, colour, offAxisDegrees, clock, distanceMetres, lampHeightMetres } =
    reading;
  const stops = target?.stops ?? null;
  const patch = relief.patch;
  return [
    ['Lamp', `${clock} · ${metresText(distanceMetres)} away · ${metresText(lampHeightMetres)} up`, null],
    ['Off the axis', `${Math.round(offAxisDegrees)}° · ${sideWord(offAxisDegrees)}`, 'off-axis'],
    [
      'At the target',
      stops === null ? 'no light on the side you see' : `${signed(stops)} stops · ${senseOfStops(stops)}`,
      'target',
    ],
    ['Level and count', settingText(cell), null],
    ...rows(kind === 'gels' && colour.cctKelvin !== null, 'Colour', `${Math.round(colour.cctKelvin ?? 0)} K`, 'colour'),
    ...rows(rim.litShare !== null, 'Outline', `${percentText(rim.litShare ?? 0)} lit`, 'outline'),
    ...rows(
      evennessStops !== null,
      'Evenness',
      `${(evennessStops ?? 0).toFixed(1)} stops over the lit face`,
      'evenness',
    ),
    ...rows(
      patch !== null,
      'Patch',
      `contrast ${patch?.rmsContrast.toFixed(2)} · ${percentText(patch?.shadowedShare ?? 0)} in shadow`,
      'patch',
    ),
  ];
};

/** What was worked out for a cell, in words. */
export const CellNumbers = ({ cell, kind }: { cell: SweepCell; kind: SweepKind }) => {
  const read = useSweeps((state) => state.readings[cell.id]);
  const isCancelled = useSweeps((state) => state.isCancelled);
  if (!read)
    return <p className="quiet">{isCancelled ? 'Its numbers were not worked out.' : 'Working out its numbers…'}</p>;
  return (
    <dl className="numbers">
      {rowsOf(kind, cell, read).map(([label, words, about]) =>
        about ? (
          <Reading key={label} about={about} name={label}>
            {words}
          </Reading>
        ) : (
          <div key={label} className="row">
            <dt>{label}</dt>
            <dd>{words}</dd>
          </div>
        ),
      )}
    </dl>
  );
};
