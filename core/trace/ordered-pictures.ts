import { saturationRatio } from '../camera/exposure.ts';
import type { StarCatalogue } from '../sky/star-catalogue.ts';
import type { Stage } from '../world/stage.ts';
import { blendPictures } from './blend.ts';
import { feathered, featherSigma } from './feather.ts';
import { KeptLayers, type Shot } from './kept-layers.ts';
import { type Mask, traceMask } from './mask.ts';
import { developPicture, mixLayers } from './picture.ts';
import {
  type DrawnPicture,
  type DrawnStep,
  type OrderedPicture,
  type PictureOrder,
  type ShownFrame,
  type ShownFrames,
  widestOrdered,
} from './picture-order.ts';

/** Widths of the pictures that come before the one that is asked for, pixels. */
const firstWidths = [96, 240] as const;
/** Most samples that a processor takes. */
const mostSamples = 8;
/** Samples of a mask's edge. */
const maskSamples = 4;
/** What a full channel is marked with, as a byte. */
const markByte = 15;

interface Step {
  readonly width: number;
  readonly height: number;
  readonly samples: number;
}

/** Small and coarse first, then larger, then with more samples. */
export const stepsOf = ({ size, samples }: Pick<PictureOrder, 'size' | 'samples'>): Step[] => {
  const last = Math.min(widestOrdered, size.width);
  const high = (width: number) => Math.max(Math.round((width * size.height) / size.width), 1);
  const widths = [...firstWidths.filter((width) => width < last), last];
  const steps: Step[] = widths.map((width) => ({ width, height: high(width), samples: 1 }));
  for (let n = 2; n <= Math.min(samples, mostSamples); n *= 2)
    steps.push({ width: last, height: high(last), samples: n });
  return steps;
};

const shotOf = ({ frame }: ShownFrame, { bounces }: ShownFrames, { width, height }: Step): Shot => ({
  view: frame.view,
  bounces,
  width,
  height,
});
const sourcesOf = ({ frame }: ShownFrame) => frame.lights.map(({ source }) => source);
const shownIn = ({ pictures }: PictureOrder): ShownFrames[] =>
  pictures.flatMap(({ shown, against }) => (against ? [shown, against] : [shown]));

/** Draws pictures that are asked for by the reference estimator, in steps; layers are kept, so that a mere change of level or exposure traces nothing. */
export class OrderedPictures {
  private readonly kept = new KeptLayers();
  private masks: { readonly stage: Stage; readonly shares: Map<string, Float64Array> } | null = null;

  private maskShares(stage: Stage, mask: Mask, { view, width, height }: Shot): Float64Array {
    if (this.masks?.stage.key !== stage.key) this.masks = { stage, shares: new Map() };
    const key = JSON.stringify([mask, view, width, height]);
    const shares = this.masks.shares.get(key) ?? traceMask(stage, view, mask, { width, height, samples: maskSamples });
    this.masks.shares.set(key, shares);
    return shares;
  }

  private linear(stage: Stage, shown: ShownFrames, step: Step, stars: StarCatalogue | null): Float64Array {
    const parts = shown.frames.map((each) => {
      const shot = shotOf(each, shown, step);
      const traced = this.kept.traced(shot, sourcesOf(each), stars);
      const shares = each.mask && this.maskShares(stage, each.mask, shot);
      const sigma = featherSigma(each.featherShare, step.width);
      return {
        picture: mixLayers(each.frame, traced, step),
        weight: each.weight,
        mask: shares && feathered(shares, step, sigma),
      };
    });
    return blendPictures(parts, shown.mode);
  }

  private drawn(stage: Stage, ordered: OrderedPicture, step: Step, stars: StarCatalogue | null): DrawnPicture {
    const { name, shown, against, isMap, marksFull } = ordered;
    const { width, height } = step;
    const linear = this.linear(stage, shown, step, stars);
    if (isMap)
      return {
        name,
        width,
        height,
        bytes: null,
        linear: Float32Array.from(linear),
        against: against && Float32Array.from(this.linear(stage, against, step, stars)),
      };
    const [first] = shown.frames as [ShownFrame];
    const rgb = developPicture(linear, first.frame.development.response);
    const bytes = new Uint8ClampedArray(width * height * 4);
    for (let p = 0; p < width * height; p++) {
      const own = linear.subarray(3 * p, 3 * p + 3);
      const isMarked = marksFull && (p + Math.floor(p / width)) % 2 === 0 && own.some((v) => v >= saturationRatio);
      for (const c of [0, 1, 2]) bytes[4 * p + c] = isMarked ? markByte : (rgb[3 * p + c] as number);
      bytes[4 * p + 3] = 255;
    }
    return { name, width, height, bytes, linear: null, against: null };
  }

  /** Whether all light of an order is there for a step. */
  private has(order: PictureOrder, step: Step): boolean {
    return shownIn(order).every((shown) =>
      shown.frames.every((each) => this.kept.samplesOf(shotOf(each, shown, step), sourcesOf(each)) >= step.samples),
    );
  }

  /**
   * Draws an order step by step, from the finest on that is there already. It can be given up wherever it yields; null
   * stands for work that went on, without a picture.
   */
  *draw(order: PictureOrder, stars: () => StarCatalogue | null): Generator<DrawnStep | null> {
    this.kept.setStage(order.stage);
    const steps = stepsOf(order);
    const first = Math.max(
      steps.findLastIndex((step) => this.has(order, step)),
      0,
    );
    for (const [i, step] of steps.entries()) {
      if (i < first) continue;
      for (const shown of shownIn(order))
        for (const each of shown.frames)
          for (const _ of this.kept.gather(shotOf(each, shown, step), sourcesOf(each), step.samples)) yield null;
      const pictures: DrawnPicture[] = [];
      for (const ordered of order.pictures) {
        pictures.push(this.drawn(order.stage, ordered, step, stars()));
        yield null;
      }
      this.kept.trim();
      yield { pictures, samples: step.samples, progress: (i + 1) / steps.length };
    }
  }
}
