import { type Texture, Vector2, Vector3, Vector4, type WebGLRenderer, type WebGLRenderTarget } from 'three';
import type { Triple } from '../../../core/colour/matrix.ts';
import { FullScreenPass } from './full-screen-pass.ts';
import type { Size } from './layer-store.ts';
import { openFragment } from './shaders/open.frag.ts';
import { layersPerPass, mixFragment } from './shaders/picture.frag.ts';
import { VariedPass } from './varied-pass.ts';

/** A layer in a frame: its texture and what it weighs there. */
export interface WeightedLayer {
  readonly texture: Texture;
  /** Share of each pixel that it counts for; null = all. */
  readonly openShare: Texture | null;
  readonly weight: Triple;
  /** Of a lamp in somebody's hand: what they send of moon and sky; null where nobody is drawn. */
  readonly holderWeight: Triple | null;
  /** How much of its time the holders of the other layers are there, one share a layer of the frame in order. */
  readonly behind: readonly number[];
}

/** A target for a name, the same as long as the size is. */
export type TargetOf = (name: string, size: Size) => WebGLRenderTarget;

/** A layer as one pass of the sum takes it. */
interface Addend {
  readonly texture: Texture;
  readonly weight: Triple;
  readonly cover: readonly [number, number, number, number];
}

const black: Triple = [0, 0, 0];

const isCoarser = (texture: Texture, { width, height }: Size): boolean => {
  const image = texture.image as Size;
  return image.width !== width || image.height !== height;
};

const isNothing = ({ weight, cover }: Addend): boolean => [...weight, ...cover].every((share) => share === 0);

/** Sums the layers of a frame: light on the sensor, with whoever holds a lamp before the rest. */
export class FrameSum {
  private readonly gl: WebGLRenderer;
  private readonly targetOf: TargetOf;
  private readonly slots = Array.from({ length: layersPerPass }, () => ({ value: null as Texture | null }));
  private readonly pass = new VariedPass(mixFragment, {
    ...Object.fromEntries(this.slots.map((slot, i) => [`layer${i}`, slot])),
    weights: { value: Array.from({ length: layersPerPass }, () => new Vector3()) },
    coverWeights: { value: Array.from({ length: layersPerPass }, () => new Vector4()) },
    sum: { value: null as Texture | null },
    behind: { value: null as Texture | null },
    pictureSize: { value: new Vector2() },
  });

  private readonly openPass = new FullScreenPass(openFragment, {
    layer: { value: null as Texture | null },
    share: { value: null as Texture | null },
    pictureSize: { value: new Vector2() },
  });

  constructor(gl: WebGLRenderer, targetOf: TargetOf) {
    this.gl = gl;
    this.targetOf = targetOf;
  }

  /** Adds to a sum of the same name, behind what holders take, if anything is. */
  private add(
    name: string,
    addends: readonly Addend[],
    size: Size,
    before: WebGLRenderTarget | null,
    behind: Texture | null,
  ): WebGLRenderTarget {
    const u = this.pass.uniforms;
    u.pictureSize.value.set(size.width, size.height);
    u.behind.value = behind;
    let sum = before;
    for (let start = 0; start === 0 || start < addends.length; start += layersPerPass) {
      const group = addends.slice(start, start + layersPerPass);
      u.weights.value.forEach((weight, i) => {
        const addend = group[i];
        weight.set(...(addend?.weight ?? black));
        u.coverWeights.value[i]?.set(...(addend?.cover ?? [0, 0, 0, 0]));
        (this.slots[i] as { value: Texture | null }).value = addend?.texture ?? null;
      });
      u.sum.value = sum?.texture ?? null;
      const [a, b] = [this.targetOf(`${name}-a`, size), this.targetOf(`${name}-b`, size)];
      const next = sum === a ? b : a;
      this.pass.draw(this.gl, next, {
        ADDENDS: group.length,
        IS_COARSE: group.some(({ texture }) => isCoarser(texture, size)),
        HAS_COVER: group.some(({ cover }) => cover.some((share) => share !== 0)),
        BEHIND_SOMEBODY: behind !== null,
        GOES_ON: sum !== null,
      });
      sum = next;
    }
    return sum as WebGLRenderTarget;
  }

  /** A layer where it is open alone; a frame has one such at most. */
  private opened(layer: WeightedLayer, size: Size): WeightedLayer {
    if (!layer.openShare) return layer;
    const u = this.openPass.uniforms;
    u.layer.value = layer.texture;
    u.share.value = layer.openShare;
    u.pictureSize.value.set(size.width, size.height);
    const target = this.targetOf('open', size);
    this.openPass.draw(this.gl, target);
    return { ...layer, texture: target.texture };
  }

  /** Light on the sensor; kept until the next frame is summed. */
  sum(wanted: readonly WeightedLayer[], size: Size): Texture {
    const layers = wanted.map((layer) => this.opened(layer, size));
    const groups = new Map<string, WeightedLayer[]>();
    for (const layer of layers) {
      const key = layer.behind.some((share) => share > 0) ? layer.behind.join() : '';
      groups.set(key, [...(groups.get(key) ?? []), layer]);
    }
    let sum: WebGLRenderTarget | null = null;
    for (const [key, group] of groups) {
      const taken =
        key === '' ? null : this.add('taken', this.takenBy(layers, group[0]?.behind ?? []), size, null, null);
      const addends = group
        .map(
          ({ texture, weight, holderWeight }): Addend => ({ texture, weight, cover: [...(holderWeight ?? black), 0] }),
        )
        .filter((addend) => !isNothing(addend));
      sum = this.add('sum', addends, size, sum, taken?.texture ?? null);
    }
    return (sum ?? this.add('sum', [], size, null, null)).texture;
  }

  /** What holders take of a light that is there together with them for these shares of its time. */
  private takenBy(layers: readonly WeightedLayer[], behind: readonly number[]): Addend[] {
    return layers.flatMap(({ texture, holderWeight }, i): Addend[] => {
      const share = behind[i] ?? 0;
      return holderWeight && share > 0 ? [{ texture, weight: black, cover: [0, 0, 0, share] }] : [];
    });
  }

  dispose(): void {
    this.pass.dispose();
    this.openPass.dispose();
  }
}
