import type { Frame } from '../../../core/setup/schema/setup.ts';
import { cameraToward } from './hours.ts';
import { onlyPassOf } from './read-pass.ts';
import { onePassSetup } from './scenes.ts';

const pass = { waypoints: [{ position: [3, 0, 1], aim: [0, 8, 1] }] };

/** The world of a setup of one pass at a place and hour; the camera looks north if nothing else is said. */
export const readNight = (what: { camera?: object; place: object; subjects?: object[]; frame?: object }) => {
  const setup = onePassSetup({ pass, camera: cameraToward(0, 10), ...what });
  return { ...onlyPassOf(setup), setup, frame: setup.schemes[0]?.frames[0] as Frame };
};
