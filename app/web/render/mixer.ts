import { Matrix3, type Texture, Vector2, Vector3, type WebGLRenderer, type WebGLRenderTarget } from 'three';
import type { CameraView } from '../../../core/camera/camera-view.ts';
import { electronsAtMidGrey } from '../../../core/camera/sensor-noise.ts';
import type { BlendMode } from '../../../core/trace/blend.ts';
import { featherSigma } from '../../../core/trace/feather.ts';
import { noiseDimensionOf } from '../../../core/trace/layer-weights.ts';
import { pixelsBinned } from '../../../core/trace/record-pixel.ts';
import type { Development } from '../../../core/world/development.ts';
import { BlendShares } from './blend-shares.ts';
import { FrameSum, type WeightedLayer } from './frame-sum.ts';
import type { Size } from './layer-store.ts';
import { MaskBlur, type TracedMask } from './mask-blur.ts';
import { blendModes, evenings, recordFragment } from './shaders/record.frag.ts';
import { floatTarget } from './targets.ts';
import { matrixFromRows } from './uniforms.ts';
import { VariedPass } from './varied-pass.ts';

/** A frame to be mixed. */
export interface FrameMix {
  readonly layers: readonly WeightedLayer[];
  readonly development: Development;
  readonly view: CameraView;
  /** Strength in the blend. */
  readonly weight: number;
  /** Where it counts, with the width of the soft edge as a share of the picture's width; null = everywhere. */
  readonly mask: (TracedMask & { readonly featherShare: number }) | null;
}

/** Two pictures can be held at a time. */
export type Held = 'first' | 'second';

/** Turns layers into linear pictures: weights, white balance, blend of frames. Traces nothing. */
export class Mixer {
  private readonly gl: WebGLRenderer;
  private readonly targets = new Map<string, WebGLRenderTarget>();
  private readonly frameSum: FrameSum;
  private readonly blendShares: BlendShares;
  private readonly maskBlur: MaskBlur;
  private readonly recordPass = new VariedPass(recordFragment, {
    frameSum: { value: null as Texture | null },
    before: { value: null as Texture | null },
    whiteBalance: { value: new Matrix3() },
    fallOffTangents: { value: new Vector2() },
    noise: { value: new Vector3() },
    noiseDimension: { value: 0 },
    pictureSize: { value: new Vector2() },
    frameWeight: { value: 1 },
    mask: { value: null as Texture | null },
    shares: { value: null as Texture | null },
  });

  constructor(gl: WebGLRenderer) {
    this.gl = gl;
    this.frameSum = new FrameSum(gl, this.target);
    this.blendShares = new BlendShares(gl, this.target);
    this.maskBlur = new MaskBlur(gl);
  }

  /** The same scratch or picture target for the same name and size. */
  private readonly target = (name: string, { width, height }: Size): WebGLRenderTarget => {
    const known = this.targets.get(name);
    if (known?.width === width && known.height === height) return known;
    known?.dispose();
    const made = floatTarget(this.gl, width, height);
    this.targets.set(name, made);
    return made;
  };

  private setDevelopment({ whiteBalance, vignetting, noise }: Development, view: CameraView, width: number): void {
    const u = this.recordPass.uniforms;
    u.whiteBalance.value = matrixFromRows(whiteBalance);
    u.fallOffTangents.value.set(vignetting ? view.tanHalfWidth : 0, vignetting ? view.tanHalfHeight : 0);
    if (!noise) return;
    const electrons = electronsAtMidGrey(noise, noise.iso);
    u.noise.value.set(electrons, noise.readNoiseElectrons, pixelsBinned(noise, width));
    u.noiseDimension.value = noiseDimensionOf(noise.frame);
  }

  /** The masks of frames, soft as they are wanted; null = everywhere. */
  private softMasks(frames: readonly FrameMix[], size: Size): (Texture | null)[] {
    const masks = frames.map(
      ({ mask }) => mask && this.maskBlur.soft(mask, featherSigma(mask.featherShare, size.width), size),
    );
    if (masks.some((mask) => mask !== null)) this.maskBlur.trim();
    return masks;
  }

  /** How a blend is evened out where frames count in parts: not at all where none does and nothing is averaged. */
  private evening(
    frames: readonly FrameMix[],
    masks: readonly (Texture | null)[],
    mode: BlendMode,
    size: Size,
  ): number {
    const hasMasks = masks.some((mask) => mask !== null);
    const evenedBy =
      mode === 'average' ? evenings.weights : mode === 'lighten' && hasMasks ? evenings.masks : evenings.nothing;
    const shares = frames.map(({ weight }, i) => ({ weight, mask: masks[i] ?? null }));
    this.recordPass.uniforms.shares.value = evenedBy === evenings.nothing ? null : this.blendShares.sum(shares, size);
    return evenedBy;
  }

  /**
   * Linear picture of one frame, or of several blended; rows run downward, 1 = mid-grey; the fourth number tells which
   * channels are full. Kept until the next picture of the same hold is mixed.
   */
  mix(
    frames: readonly FrameMix[],
    mode: BlendMode,
    width: number,
    height: number,
    held: Held = 'first',
  ): WebGLRenderTarget {
    const u = this.recordPass.uniforms;
    const size = { width, height };
    u.pictureSize.value.set(width, height);
    const masks = this.softMasks(frames, size);
    const evenedBy = this.evening(frames, masks, mode, size);
    const further = mode === 'lighten' ? blendModes.lighten : blendModes.add;
    let picture: WebGLRenderTarget | null = null;
    frames.forEach((frame, i) => {
      u.mask.value = masks[i] ?? null;
      u.frameSum.value = this.frameSum.sum(frame.layers, size);
      u.before.value = picture?.texture ?? null;
      this.setDevelopment(frame.development, frame.view, width);
      u.frameWeight.value = frame.weight;
      const next = this.target(`${held}-${(frames.length - 1 - i) % 2}`, size);
      this.recordPass.draw(this.gl, next, {
        MODE: i === 0 ? blendModes.replace : further,
        EVENED_BY: evenedBy,
        IS_MASKED: masks[i] !== null,
        HAS_NOISE: frame.development.noise !== null,
      });
      picture = next;
    });
    return picture ?? this.target(`${held}-0`, size);
  }

  dispose(): void {
    for (const target of this.targets.values()) target.dispose();
    for (const part of [this.frameSum, this.blendShares, this.maskBlur, this.recordPass]) part.dispose();
  }
}
