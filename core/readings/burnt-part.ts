import { viewDirection } from '../camera/camera-view.ts';
import { saturationRatio } from '../camera/exposure.ts';
import { apply, type Triple } from '../colour/matrix.ts';
import { luminanceOfLinearSrgb } from '../colour/srgb.ts';
import { layerWeight } from '../trace/layer-weights.ts';
import { surfaceAlong } from '../trace/surface-point.ts';
import { stopsFromRatio } from '../units/stops.ts';
import type { World } from '../world/world.ts';
import type { SmallPicture } from './small-picture.ts';

/** What of a frame's picture has a full channel, and through which lamp. */
export interface BurntPart {
  /** Most of it lies on it; null for the ground or the sky. */
  readonly subjectId: string | null;
  /** The lamp's pass that gives most of the light there; null when moon or sky do. */
  readonly passId: string | null;
  /** Of the fullest channel anywhere, from mid-grey, as if the sensor had no end. */
  readonly stops: number;
}

/** The key with the greatest sum. */
const greatest = <K>(sums: ReadonlyMap<K, number>): K | undefined => [...sums].sort((a, b) => b[1] - a[1])[0]?.[0];

/** Looks for what burns in a frame's small picture; null where no channel is full. */
export const burntPart = ({ stage }: World, { frame, layers, linear, size }: SmallPicture): BurntPart | null => {
  const weights = frame.lights.map((light) => layerWeight(frame, light));
  const [subjects, lights] = [new Map<number, number>(), new Map<number, number>()];
  let most = 0;
  for (let at = 0; at < linear.length; at += 3) {
    if (Math.max(...linear.subarray(at, at + 3)) < saturationRatio) continue;
    const [x, y] = [(at / 3) % size.width, Math.floor(at / 3 / size.width)];
    const direction = viewDirection(frame.view, (x + 0.5) / size.width, (y + 0.5) / size.height);
    const subject = surfaceAlong(stage, frame.view.position, direction)?.subject ?? -1;
    subjects.set(subject, (subjects.get(subject) ?? 0) + 1);
    const sum: [number, number, number] = [0, 0, 0];
    weights.forEach((weight, i) => {
      const own = weight.map((w, c) => w * (layers[i]?.[at + c] as number)) as unknown as Triple;
      own.forEach((value, c) => {
        sum[c] = (sum[c] as number) + value;
      });
      lights.set(i, (lights.get(i) ?? 0) + luminanceOfLinearSrgb(own));
    });
    most = Math.max(most, ...apply(frame.development.whiteBalance, sum));
  }
  const [subject, light] = [greatest(subjects), frame.lights[greatest(lights) ?? -1]];
  if (subject === undefined) return null;
  return {
    subjectId: stage.subjects[subject]?.id ?? null,
    passId: light?.source.kind === 'lamp' ? light.id : null,
    stops: stopsFromRatio(most),
  };
};
