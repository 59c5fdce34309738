import { add, dot, length, normalize, scale, sub, type Vec3 } from '../../geometry/vec.ts';

/**
 * Lengths of a body as shares of its stature: Drillis and Contini, Body Segment Parameters (1966), as drawn by Winter,
 * Biomechanics and Motor Control of Human Movement, figure 4.1. From memory; five of the segments seen quoted elsewhere.
 */
export const bodyShares = {
  ankleUp: 0.039,
  shank: 0.246,
  thigh: 0.245,
  shoulderUp: 0.818,
  chinUp: 0.87,
  upperArm: 0.186,
  forearm: 0.146,
  hand: 0.108,
  footLength: 0.152,
  footWidth: 0.055,
  shoulderHalf: 0.129,
} as const;

/** Joints of a body of stature 1, [east, north, up], facing south. West and east are two of each. */
export interface Joints {
  readonly hipMiddle: Vec3;
  /** Unit, from the hips to the shoulders. */
  readonly spine: Vec3;
  /** Unit, level, where the face looks. */
  readonly looks: Vec3;
  readonly sides: readonly {
    readonly hip: Vec3;
    readonly knee: Vec3;
    readonly ankle: Vec3;
    readonly shoulder: Vec3;
    readonly elbow: Vec3;
    readonly wrist: Vec3;
    readonly fingertips: Vec3;
  }[];
}

/** The joint between two bones whose ends are given; it bends toward `toward`. Too far apart, the bones lie straight. */
export const bend = (from: Vec3, to: Vec3, [first, second]: readonly [number, number], toward: Vec3): Vec3 => {
  const line = sub(to, from);
  const apart = Math.min(length(line), (first + second) * 0.999);
  const along = normalize(line);
  const reach = (first * first - second * second + apart * apart) / (2 * apart);
  const side = sub(toward, scale(along, dot(toward, along)));
  return add(
    from,
    add(scale(along, reach), scale(normalize(side), Math.sqrt(Math.max(first * first - reach * reach, 0)))),
  );
};

const { ankleUp, shank, thigh, shoulderUp, upperArm, forearm, hand } = bodyShares;
const hipUp = ankleUp + shank + thigh;
/** Half of the distance between the middles of the hip joints, of the feet, of the shoulder joints: drawn by eye. */
const halves = { hip: 0.05, foot: 0.058, shoulder: 0.098 };
const south: Vec3 = [0, -1, 0];
const spineLength = shoulderUp - hipUp;

const limbTo = (shoulder: Vec3, elbowAlong: Vec3, wristAlong: Vec3) => {
  const elbow = add(shoulder, scale(normalize(elbowAlong), upperArm));
  const wrist = add(elbow, scale(normalize(wristAlong), forearm));
  return { elbow, wrist, fingertips: add(wrist, scale(normalize(wristAlong), hand)) };
};

const hanging = (shoulder: Vec3, side: number) => limbTo(shoulder, [side * 0.13, 0.03, -1], [side * 0.05, -0.16, -1]);

const standing = (pointing: number | null): Joints => {
  const hipMiddle: Vec3 = [0, 0, hipUp];
  const sides = [-1, 1].map((side) => {
    const ankle: Vec3 = [side * halves.foot, 0.012, ankleUp];
    const hip: Vec3 = [side * halves.hip, 0, hipUp];
    const shoulder: Vec3 = [side * halves.shoulder, 0, shoulderUp];
    const aim: Vec3 = [Math.cos(pointing ?? 0) * 0.94, -0.34 * Math.cos(pointing ?? 0), Math.sin(pointing ?? 0)];
    const arm = pointing !== null && side > 0 ? limbTo(shoulder, aim, aim) : hanging(shoulder, side);
    return { hip, ankle, knee: bend(hip, ankle, [thigh, shank], south), shoulder, ...arm };
  });
  return { hipMiddle, spine: [0, 0, 1], looks: pointing === null ? south : normalize([0.8, -0.6, 0]), sides };
};

/** How high the hip joints are over what is sat on. */
const seatToHip = 0.054;

const sitting = (seatUp: number): Joints => {
  const up = seatUp + seatToHip;
  const farthest = Math.sqrt((0.97 * (thigh + shank)) ** 2 - (up - ankleUp) ** 2);
  const forward = Math.min(0.31, farthest);
  const lean = 0.16;
  const spine: Vec3 = [0, -Math.sin(lean), Math.cos(lean)];
  const hipMiddle: Vec3 = [0, forward / 2, up];
  const top = add(hipMiddle, scale(spine, spineLength));
  const sides = [-1, 1].map((side) => {
    const hip = add(hipMiddle, [side * halves.hip, 0, 0]);
    const ankle: Vec3 = [side * halves.foot * 1.2, -forward / 2, ankleUp];
    const knee = bend(hip, ankle, [thigh, shank], [side * 0.12, -0.7, 0.7]);
    const shoulder = add(top, [side * halves.shoulder, 0, 0]);
    // hands rest on the knees
    const wrist = add(knee, [-side * 0.005, 0.045, 0.055]);
    const elbow = bend(shoulder, wrist, [upperArm, forearm], [side * 0.8, 0.35, -0.6]);
    const reach = sub(wrist, shoulder);
    const most = (upperArm + forearm) * 0.999;
    const held = length(reach) > most ? add(shoulder, scale(normalize(reach), most)) : wrist;
    const fingertips = add(held, scale(normalize([-side * 0.2, -0.8, -0.55]), hand * 0.8));
    return { hip, knee, ankle, shoulder, elbow, wrist: held, fingertips };
  });
  return { hipMiddle, spine, looks: south, sides };
};

export type Pose = 'standing' | 'pointing' | 'sitting';

/**
 * Joints of a pose, for a stature of 1.
 *
 * @param pointsUpRadians how far over level the arm of someone pointing is
 * @param seatUp height of the seat over the ground, in statures; 0 = on the ground with the knees drawn up
 */
export const jointsOf = (pose: Pose, pointsUpRadians: number, seatUp: number): Joints => {
  if (pose === 'sitting') return sitting(seatUp);
  return standing(pose === 'pointing' ? pointsUpRadians : null);
};
