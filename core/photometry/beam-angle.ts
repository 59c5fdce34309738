import { type Emitter, spotIntensityPerLumen } from './emitter.ts';

const pose = { position: [0, 0, 0], axis: [0, 0, -1] } as const;
const step = Math.PI / 720;
/** From here on a lamp counts as shining all round. */
const widest = (170 * Math.PI) / 180;

/**
 * Half angle of one half plane: the last angle from the axis outward that still has half the peak, sharpened by a straight
 * line; 0 where none has.
 */
const halfAngle = (intensity: (angle: number) => number, peak: number): number => {
  let last: number | null = null;
  for (let angle = 0; angle <= Math.PI + 1e-9; angle += step) if (intensity(angle) >= peak / 2) last = angle;
  if (last === null) return 0;
  const [inside, outside] = [intensity(last), intensity(last + step)];
  return last + (inside > outside ? (step * (inside - peak / 2)) / (inside - outside) : 0);
};

/**
 * Full angle in radians where a lamp's intensity, as dressed, has fallen to half its peak: the mean over four half planes
 * round the axis. Null for lamps that shine all round, and for globes and tubes.
 */
export const beamAngleRadians = (emitter: Emitter): number | null => {
  if (emitter.shape === 'sphere' || emitter.shape === 'tube') return null;
  const planes = [0, 1, 2, 3].map((quarter) => {
    const [x, y] = [Math.cos((quarter * Math.PI) / 2), Math.sin((quarter * Math.PI) / 2)];
    return (angle: number) => {
      const s = Math.sin(Math.min(angle, Math.PI));
      return spotIntensityPerLumen(emitter, pose, [s * x, s * y, -Math.cos(Math.min(angle, Math.PI))], null);
    };
  });
  let peak = 0;
  for (const plane of planes) for (let angle = 0; angle <= Math.PI; angle += step) peak = Math.max(peak, plane(angle));
  const full = (2 * planes.reduce((sum, plane) => sum + halfAngle(plane, peak), 0)) / planes.length;
  return peak > 0 && full < widest ? full : null;
};
