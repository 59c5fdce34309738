import { Matrix3, type Texture, Vector2, Vector3, Vector4, type WebGLRenderer, type WebGLRenderTarget } from 'three';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import { electronsAtMidGrey } from '../../../core/camera/sensor-noise.ts';
import type { Triple } from '../../../core/colour/matrix.ts';
import { featherSigma } from '../../../core/trace/feather.ts';
import { type CoverWeight, noiseDimensionOf } from '../../../core/trace/picture.ts';
import { pixelsBinned } from '../../../core/trace/record-pixel.ts';
import type { Development } from '../../../core/world/development.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import { MaskBlur } from './mask-blur.ts';
import { layersPerPass, mixFragment } from './shaders/picture.frag.ts';
import { blendModes, recordFragment } from './shaders/record.frag.ts';
import { floatTarget } from './targets.ts';
import { matrixFromRows } from './uniforms.ts';

/** A layer in a frame: its texture and what it weighs there. */
export interface WeightedLayer {
  readonly texture: Texture;
  readonly weight: Triple;
  /** Of a lamp held by hand: what its holder's cover counts for; null for light that shines on behind people. */
  readonly cover: CoverWeight | null;
}

/** A frame to be mixed. */
export interface FrameMix {
  readonly layers: readonly WeightedLayer[];
  readonly development: Development;
  readonly view: CameraView;
  /** Strength in the blend. */
  readonly weight: number;
  /** Where it counts, with the width of the soft edge as a share of the picture's width; null = everywhere. */
  readonly mask: { readonly texture: Texture; readonly featherShare: number } | null;
}

/** Two pictures can be held at a time. */
export type Held = 'first' | 'second';

/** Turns layers into linear pictures: weights, white balance, blend of frames. Traces nothing. */
export class Mixer {
  private readonly gl: WebGLRenderer;
  private readonly targets = new Map<string, WebGLRenderTarget>();
  private readonly slots = Array.from({ length: layersPerPass }, () => ({ value: null as Texture | null }));
  private readonly mixPass = new FullScreenPass(mixFragment, {
    ...Object.fromEntries(this.slots.map((slot, i) => [`layer${i}`, slot])),
    weights: { value: Array.from({ length: layersPerPass }, () => new Vector3()) },
    coverWeights: { value: Array.from({ length: layersPerPass }, () => new Vector4()) },
    sum: { value: null as Texture | null },
    startFresh: { value: true },
    pictureSize: { value: new Vector2() },
  });
  private readonly recordPass = new FullScreenPass(recordFragment, {
    heldSum: { value: null as Texture | null },
    lastingSum: { value: null as Texture | null },
    before: { value: null as Texture | null },
    whiteBalance: { value: new Matrix3() },
    fallOffTangents: { value: new Vector2() },
    noise: { value: new Vector3() },
    noiseDimension: { value: 0 },
    pictureSize: { value: new Vector2() },
    frameWeight: { value: 1 },
    isMasked: { value: false },
    mask: { value: null as Texture | null },
    isAverage: { value: false },
    weightEverywhere: { value: 0 },
    weightMasked: { value: null as Texture | null },
    mode: { value: 0 },
  });
  private readonly maskBlur = new MaskBlur();

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

  /** Sum of weighted layers, black where there are none. */
  private sumLayers(name: string, layers: readonly WeightedLayer[], width: number, height: number): WebGLRenderTarget {
    const u = this.mixPass.uniforms;
    u.pictureSize.value.set(width, height);
    let sum: WebGLRenderTarget | null = null;
    for (let start = 0; start === 0 || start < layers.length; start += layersPerPass) {
      const group = layers.slice(start, start + layersPerPass);
      u.weights.value.forEach((weight, i) => {
        const layer = group[i];
        weight.set(...(layer?.weight ?? [0, 0, 0]));
        u.coverWeights.value[i]?.set(...(layer?.cover?.weight ?? [0, 0, 0]), layer?.cover?.share ?? 0);
        (this.slots[i] as { value: Texture | null }).value = layer?.texture ?? null;
      });
      u.sum.value = sum?.texture ?? null;
      u.startFresh.value = start === 0;
      const [a, b] = [`${name}-a`, `${name}-b`];
      const next: WebGLRenderTarget = this.target(sum === this.targets.get(a) ? b : a, width, height);
      this.mixPass.draw(this.gl, next);
      sum = next;
    }
    return sum as WebGLRenderTarget;
  }

