import drystoneWall from '../../../assets/setups/drystone-wall.json?raw';
import threeStones from '../../../assets/setups/three-stones.json?raw';
import turfHut from '../../../assets/setups/turf-hut.json?raw';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

interface Named {
  readonly id: string;
  readonly name: string;
}

/** The sample setups, in the order of the menu; the page opens on the first. */
export const samples: readonly (Named & { readonly load: () => Setup })[] = [
  { id: 'three-stones', name: 'Three standing stones', load: () => parseSetup(threeStones) },
  { id: 'drystone-wall', name: 'Drystone wall', load: () => parseSetup(drystoneWall) },
  { id: 'turf-hut', name: 'Turf-roofed hut', load: () => parseSetup(turfHut) },
];

const parseFile = async (file: Promise<{ readonly default: string }>): Promise<Setup> =>
  parseSetup((await file).default);

/** The lessons, in the order in which they build on each other. Each comes in a file of its own, when it is asked for. */
export const lessons: readonly (Named & { readonly load: () => Promise<Setup> })[] = [
  {
    id: 'flat-to-relief',
    name: 'Flat to relief',
    load: () => parseFile(import('../../../assets/setups/lesson-flat-to-relief.json?raw')),
  },
  {
    id: 'high-and-low',
    name: 'High and low',
    load: () => parseFile(import('../../../assets/setups/lesson-high-and-low.json?raw')),
  },
  {
    id: 'out-from-the-wall',
    name: 'Out from the wall, low to the ground',
    // the sample is the lesson; it is here already
    load: async () => parseSetup(drystoneWall),
  },
  {
    id: 'reflectance',
    name: 'Reflectance',
    load: () => parseFile(import('../../../assets/setups/lesson-reflectance.json?raw')),
  },
  {
    id: 'ratio-ladder',
    name: 'Ratio ladder',
    load: () => parseFile(import('../../../assets/setups/lesson-ratio-ladder.json?raw')),
  },
  {
    id: 'hard-and-soft',
    name: 'Hard and soft',
    load: () => parseFile(import('../../../assets/setups/lesson-hard-and-soft.json?raw')),
  },
  {
    id: 'near-and-far',
    name: 'Near and far',
    load: () => parseFile(import('../../../assets/setups/lesson-near-and-far.json?raw')),
  },
  {
    id: 'rim-and-separation',
    name: 'Rim and separation',
    load: () => parseFile(import('../../../assets/setups/lesson-rim-and-separation.json?raw')),
  },
];
