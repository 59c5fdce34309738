import type { Source } from '../../../core/world/world.ts';
import { picturesOf, type Tile } from '../render/scene.ts';

const tableNumbers = new WeakMap<object, number>();
let tables = 0;

/** A measured beam is a large table: it goes by the object that it is, which worlds of one document share. */
const numberOfTable = (table: object): number => {
  const number = tableNumbers.get(table) ?? tables++;
  tableNumbers.set(table, number);
  return number;
};

const keyOf = (source: Source): string =>
  JSON.stringify(source, (name, value) => (name === 'distribution' ? numberOfTable(value) : value));

/** How many targets of the traced size some tiles need: one for each layer that is different, one for each view's first hits. */
export const targetsOf = (tiles: readonly Tile[]): number => {
  const views = new Set<string>();
  const layers = new Set<string>();
  for (const { world, frames } of tiles.flatMap(picturesOf))
    for (const { frame, mask } of frames) {
      // through the open lens each frame has its own first hits, moon and sky
      const view = JSON.stringify(frame.view);
      views.add(view);
      if (mask) layers.add(`${view}|mask ${mask.part}`);
      for (const { source } of frame.lights) {
        const key = `${view}|${keyOf(source)}`;
        layers.add(`${key}|0`);
        // a sky over the land is drawn, and where it is open traced
        if (source.kind === 'seen-sky') layers.add(`${view}|mask sky`);
        else if (world.bounces > 0) layers.add(`${key}|${world.bounces}`);
      }
    }
  return layers.size + views.size;
};
