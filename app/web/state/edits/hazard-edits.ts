import type { GroundPoint } from '../../../../core/geometry/hull.ts';
import type { Hazard, Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { cameraOf } from './place-edits.ts';
import { freshName, plainName, renamed } from './plain-name.ts';
import { freshId, replaceById } from './within.ts';

/** Edits of the places to keep off: pure, each (setup, arguments) -> setup. */

const mostHazards = 64;
const radiusRange = [0.5, 500] as const;
const reachMetres = 5000;
/** A new one reaches so far. */
const firstRadiusMetres = 2;

const clamp = (value: number, low: number, high: number) => Math.min(Math.max(value, low), high);
/** To the centimetre: nobody knows an edge better. */
const rounded = (value: number): number => Math.round(value * 100) / 100 + 0;
const within = (value: number): number => clamp(rounded(value), -reachMetres, reachMetres);

/** Half-way from the camera to what it looks at, and as far to the right: beside the picture, where one may walk. */
const firstPlace = (setup: Setup, schemeId: string): GroundPoint => {
  const { position, aim } = cameraOf(setup, schemeId);
  const [east, north] = [(aim[0] - position[0]) / 2, (aim[1] - position[1]) / 2];
  return [within(position[0] + east + north), within(position[1] + north - east)];
};

/** Marks a place to keep off. */
export const addHazard = (
  setup: Setup,
  schemeId: string,
  wish: string,
): { readonly setup: Setup; readonly hazardId: string } => {
  const { hazards } = setup;
  if (hazards.length >= mostHazards) throw new EditRefused(`At most ${mostHazards} hazards are taken.`);
  const name = freshName(
    hazards.map((hazard) => hazard.name),
    plainName(wish) || 'Hazard',
  );
  const id = freshId(hazards, 'hazard');
  const hazard: Hazard = { id, name, position: [...firstPlace(setup, schemeId)], radiusMetres: firstRadiusMetres };
  return { setup: { ...setup, hazards: [...hazards, hazard] }, hazardId: id };
};

const changeHazard = (setup: Setup, id: string, change: (hazard: Hazard) => Hazard): Setup => {
  const hazards = replaceById(setup.hazards, id, change);
  return hazards === setup.hazards ? setup : { ...setup, hazards };
};

export const moveHazard = (setup: Setup, id: string, [east, north]: readonly [number, number, ...number[]]): Setup =>
  changeHazard(setup, id, (hazard) => {
    const position: Hazard['position'] = [within(east), within(north)];
    return position.every((v, i) => v === hazard.position[i]) ? hazard : { ...hazard, position };
  });

export const resizeHazard = (setup: Setup, id: string, metres: number): Setup =>
  changeHazard(setup, id, (hazard) => {
    const radiusMetres = clamp(rounded(metres), ...radiusRange);
    return radiusMetres === hazard.radiusMetres ? hazard : { ...hazard, radiusMetres };
  });

/** Gives a hazard another name; an empty one is not taken. */
export const renameHazard = (setup: Setup, id: string, typed: string): Setup =>
  changeHazard(setup, id, (hazard) => renamed(hazard, typed));

export const removeHazard = (setup: Setup, id: string): Setup => {
  const hazards = setup.hazards.filter((hazard) => hazard.id !== id);
  return hazards.length === setup.hazards.length ? setup : { ...setup, hazards };
};
