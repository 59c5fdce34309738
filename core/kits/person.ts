import { add, mix, scale, type Vec3 } from '../geometry/vec.ts';
import { finishNamed } from '../setup/finish-presets.ts';
import { degreesFromRadians, radiansFromDegrees } from '../units/angle.ts';
import type { FinishDraft, Kit, PartDraft } from './kit.ts';
import { bodyShares, type Joints, jointsOf, type Pose } from './shared/body.ts';
import { trunkPart } from './shared/clothed-trunk.ts';
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
