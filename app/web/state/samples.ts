import drystoneWall from '../../../assets/setups/drystone-wall.json?raw';
import threeStones from '../../../assets/setups/three-stones.json?raw';
import turfHut from '../../../assets/setups/turf-hut.json?raw';
import { parseSetup } from '../../../core/setup/parse-setup.ts';
import type { Setup } from '../../../core/setup/schema/setup.ts';

/** The sample setups, in the order of the menu; the page opens on the first. */
export const samples: readonly { readonly id: string; readonly name: string; readonly load: () => Setup }[] = [
  { id: 'three-stones', name: 'Three standing stones', load: () => parseSetup(threeStones) },
  { id: 'drystone-wall', name: 'Drystone wall', load: () => parseSetup(drystoneWall) },
  { id: 'turf-hut', name: 'Turf-roofed hut', load: () => parseSetup(turfHut) },
];
