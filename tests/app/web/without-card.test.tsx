// @vitest-environment happy-dom
import { beforeEach, describe, expect, it, vi } from 'vitest';

import type { DrawnStep, PictureOrder } from '../../../core/trace/picture-order.ts';
import { widestOrdered } from '../../../core/trace/picture-order.ts';

vi.mock('../../../app/web/render/capability.ts', () => ({ graphicsCard: () => ({ isThere: true, hasFloats: true }) }));
vi.mock('../../../app/web/render/slow-image.ts', () => ({ slowImage: () => null }));
vi.mock('three', async (load) => ({
  ...(await load<object>()),
  WebGLRenderer: class {
    constructor() {
      throw new Error('Error creating WebGL context.');
    }
  },
}));

/** A processor that draws each order at once, or fails. */
const drawer = {
  fails: false,
  orders: [] as PictureOrder[],
  draw(order: PictureOrder, onStep: (step: DrawnStep) => void, onFail: () => void) {
    this.orders.push(order);
    if (this.fails) onFail();
    else onStep({ pictures: [], samples: 1, progress: 1 });
  },
  stop: () => undefined,
  end: () => undefined,
};

describe('a browser that gives no context of its graphics card after all', () => {
  beforeEach(() => {
    vi.resetModules();
    drawer.fails = false;
    drawer.orders.length = 0;
  });
  const page = async () => {
    const { drawWith, theDarkroom } = await import('../../../app/web/render/the-darkroom.ts');
    drawWith({ slow: drawer });
    const { mounted } = await import('./nightrun/mounted.tsx');
    return { darkroom: theDarkroom(), mounted };
  };
  const print = async (
    darkroom: Awaited<ReturnType<typeof page>>['darkroom'],
    signal = new AbortController().signal,
  ) => {
    const { sceneOf } = await import('../../../app/web/picture/scene-of.ts');
    const { setup } = await import('./sheet-samples.ts');
    const [scheme] = setup.schemes;
    if (!scheme) throw new Error('no scheme');
    const size = { width: 60, height: 40 };
    const look = 'picture' as const;
    const wanted = { setup, scheme, isUnlit: false, screen: 's', look, against: null, marksFull: false, size };
    return darkroom.print({
      scene: sceneOf([wanted], { frame: null, samples: 1 }),
      onProgress: () => undefined,
      signal,
    });
  };

  it('is told that its graphics can’t draw, not that a card did not come back', async () => {
    const { darkroom, mounted } = await page();
    expect([darkroom.light, darkroom.hasHadCard]).toEqual(['slow', false]);
    const { LightNote } = await import('../../../app/web/picture/LightNote.tsx');
    const note = mounted(<LightNote />);
    expect(document.body.textContent).toContain('This machine’s graphics can’t draw the picture: the processor does');
    note.leave();
  });

  it('is told with a sheet how wide its pictures are drawn', async () => {
    const { mounted } = await page();
    const { SaveSheet } = await import('../../../app/web/sheets/SaveSheet.tsx');
    const sheet = mounted(<SaveSheet describe={() => null} />);
    expect(document.body.textContent).toContain(`at most ${widestOrdered} px wide; larger ones are enlarged`);
    sheet.leave();
  });

  it('prints by the processor; a print that it can’t draw fails with a reason, one called off gives nothing', async () => {
    const { darkroom } = await page();
    expect([...((await print(darkroom))?.keys() ?? [])]).toEqual(['s']);
    expect(drawer.orders.at(-1)?.pictures.map(({ name }) => name)).toEqual(['print/s']);
    drawer.fails = true;
    await expect(print(darkroom)).rejects.toThrow('neither the graphics card nor the processor can draw');
    expect(darkroom.screen('print/s')).toBeNull();
    expect(await print(darkroom, AbortSignal.abort())).toBeNull();
    // the next print tries anew
    drawer.fails = false;
    expect(await print(darkroom)).not.toBeNull();
    expect(darkroom.light).toBe('slow');
  });
});
