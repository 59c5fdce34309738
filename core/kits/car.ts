import type { Kit } from './kit.ts';
import { tidyParts } from './shared/tidy-parts.ts';
import { paintChoices, paintFinish, vehicleParts } from './shared/vehicle-body.ts';
import type { VehicleSide } from './shared/vehicle-side.ts';

const side: VehicleSide = {
  front: [
    [0, 0.44],
    [0.012, 0.54],
    [0.06, 0.6],
    [0.16, 0.635],
    [0.28, 0.655],
  ],
  roof: [
    [0.425, 0.965],
    [0.455, 0.985],
    [0.52, 1],
    [0.66, 1],
    [0.75, 0.98],
    [0.79, 0.955],
  ],
  tail: [
    [0.9, 0.69],
    [0.965, 0.675],
    [0.992, 0.63],
    [1, 0.5],
  ],
  windows: [
    [
      [0.335, 0.68],
      [0.44, 0.92],
      [0.565, 0.935],
      [0.565, 0.68],
    ],
    [
      [0.59, 0.68],
      [0.59, 0.935],
      [0.72, 0.925],
      [0.755, 0.91],
      [0.83, 0.7],
      [0.825, 0.68],
    ],
  ],
  axles: [0.18, 0.8],
  seats: [0.5, 0.7],
};

export const car: Kit = {
  name: 'car',
  label: 'Car',
  says: 'A plain car, hollow, with open windows that let light out. Nose to the front.',
  fields: [
    { key: 'lengthMetres', label: 'Length', unit: 'm', min: 3.4, max: 5.5, initial: 4.2, step: 0.1 },
    { key: 'widthMetres', label: 'Width', unit: 'm', min: 1.4, max: 2.2, initial: 1.75, step: 0.05 },
    { key: 'heightMetres', label: 'Height', unit: 'm', min: 1.2, max: 1.9, initial: 1.45, step: 0.05 },
    { key: 'paint', label: 'Paint', unit: '', min: 0, max: 1, initial: 0, step: 1, choices: paintChoices },
  ],
  make: ({ lengthMetres: length = 4.2, widthMetres: width = 1.75, heightMetres: height = 1.45, paint = 0 }) => ({
    finish: paintFinish(paint),
    parts: tidyParts(vehicleParts(side, { length, width, height })),
  }),
};
