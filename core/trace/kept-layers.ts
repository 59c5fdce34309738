import type { CameraView } from '../camera/camera-view.ts';
import type { StarCatalogue } from '../sky/star-catalogue.ts';
import type { Stage } from '../world/stage.ts';
import type { Source, World } from '../world/world.ts';
import { noSums, type PictureSize, type TracedLayers, type TraceSums, tracePart } from './layer.ts';
import { skyPicture } from './sky-picture.ts';

/** A camera’s picture at a size, and how far light is followed: what layers are traced over. */
export interface Shot {
  readonly view: CameraView;
  readonly bounces: World['bounces'];
  readonly width: number;
  readonly height: number;
}

interface Kept {
  sums: TraceSums;
  samples: number;
  lastUsed: number;
}

/** Numbers of layers that are kept, eight bytes each. */
const mostNumbers = 20e6;

const shotKey = (shot: Shot): string => JSON.stringify(shot);
const keyOf = (shot: Shot, source: Source): string => `${shotKey(shot)}${JSON.stringify(source)}`;

const scaled = (numbers: Float64Array, factor: number): Float64Array => numbers.map((v) => v * factor);
const numbersIn = ({ sums }: Kept): number => sums.open.length * 5;

/** The sums of one source among those of several. */
const one = ({ open, layers, covers }: TraceSums, i: number): TraceSums => ({
  open,
  layers: [layers[i] as Float64Array],
  covers: [covers[i] ?? null],
});

const added = (a: TraceSums, b: TraceSums): TraceSums => {
  const plus = (x: Float64Array, y: Float64Array) => x.map((v, p) => v + (y[p] as number));
  const [cover, more] = [a.covers[0], b.covers[0]];
  return {
    open: plus(a.open, b.open),
    layers: [plus(a.layers[0] as Float64Array, b.layers[0] as Float64Array)],
    covers: [cover && more ? plus(cover, more) : null],
  };
};

/** Layers of one stage by the reference estimator, kept and refined: what was traced once is not traced again. */
export class KeptLayers {
  private readonly kept = new Map<string, Kept>();
  private readonly skies = new Map<string, Float64Array>();
  private stage: Stage | null = null;
  private clock = 0;

  /** Takes up another stage; what was traced on the one before is let go of. */
  setStage(stage: Stage): void {
    if (stage.key === this.stage?.key) return;
    this.stage = stage;
    this.kept.clear();
  }

  /** Fewest samples that any of the sources has over a shot. */
  samplesOf(shot: Shot, sources: readonly Source[]): number {
    const counts = sources.map((source) => this.kept.get(keyOf(shot, source))?.samples ?? 0);
    return Math.min(Number.POSITIVE_INFINITY, ...counts);
  }

  /** Traces what the sources lack of so many samples, row by row: it can be given up between two rows. */
  *gather(shot: Shot, sources: readonly Source[], samples: number): Generator<void> {
    const keys = sources.map((source) => keyOf(shot, source));
    const counts = keys.map((key) => this.kept.get(key)?.samples ?? 0);
    for (const from of new Set(counts)) {
      if (from >= samples) continue;
      const lacking = sources.flatMap((source, i) => (counts[i] === from ? [{ source, key: keys[i] as string }] : []));
      const sums = noSums(
        lacking.map(({ source }) => source),
        shot,
      );
      const size: PictureSize = { ...shot, samples: 1 };
      for (let y = 0; y < shot.height; y++) {
        const part = { rows: [y, y + 1], samples: [from, samples] } as const;
        tracePart(
          this.stage as Stage,
          shot.view,
          lacking.map(({ source }) => source),
          size,
          shot.bounces,
          part,
          sums,
        );
        yield;
      }
      lacking.forEach(({ key }, i) => {
        const before = this.kept.get(key);
        const own = one(sums, i);
        this.kept.set(key, { sums: before ? added(before.sums, own) : own, samples, lastUsed: ++this.clock });
      });
    }
  }

  private skyOf(shot: Shot, source: Extract<Source, { kind: 'seen-sky' }>, stars: StarCatalogue | null): Float64Array {
    const key = `${keyOf(shot, source)}${stars?.count ?? 0}`;
    const known = this.skies.get(key) ?? Float64Array.from(skyPicture(shot, source.sky, stars));
    this.skies.delete(key);
    this.skies.set(key, known);
    for (const oldest of [...this.skies.keys()].slice(0, -4)) this.skies.delete(oldest);
    return known;
  }

  /** The means of what has been gathered, as `traceWithCovers` gives them. */
  traced(shot: Shot, sources: readonly Source[], stars: StarCatalogue | null): TracedLayers {
    const kept = sources.map((source) => {
      const entry = this.kept.get(keyOf(shot, source)) as Kept;
      entry.lastUsed = ++this.clock;
      return entry;
    });
    return {
      layers: kept.map(({ sums, samples }, i) => {
        const source = sources[i] as Source;
        if (source.kind !== 'seen-sky') return scaled(sums.layers[0] as Float64Array, 1 / samples);
        const sky = this.skyOf(shot, source, stars);
        return sky.map((v, p) => (v * (sums.open[Math.floor(p / 3)] as number)) / samples);
      }),
      covers: kept.map(({ sums, samples }) => (sums.covers[0] ? scaled(sums.covers[0], 1 / samples) : null)),
    };
  }

  /** Lets go of what was used longest ago, until the rest fits the memory that is allowed. */
  trim(): void {
    let numbers = 0;
    for (const [key, entry] of [...this.kept].sort(([, a], [, b]) => b.lastUsed - a.lastUsed)) {
      numbers += numbersIn(entry);
      if (numbers > mostNumbers) this.kept.delete(key);
    }
  }
}
