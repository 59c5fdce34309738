import { useMemo } from 'react';
import type { GroundPoint } from '../../../core/geometry/hull.ts';
import type { Camera, Setup } from '../../../core/setup/schema/setup.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';
import type { Hour } from '../state/hour-of-place.ts';
import { moonShape } from '../ui/moon-shape.ts';
import { levelForward } from '../ui/plan-view.ts';
import { coreShape, moonRing } from '../ui/sky-glyphs.ts';
import { bandOverHorizon, levelOfBearing, turnToDrawing, wheelPoint } from '../ui/sky-wheel.ts';

/** Half the drawing, and how far out the horizon lies. */
const [half, radius] = [100, 76];

const times = ([x, y]: GroundPoint, by: number): GroundPoint => [x * by, y * by];
const text = ([x, y]: GroundPoint) => `${x.toFixed(1)} ${y.toFixed(1)}`;
const lineThrough = (points: readonly GroundPoint[]) => `M${points.map((p) => text(times(p, radius))).join('L')}`;

/** The picture's left and right edges, from the middle to the horizon; up is where the camera looks. */
const wedge = ({ sensor, focalLengthMm, rollDegrees }: Camera): string => {
  const isUpright = Math.abs(Math.sin((rollDegrees * Math.PI) / 180)) > 0.7;
  const side = Math.atan((isUpright ? sensor.heightMm : sensor.widthMm) / 2 / focalLengthMm);
  const [x, y] = [radius * Math.sin(side), -radius * Math.cos(side)];
  return `M${text([-x, y])}L0 0L${text([x, y])}`;
};

/** An arc along the horizon, just outside it, as wide as the town. */
const glowArc = (up: GroundPoint, bearing: number, width: number, north: number): string => {
  const r = radius + 5;
  const end = (side: 1 | -1) =>
    times(turnToDrawing(up, levelOfBearing(bearing + (side * Math.max(width, 4)) / 2, north)), r);
  return `M${text(end(-1))}A${r} ${r} 0 0 1 ${text(end(1))}`;
};

/** What is behind the moon's lit side on the drawing, radians. */
const litTurn = (up: GroundPoint, { sky: { moon } }: Hour): number => {
  const [x, , z] = moon.towardSun;
  const [dx, dy] = turnToDrawing(up, [x, -z]);
  return Math.atan2(dy, dx);
};

/** At midnight the sun is in the north, or in the south: its word stands beside the N. */
const beside = ([x, y]: GroundPoint, north: GroundPoint): GroundPoint => {
  const isNear = x * north[0] + y * north[1] > 0.93;
  if (!isNear) return [x, y];
  const turn = Math.atan2(north[1], north[0]) + (x * north[1] - y * north[0] > 0 ? -0.38 : 0.38);
  return [Math.cos(turn), Math.sin(turn)];
};

interface SkyWheelProps {
  readonly place: Setup['place'];
  readonly camera: Camera;
  readonly hour: Hour;
  readonly words: string;
}

/** The sky from above, as the ground plan lies: horizon, picture's edges, moon, Milky Way, sun's bearing, glow of towns. */
export const SkyWheel = ({ place, camera, hour, words }: SkyWheelProps) => {
  const [e, n] = levelForward(camera);
  const { sky, core } = hour;
  const drawn = useMemo(() => {
    const up: GroundPoint = [e, n];
    return {
      up,
      band: bandOverHorizon(up, sky.worldFromGalactic).map(lineThrough).join(''),
      moon: sky.moon.towardSeen[1] > 0 ? times(wheelPoint(up, sky.moon.towardSeen), radius) : null,
      core: core.towardSeen[1] > 0 ? times(wheelPoint(up, core.towardSeen), radius) : null,
      sun: turnToDrawing(up, levelOfBearing(degreesFromRadians(sky.sun.bearingRadians), place.northDegrees)),
      north: turnToDrawing(up, levelOfBearing(0, place.northDegrees)),
    };
  }, [e, n, sky, core, place.northDegrees]);
  const { up, north, sun } = drawn;
  const sunWord = times(beside(sun, north), radius + 14);
  const isSunUp = sky.sun.towardSeen[1] > 0;
  const sunAt = isSunUp ? times(wheelPoint(up, sky.sun.towardSeen), radius) : times(sun, radius);
  return (
    <svg
      className="sky-wheel"
      viewBox={`${-half} ${-half} ${2 * half} ${2 * half}`}
      role="img"
      aria-label={`Sky from above, camera looking up the drawing: ${words}`}
    >
      <g className="sky-rings">
        <circle r={radius} />
        <circle r={(radius * 2) / 3} />
        <circle r={radius / 3} />
      </g>
      <path className="sky-wedge" d={wedge(camera)} />
      <path className="sky-band" d={drawn.band} />
      {place.glowDomes.map(({ bearingDegrees, widthDegrees }, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a drawing without a life of its own
        <path key={i} className="sky-glow" d={glowArc(up, bearingDegrees, widthDegrees, place.northDegrees)} />
      ))}
      {isSunUp ? (
        <circle className="sky-sun" cx={sunAt[0]} cy={sunAt[1]} r={5} />
      ) : (
        <path className="sky-sun" d={`M${text(times(sun, radius - 5))}L${text(times(sun, radius + 5))}`} />
      )}
      <text className="sky-word" x={sunWord[0]} y={sunWord[1] + 4}>
        sun
      </text>
      <text className="sky-word" x={north[0] * (radius + 15)} y={north[1] * (radius + 15) + 4}>
        N
      </text>
      {drawn.core && (
        <g className="sky-named" transform={`translate(${text(drawn.core)})`}>
          <path className="sky-core" d={coreShape} />
          <text className="sky-word" y={17}>
            core
          </text>
        </g>
      )}
      {drawn.moon && (
        <g className="sky-named" transform={`translate(${text(drawn.moon)})`}>
          <path className="sky-moon" d={moonRing} />
          <path className="sky-moon-lit" d={moonShape(4.5, sky.moon.litShare, litTurn(up, hour))} />
          <text className="sky-word" y={-9}>
            moon
          </text>
        </g>
      )}
    </svg>
  );
};
