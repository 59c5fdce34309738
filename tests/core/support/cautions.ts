import { doseForMidGrey } from '../../../core/camera/exposure.ts';
import type { Caution } from '../../../core/cautions/caution.ts';
import { reportScheme } from '../../../core/cautions/setup-report.ts';
import type { Scheme, Setup } from '../../../core/setup/schema/setup.ts';
import { type OnePass, onePassSetup } from './scenes.ts';

/** Every caution of a setup's first scheme. */
export const cautionsOfSetup = (setup: Setup): readonly Caution[] =>
  reportScheme(setup, setup.schemes[0] as Scheme).cautions;

/** Every caution of a setup of one pass. */
export const cautionsFor = (what: OnePass): readonly Caution[] => cautionsOfSetup(onePassSetup(what));

/** The caution of a code, if it is there. */
export const find = (what: OnePass, code: string): Caution | undefined =>
  cautionsFor(what).find((caution) => caution.code === code);

/** A pass whose lamp stands still. */
export const still = (position: readonly number[], aim: readonly number[]) => ({ waypoints: [{ position, aim }] });

/** Ground that gives no light back worth the name. */
export const blackGround = { finish: { reflectance: 0.01 } };

/** A box with its middle at a place, as subject; sizes across, deep and high. */
export const boxAt = (
  id: string,
  position: readonly number[],
  [widthMetres, depthMetres, heightMetres]: readonly [number, number, number],
  reflectance = 0.18,
) => ({
  id,
  name: id,
  finish: { reflectance },
  parts: [{ kind: 'box', position, widthMetres, depthMetres, heightMetres }],
});

/** A wall of 18 % lit square on for so long, that many stops from mid-grey; the wall alone can burn. */
export const wallLitBy = (stops: number, seconds: number, frame: object = {}): OnePass => ({
  camera: { position: [3, -6, 1.5], aim: [0, 0, 1.5] },
  ground: blackGround,
  lamp: {
    diameterMm: 1,
    output: {
      from: 'peak-candela',
      candela: ((doseForMidGrey({ fNumber: 8, iso: 400 }, 0.18) * 2 ** stops) / seconds) * 25,
    },
  },
  pass: { ...still([0, -5, 1.5], [0, 0, 1.5]), off: seconds },
  // balanced for the lamp, so that all channels fill together
  frame: { whiteBalance: { kelvin: 5600 }, ...frame },
  subjects: [boxAt('wall', [0, 0.5, 0], [4, 1, 3])],
});
