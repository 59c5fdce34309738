import { beforeEach, describe, expect, it, vi } from 'vitest';
import { sceneOf, type WantedPicture } from '../../../app/web/picture/scene-of.ts';
import type { Screens } from '../../../app/web/render/screens.ts';
import { type SlowDrawer, SlowEngine } from '../../../app/web/render/slow-engine.ts';
import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import { setup } from './sheet-samples.ts';

vi.mock('../../../app/web/render/slow-image.ts', () => ({
  slowImage: ({ name }: { name: string }) => `image of ${name}`,
}));

const scheme = setup.schemes[0] as (typeof setup.schemes)[number];
const wanted = (look: WantedPicture['look'], screen = 'one'): WantedPicture => ({
  setup,
  scheme,
  isUnlit: false,
  screen,
  look,
  against: look === 'difference' ? { setup, scheme, isUnlit: true } : null,
  marksFull: true,
  size: { width: 600, height: 400 },
});
const scene = (...pictures: WantedPicture[]) => sceneOf(pictures, { frame: null, samples: 4 });

/** A drawer that draws when it is told to. */
class Drawer implements SlowDrawer {
  orders: PictureOrder[] = [];
  stopped = 0;
  ended = 0;
  onStep: (step: DrawnStep) => void = () => undefined;
  onFail: () => void = () => undefined;
  draw(order: PictureOrder, onStep: (step: DrawnStep) => void, onFail: () => void) {
    this.orders.push(order);
    [this.onStep, this.onFail] = [onStep, onFail];
  }
  stop() {
    this.stopped++;
  }
  end() {
    this.ended++;
  }
}
const stepTo = (progress: number, ...names: string[]): DrawnStep => ({
  pictures: names.map((name) => ({ name, width: 96, height: 64, bytes: null, linear: null, against: null })),
  samples: 1,
  progress,
});

describe('SlowEngine', () => {
  let drawer: Drawer;
  let engine: SlowEngine;
  const paint = vi.fn();
  const onStale = vi.fn();
  beforeEach(() => {
    vi.clearAllMocks();
    drawer = new Drawer();
    engine = new SlowEngine({ paint } as unknown as Screens, drawer, onStale);
  });

  it('orders pictures and maps of a scene, draws each step on its screen, and is done with the last', () => {
    engine.show(scene(wanted('picture'), wanted('levels', 'two'), wanted('difference', 'three')));
    const [order] = drawer.orders as [PictureOrder];
    expect(order.pictures.map(({ name, isMap, against }) => [name, isMap, against !== null])).toEqual([
      ['one', false, false],
      ['two', true, false],
      ['three', true, true],
    ]);
    expect(order).toMatchObject({ size: { width: 600, height: 400 }, samples: 4 });
    expect(engine.state).toMatchObject({ isConverged: false, samples: 0, progress: 0 });
    drawer.onStep(stepTo(0.5, 'one', 'two', 'three'));
    expect(onStale).toHaveBeenCalledTimes(1);
    engine.draw();
    engine.draw();
    expect(paint.mock.calls.map(([name, image, , isSmooth]) => [name, image, isSmooth])).toEqual([
      ['one', 'image of one', true],
      ['two', 'image of two', false],
      ['three', 'image of three', false],
    ]);
    expect(engine.state).toMatchObject({ isConverged: false, samples: 1, progress: 0.5 });
    drawer.onStep(stepTo(1, 'one', 'two', 'three'));
    // what is not drawn yet is not done
    expect(engine.state.isConverged).toBe(false);
    engine.draw();
    expect(engine.state).toMatchObject({ isConverged: true, progress: 1 });
    // a screen that was put up since is filled too
    engine.refresh();
    engine.draw();
    expect(paint).toHaveBeenCalledTimes(9);
  });

  it('with nothing to show it is done at once', () => {
    engine.show({ tiles: [], size: { width: 1, height: 1 }, samples: 1, showsEarly: true });
    expect(drawer.orders).toEqual([]);
    expect(engine.state.isConverged).toBe(true);
  });

  it('with nothing to show any more it has its drawer stop, and fills no screen with what was before', () => {
    engine.show(scene(wanted('picture')));
    drawer.onStep(stepTo(0.5, 'one'));
    engine.show({ tiles: [], size: { width: 1, height: 1 }, samples: 1, showsEarly: true });
    expect([drawer.stopped, drawer.ended]).toEqual([1, 0]);
    onStale.mockClear();
    engine.refresh();
    engine.draw();
    expect(onStale).not.toHaveBeenCalled();
    expect(paint).not.toHaveBeenCalled();
    expect(engine.state).toMatchObject({ isConverged: true, samples: 0, progress: 1 });
  });

  it('that can’t draw says so and waits for nothing; the next scene, or another try, is begun afresh', () => {
    engine.show(scene(wanted('picture')));
    drawer.onFail();
    expect([engine.hasFailed, engine.state.isConverged, onStale.mock.calls.length]).toEqual([true, true, 1]);
    engine.restart();
    expect([engine.hasFailed, drawer.orders.length]).toEqual([false, 2]);
  });

  it('while nobody looks its drawer is ended; what was not done is gone on with after', () => {
    engine.show(scene(wanted('picture')));
    engine.setResting(true);
    expect(drawer.ended).toBe(1);
    engine.show(scene(wanted('picture')));
    expect(drawer.orders).toHaveLength(1);
    engine.setResting(false);
    expect(drawer.orders).toHaveLength(2);
    drawer.onStep(stepTo(1, 'one'));
    engine.draw();
    engine.setResting(true);
    engine.setResting(false);
    expect(drawer.orders).toHaveLength(2);
  });
});
