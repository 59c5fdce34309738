import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { SweepKind } from '../../../core/sweep/sweep-plan.ts';
import { useSweeps } from '../state/sweeps.ts';
import { metresText, percentText, senseOfStops, signed } from '../ui/words.ts';
import type { CellReading } from '../workers/sweep-messages.ts';
import { settingText } from './cell-words.ts';

const sideWord = (degrees: number) => (degrees < 60 ? 'front' : degrees < 120 ? 'side' : 'back');

/** The numbers of a picture as rows of a label and its words. */
const rowsOf = (kind: SweepKind, cell: SweepCell, { reading }: CellReading): [label: string, words: string][] => {
  const { target, rim, relief, evennessStops, colour, offAxisDegrees, clock, distanceMetres, lampHeightMetres } =
    reading;
  const stops = target?.stops ?? null;
  const patch = relief.patch;
  return [
    ['Lamp', `${clock} · ${metresText(distanceMetres)} away · ${metresText(lampHeightMetres)} up`],
    ['Off the axis', `${Math.round(offAxisDegrees)}° · ${sideWord(offAxisDegrees)}`],
    [
      'At the target',
      stops === null ? 'no light on the side you see' : `${signed(stops)} stops · ${senseOfStops(stops)}`,
    ],
    ['Level and count', settingText(cell)],
    ...(kind === 'gels' && colour.cctKelvin !== null
      ? ([['Colour', `${Math.round(colour.cctKelvin)} K`]] as [string, string][])
      : []),
    ...(rim.litShare === null ? [] : ([['Outline', `${percentText(rim.litShare)} lit`]] as [string, string][])),
    ...(evennessStops === null
      ? []
      : ([['Evenness', `${evennessStops.toFixed(1)} stops over the lit face`]] as [string, string][])),
    ...(patch
      ? ([['Patch', `contrast ${patch.rmsContrast.toFixed(2)} · ${percentText(patch.shadowedShare)} in shadow`]] as [
          string,
          string,
        ][])
      : []),
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
      {rowsOf(kind, cell, read).map(([label, words]) => (
        <div key={label} className="row">
          <dt>{label}</dt>
          <dd>{words}</dd>
        </div>
      ))}
    </dl>
  );
};
