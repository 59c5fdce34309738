import { type Texture, Vector2, Vector3, type WebGLRenderer } from 'three';
import type { Response } from '../../../core/camera/response.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import type { Size } from './layer-store.ts';
import { developFragment } from './shaders/develop.frag.ts';
import { mapFragment, mostBands } from './shaders/map.frag.ts';
import { channelsOf, differenceBands, levelBands, type StopsBands } from './stops-bands.ts';
import { VariedPass } from './varied-pass.ts';

/** A linear picture that the mixer made. */
interface Linear {
  readonly texture: Texture;
  readonly width: number;
  readonly height: number;
}

/** CSS pixels between the strokes that mark full channels. */
const markPitchPixels = 6;

/** Puts linear pictures on the card's canvas, from its lower left corner: as pictures, or as maps of stops. */
export class Developer {
  private readonly gl: WebGLRenderer;
  private readonly picturePass = new VariedPass(developFragment, {
    picture: { value: null as Texture | null },
    screenSize: { value: new Vector2() },
    markPitch: { value: 0 },
  });
  private readonly mapPass = new FullScreenPass(mapFragment, {
    picture: { value: null as Texture | null },
    other: { value: null as Texture | null },
    isDifference: { value: false },
    screenSize: { value: new Vector2() },
    ratio: { value: 1 },
    bands: { value: Array.from({ length: mostBands }, () => new Vector3()) },
    bandCount: { value: 0 },
    firstBand: { value: 0 },
  });

  constructor(gl: WebGLRenderer) {
    this.gl = gl;
  }

  private onScreen({ width, height }: Size, draw: () => void): void {
    const { gl } = this;
    gl.setViewport(0, 0, width, height);
    gl.setScissor(0, 0, width, height);
    gl.setScissorTest(true);
    draw();
    gl.setScissorTest(false);
  }

  /** A picture with full channels marked if asked; `ratio` = device pixels of a CSS pixel. */
  picture({ texture, width, height }: Linear, size: Size, response: Response, marksFull: boolean, ratio: number): void {
    const u = this.picturePass.uniforms;
    u.picture.value = texture;
    u.screenSize.value.set(size.width, size.height);
    u.markPitch.value = markPitchPixels * ratio;
    const variant = {
      IS_PLAIN: response === 'plain',
      IS_SCALED: width !== size.width || height !== size.height,
      MARKS_FULL: marksFull,
    };
    this.onScreen(size, () => this.picturePass.draw(this.gl, null, variant));
  }

  private map(picture: Linear, other: Linear | null, { first, colours }: StopsBands, size: Size, ratio: number): void {
    const u = this.mapPass.uniforms;
    u.picture.value = picture.texture;
    u.other.value = (other ?? picture).texture;
    u.isDifference.value = other !== null;
    u.screenSize.value.set(size.width, size.height);
    u.ratio.value = ratio;
    colours.forEach((colour, i) => {
      u.bands.value[i]?.set(...channelsOf(colour));
    });
    u.bandCount.value = colours.length;
    u.firstBand.value = first;
    this.onScreen(size, () => this.mapPass.draw(this.gl, null));
  }

  /** Levels in stops from mid-grey. */
  levels(picture: Linear, size: Size, ratio: number): void {
    this.map(picture, null, levelBands, size, ratio);
  }

  /** By how many stops a picture is brighter than another. */
  difference(picture: Linear, other: Linear, size: Size, ratio: number): void {
    this.map(picture, other, differenceBands, size, ratio);
  }

  dispose(): void {
    this.picturePass.dispose();
    this.mapPass.dispose();
  }
}
