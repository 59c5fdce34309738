import type { PassReport } from '../../core/cautions/pass-report.ts';
import { heightText, type SweepCell } from '../../core/sweep/cell.ts';
import { alignedRows } from './align-rows.ts';
import { grazingText, patchText, rimText, withSign } from './reading-texts.ts';

/** A cell with what was read of it. */
export interface ReadSweepCell extends PassReport {
  readonly cell: SweepCell;
}

/** Columns that read better from the left; numbers stand at the right. */
const leftHeads = new Set(['cell', 'lamp height', 'rim', 'patch', 'cautions']);

const shortNumber = (value: number): string => String(Number(value.toPrecision(3)));

/** Level and time, and by how much they miss what was wanted. */
const lampText = ({ pass, missStops }: SweepCell): string => {
  const set = `${shortNumber(pass.levelPercent)} %, ${shortNumber(pass.off - pass.on)} s`;
  return missStops === null
    ? set
    : `${set}, ${Math.abs(missStops).toFixed(1)} too ${missStops > 0 ? 'bright' : 'dark'}`;
};

/** What of a table's columns hangs on the sweep. */
interface TableOptions {
  /** Whether clock and height tell the cells apart, so that they need no words of their own. */
  readonly isPlaced: boolean;
  readonly hasPatch: boolean;
}

const lineOf = (
  { cell, reading, cautions }: ReadSweepCell,
  { isPlaced, hasPatch }: TableOptions,
): Record<string, string> => {
  const { target, relief } = reading;
  return {
    ...(isPlaced ? {} : { cell: cell.column }),
    clock: reading.clock,
    'lamp height': heightText(reading.lampHeightMetres),
    distance: `${reading.distanceMetres.toFixed(1)} m`,
    lamp: lampText(cell),
    light: target ? `${shortNumber(target.illuminanceLux)} lx` : 'sky',
    level: target && target.stops !== null ? withSign(target.stops) : 'none',
    rim: rimText(reading.rim),
    grazing: grazingText(relief),
    ...(hasPatch ? { patch: relief.patch ? patchText(relief.patch) : 'not reached' } : {}),
    cautions: cautions.map(({ code }) => code.replaceAll('-', ' ')).join(', '),
  };
};

/** What the columns mean. */
const tableKey = ({ hasPatch }: TableOptions): string[] => [
  'Light and level: on the surface that the camera sees where the lamp is aimed; level in stops from mid-grey.',
  'Rim: share of the outline that is lit, and stops that it is brighter than the face.',
  'Grazing: angle of the light to level ground under the aim / to the surface at the aim.',
  ...(hasPatch
    ? ['Patch: standard deviation over mean of the drawn patch’s luminance, and share of it in shadow.']
    : []),
];

/** A sweep for people: one line a cell, then what there is to say about cells, then what the columns mean. */
export const sweepTable = (cells: readonly ReadSweepCell[], options: TableOptions): string[] => {
  const lines = cells.map((cell) => lineOf(cell, options));
  const heads = Object.keys(lines[0] ?? {});
  const left = new Set(heads.flatMap((head, c) => (leftHeads.has(head) ? [c] : [])));
  const rows = alignedRows([heads, ...lines.map((line) => Object.values(line))], left);
  const notes = cells.flatMap(({ cell }) => (cell.note === null ? [] : [`  ${cell.column}: ${cell.note}`]));
  return [...rows, ...notes, '', ...tableKey(options)];
};
