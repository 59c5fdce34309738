import type { World } from '../world/world.ts';
import type { Caution } from './caution.ts';
import { enclosureOf } from './lamp-place.ts';

/** The camera stands inside something solid: the picture is black, whatever the lamps do. */
export const cameraInside = (world: World): Caution[] => {
  const enclosure = enclosureOf(world.stage, world.view.position);
  const subject = enclosure && world.stage.subjects[enclosure.subject];
  if (!subject) return [];
  const value = enclosure.depthMetres;
  const message = `The camera is inside “${subject.name}”, about ${value.toFixed(2)} m deep: the picture is black. Move it clear.`;
  return [{ code: 'inside-subject', severity: 'danger', message, value, limit: 0 }];
};
