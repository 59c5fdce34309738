import type { FrameReport, TimedPassReading } from '../../core/cautions/setup-report.ts';
import type { Frame } from '../../core/setup/schema/setup.ts';
import { patchText, starsText, withSign } from './reading-texts.ts';

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

/** The lines under a scheme’s table that a frame and its passes have. */
export const frameLines = (frame: Frame, report: FrameReport): string[] => {
  const passes = report.passes.flatMap((reading) => passLines(frame, reading));
  return [...passes, ...togetherLines(frame, report), frameLine(frame, report)];
};
