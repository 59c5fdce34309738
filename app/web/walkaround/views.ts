import type { CameraView } from '../../../core/camera/camera-view.ts';
import { add, distance, normalize, scale, sub, type Vec3 } from '../../../core/geometry/vec.ts';
import { degreesFromRadians } from '../../../core/units/angle.ts';

/** From where the set-up is looked at. */
export type ViewKind = 'start' | 'camera' | 'above' | 'side';

/** An eye in world axes. */
export interface Eye {
  readonly position: Vec3;
  readonly target: Vec3;
  /** Full angle from top to bottom of the drawing. */
  readonly fieldDegrees: number;
}

const plainFieldDegrees = 45;
/** Round the picture's edge, so that its lines are seen. */
const margin = 1.12;

/**
 * The eye for a view.
 *
 * @param camera of the setup
 * @param aim what the camera looks at
 * @param spreadMetres how far from the aim the farthest lamp or the camera stands
 */
export const eyeOf = (kind: ViewKind, camera: CameraView, aim: Vec3, spreadMetres: number): Eye => {
  const [x, , z] = sub(camera.position, aim);
  const level = Math.hypot(x, z);
  // level unit directions from the aim: back toward the camera, and to the right as the camera sees it
  const back: Vec3 = level > 1e-6 ? [x / level, 0, z / level] : [0, 0, 1];
  const right: Vec3 = [back[2], 0, -back[0]];
  const target: Vec3 = [aim[0], Math.max(aim[1], 0), aim[2]];
  const away = Math.max(spreadMetres, 3);
  if (kind === 'camera') {
    const tangent = Math.max(camera.tanHalfWidth, camera.tanHalfHeight) * margin;
    const { position } = camera;
    return {
      position,
      target: add(position, scale(camera.forward, distance(position, aim))),
      fieldDegrees: 2 * degreesFromRadians(Math.atan(tangent)),
    };
  }
  const offsets: Record<Exclude<ViewKind, 'camera'>, Vec3> = {
    start: add(add(scale(back, away * 2.3), scale(right, away * 0.8)), [0, away * 1.15, 0]),
    // a hair toward the camera, so that the camera is at the bottom
    above: add(scale(back, away * 0.002), [0, away * 2.9, 0]),
    side: add(scale(right, away * 2.7), [0, away * 0.16, 0]),
  };
  return { position: add(target, offsets[kind]), target, fieldDegrees: plainFieldDegrees };
};

/** The lowest that an eye may go round its target and stay above the ground, as an angle from straight up in radians. */
export const lowestAngle = ({ position, target }: Pick<Eye, 'position' | 'target'>): number => {
  const away = distance(position, target);
  return Math.PI / 2 + Math.asin(Math.min(Math.max((target[1] - 0.05) / Math.max(away, 1e-6), -0.5), 0.9));
};

const [turnRadians, nearer] = [Math.PI / 36, 0.88];
const [nearestMetres, farthestMetres] = [0.3, 200];

/** Where a key carries an eye: arrows turn five degrees round the target, + and − come closer and go back; null for others. */
export const steppedPosition = (key: string, { position, target }: Pick<Eye, 'position' | 'target'>): Vec3 | null => {
  const offset = sub(position, target);
  const away = Math.hypot(...offset);
  if (away < 1e-6) return null;
  if (key === '+' || key === '=' || key === '-' || key === '−') {
    const next = away * (key === '+' || key === '=' ? nearer : 1 / nearer);
    return add(target, scale(normalize(offset), Math.min(Math.max(next, nearestMetres), farthestMetres)));
  }
  const across = { ArrowLeft: -turnRadians, ArrowRight: turnRadians }[key] ?? 0;
  const over = { ArrowUp: -turnRadians, ArrowDown: turnRadians }[key] ?? 0;
  if (across === 0 && over === 0) return null;
  const turn = Math.atan2(offset[0], offset[2]) + across;
  const fromTop = Math.acos(Math.min(Math.max(offset[1] / away, -1), 1)) + over;
  const held = Math.min(Math.max(fromTop, 0.002), lowestAngle({ position, target }));
  const level = away * Math.sin(held);
  return add(target, [level * Math.sin(turn), away * Math.cos(held), level * Math.cos(turn)]);
};
