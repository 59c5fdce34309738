import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { sceneOf } from '../../../app/web/picture/scene-of.ts';
import type { SlowPictureAnswer, SlowPictureRequest } from '../../../app/web/workers/slow-picture-messages.ts';
import type { StarCatalogue } from '../../../core/sky/star-catalogue.ts';
import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import { setup } from './sheet-samples.ts';

let starsCome: (stars: StarCatalogue | null) => void;
const fetchStars = vi.fn(
  () =>
    new Promise<StarCatalogue | null>((resolve) => {
      starsCome = resolve;
    }),
);
vi.mock('../../../app/web/workers/stars.ts', () => ({ fetchStars: () => fetchStars() }));

/** Stars that each drawing was made with. */
let drawnWith: (StarCatalogue | null)[];
/** What drawing does: one step that is all. */
let draw: (order: PictureOrder) => Iterable<DrawnStep | null>;
vi.mock('../../../core/trace/ordered-pictures.ts', () => ({
  OrderedPictures: class {
    draw(order: PictureOrder, stars: () => StarCatalogue | null) {
      drawnWith.push(stars());
      return draw(order);
    }
  },
}));

const whole: DrawnStep = { pictures: [], samples: 1, progress: 1 };
const someStars = { count: 1 } as StarCatalogue;

/** Pictures of a scheme under the sky, or of no frame at all. */
const orderOf = (seesSky: boolean): SlowPictureRequest['order'] => {
  const [scheme] = setup.schemes;
  if (!scheme) throw new Error('no scheme');
  const size = { width: 6, height: 4 };
  const look = 'picture' as const;
  const wanted = { setup, scheme, isUnlit: false, screen: 's', look, against: null, marksFull: false, size };
  const [tile] = sceneOf([wanted], { frame: null, samples: 1 }).tiles;
  if (!tile) throw new Error('no tile');
  const shown = { frames: seesSky ? tile.frames : [], mode: tile.mode, bounces: tile.world.bounces };
  return { pictures: [{ name: 's', shown, against: null, isMap: false, marksFull: false }], size, samples: 1 };
};

describe('the worker that draws pictures by the processor', () => {
  const said: SlowPictureAnswer[] = [];
  const scope = {
    postMessage: (answer: SlowPictureAnswer) => said.push(answer),
    onmessage: (_: { data: SlowPictureRequest }): void => undefined,
  };
  let id = 0;
  const ask = (order: SlowPictureRequest['order']) =>
    scope.onmessage({ data: { id: ++id, stage: { key: 'a' } as never, order } });
  const settled = () => vi.advanceTimersByTimeAsync(1);

  beforeEach(async () => {
    vi.useFakeTimers();
    vi.resetModules();
    vi.stubGlobal('self', scope);
    fetchStars.mockClear();
    [said.length, drawnWith] = [0, []];
    draw = () => [whole];
    await import('../../../app/web/workers/slow-picture.worker.ts');
  });
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  it('is not done before the stars have come or failed to; asks for them with a later order, half a minute on', async () => {
    ask(orderOf(false));
    expect(fetchStars).not.toHaveBeenCalled();
    ask(orderOf(true));
    await settled();
    expect(said.at(-1)).toMatchObject({ kind: 'step', id, step: { progress: 0.99 } });
    starsCome(null);
    await settled();
    expect(said.at(-1)).toMatchObject({ kind: 'step', id, step: { progress: 1 } });
    ask(orderOf(true));
    await settled();
    expect(fetchStars).toHaveBeenCalledTimes(1);
    await vi.advanceTimersByTimeAsync(31_000);
    ask(orderOf(true));
    starsCome(someStars);
    await settled();
    expect([fetchStars.mock.calls.length, drawnWith.at(-1)]).toEqual([2, someStars]);
    await vi.advanceTimersByTimeAsync(31_000);
    ask(orderOf(true));
    expect(fetchStars).toHaveBeenCalledTimes(2);
  });

  it('tells of an error in drawing, at first as well as once the stars are there', async () => {
    ask(orderOf(true));
    await settled();
    draw = () => {
      throw new RangeError('out of memory');
    };
    starsCome(someStars);
    await settled();
    expect(said.at(-1)).toEqual({ kind: 'failed', id });
    ask(orderOf(true));
    await settled();
    expect(said.at(-1)).toEqual({ kind: 'failed', id });
  });

  it('says every few seconds of a long step that it is at work; stops when nothing is wanted any more', async () => {
    let rows = 0;
    draw = function* () {
      for (;;) {
        rows++;
        yield null;
        clock += 100;
      }
    };
    let clock = 0;
    vi.spyOn(performance, 'now').mockImplementation(() => clock);
    ask(orderOf(false));
    await vi.advanceTimersByTimeAsync(200);
    expect(said.length).toBeGreaterThan(2);
    expect(new Set(said.map(({ kind }) => kind))).toEqual(new Set(['at work']));
    expect(said.length).toBeLessThanOrEqual(clock / 5000);
    ask(null);
    await settled();
    const before = rows;
    await vi.advanceTimersByTimeAsync(200);
    expect(rows).toBe(before);
  });
});
