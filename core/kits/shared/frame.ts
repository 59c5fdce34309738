import { dot, type Vec3 } from '../../geometry/vec.ts';
import { degreesFromRadians, radiansFromDegrees } from '../../units/angle.ts';
import type { PartDraft } from '../kit.ts';

/** A place in a subject, metres: [east, north, up]. */
export type Place = [east: number, north: number, up: number];

/** Where something stands and how it is turned, as the document says it. */
export interface Placement {
  readonly position?: Place | undefined;
  readonly turnDegrees?: number | undefined;
  readonly tiltDegrees?: number | undefined;
  readonly rollDegrees?: number | undefined;
}

/** Where a thing's own axes lie: unit vectors in document axes, and its origin. */
export interface Frame {
  readonly east: Vec3;
  readonly north: Vec3;
  readonly up: Vec3;
  readonly origin: Vec3;
}

const inFrame = ({ east, north, up }: Frame, [e, n, u]: Vec3): Vec3 => [
  east[0] * e + north[0] * n + up[0] * u,
  east[1] * e + north[1] * n + up[1] * u,
  east[2] * e + north[2] * n + up[2] * u,
];

/** A point of the thing in the axes of what it stands in. */
export const placeInFrame = (frame: Frame, point: Vec3): Place => {
  const [e, n, u] = inFrame(frame, point);
  return [e + frame.origin[0], n + frame.origin[1], u + frame.origin[2]];
};

/** `inner` as seen from where `outer` stands. */
const within = (outer: Frame, inner: Frame): Frame => ({
  east: inFrame(outer, inner.east),
  north: inFrame(outer, inner.north),
  up: inFrame(outer, inner.up),
  origin: placeInFrame(outer, inner.origin),
});

/** The frame of turns in the order of the document: roll first, then tilt, then turn. */
export const frameOf = ({
  position = [0, 0, 0],
  turnDegrees = 0,
  tiltDegrees = 0,
  rollDegrees = 0,
}: Placement): Frame => {
  const cosSin = (degrees: number) => [Math.cos(radiansFromDegrees(degrees)), Math.sin(radiansFromDegrees(degrees))];
  const [cosTurn = 1, sinTurn = 0] = cosSin(turnDegrees);
  const [cosTilt = 1, sinTilt = 0] = cosSin(tiltDegrees);
  const [cosRoll = 1, sinRoll = 0] = cosSin(rollDegrees);
  const origin: Vec3 = [0, 0, 0];
  const turn: Frame = { east: [cosTurn, -sinTurn, 0], north: [sinTurn, cosTurn, 0], up: [0, 0, 1], origin: position };
  const tilt: Frame = { east: [1, 0, 0], north: [0, cosTilt, -sinTilt], up: [0, sinTilt, cosTilt], origin };
  const roll: Frame = { east: [cosRoll, 0, -sinRoll], north: [0, 1, 0], up: [sinRoll, 0, cosRoll], origin };
  return within(turn, within(tilt, roll));
};

/** The turns that give a frame; where the tilt is a right angle and turn and roll do the same, there is no turn. */
export const placementOf = ({ east, north, up, origin }: Frame): Required<Placement> => {
  const tilt = Math.asin(Math.min(Math.max(-north[2], -1), 1));
  const upright = Math.hypot(north[0], north[1]) < 1e-9;
  const turn = upright ? 0 : Math.atan2(north[0], north[1]);
  const roll = upright ? Math.atan2(-east[1] * Math.sign(tilt), east[0]) : Math.atan2(-east[2], up[2]);
  return {
    position: [...origin],
    turnDegrees: degreesFromRadians(turn),
    tiltDegrees: degreesFromRadians(tilt),
    rollDegrees: degreesFromRadians(roll),
  };
};

/** Parts moved and turned together, as one thing that stands somewhere. */
export const placeTogether = <T extends PartDraft>(parts: readonly T[], placement: Placement): T[] => {
  const outer = frameOf(placement);
  return parts.map((part) => ({ ...part, ...placementOf(within(outer, frameOf(part))) }));
};

/** The placement whose up axis runs from one place to another; its east axis stays level. */
export const placementAlong = (from: Vec3, to: Vec3): Required<Placement> & { readonly lengthMetres: number } => {
  const along: Vec3 = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const level = Math.hypot(along[0], along[1]);
  return {
    position: [...from],
    turnDegrees: level < 1e-9 ? 0 : degreesFromRadians(Math.atan2(along[0], along[1])),
    tiltDegrees: degreesFromRadians(Math.atan2(level, along[2])),
    rollDegrees: 0,
    lengthMetres: Math.sqrt(dot(along, along)),
  };
};
