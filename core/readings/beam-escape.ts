import { closestHit } from '../geometry/cast-ray.ts';
import { add, basisAround, scale, type Vec3 } from '../geometry/vec.ts';
import { beamAngleRadians } from '../photometry/beam-angle.ts';
import type { Stage } from '../world/stage.ts';
import { poseAt, type WorldLight } from '../world/world.ts';

/** What of a beam goes up past everything. */
export interface BeamEscape {
  /** Whether its axis does. */
  readonly axisEscapes: boolean;
  /** Share of the directions within half its peak that do, 0 to 1; null for lamps that shine all round. */
  readonly share: number | null;
}

/** Directions within the beam that are tried, evenly over the solid angle. */
const tries = 64;
/** Golden angle, by which a spiral turns from point to point to lie evenly. */
const goldenAngle = Math.PI * (3 - Math.sqrt(5));

/** Looks along a lamp's beam, half-way through its on-time, for what goes above the horizon and meets nothing. */
export const beamEscape = (stage: Stage, { source }: WorldLight): BeamEscape => {
  if (source.kind !== 'lamp') throw new Error('only lamps have a beam');
  const { position, axis } = poseAt(source, 0.5);
  const escapes = (way: Vec3): boolean => way[1] > 0 && closestHit(stage.tree, position, way) === null;
  const angle = beamAngleRadians(source.emitter);
  if (angle === null) return { axisEscapes: escapes(axis), share: null };
  const { first, second } = basisAround(axis);
  const spread = 1 - Math.cos(angle / 2);
  let escaped = 0;
  for (let n = 0; n < tries; n++) {
    const cos = 1 - ((n + 0.5) / tries) * spread;
    const sin = Math.sqrt(1 - cos * cos);
    const across = add(scale(first, Math.cos(n * goldenAngle)), scale(second, Math.sin(n * goldenAngle)));
    if (escapes(add(scale(axis, cos), scale(across, sin)))) escaped++;
  }
  return { axisEscapes: escapes(axis), share: escaped / tries };
};
