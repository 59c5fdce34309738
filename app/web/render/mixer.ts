import { type Texture, Vector2, Vector3, type WebGLRenderer, type WebGLRenderTarget } from 'three';
import type { Matrix3, Triple } from '../../../core/colour/matrix.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import { blendFragment, blendModes, developFragment, layersPerPass, mixFragment } from './shaders/picture.frag.ts';
import { floatTarget } from './targets.ts';
import { matrixFromRows } from './uniforms.ts';

/** A layer in a frame: its texture and what it weighs there. */
export interface WeightedLayer {
  readonly texture: Texture;
  readonly weight: Triple;
}

/** A frame to be mixed. */
export interface FrameMix {
  readonly layers: readonly WeightedLayer[];
  readonly whiteBalance: Matrix3;
  /** Strength in the blend. */
  readonly weight: number;
}

/** Turns layers into pictures: weights, white balance, blend of frames, response, screen. Traces nothing. */
export class Mixer {
  private readonly gl: WebGLRenderer;
  private readonly targets = new Map<string, WebGLRenderTarget>();
  private readonly slots = Array.from({ length: layersPerPass }, () => ({ value: null as Texture | null }));
  private readonly mixPass = new FullScreenPass(mixFragment, {
    ...Object.fromEntries(this.slots.map((slot, i) => [`layer${i}`, slot])),
    weights: { value: Array.from({ length: layersPerPass }, () => new Vector3()) },
    sum: { value: null as Texture | null },
    startFresh: { value: true },
    pictureSize: { value: new Vector2() },
  });
  private readonly blendPass = new FullScreenPass(blendFragment, {
    frameSum: { value: null as Texture | null },
    before: { value: null as Texture | null },
    whiteBalance: {
      value: matrixFromRows([
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ]),
    },
    frameWeight: { value: 1 },
    mode: { value: 0 },
  });
  private readonly developPass = new FullScreenPass(developFragment, {
    picture: { value: null as Texture | null },
    screenOrigin: { value: new Vector2() },
    screenSize: { value: new Vector2() },
  });

  constructor(gl: WebGLRenderer) {
    this.gl = gl;
  }

  /** The same scratch or picture target for the same name and size. */
  private target(name: string, width: number, height: number): WebGLRenderTarget {
    const known = this.targets.get(name);
    if (known?.width === width && known.height === height) return known;
    known?.dispose();
    const made = floatTarget(this.gl, width, height);
    this.targets.set(name, made);
    return made;
  }

  /** Sum of a frame's weighted layers. */
  private sumLayers(layers: readonly WeightedLayer[], width: number, height: number): WebGLRenderTarget {
    const u = this.mixPass.uniforms;
    u.pictureSize.value.set(width, height);
    let sum: WebGLRenderTarget | null = null;
    for (let start = 0; start === 0 || start < layers.length; start += layersPerPass) {
      const group = layers.slice(start, start + layersPerPass);
      u.weights.value.forEach((weight, i) => {
        weight.set(...(group[i]?.weight ?? [0, 0, 0]));
        (this.slots[i] as { value: Texture | null }).value = group[i]?.texture ?? null;
      });
      u.sum.value = sum?.texture ?? null;
      u.startFresh.value = start === 0;
      const next: WebGLRenderTarget = this.target(sum === this.targets.get('sum-a') ? 'sum-b' : 'sum-a', width, height);
      this.mixPass.draw(this.gl, next);
      sum = next;
    }
    return sum as WebGLRenderTarget;
  }

  /** Linear picture of one frame, or of several blended; rows run downward, 1 = mid-grey. Kept until the next picture is mixed. */
  mix(
    frames: readonly FrameMix[],
    mode: 'lighten' | 'add' | 'average',
    width: number,
    height: number,
  ): WebGLRenderTarget {
    const u = this.blendPass.uniforms;
    let picture: WebGLRenderTarget | null = null;
    frames.forEach((frame, i) => {
      u.frameSum.value = this.sumLayers(frame.layers, width, height).texture;
      u.before.value = picture?.texture ?? null;
      u.whiteBalance.value = matrixFromRows(frame.whiteBalance);
      u.frameWeight.value = mode === 'average' ? frame.weight / frames.length : frame.weight;
      u.mode.value = i === 0 ? blendModes.replace : mode === 'lighten' ? blendModes.lighten : blendModes.add;
      const next = this.target(`picture-${(frames.length - 1 - i) % 2}`, width, height);
      this.blendPass.draw(this.gl, next);
      picture = next;
    });
    return picture ?? this.target('picture-0', width, height);
  }

  /** Puts a picture on the screen, in device pixels from the lower left. */
  develop(picture: { readonly texture: Texture }, x: number, y: number, width: number, height: number): void {
    const u = this.developPass.uniforms;
    u.picture.value = picture.texture;
    u.screenOrigin.value.set(x, y);
    u.screenSize.value.set(width, height);
    const gl = this.gl;
    const ratio = gl.getPixelRatio();
    gl.setViewport(x / ratio, y / ratio, width / ratio, height / ratio);
    gl.setScissor(x / ratio, y / ratio, width / ratio, height / ratio);
    gl.setScissorTest(true);
    this.developPass.draw(gl, null);
    gl.setScissorTest(false);
  }

  dispose(): void {
    for (const target of this.targets.values()) target.dispose();
    for (const pass of [this.mixPass, this.blendPass, this.developPass]) pass.dispose();
  }
}
