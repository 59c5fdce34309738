import { type Layer, type PictureSize, type TracedLayers, traceWithCovers } from '../trace/layer.ts';
import { mixLayers } from '../trace/picture.ts';
import type { Source, World, WorldFrame, WorldLight } from '../world/world.ts';

/** Width of the small picture that is counted. */
const columns = 48;

/** A frame's small picture. */
export interface SmallPicture {
  /** Through the pinhole, without noise. */
  readonly frame: WorldFrame;
  /** One a light, in order. */
  readonly layers: readonly Layer[];
  /** Linear RGB relative to mid-grey, three numbers a pixel. */
  readonly linear: Float64Array;
  readonly size: PictureSize;
  /** The same with whoever holds a lamp, and without; null in a frame where nobody does. */
  readonly people: { readonly seen: Float64Array; readonly gone: Float64Array } | null;
}

/** A light whose holder is drawn, or is not; lights that nobody holds as they are. */
const withPeople = (light: WorldLight, isDrawn: boolean): WorldLight => {
  const { source } = light;
  if (source.kind !== 'lamp' || !source.holder) return light;
  return { ...light, source: { ...source, holder: { ...source.holder, isDrawn } } };
};

/** Layers of sources, each traced once. */
class TracedSources {
  private readonly places = new Map<string, number>();
  private readonly sources: Source[] = [];
  private traced: TracedLayers = { layers: [], covers: [] };

  want({ lights }: WorldFrame): void {
    for (const { source } of lights) {
      const key = JSON.stringify(source);
      if (this.places.has(key)) continue;
      this.places.set(key, this.sources.length);
      this.sources.push(source);
    }
  }

  trace({ stage, view }: World, size: PictureSize): void {
    this.traced = traceWithCovers(stage, view, this.sources, size);
  }

  of({ lights }: WorldFrame): TracedLayers {
    const at = lights.map(({ source }) => this.places.get(JSON.stringify(source)) as number);
    return {
      layers: at.map((i) => this.traced.layers[i] as Layer),
      covers: at.map((i) => this.traced.covers[i] ?? null),
    };
  }
}

/**
 * A small picture of each frame, in order: direct light, no noise, all in focus. Through the pinhole the frames share what
 * the camera sees and the sources that they have in common, which are traced once.
 */
export const smallPictures = (world: World): SmallPicture[] => {
  const { view, aspect } = world;
  const size = { width: columns, height: Math.max(Math.round(columns / aspect), 1), samples: 1 };
  const frames = world.frames.map((each) => {
    const frame: WorldFrame = { ...each, view, development: { ...each.development, noise: null } };
    const isHeld = each.lights.some(({ source }) => source.kind === 'lamp' && source.holder !== null);
    const peopled = (isDrawn: boolean): WorldFrame => ({
      ...frame,
      lights: frame.lights.map((light) => withPeople(light, isDrawn)),
    });
    return { frame, people: isHeld ? { seen: peopled(true), gone: peopled(false) } : null };
  });
  const sources = new TracedSources();
  for (const { frame, people } of frames)
    for (const each of [frame, ...(people ? [people.seen, people.gone] : [])]) sources.want(each);
  sources.trace(world, size);
  const linearOf = (frame: WorldFrame) => mixLayers(frame, sources.of(frame), size);
  return frames.map(({ frame, people }) => ({
    frame,
    layers: sources.of(frame).layers,
    linear: linearOf(frame),
    size,
    people: people && { seen: linearOf(people.seen), gone: linearOf(people.gone) },
  }));
};