  /** The masks of the frames, soft as they are wanted. */
  private softMasks(frames: readonly FrameMix[], width: number, height: number): (Texture | null)[] {
    return frames.map(({ mask }, i) => {
      if (!mask) return null;
      const [between, result] = ['mask-between', `mask-${i}`].map((name) => this.target(name, width, height));
      if (!between || !result) return null;
      this.maskBlur.blur(this.gl, mask.texture, featherSigma(mask.featherShare, width), between, result);
      return result.texture;
    });
  }

  /** What the frames of an average weigh together. */
  private setWeights(frames: readonly FrameMix[], masks: readonly (Texture | null)[], width: number, height: number) {
    const u = this.recordPass.uniforms;
    u.weightEverywhere.value = frames.reduce((sum, { weight }, i) => sum + (masks[i] ? 0 : weight), 0);
    const masked = frames.flatMap(({ weight }, i): WeightedLayer[] => {
      const texture = masks[i];
      return texture ? [{ texture, weight: [weight, weight, weight], cover: null }] : [];
    });
    u.weightMasked.value = this.sumLayers('weights', masked, width, height).texture;
  }

  private setDevelopment({ whiteBalance, vignetting, noise }: Development, view: CameraView, width: number): void {
    const u = this.recordPass.uniforms;
    u.whiteBalance.value = matrixFromRows(whiteBalance);
    u.fallOffTangents.value.set(vignetting ? view.tanHalfWidth : 0, vignetting ? view.tanHalfHeight : 0);
    if (!noise) u.noise.value.set(0, 0, 1);
    else {
      const electrons = electronsAtMidGrey(noise, noise.iso);
      u.noise.value.set(electrons, noise.readNoiseElectrons, pixelsBinned(noise, width));
      u.noiseDimension.value = noiseDimensionOf(noise.frame);
    }
  }

  /**
   * Linear picture of one frame, or of several blended; rows run downward, 1 = mid-grey; the fourth number tells which
   * channels are full. Kept until the next picture of the same hold is mixed.
   */
  mix(
    frames: readonly FrameMix[],
    mode: 'lighten' | 'add' | 'average',
    width: number,
    height: number,
    held: Held = 'first',
  ): WebGLRenderTarget {
    const u = this.recordPass.uniforms;
    u.pictureSize.value.set(width, height);
    const masks = this.softMasks(frames, width, height);
    u.isAverage.value = mode === 'average';
    if (mode === 'average') this.setWeights(frames, masks, width, height);
    let picture: WebGLRenderTarget | null = null;
    frames.forEach((frame, i) => {
      u.isMasked.value = masks[i] !== null;
      u.mask.value = masks[i] ?? null;
      const held = frame.layers.filter(({ cover }) => cover !== null);
      const lasting = frame.layers.filter(({ cover }) => cover === null);
      u.heldSum.value = this.sumLayers('held', held, width, height).texture;
      u.lastingSum.value = this.sumLayers('lasting', lasting, width, height).texture;
      u.before.value = picture?.texture ?? null;
      this.setDevelopment(frame.development, frame.view, width);
      u.frameWeight.value = frame.weight;
      u.mode.value = i === 0 ? blendModes.replace : mode === 'lighten' ? blendModes.lighten : blendModes.add;
      const next = this.target(`${held}-${(frames.length - 1 - i) % 2}`, width, height);
      this.recordPass.draw(this.gl, next);
      picture = next;
    });
    return picture ?? this.target(`${held}-0`, width, height);
  }

  dispose(): void {
    for (const target of this.targets.values()) target.dispose();
    for (const pass of [this.mixPass, this.recordPass, this.maskBlur]) pass.dispose();
  }
}
