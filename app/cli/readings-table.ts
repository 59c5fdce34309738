import { reportScheme } from '../../core/cautions/setup-report.ts';
import type { PassReading } from '../../core/readings/pass-reading.ts';
import type { Frame, Pass, Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../core/units/body-height.ts';
import { worldFromDocument } from '../../core/world/axes.ts';
import { placeOnPath } from '../../core/world/world.ts';

const heads = ['frame, pass', 'clock', 'distance', 'lamp height', 'light', 'level', 'time', 'rim', 'grazing'];
/** Columns that read better from the left; numbers stand at the right. */
const leftColumns = new Set([0, 3, 7]);

const withSign = (value: number): string => `${value < 0 ? '-' : '+'}${Math.abs(value).toFixed(1)}`;
const figures = (value: number): string => (value === 0 || value >= 10 ? value.toFixed(0) : value.toPrecision(2));

/** Height of the lamp over the ground half-way through its on-time, as the readings take it. */
const lampHeightMetres = ({ waypoints, on, off }: Pass): number => {
  const path = waypoints.map(({ time, position, aim }) => ({
    seconds: time,
    position: worldFromDocument(position),
    aim: worldFromDocument(aim),
  }));
  return placeOnPath(path, (on + off) / 2).position[1];
};

const rimText = ({ litShare, rimToFaceStops }: PassReading['rim']): string => {
  if (litShare === null) return 'not seen';
  const share = `${(litShare * 100).toFixed(0)} % lit`;
  return rimToFaceStops === null ? share : `${share}, ${withSign(rimToFaceStops)} stops`;
};

const grazingText = ({ grazingDegrees, target }: PassReading['relief']): string =>
  `${grazingDegrees.toFixed(0)}° / ${target ? `${target.grazingDegrees.toFixed(0)}°` : '-'}`;

const cells = (frame: Frame, pass: Pass, reading: PassReading): string[] => {
  const height = lampHeightMetres(pass);
  const { target } = reading;
  return [
    `${frame.name}, ${pass.name}`,
    reading.clock,
    `${reading.distanceMetres.toFixed(1)} m`,
    `${bodyHeightWord(height)}, ${height.toFixed(2)} m`,
    target ? `${figures(target.illuminanceLux)} lx` : 'sky',
    target && target.stops !== null ? `${withSign(target.stops)} stops` : 'none',
    `${Number((pass.off - pass.on).toPrecision(3))} s`,
    rimText(reading.rim),
    grazingText(reading.relief),
  ];
};

/** Pads the cells so that columns stand under each other. */
const aligned = (rows: readonly (readonly string[])[]): ((row: readonly string[]) => string) => {
  const width = (text: string) => [...text].length;
  const widths = heads.map((head, c) => Math.max(width(head), ...rows.map((row) => width(row[c] as string))));
  const fill = (text: string, c: number) => {
    const blank = ' '.repeat((widths[c] as number) - width(text));
    return leftColumns.has(c) ? text + blank : blank + text;
  };
  return (row) => `  ${row.map(fill).join('  ')}`.trimEnd();
};

const schemeRows = (setup: Setup, scheme: Scheme): string[][] => {
  const { frames } = reportScheme(setup, scheme);
  return scheme.frames.flatMap((frame, f) =>
    (frames[f]?.passes ?? []).flatMap((reading) => {
      const pass = frame.passes.find(({ id }) => id === reading.passId);
      return pass ? [cells(frame, pass, reading)] : [];
    }),
  );
};

/** Readings for people: a table a scheme, one line a pass, units in every cell, columns alike in all schemes. */
export const readingsTable = (setup: Setup): string[] => {
  const tables = setup.schemes.map((scheme) => ({ name: scheme.name, rows: schemeRows(setup, scheme) }));
  const line = aligned(tables.flatMap(({ rows }) => rows));
  const table = (rows: string[][]) => (rows.length > 0 ? [heads, ...rows].map(line) : ['  no passes']);
  return tables.flatMap(({ name, rows }) => [name, ...table(rows), '']);
};

/** What the columns mean. */
export const tableKey = [
  'Light and level: on the surface that the camera sees where the lamp is aimed; level in stops from mid-grey.',
  'Rim: share of the outline that is lit, and how much brighter it is than the face.',
  'Grazing: angle of the light to level ground under the aim / to the surface at the aim.',
];
