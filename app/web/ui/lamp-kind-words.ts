import type { Lamp } from '../../../core/setup/schema/setup.ts';

/** What a kind of lamp is called. */
export const kindWords: Readonly<Record<Lamp['kind'], string>> = {
  torch: 'torch',
  panel: 'panel',
  lantern: 'lantern',
  tube: 'tube',
  point: 'bare bulb',
};
