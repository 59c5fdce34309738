import type { Setup } from '../../../../core/setup/schema/setup.ts';
import { EditRefused } from './edit-refused.ts';
import { setPlace } from './place-and-hour-edits.ts';
import { freshName, plainName } from './plain-name.ts';

/** Edits of the glow of towns: pure. Domes have no ids; they go by their place in the list. */

export type GlowDome = Setup['place']['glowDomes'][number];

export const mostGlowDomes = 12;

/** A town of some ten thousand, thirty kilometres off. */
const firstDome: Omit<GlowDome, 'name' | 'bearingDegrees'> = {
  widthDegrees: 8,
  luminanceAt10DegreesCdM2: 0.0002,
  temperatureKelvin: 2700,
};

/** Adds the glow of a town at a true bearing. */
export const addGlowDome = (setup: Setup, bearingDegrees: number): Setup => {
  const { glowDomes } = setup.place;
  if (glowDomes.length >= mostGlowDomes) throw new EditRefused(`At most ${mostGlowDomes} towns are taken.`);
  const name = freshName(
    glowDomes.map((dome) => dome.name ?? ''),
    'Town',
  );
  const dome: GlowDome = { ...firstDome, name, bearingDegrees: Math.round(((bearingDegrees % 360) + 360) % 360) % 360 };
  return setPlace(setup, { glowDomes: [...glowDomes, dome] });
};

/** Changes some of a dome; an empty name is not taken. */
export const changeGlowDome = (setup: Setup, index: number, part: Partial<GlowDome>): Setup => {
  const { name, ...numbers } = part;
  const named = name === undefined ? '' : plainName(name);
  const glowDomes = setup.place.glowDomes.map((dome, i) =>
    i === index ? { ...dome, ...numbers, ...(named === '' ? {} : { name: named }) } : dome,
  );
  return setPlace(setup, { glowDomes });
};

export const removeGlowDome = (setup: Setup, index: number): Setup =>
  setPlace(setup, { glowDomes: setup.place.glowDomes.filter((_, i) => i !== index) });
