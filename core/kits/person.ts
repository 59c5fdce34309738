import { add, mix, scale, type Vec3 } from '../geometry/vec.ts';
import { finishNamed } from '../setup/finish-presets.ts';
import { degreesFromRadians, radiansFromDegrees } from '../units/angle.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { bodyShares, type Joints, jointsOf, type Pose } from './shared/body.ts';
import { rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';

/** A ball or egg about its middle. */
const ball = (
  name: string,
  [east, north, up]: Vec3,
  [across, deep, high]: readonly [across: number, deep: number, high: number],
  rest: { readonly turnDegrees?: number; readonly finish?: FinishDraft; readonly sides?: number } = {},
): PartDraft => ({
  kind: 'sphere',
  name,
  position: [east, north, up - high],
  radiusMetres: across,
  radiusNorthMetres: deep,
  heightMetres: 2 * high,
  sides: 16,
  ...rest,
});

const round = (name: string, at: Vec3, radius: number, finish?: FinishDraft): PartDraft =>
  ball(name, at, [radius, radius, radius], { sides: 14, ...(finish ? { finish } : {}) });

/** Half of the width and depth of a clothed trunk, and how far along the spine over the hips, all as shares of stature. */
const trunk: readonly (readonly [alongShare: number, halfWidth: number, halfDepth: number])[] = [
  [-0.045, 0.09, 0.062],
  [0, 0.1, 0.072],
  [0.07, 0.096, 0.067],
  [0.15, 0.103, 0.07],
  [0.21, 0.115, 0.071],
  [0.25, 0.122, 0.066],
  [0.275, 0.108, 0.056],
  [0.292, 0.08, 0.048],
  [0.308, 0.048, 0.042],
  [0.32, 0.036, 0.036],
];
const trunkSides = 28;

/** The trunk at any place along it: a smooth curve through its sections (Catmull and Rom 1974). */
const trunkAt = (at: number): readonly [number, number, number] => {
  const k = Math.min(Math.floor(at), trunk.length - 2);
  const t = at - k;
  const row = (i: number) => trunk[Math.min(Math.max(i, 0), trunk.length - 1)] as readonly [number, number, number];
  const smooth = (axis: 0 | 1 | 2) => {
    const [a, b, c, d] = [row(k - 1)[axis], row(k)[axis], row(k + 1)[axis], row(k + 2)[axis]];
    return b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)));
  };
  return [smooth(0), smooth(1), smooth(2)];
};
const trunkPieces = 27;

const trunkPart = ({ hipMiddle, spine }: Joints, stature: number): PartDraft => ({
  kind: 'loft',
  name: 'Trunk',
  position: [hipMiddle[0] * stature, hipMiddle[1] * stature, hipMiddle[2] * stature],
  // sections follow each other along the spine
  tiltDegrees: -90 - degreesFromRadians(Math.atan2(-spine[1], spine[2])),
  creaseDegrees: 60,
  sections: Array.from({ length: trunkPieces + 1 }, (_, k) => trunkAt((k * (trunk.length - 1)) / trunkPieces)).map(
    ([along, halfWidth, halfDepth]) => ({
      northMetres: along * stature,
      outline: Array.from({ length: trunkSides }, (_, k): [number, number] => {
        const turn = (2 * Math.PI * k) / trunkSides;
        return [Math.cos(turn) * halfWidth * stature, Math.sin(turn) * halfDepth * stature];
      }),
    }),
  ),
});

const legs = ({ sides }: Joints, stature: number, boots: FinishDraft): PartDraft[] => {
  const [h, { footLength, footWidth }] = [stature, bodyShares];
  const at = (p: Vec3) => scale(p, h);
  return sides.flatMap(({ hip, knee, ankle }) => [
    round('Hip', at(hip), 0.056 * h),
    rod('Thigh', at(hip), at(knee), [0.055 * h, 0.041 * h], { sides: 14 }),
    round('Knee', at(knee), 0.041 * h),
    rod('Shin', at(knee), at(ankle), [0.04 * h, 0.03 * h], { sides: 14 }),
    ball('Heel', [ankle[0] * h, ankle[1] * h, 0.027 * h], [0.03 * h, 0.034 * h, 0.027 * h], { finish: boots }),
    ball(
      'Boot',
      [ankle[0] * h, (ankle[1] - footLength * 0.3) * h, 0.021 * h],
      [(footWidth / 2 + 0.003) * h, footLength * 0.56 * h, 0.021 * h],
      { finish: boots },
    ),
    rod('Boot leg', [ankle[0] * h, ankle[1] * h, 0.02 * h], at(mix(ankle, knee, 0.3)), [0.031 * h, 0.036 * h], {
      sides: 14,
      finish: boots,
    }),
  ]);
};

