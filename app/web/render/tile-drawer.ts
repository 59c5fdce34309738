import type { WebGLRenderer } from 'three';
import { Developer } from './developer.ts';
import { pictureStands } from './first-picture.ts';
import type { Size } from './layer-store.ts';
import { type Held, Mixer } from './mixer.ts';
import type { Scene, Shown, Tile } from './scene.ts';
import type { SceneLayers } from './scene-layers.ts';
import type { Screens } from './screens.ts';

/** Mixes and develops the tiles of a scene on the card’s canvas, and copies them onto their screens. */
export class TileDrawer {
  private readonly gl: WebGLRenderer;
  private readonly screens: Screens;
  private readonly sceneLayers: SceneLayers;
  private readonly mixer: Mixer;
  private readonly developer: Developer;
  /** What each tile had gathered when it was last drawn. */
  private readonly drawn = new Map<Tile, number>();

  constructor(gl: WebGLRenderer, screens: Screens, sceneLayers: SceneLayers) {
    this.gl = gl;
    this.screens = screens;
    this.sceneLayers = sceneLayers;
    this.mixer = new Mixer(gl);
    this.developer = new Developer(gl);
  }

  /** Every tile is drawn the next time, whether it gathered anything or not. */
  forget(): void {
    this.drawn.clear();
  }

  /**
   * Draws the tiles that gathered something since.
   *
   * @param samples that their layers have at least
   * @param ratio device pixels of a CSS pixel
   * @returns whether any has a picture
   */
  draw(scene: Scene, samples: number, ratio: number): boolean {
    this.fit(scene.tiles);
    let hasPicture = false;
    for (const tile of scene.tiles) {
      const gathered = this.sceneLayers.gatheredOf(tile);
      if (this.drawn.get(tile) === gathered) continue;
      this.drawn.set(tile, gathered);
      if (!this.sceneLayers.isReady(tile)) this.screens.blank(tile.screen);
      else {
        this.gl.setRenderTarget(null);
        this.developTile(tile, scene.size, ratio);
        this.screens.copy(tile.screen, this.gl.domElement, tile);
        pictureStands(samples);
        hasPicture = true;
      }
    }
    return hasPicture;
  }

  /** Makes the card's canvas large enough for every tile. */
  private fit(tiles: readonly Tile[]): void {
    const { width, height } = this.gl.domElement;
    const wide = Math.max(width, ...tiles.map((tile) => tile.width));
    const tall = Math.max(height, ...tiles.map((tile) => tile.height));
    if (wide > width || tall > height) this.gl.setSize(wide, tall, false);
  }

  private mix(shown: Shown, { width, height }: Size, held: Held) {
    const mixes = shown.frames.map((each) => this.sceneLayers.frameMix(shown, each));
    return this.mixer.mix(mixes, shown.mode, width, height, held);
  }

  private developTile(tile: Tile, size: Size, ratio: number): void {
    const picture = this.mix(tile, size, 'first');
    const response = tile.frames[0]?.frame.development.response ?? 'soft';
    if (tile.look === 'difference' && tile.against)
      this.developer.difference(picture, this.mix(tile.against, size, 'second'), tile, ratio);
    else if (tile.look === 'levels') this.developer.levels(picture, tile, ratio);
    else this.developer.picture(picture, tile, response, tile.marksFull, ratio);
  }
}
