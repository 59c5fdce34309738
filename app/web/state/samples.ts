import threeStones from '../../../assets/setups/three-stones.json?parsed';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import { settle } from '../../../core/setup/settle.ts';

type SetupText = Promise<{ readonly default: string }>;

/** A setup that comes with the page. */
export interface Kept {
  readonly id: string;
  readonly name: string;
  readonly fetchText: () => SetupText;
  readonly load: () => Promise<Setup>;
}

/** What the page opens on. */
export const firstSample = (): Setup => settle(threeStones);

/** What reads setups, which the first picture does without. */
export const loadReader = () => import('../../../core/scan/read-setup.ts');

/** A setup in a file of its own, which comes when it is asked for. */
const inFile = (id: string, name: string, fetchText: () => SetupText): Kept => ({
  id,
  name,
  fetchText,
  load: async () => {
    const [{ readSetup }, text] = await Promise.all([loadReader(), fetchText()]);
    return readSetup(text.default);
  },
});

const drystoneWall = () => import('../../../assets/setups/drystone-wall.json?raw');

/** The setup that the page opens on, to be taken up again. */
export const firstKept = inFile(
  'three-stones',
  'Three standing stones',
  () => import('../../../assets/setups/three-stones.json?raw'),
);

/** The sample setups, in the order of the menu. */
export const samples: readonly Kept[] = [
  firstKept,
  inFile('drystone-wall', 'Drystone wall', drystoneWall),
  inFile('lone-tree', 'Lone tree', () => import('../../../assets/setups/lone-tree.json?raw')),
  inFile('roofless-chapel', 'Roofless chapel', () => import('../../../assets/setups/roofless-chapel.json?raw')),
  inFile('beached-boat', 'Beached boat', () => import('../../../assets/setups/beached-boat.json?raw')),
  inFile('natural-arch', 'Natural arch', () => import('../../../assets/setups/natural-arch.json?raw')),
  inFile('timber-jetty', 'Timber jetty', () => import('../../../assets/setups/timber-jetty.json?raw')),
  inFile('bothy-in-snow', 'Bothy in snow', () => import('../../../assets/setups/bothy-in-snow.json?raw')),
  inFile('tent-on-a-ridge', 'Tent on a ridge', () => import('../../../assets/setups/tent-on-a-ridge.json?raw')),
  inFile('carved-slab', 'Carved slab', () => import('../../../assets/setups/carved-slab.json?raw')),
  inFile('turf-hut', 'Turf-roofed hut', () => import('../../../assets/setups/turf-hut.json?raw')),
];

/** The lessons, in the order in which they build on each other. */
export const lessons: readonly Kept[] = [
  inFile('flat-to-relief', 'Flat to relief', () => import('../../../assets/setups/lesson-flat-to-relief.json?raw')),
  inFile('high-and-low', 'High and low', () => import('../../../assets/setups/lesson-high-and-low.json?raw')),
  inFile('out-from-the-wall', 'Out from the wall, low to the ground', drystoneWall),
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

/** Fetches the files of samples and lessons, so that they are there when the network is not. */
export const fetchKept = async (): Promise<void> => {
  await Promise.allSettled([...samples, ...lessons].map(({ fetchText }) => fetchText()));
};
