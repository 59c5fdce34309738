import {
  type FrameReport,
  reportScheme,
  type SchemeReport,
  type TimedPassReading,
} from '../../core/cautions/setup-report.ts';
import type { PassReading } from '../../core/readings/pass-reading.ts';
import type { Frame, Pass, Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { bodyHeightWord } from '../../core/units/body-height.ts';
import { alignedRows } from './align-rows.ts';
import { grazingText, patchText, rimText, starsText, withSign } from './reading-texts.ts';
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

const metres = (value: number | null): string =>
  value === null ? 'infinity' : `${value.toFixed(value < 10 ? 1 : 0)} m`;

const nameOf = (frame: Frame, passId: string | null): string =>
  frame.passes.find(({ id }) => id === passId)?.name ?? 'moon and sky';

/** A line under the table, where there is something to say. */
const lineOf = (head: string, parts: readonly string[]): string[] =>
  parts.length > 0 ? [`  ${head}: ${parts.join('; ')}`] : [];

const shortSeconds = (value: number): string => `${value.toFixed(value < 10 ? 1 : 0)} s`;

/** How far whoever holds the lamp has come, and for how long the lens sees them. */
const personParts = ({ person, timing }: TimedPassReading): string[] => {
  const { walkSeconds, isFromCamera, slackSeconds } = timing;
  const walk =
    walkSeconds === null || slackSeconds === null
      ? []
      : [
          `walk there ${isFromCamera ? 'from the camera ' : ''}${shortSeconds(walkSeconds)}, ${shortSeconds(Math.abs(slackSeconds))} ${slackSeconds < 0 ? 'short' : 'to spare'}`,
        ];
  if (!person || person.visibleSeconds === 0) return walk;
  const { visibleSeconds, exposureShare, frameShare } = person;
  const share = `${(100 * exposureShare).toFixed(0)} % of the exposure, ${(100 * frameShare).toPrecision(2)} % of the picture`;
  return [...walk, `seen for ${shortSeconds(visibleSeconds)}, ${share}`];
};

/** Evenness and patch of a pass, what its shadow agrees with, and whoever holds the lamp. */
const passLines = (frame: Frame, reading: TimedPassReading): string[] => {
  const { passId, evennessStops, fallOffStops, relief, agreement, overMoonStops } = reading;
  const light = [
    ...(overMoonStops === null ? [] : [`${withSign(overMoonStops)} stops over the moon`]),
    ...(evennessStops === null ? [] : [`even to ${evennessStops.toFixed(1)} stops`]),
    ...(fallOffStops === null ? [] : [`distance alone ${fallOffStops.toFixed(1)}`]),
    ...(relief.patch ? [`patch contrast ${patchText(relief.patch)}`] : []),
  ];
  const shadow = Object.entries({ moon: agreement.moonDegrees, glow: agreement.glowDegrees }).flatMap(
    ([what, apart]) => (apart === null ? [] : [`${apart.toFixed(0)}° off the ${what}’s`]),
  );
  const head = `${nameOf(frame, passId)} in ${frame.name}`;
  return [
    ...lineOf(head, light),
    ...lineOf(`Shadow of ${head}`, shadow),
    ...lineOf(`You with ${head}`, personParts(reading)),
  ];
};

/** What all light of a frame does together, and what is there without lamps. */
const togetherLines = (frame: Frame, report: FrameReport): string[] => {
  const { keyToFillStops, keyPassId, fillPassId, patch, unlitStops } = report;
  const parts = [
    ...(keyToFillStops === null
      ? []
      : [`${nameOf(frame, keyPassId)} over ${nameOf(frame, fillPassId)} ${keyToFillStops.toFixed(1)} stops`]),
    ...(patch ? [`patch contrast ${patch.rmsContrast.toFixed(2)}`] : []),
  ];
  const unlit = unlitStops === null ? [] : [`${withSign(unlitStops)} stops`];
  return [...lineOf(`All light in ${frame.name}`, parts), ...lineOf(`Unlit land in ${frame.name}`, unlit)];
};

/** Depth of field, focus steps, star trails, full channels and running order of a frame, in one line. */
const frameLine = (frame: Frame, { depth, stars, clipped, order }: FrameReport): string => {
  const steps = depth && !depth.isSharpThroughout ? depth.steps.map(({ focusMetres }) => metres(focusMetres)) : [];
  const full = Object.entries(clipped).flatMap(([channel, share]) =>
    share > 0 ? [`${channel} full on ${(100 * share).toFixed(1)} %`] : [],
  );
  return `  ${[
    depth
      ? `${frame.name}: sharp from ${metres(depth.nearMetres)} to ${metres(depth.farMetres)}, hyperfocal ${metres(depth.hyperfocalMetres)}`
      : `${frame.name}: focused nearer than the lens can`,
    ...(steps.length > 0 ? [`focus steps for all of it: ${steps.join(', ')}`] : []),
    starsText(stars),
    ...full,
    `shutter open from ${order.startSeconds.toFixed(0)} to ${order.endSeconds.toFixed(0)} s`,
  ].join('; ')}`;
};

/** Readings for people: a table a scheme, one line a pass, units in every cell, columns alike in all schemes; then its frames. */
export const readingsTable = (setup: Setup): string[] => {
  const tables = setup.schemes.map((scheme) => {
    const report = reportScheme(setup, scheme);
    const frames = scheme.frames.flatMap((frame, f) => {
      const own = report.frames[f] as FrameReport;
      const passes = own.passes.flatMap((reading) => passLines(frame, reading));
      return [...passes, ...togetherLines(frame, own), frameLine(frame, own)];
    });
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
