import { type FrameReport, reportScheme, type SchemeReport } from '../../core/cautions/setup-report.ts';
import type { PassReading } from '../../core/readings/pass-reading.ts';
import type { Frame, Pass, Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../core/units/body-height.ts';
import { alignedRows } from './align-rows.ts';
import { frameLines } from './frame-lines.ts';
import { grazingText, rimText, withSign } from './reading-texts.ts';
import { outlineLines, skyLines } from './sky-lines.ts';

const heads = ['frame, pass', 'clock', 'distance', 'lamp height', 'light', 'level', 'time', 'count', 'rim', 'grazing'];
/** Columns that read better from the left; numbers stand at the right. */
const leftColumns = new Set([0, 3, 8]);

const figures = (value: number): string => (value === 0 || value >= 10 ? value.toFixed(0) : value.toPrecision(2));

/** What to count for the night level, or by how much no count will do. */
const countText = ({ spoken, missStops, seconds, advice }: PassReading['count']): string => {
  if (spoken !== null) return String(spoken);
  if (missStops !== null) return `${Math.abs(missStops).toFixed(1)} too ${missStops > 0 ? 'bright' : 'dark'}`;
  if (seconds === null) return 'none';
  return advice.length > 0 ? 'other level' : 'stays lit';
};

const cells = (frame: Frame, pass: Pass, reading: PassReading): string[] => {
  const { target, lampHeightMetres } = reading;
  return [
    `${frame.name}, ${pass.name}`,
    reading.clock,
    `${reading.distanceMetres.toFixed(1)} m`,
    `${bodyHeightWord(lampHeightMetres)}, ${lampHeightMetres.toFixed(2)} m`,
    target ? `${figures(target.illuminanceLux)} lx` : 'sky',
    target && target.stops !== null ? `${withSign(target.stops)} stops` : 'none',
    `${Number((pass.off - pass.on).toPrecision(3))} s`,
    countText(reading.count),
    rimText(reading.rim),
    grazingText(reading.relief),
  ];
};

const passRows = (scheme: Scheme, { frames }: SchemeReport): string[][] =>
  scheme.frames.flatMap((frame, f) =>
    (frames[f]?.passes ?? []).flatMap((reading) => {
      const pass = frame.passes.find(({ id }) => id === reading.passId);
      return pass ? [cells(frame, pass, reading)] : [];
    }),
  );

/** Readings for people: a table a scheme, one line a pass, units in every cell, columns alike in all schemes; then its frames. */
export const readingsTable = (setup: Setup): string[] => {
  const tables = setup.schemes.map((scheme) => {
    const report = reportScheme(setup, scheme);
    const frames = scheme.frames.flatMap((frame, f) => frameLines(frame, report.frames[f] as FrameReport));
    const sky = [...skyLines(report), ...outlineLines(setup, scheme, report)];
    return { name: scheme.name, rows: passRows(scheme, report), frames: [...frames, ...sky] };
  });
  const [head = '', ...lines] = alignedRows([heads, ...tables.flatMap(({ rows }) => rows)], leftColumns);
  return tables.flatMap(({ name, rows, frames }) => {
    const own = lines.splice(0, rows.length);
    return [name, ...(own.length > 0 ? [head, ...own] : ['  no passes']), ...frames, ''];
  });
};

/** What the columns mean. */
export const tableKey = [
  'Light and level: on the surface that the camera sees where the lamp is aimed; level in stops from mid-grey.',
  'Count: seconds for the night level, or the stops by which no count does it.',
  'Rim: share of the outline that is lit, and how much brighter it is than the face.',
  'Grazing: angle of the light to level ground under the aim / to the surface at the aim.',
  'Even to: from the 5th to the 95th percentile of the light on the lit face; what distance alone makes of it.',
  'Patch contrast: standard deviation over mean of the drawn patch’s luminance, by one pass or by all light together.',
  'One pass over another, or over moon and sky: key to fill, each at its best on the subject’s face.',
  'Unlit land: level ground of 18 % under moon and sky alone; bearings of moon, sun and core are true ones.',
  'Walk there: from the pass before, as one person does all of them; shutters count from the first one.',
];

/** What holds wherever one goes. */
export const safetyLine =
  'Rules about darkness and about lighting differ from place to place, and may forbid lamps: ask locally before you go.';
