import type { SchemeReport } from '../../core/cautions/setup-report.ts';
import type { Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { withSign } from './reading-texts.ts';

const whole = (degrees: number): string => `${degrees.toFixed(0)}°`;
const stands = ({ altitudeDegrees, bearingDegrees }: { altitudeDegrees: number; bearingDegrees: number }): string =>
  altitudeDegrees < 0 ? `${whole(-altitudeDegrees)} down` : `${whole(altitudeDegrees)} up at ${whole(bearingDegrees)}`;

const factor = (lengthPerHeight: number): string => (lengthPerHeight > 20 ? 'over 20' : lengthPerHeight.toFixed(1));
const lux = (value: number): string => `${Number(value.toPrecision(2))} lx`;

/** Sun, moon, zenith and core of the hour, and the moon as a light, a line each. */
export const skyLines = ({ sky, moon }: Pick<SchemeReport, 'sky' | 'moon'>): string[] => [
  ...(sky
    ? [
        `  Sky of the hour: ${[
          `sun ${stands(sky.sun)}, ${sky.sun.light}`,
          `moon ${stands(sky.moon)}, ${(100 * sky.moon.litShare).toFixed(0)} % lit`,
          `zenith ${sky.zenithMagnitude.toFixed(1)} mag/arcsec2`,
          `core ${stands(sky.core)}${sky.core.isInFrame ? ', in the frame' : ''}`,
        ].join('; ')}`,
      ]
    : []),
  ...(moon
    ? [
        `  Moonlight: ${[
          `${lux(moon.levelLux)} on level ground`,
          `shadows to ${whole(moon.shadowBearingDegrees)} true, ${whole(moon.shadowSceneBearingDegrees)} in the scene`,
          `${factor(moon.shadowLengthPerHeight)} times the height`,
          ...(moon.isInFrame ? ['the moon in the frame'] : []),
        ].join('; ')}`,
      ]
    : []),
];

/** What stands before the sky, subject by subject: by how much the sky is over it unlit, and with all lamps of a frame. */
export const outlineLines = (setup: Setup, scheme: Scheme, { frames }: Pick<SchemeReport, 'frames'>): string[] => {
  const nameOf = (id: string) => setup.subjects.find((subject) => subject.id === id)?.name ?? id;
  return (frames[0]?.outlines ?? []).map(({ subjectId, skyOverUnlitStops, skyShare }) => {
    const lit = frames.flatMap(({ id, outlines, passes }) => {
      const own = outlines.find((outline) => outline.subjectId === subjectId);
      const frame = scheme.frames.find((each) => each.id === id);
      return own && frame && passes.length > 0 && own.skyOverLitStops !== null
        ? [`${withSign(own.skyOverLitStops)} in ${frame.name}`]
        : [];
    });
    const share = `${(100 * skyShare).toFixed(0)} % of its outline before the sky`;
    const unlit = skyOverUnlitStops === null ? 'dark' : `sky over it ${withSign(skyOverUnlitStops)} stops unlit`;
    return `  ${nameOf(subjectId)}: ${[share, [unlit, ...lit].join(', ')].join('; ')}`;
  });
};
