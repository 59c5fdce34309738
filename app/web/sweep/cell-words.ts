import type { Caution } from '../../../core/cautions/caution.ts';
import type { SweepCell } from '../../../core/sweep/cell.ts';
import type { SweepKind } from '../../../core/sweep/sweep-plan.ts';
import { cautionWords } from '../ui/CautionMark.tsx';
import { worded } from '../ui/lengths.ts';
import { percentText, shutterText, signed, threeFigures } from '../ui/words.ts';
import type { CellReading } from '../workers/sweep-messages.ts';

const severityWords = { danger: 'Danger', warning: 'Warning', note: 'Note' } as const;

/** Of a place its lengths in those of the page; what else tells pictures apart are names and numbers without any. */
export const placeWords = (kind: SweepKind, text: string): string =>
  kind === 'gels' || kind === 'ratios' ? text : worded(text);

/** "Warning: flat". */
export const cautionText = ({ code, severity }: Caution): string =>
  `${severityWords[severity]}: ${cautionWords[code] ?? code}`;

/** What the lamp is set to: "40 % · 8 s". */
export const settingText = ({ pass }: SweepCell): string =>
  `${threeFigures(pass.levelPercent)} % · ${shutterText(pass.off - pass.on)} s`;

/** "1.3 stops short: full level, whole frame"; null when the wanted dose is met. */
export const missText = ({ missStops }: SweepCell): string | null => {
  // less than what is seen, or read on the tile
  if (missStops === null || Math.abs(missStops) < 0.05) return null;
  const stops = `${Math.abs(missStops).toFixed(1)} stops`;
  return missStops < 0 ? `${stops} short: full level, whole frame` : `${stops} too much: lowest level, shortest count`;
};

const degreesText = (degrees: number) => `${degrees.toFixed(degrees < 10 ? 1 : 0)}°`;

/** What sets a picture of such a sweep apart from the next, beside its name. */
const ownNumber = (kind: SweepKind, cell: SweepCell, { reading }: CellReading): string => {
  switch (kind) {
    case 'angles':
    case 'heights':
      return `${degreesText(reading.offAxisDegrees)} off`;
    case 'distances':
    case 'ratios':
      return settingText(cell);
    case 'gels':
      return reading.colour.cctKelvin === null ? 'no white' : `${Math.round(reading.colour.cctKelvin)} K`;
  }
};

/** The numbers of a picture, one short line that breaks between them only. */
const numbersText = (kind: SweepKind, cell: SweepCell, read: CellReading): string => {
  const { target, rim, relief } = read.reading;
  const stops = target?.stops ?? null;
  return [
    ownNumber(kind, cell, read),
    stops === null ? 'dark at the aim' : `${kind === 'ratios' ? 'alone ' : ''}${signed(stops)} stops`,
    ...(rim.litShare === null ? [] : [`outline ${percentText(rim.litShare)}`]),
    ...(relief.patch ? [`contrast ${relief.patch.rmsContrast.toFixed(2)}`] : []),
  ]
    .map((part) => part.replaceAll(' ', '\u00a0'))
    .join(' · ');
};

/** All that stands under a picture, line by line. */
export const cellLines = (kind: SweepKind, cell: SweepCell, read: CellReading | undefined): string[] => {
  const miss = missText(cell);
  return [...(read ? [numbersText(kind, cell, read)] : []), ...(miss ? [miss] : []), ...(cell.note ? [cell.note] : [])];
};
