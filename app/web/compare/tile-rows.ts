import type { FrameReport, SchemeReport } from '../../../core/cautions/setup-report.ts';
import type { PassReading } from '../../../core/readings/pass-reading.ts';
import type { Frame, Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../../core/units/body-height.ts';
import { lengthWords } from '../ui/lengths.ts';
import { percentText, senseOfStops, signed, threeFigures } from '../ui/words.ts';

/** A number with its sense, under the same word in every tile. */
interface TileRow {
  readonly label: string;
  /** "" where there is none; then the sense says why. Every tile has every row but the last, so that they compare row by row. */
  readonly value: string;
  readonly sense: string;
}

/** What stands under the picture of a scheme. */
interface TileWords {
  /** Each pass: "Key · 3:00 · 6.0 m · knee"; of several, which the rows are about. */
  readonly passes: readonly string[];
  /** The pass that the rows are about where there are several; else null. */
  readonly keyName: string | null;
  readonly rows: readonly TileRow[];
}

const row = (label: string, value = '', sense = ''): TileRow => ({ label, value, sense });

/** Of all light together where the key is aimed: what fill adds counts. */
const targetRow = ({ target }: PassReading, { targetStops }: FrameReport): TileRow => {
  if (!target) return row('Target', '', 'aimed past everything');
  if (targetStops === null) return row('Target', '', 'no light on it');
  return row('Target', `${signed(targetStops)} stops`, senseOfStops(targetStops));
};

const outlineRow = ({ rim: { litShare, rimToFaceStops } }: PassReading): TileRow => {
  if (litShare === null) return row('Outline', '', 'subject not seen');
  const toFace = rimToFaceStops === null ? '' : `${signed(rimToFaceStops)} stops to the face`;
  return row('Outline', `${percentText(litShare)} lit`, toFace);
};

/** What the key alone makes of the drawn patch where there is one, else how it rakes the ground. */
const reliefRow = ({ relief }: PassReading, { patch }: FrameReport, hasPatch: boolean): TileRow => {
  if (relief.patch) {
    const { rmsContrast, shadowedShare } = relief.patch;
    if (shadowedShare === 1) return row('Patch', '', 'all in shadow');
    return row('Patch', `${rmsContrast.toFixed(2)} · ${percentText(shadowedShare)}`, 'contrast · in shadow');
  }
  // other light on it says that it is seen
  if (hasPatch) return row('Patch', '', patch ? 'no light on the patch' : 'patch dark or not seen');
  const { grazingDegrees, shadowLengthPerHeight } = relief;
  if (shadowLengthPerHeight === null) return row('Raking', '', 'lamp under the ground');
  return row(
    'Raking',
    `${grazingDegrees.toFixed(grazingDegrees < 10 ? 1 : 0)}°`,
    `shadows ×${threeFigures(shadowLengthPerHeight)}`,
  );
};

/** Contrast of the patch under all light of the frame: what fill takes away shows beside the key's own. */
const allLightRow = ({ patch }: FrameReport): TileRow =>
  patch ? row('All light', patch.rmsContrast.toFixed(2), 'contrast') : row('All light', '', 'patch dark or not seen');

const evennessRow = ({ evennessStops }: PassReading): TileRow =>
  evennessStops === null
    ? row('Evenness', '', 'nothing lit')
    : row('Evenness', `${evennessStops.toFixed(1)} stops`, 'across what is seen');

/** Within the painted frame: the other frames of a blend have their own exposure. */
const keyToFillRow = ({ keyToFillStops, fillPassId }: FrameReport, frame: Frame, isAlone: boolean): TileRow => {
  if (keyToFillStops === null) return row('Key to fill', '', 'no fill');
  const fill = frame.passes.find(({ id }) => id === fillPassId)?.name ?? 'moon and sky';
  return row('Key to fill', `${signed(keyToFillStops)} stops`, `over ${fill}${isAlone ? '' : `, in ${frame.name}`}`);
};

/**
 * What is said under a tile: its passes, and of the key light the numbers that schemes are compared by.
 *
 * @param shown ids of the frames that the tile shows
 */
export const tileWords = (
  { patch }: Setup,
  scheme: Scheme,
  report: SchemeReport,
  shown: readonly string[],
): TileWords => {
  const frames = scheme.frames.flatMap((frame) => {
    const of = shown.includes(frame.id) ? report.frames.find(({ id }) => id === frame.id) : undefined;
    return of ? [{ frame, of }] : [];
  });
  const main = frames.findLast(({ of }) => of.passes.length > 0);
  const key = main?.of.passes.find(({ passId }) => passId === main.of.keyPassId) ?? main?.of.passes[0];
  const isOne = frames.reduce((count, { of }) => count + of.passes.length, 0) === 1;
  const passes = frames.flatMap(({ frame, of }) =>
    of.passes.map((reading) => {
      const pass = frame.passes.find(({ id }) => id === reading.passId);
      const height = bodyHeightWord(reading.lampHeightMetres);
      const place = `${reading.clock} · ${lengthWords(reading.distanceMetres, 1)} · ${height}`;
      return `${pass?.name ?? reading.passId} · ${place}${reading === key && !isOne ? ' · read below' : ''}`;
    }),
  );
  if (!main || !key) return { passes, keyName: null, rows: [] };
  const keyName = main.frame.passes.find(({ id }) => id === key.passId)?.name ?? null;
  return {
    passes,
    keyName: passes.length > 1 ? keyName : null,
    rows: [
      targetRow(key, main.of),
      outlineRow(key),
      reliefRow(key, main.of, patch !== null),
      evennessRow(key),
      keyToFillRow(main.of, main.frame, frames.length === 1),
      ...(patch && main.of.passes.length > 1 ? [allLightRow(main.of)] : []),
    ],
  };
};
