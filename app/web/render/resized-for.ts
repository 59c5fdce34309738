import type { Scene } from './scene.ts';

/** A scene on its screens as large as they are for the next scene; null where all are as large as they were. */
export const resizedFor = (scene: Scene, next: Scene): Scene | null => {
  const sizes = new Map(next.tiles.map(({ screen, width, height }) => [screen, { width, height }]));
  const isResized = scene.tiles.some(({ screen, width, height }) => {
    const size = sizes.get(screen);
    return size !== undefined && (size.width !== width || size.height !== height);
  });
  return isResized ? { ...scene, tiles: scene.tiles.map((tile) => ({ ...tile, ...sizes.get(tile.screen) })) } : null;
};
