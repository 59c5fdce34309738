import { type GroundPreset, type ReliefPreset, reliefPresets } from '../../../../core/setup/ground-presets.ts';
import { countForDensity } from '../../../../core/setup/relief-detail.ts';
import type { Finish, Relief, Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { cameraOf } from './place-edits.ts';
import { withinLimits } from './subject-limits.ts';

/** Edits of the ground: pure, each (setup, argument) -> setup. They keep every rule that `parseSetup` checks. */

type GroundPoint = Relief['centre'];

/** Most reliefs of a ground. */
export const maxReliefs = 8;

const withRelief = (setup: Setup, relief: Relief[]): Setup =>
  withinLimits({ ...setup, ground: { ...setup.ground, relief } });

export const setGroundFinish = (setup: Setup, finish: Finish): Setup => ({
  ...setup,
  ground: { ...setup.ground, finish },
});

/** To the centimetre, and within what the document takes. */
const onGround = ([east, north]: readonly [number, number]): GroundPoint => {
  const tidy = (metres: number) => Math.round(Math.min(Math.max(metres, -5000), 5000) * 100) / 100;
  return [tidy(east), tidy(north)];
};

/** The subject that a scheme's camera looks at: that nearest to what it is aimed at; null where there is none. */
const lookedAt = ({ subjects }: Setup, aim: readonly number[]) => {
  const away = (position: readonly number[]) =>
    Math.hypot((position[0] as number) - (aim[0] as number), (position[1] as number) - (aim[1] as number));
  return subjects.reduce<(typeof subjects)[number] | null>(
    (nearest, subject) => (!nearest || away(subject.position) < away(nearest.position) ? subject : nearest),
    null,
  );
};

/** Where the subject stands that the camera looks at, or what the camera looks at. */
export const roundSubject = (setup: Setup, schemeId: string): GroundPoint => {
  const { aim } = cameraOf(setup, schemeId);
  const [east, north] = lookedAt(setup, aim)?.position ?? aim;
  return onGround([east, north]);
};

/** Where the camera stands. */
export const roundCamera = (setup: Setup, schemeId: string): GroundPoint => {
  const [east, north] = cameraOf(setup, schemeId).position;
  return onGround([east, north]);
};

/** Half way from the camera to that. */
export const beforeCamera = (setup: Setup, schemeId: string): GroundPoint => {
  const [east, north] = cameraOf(setup, schemeId).position;
  const [toEast, toNorth] = roundSubject(setup, schemeId);
  return onGround([(east + toEast) / 2, (north + toNorth) / 2]);
};

/** Another relief by a word, between camera and subject. Throws `EditRefused` when there are eight. */
export const addRelief = (setup: Setup, schemeId: string, { relief }: ReliefPreset): Setup => {
  if (setup.ground.relief.length >= maxReliefs)
    throw new EditRefused(`There are ${maxReliefs} reliefs already; more are not taken. Remove one first.`);
  return withRelief(setup, [...setup.ground.relief, { ...relief, centre: beforeCamera(setup, schemeId) }]);
};

/** Replaces one relief. */
export const changeRelief = (setup: Setup, index: number, relief: Relief): Setup =>
  withRelief(setup, setup.ground.relief.with(index, relief));

export const removeRelief = (setup: Setup, index: number): Setup => ({
  ...setup,
  ground: { ...setup.ground, relief: setup.ground.relief.toSpliced(index, 1) },
});

/** The whole ground by one word: its finish, and relief between camera and subject instead of what was there. */
export const setWholeGround = (setup: Setup, schemeId: string, { ground }: GroundPreset): Setup =>
  withinLimits({
    ...setup,
    ground: {
      ...ground,
      relief: ground.relief.map((relief) => ({ ...relief, centre: beforeCamera(setup, schemeId) })),
    },
  });

/** So many a square metre, over the same circle. */
export const withDensity = (relief: Extract<Relief, { count: number }>, perSquareMetre: number): Relief => ({
  ...relief,
  count: countForDensity(perSquareMetre, relief.radiusMetres),
});

/** The smallest and the largest, whichever way round they were typed. */
export const withHeights = (
  relief: Extract<Relief, { count: number }>,
  heights: readonly [number, number],
): Relief => ({
  ...relief,
  heightMetres: [Math.min(...heights), Math.max(...heights)],
});

/** The next seed; another one puts everything elsewhere. */
export const nextOfRelief = (relief: Relief): Relief => ({ ...relief, seed: (relief.seed + 1) % 4294967296 });

/** What a relief is called. */
export const reliefLabel = (relief: Relief): string =>
  (reliefPresets.find((preset) => preset.relief.kind === relief.kind) as ReliefPreset).label;
