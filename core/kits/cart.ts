import { finishNamed } from '../setup/finish-presets.ts';
import type { Kit, PartDraft } from './kit.ts';
import { type Place, placeTogether } from './shared/frame.ts';
import { beam, rod } from './shared/struts.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { spokedWheel } from './shared/wheels.ts';

const floorBoards = 6;
const boardMetres = 0.03;
/** Of the floor's underside over the axle, of the shafts in front of the bed, of the side boards: metres. */
const [floorOver, shaftLength, sideHigh] = [0.12, 1.7, 0.36];
const shaftHalf = 0.3;

const box = (
  name: string,
  position: Place,
  [widthMetres, depthMetres, heightMetres]: readonly [number, number, number],
): PartDraft => ({
  kind: 'box',
  name,
  position,
  widthMetres,
  depthMetres,
  heightMetres,
});

/** All but the wheels, about the middle of the axle. */
const body = (length: number, width: number): PartDraft[] => {
  const gap = 0.006;
  const each = (width + gap) / floorBoards - gap;
  const sideLow = floorOver + boardMetres;
  const stakes = [-0.46, 0, 0.46];
  return [
    beam('Axle', [-width / 2 - 0.12, 0, 0], [width / 2 + 0.12, 0, 0], [0.09, 0.09]),
    ...[-1, 1].map((side) =>
      beam(
        'Shaft',
        [side * Math.min(shaftHalf, width / 2 - 0.08), length / 2 - 0.05, floorOver - 0.04],
        [side * Math.min(shaftHalf, width / 2 - 0.08), -length / 2 - shaftLength, floorOver - 0.04],
        [0.07, 0.085],
      ),
    ),
    box('Axle bed', [0, 0, -0.02], [width * 0.96, 0.12, floorOver - 0.02]),
    ...[-0.42, 0.42].map((share) =>
      box('Cross bar', [0, share * length, floorOver - 0.05], [width - 0.02, 0.07, 0.055]),
    ),
    ...Array.from({ length: floorBoards }, (_, k) =>
      box('Floor board', [(k + 0.5) * (each + gap) - gap / 2 - width / 2, 0, floorOver], [each, length, boardMetres]),
    ),
    ...[-1, 1].flatMap((side) => [
      ...[0, 1].map((row) =>
        box(
          'Side board',
          [side * (width / 2 - 0.045), 0, sideLow + 0.02 + (row * sideHigh) / 2],
          [0.024, length - 0.02, sideHigh / 2 - 0.035],
        ),
      ),
      ...stakes.map((share) =>
        box('Stake', [side * (width / 2 - 0.017), share * length, sideLow - 0.04], [0.034, 0.05, sideHigh + 0.08]),
      ),
    ]),
    box('Front board', [0, 0.03 - length / 2, sideLow - 0.005], [width - 0.12, 0.025, sideHigh]),
  ];
};

/** How far the body leans forward until the tips of its shafts lie on the ground. */
const restingRadians = (length: number, axleUp: number): number => {
  const [forward, up] = [length / 2 + shaftLength, floorOver - 0.04];
  // the lower edge of the tips, which is half a shaft under their middle
  return Math.atan2(up, forward) + Math.asin(Math.min((axleUp - 0.045) / Math.hypot(forward, up), 0.9));
};

export const cart: Kit = {
  name: 'cart',
  label: 'Two-wheeled cart',
  says: 'A farm cart with spoked wheels; its shafts point to the front.',
  fields: [
    { key: 'lengthMetres', label: 'Length of the bed', unit: 'm', min: 1, max: 4, initial: 1.9, step: 0.1 },
    { key: 'widthMetres', label: 'Width of the bed', unit: 'm', min: 0.6, max: 2.2, initial: 1.2, step: 0.05 },
    { key: 'wheelMetres', label: 'Width across a wheel', unit: 'm', min: 0.7, max: 1.8, initial: 1.3, step: 0.05 },
    { key: 'spokes', label: 'Spokes of a wheel', unit: '', min: 6, max: 20, initial: 12, step: 1 },
    {
      key: 'rests',
      label: 'Rests',
      unit: '',
      min: 0,
      max: 1,
      initial: 0,
      step: 1,
      choices: ['On its shafts', 'Level, on a prop'],
    },
  ],
  make: ({ lengthMetres = 1.9, widthMetres = 1.2, wheelMetres = 1.3, spokes = 12, rests }) => {
    const radius = wheelMetres / 2;
    const axle: Place = [0, 0, radius];
    const tiltDegrees = rests === 1 ? 0 : (-restingRadians(lengthMetres, radius) * 180) / Math.PI;
    const wheels = [-1, 1].flatMap((side) =>
      spokedWheel([side * (widthMetres / 2 + 0.13), 0, radius], radius, Math.round(spokes), side),
    );
    const front = -lengthMetres / 2 - 0.25;
    const prop =
      rests === 1
        ? [
            rod('Prop', [0, front - 0.08, -0.03], [0, front, radius + floorOver - 0.03], [0.035, 0.035], { sides: 10 }),
            box(
              'Prop bar',
              [0, front, radius + floorOver - 0.07],
              [2 * Math.min(shaftHalf, widthMetres / 2 - 0.08) + 0.06, 0.06, 0.06],
            ),
          ]
        : [];
    return {
      finish: finishNamed('weathered-timber'),
      parts: tidyParts([
        ...placeTogether(body(lengthMetres, widthMetres), { position: axle, tiltDegrees }),
        ...wheels,
        ...prop,
      ]),
    };
  },
};
