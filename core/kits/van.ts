import type { Kit } from './kit.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { paintChoices, paintFinish, vehicleParts } from './shared/vehicle-body.ts';
import type { SidePoint, VehicleSide } from './shared/vehicle-side.ts';

/** A window with cut corners. */
const pane = (from: number, to: number): readonly SidePoint[] => [
  [from + 0.008, 0.55],
  [from, 0.57],
  [from, 0.83],
  [from + 0.008, 0.85],
  [to - 0.008, 0.85],
  [to, 0.83],
  [to, 0.57],
  [to - 0.008, 0.55],
];

const side: VehicleSide = {
  front: [
    [0, 0.38],
    [0.012, 0.44],
    [0.06, 0.475],
    [0.13, 0.5],
  ],
  roof: [
    [0.235, 0.925],
    [0.26, 0.965],
    [0.3, 0.99],
    [0.36, 1],
    [0.95, 1],
    [0.98, 0.985],
    [0.995, 0.95],
  ],
  tail: null,
  windows: [
    [
      [0.185, 0.53],
      [0.255, 0.85],
      [0.37, 0.85],
      [0.37, 0.53],
    ],
    pane(0.42, 0.66),
    pane(0.69, 0.95),
  ],
  axles: [0.155, 0.77],
  seats: [0.32],
};

export const van: Kit = {
  name: 'van',
  label: 'Van',
  says: 'A plain camper van, hollow, with open windows that let light out. Nose to the front.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 4, max: 7.5, initial: 5.2, step: 0.1 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 1.6, max: 2.5, initial: 1.95, step: 0.05 },
    { key: 'heightMetres', label: 'Height', unit: 'm', min: 1.7, max: 3.2, initial: 2.2, step: 0.05 },
    { key: 'paint', label: 'Paint', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: paintChoices },
  ],
  make: ({ lengthMetres: length = 5.2, widthMetres: width = 1.95, heightMetres: height = 2.2, paint = 0 }) => ({
    finish: paintFinish(paint),
    parts: tidyParts(vehicleParts(side, { length, width, height })),
  }),
};
