import type { Lamp } from '../../../core/setup/schema/setup.ts';

const torchBeam = { shape: 'spot', beamDegrees: 40, spillDegrees: 110, spillShare: 0.35 } as const;

/** No test shot has been held to it yet. */
const untried = { correctionStops: 0, testShots: [] };

/** What a lamp of each kind starts as; the user then types what the box says. */
export const newLamps: Readonly<Record<Lamp['kind'], Lamp>> = {
  torch: {
    kind: 'torch',
    id: 'torch',
    name: 'Torch',
    output: { from: 'lumens', lumens: 100 },
    temperatureKelvin: 6000,
    lowestLevelPercent: 5,
    ...untried,
    diameterMm: 30,
    beam: torchBeam,
  },
  panel: {
    kind: 'panel',
    id: 'panel',
    name: 'Panel',
    output: { from: 'lumens', lumens: 600 },
    temperatureKelvin: 5600,
    lowestLevelPercent: 1,
    ...untried,
    widthMm: 180,
    heightMm: 110,
    beam: { shape: 'open' },
  },
  lantern: {
    kind: 'lantern',
    id: 'lantern',
    name: 'Lantern',
    output: { from: 'lumens', lumens: 60 },
    temperatureKelvin: 3000,
    lowestLevelPercent: 5,
    ...untried,
    diameterMm: 80,
  },
  tube: {
    kind: 'tube',
    id: 'tube',
    name: 'Tube',
    output: { from: 'lumens', lumens: 400 },
    temperatureKelvin: 5600,
    lowestLevelPercent: 1,
    ...untried,
    lengthMm: 600,
    diameterMm: 30,
  },
  point: {
    kind: 'point',
    id: 'point',
    name: 'Bare bulb',
    output: { from: 'lumens', lumens: 60 },
    temperatureKelvin: 3000,
    lowestLevelPercent: 5,
    ...untried,
    beam: { shape: 'even' },
  },
};
