import type { Patch, Setup } from '../../../../core/setup/schema/setup.ts';
import { areApart, withinWorld } from './within.ts';

/** To the millimetre: rays meet a surface no better than that. */
const rounded = (metres: number) => Math.round(metres * 1000) / 1000;

/** Draws the patch, or moves its corners. One of them farther away than a setup reaches is refused: the patch stays as it was. */
export const setPatch = (setup: Setup, corners: Patch['corners']): Setup => {
  if (corners.some((corner) => areApart(corner, withinWorld(corner)))) return setup;
  const places = corners.map((corner) => corner.map(rounded)) as Patch['corners'];
  const isSame = setup.patch?.corners.every((corner, c) => !areApart(corner, places[c] as Patch['corners'][number]));
  return isSame ? setup : { ...setup, patch: { corners: places } };
};

export const removePatch = (setup: Setup): Setup => (setup.patch ? { ...setup, patch: null } : setup);