const arms = ({ sides }: Joints, stature: number, skin: FinishDraft): PartDraft[] => {
  const h = stature;
  const at = (p: Vec3) => scale(p, h);
  return sides.flatMap(({ shoulder, elbow, wrist, fingertips }) => [
    round('Shoulder', at(add(shoulder, [0, 0, -0.034])), 0.041 * h),
    rod('Upper arm', at(add(shoulder, [0, 0, -0.034])), at(elbow), [0.038 * h, 0.031 * h], { sides: 12 }),
    round('Elbow', at(elbow), 0.0315 * h),
    rod('Forearm', at(elbow), at(wrist), [0.03 * h, 0.024 * h], { sides: 12 }),
    round('Palm', at(mix(wrist, fingertips, 0.2)), 0.024 * h, skin),
    rod('Fingers', at(mix(wrist, fingertips, 0.1)), at(mix(wrist, fingertips, 1)), [0.021 * h, 0.012 * h], {
      sides: 10,
      finish: skin,
    }),
  ]);
};

const head = ({ hipMiddle, spine, looks }: Joints, stature: number, skin: FinishDraft): PartDraft[] => {
  const h = stature;
  const { shoulderUp, ankleUp, shank, thigh, chinUp } = bodyShares;
  const hipUp = ankleUp + shank + thigh;
  const neck = add(hipMiddle, scale(spine, shoulderUp - hipUp));
  // the head is held upright over a leaning trunk
  const over = (up: number, forward = 0): Vec3 =>
    scale(add([neck[0], neck[1], neck[2] + up - shoulderUp], scale(looks, forward)), h);
  const turnDegrees = degreesFromRadians(Math.atan2(-looks[0], -looks[1]));
  const high = (1 - chinUp) / 2;
  return [
    rod('Neck', over(shoulderUp - 0.02), over(chinUp + 0.03, 0.006), [0.034 * h, 0.031 * h], {
      sides: 12,
      finish: skin,
    }),
    ball('Head', over(chinUp + high - 0.001, 0.008), [0.044 * h, 0.054 * h, (high - 0.003) * h], {
      turnDegrees,
      finish: skin,
      sides: 20,
    }),
    ball('Nose', over(chinUp + high - 0.014, 0.061), [0.008 * h, 0.012 * h, 0.012 * h], {
      turnDegrees,
      finish: skin,
      sides: 10,
    }),
    // its top is the top of the person
    ball('Cap', over(1 - 0.042, 0.002), [0.048 * h, 0.057 * h, 0.042 * h], { turnDegrees, sides: 20 }),
    rod('Collar', over(shoulderUp - 0.02), over(shoulderUp + 0.035, 0.002), [0.044 * h, 0.038 * h], { sides: 14 }),
  ];
};

const stump = ({ hipMiddle }: Joints, stature: number, seatMetres: number): PartDraft => ({
  kind: 'cylinder',
  name: 'Stump',
  position: [0, (hipMiddle[1] + 0.01) * stature, -0.05],
  radiusMetres: 0.2,
  topRadiusMetres: 0.18,
  heightMetres: seatMetres + 0.05,
  sides: 20,
  finish: finishNamed('bark'),
});

const poses: readonly Pose[] = ['standing', 'pointing', 'sitting'];

export const person: Kit = {
  name: 'person',
  label: 'Person',
  says: 'Someone who stands, points or sits, looking to the front.',
  fields: [
    { key: 'heightMetres', label: 'Height when standing', unit: 'm', min: 1.5, max: 2, initial: 1.75, step: 0.01 },
    {
      key: 'pose',
      label: 'Pose',
      unit: '',
      min: 0,
      max: 2,
      initial: 0,
      step: 1,
      choices: ['Standing', 'Pointing', 'Sitting'],
    },
    { key: 'pointsUpDegrees', label: 'Points up by (pointing)', unit: '°', min: -10, max: 70, initial: 35, step: 5 },
    { key: 'seatMetres', label: 'Height of the seat (sitting)', unit: 'm', min: 0, max: 0.5, initial: 0, step: 0.05 },
    { key: 'clothes', label: 'Clothes', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: ['Dark', 'Light'] },
  ],
  make: ({ heightMetres = 1.75, pose = 0, pointsUpDegrees = 35, seatMetres = 0, clothes }) => {
    const named = poses[pose] as Pose;
    const joints = jointsOf(named, radiansFromDegrees(pointsUpDegrees), seatMetres / heightMetres);
    const [skin, boots] = [finishNamed('skin'), finishNamed('dark-clothes')];
    const parts = [
      trunkPart(joints, heightMetres),
      ...head(joints, heightMetres, skin),
      ...arms(joints, heightMetres, skin),
      ...legs(joints, heightMetres, boots),
      ...(named === 'sitting' && seatMetres > 0 ? [stump(joints, heightMetres, seatMetres)] : []),
    ];
    return { finish: finishNamed(clothes === 1 ? 'light-clothes' : 'dark-clothes'), parts: tidyParts(parts) };
  },
};
