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

type SetupText = Promise<{ readonly default: string }>;

/** A lesson in a file of its own. */
const inFile = (id: string, name: string, fetchText: () => SetupText) => ({
  id,
  name,
  fetchText,
  load: async () => parseSetup((await fetchText()).default),
});

/** The lessons, in the order in which they build on each other. Each comes in a file of its own, when it is asked for. */
export const lessons: readonly (Named & {
  readonly load: () => Promise<Setup>;
  readonly fetchText: (() => SetupText) | null;
})[] = [
  inFile('flat-to-relief', 'Flat to relief', () => import('../../../assets/setups/lesson-flat-to-relief.json?raw')),
  inFile('high-and-low', 'High and low', () => import('../../../assets/setups/lesson-high-and-low.json?raw')),
  {
    id: 'out-from-the-wall',
    name: 'Out from the wall, low to the ground',
    // the sample is the lesson; it is here already
    fetchText: null,
    load: async () => parseSetup(drystoneWall),
  },
  inFile('reflectance', 'Reflectance', () => import('../../../assets/setups/lesson-reflectance.json?raw')),
  inFile('ratio-ladder', 'Ratio ladder', () => import('../../../assets/setups/lesson-ratio-ladder.json?raw')),
  inFile('hard-and-soft', 'Hard and soft', () => import('../../../assets/setups/lesson-hard-and-soft.json?raw')),
  inFile('near-and-far', 'Near and far', () => import('../../../assets/setups/lesson-near-and-far.json?raw')),
  inFile(
    'rim-and-separation',
    'Rim and separation',
    () => import('../../../assets/setups/lesson-rim-and-separation.json?raw'),
  ),
];

/** Fetches the files of the lessons, so that they are there when the network is not. */
export const fetchLessons = async (): Promise<void> => {
  await Promise.allSettled(lessons.map(({ fetchText }) => fetchText?.()));
};
