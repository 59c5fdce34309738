import type { EngineState } from './engine.ts';
import type { Scene, Tile } from './scene.ts';
import type { Screens } from './screens.ts';

/** A scene printed apart from what is on the page. */
export interface PrintOrder {
  readonly scene: Scene;
  /** Told now and then how far it is, 0 to 1. */
  readonly onProgress: (share: number) => void;
  readonly signal: AbortSignal;
}

/** What a print has of the darkroom. */
interface Press {
  readonly screens: Screens;
  /** Has a scene drawn in place of the page's. */
  readonly begin: (scene: Scene) => void;
  /** Draws what there is, and tells how far it is; null where nothing can draw. */
  readonly look: () => EngineState | null;
  /** Gives the page its own scene back. */
  readonly end: () => void;
}

/** How often a print's progress is looked at, milliseconds. */
const lookMilliseconds = 60;

/**
 * Develops a scene on canvases of its own, by screen; null when it was called off. While nobody draws it waits.
 *
 * @throws where neither the card nor the processor can draw it
 */
export const printScene = async (
  { scene, onProgress, signal }: PrintOrder,
  { screens, begin, look, end }: Press,
): Promise<Map<string, HTMLCanvasElement> | null> => {
  const sheets = new Map(scene.tiles.map(({ screen }) => [screen, document.createElement('canvas')]));
  const nameOf = (screen: string) => `print/${screen}`;
  const takeDown = [...sheets].map(([screen, canvas]) => screens.add(nameOf(screen), canvas));
  const tiles = scene.tiles.map((tile): Tile => ({ ...tile, screen: nameOf(tile.screen) }));
  begin({ ...scene, tiles, showsEarly: true });
  try {
    for (;;) {
      await new Promise((resolve) => setTimeout(resolve, lookMilliseconds));
      if (signal.aborted) return null;
      const state = look();
      if (!state) throw new Error('neither the graphics card nor the processor can draw its pictures just now.');
      onProgress(state.progress);
      if (state.isConverged) return sheets;
    }
  } finally {
    for (const each of takeDown) each();
    end();
  }
};
