import { describe, expect, it } from 'vitest';
import type { SkyDrawer, SkyView } from '../../../app/web/render/sky-drawer.ts';
import { SkyPictures } from '../../../app/web/render/sky-pictures.ts';
import type { SkyOrder } from '../../../app/web/render/sky-slots.ts';
import { cameraView } from '../../../core/camera/camera-view.ts';
import type { SeenSky } from '../../../core/sky/seen-sky.ts';

const size = { width: 60, height: 40 };
const sky = (minutes: number): SeenSky => ({
  input: {
    latitudeRadians: -0.57,
    longitudeRadians: 2.6,
    utcMilliseconds: Date.UTC(2026, 7, 20, 10, 30) + minutes * 60_000,
    northRadians: 0,
    zenithMagnitude: 21.7,
    extinctionMagnitudes: 0.2,
    thinCloudDepth: 0,
  },
  domes: [],
  seconds: 10,
  haze: null,
});
const toward = (east: number) =>
  cameraView({
    position: [0, 1, 0],
    aim: [east, 8, -20],
    rollRadians: 0,
    sensorWidthMm: 36,
    sensorHeightMm: 24,
    focalLengthMm: 24,
  });
const order = (slot: string, east = 0, minutes = 0): SkyOrder => ({
  slot,
  view: toward(east),
  sky: sky(minutes),
  size,
});

/** Draws when it is told to. */
const byHand = () => {
  const asked: { view: SkyView; done: (ok: boolean) => void }[] = [];
  const more: (() => void)[] = [];
  const drawer: SkyDrawer & { isComplete: boolean } = {
    draw: (view) =>
      new Promise((resolve, reject) => {
        const done = (ok: boolean) =>
          ok ? resolve(new Float32Array(4 * view.size.width * view.size.height)) : reject(new Error('no'));
        asked.push({ view, done });
      }),
    isComplete: true,
    pictureShown: () => undefined,
    onMore: (listener) => more.push(listener),
  };
  const tellMore = () => {
    for (const tell of more) tell();
  };
  return { asked, drawer, tellMore };
};
const turn = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('SkyPictures', () => {
  it('has a small sky at once, and the drawn one when it comes', async () => {
    const { asked, drawer } = byHand();
    let told = 0;
    const skies = new SkyPictures(() => told++);
    skies.setDrawer(drawer);
    skies.want([order('a')]);
    const small = skies.numberOf('a');
    expect(skies.of('a')).toBeDefined();
    expect(skies.isSettled).toBe(false);
    const before = told;
    asked[0]?.done(true);
    await turn();
    expect(skies.numberOf('a')).toBeGreaterThan(small);
    expect(told).toBeGreaterThan(before);
    expect(skies.isSettled).toBe(true);
  });

  it('is never without a sky while the camera moves faster than skies are drawn, and ends with the last one', async () => {
    const { asked, drawer } = byHand();
    const skies = new SkyPictures(() => undefined);
    skies.setDrawer(drawer);
    for (let step = 0; step < 20; step++) {
      skies.want([order('a', step)]);
      expect(skies.of('a')).toBeDefined();
      if (step % 3 === 2) {
        asked.at(-1)?.done(true);
        await turn();
      }
    }
    while (!skies.isSettled) {
      asked.at(-1)?.done(true);
      await turn();
    }
    expect(asked.at(-1)?.view.view).toEqual(toward(19));
    expect(asked.length).toBeLessThan(12);
  });

  it('keeps the sky of the hour before until that of the next is there: no small one between', async () => {
    const { asked, drawer } = byHand();
    const skies = new SkyPictures(() => undefined);
    skies.setDrawer(drawer);
    skies.want([order('a')]);
    asked[0]?.done(true);
    await turn();
    const drawn = skies.of('a');
    skies.want([order('a', 0, 10)]);
    expect(skies.of('a')).toBe(drawn);
  });

  it('draws one sky once for all that show it', async () => {
    const { asked, drawer } = byHand();
    const skies = new SkyPictures(() => undefined);
    skies.setDrawer(drawer);
    skies.want([order('a'), order('b'), order('c')]);
    asked[0]?.done(true);
    await turn();
    expect(asked).toHaveLength(1);
    expect(skies.of('b')).toBe(skies.of('a'));
    expect(skies.isSettled).toBe(true);
  });

  it('draws all anew when there is more to draw, and is not settled before stars have come', async () => {
    const { asked, drawer, tellMore } = byHand();
    drawer.isComplete = false;
    const skies = new SkyPictures(() => undefined);
    skies.setDrawer(drawer);
    skies.want([order('a')]);
    asked[0]?.done(true);
    await turn();
    expect(skies.isSettled).toBe(false);
    drawer.isComplete = true;
    tellMore();
    expect(asked).toHaveLength(2);
    asked[1]?.done(true);
    await turn();
    expect(skies.isSettled).toBe(true);
  });

  it('asks once more after a failure, then draws by itself, and comes to an end', async () => {
    const { asked, drawer } = byHand();
    const skies = new SkyPictures(() => undefined);
    skies.setDrawer(drawer);
    skies.want([order('a')]);
    for (const n of [0, 1]) {
      asked[n]?.done(false);
      await turn();
    }
    await turn();
    expect(asked).toHaveLength(2);
    expect(skies.isSettled).toBe(true);
    expect(skies.of('a')).toBeDefined();
  });

  it('lets go of textures that nothing shows', async () => {
    const { asked, drawer } = byHand();
    const skies = new SkyPictures(() => undefined);
    skies.setDrawer(drawer);
    skies.want([order('a')]);
    let gone = 0;
    skies.of('a')?.addEventListener('dispose', () => gone++);
    asked[0]?.done(true);
    await turn();
    skies.of('a')?.addEventListener('dispose', () => gone++);
    expect(gone).toBe(1);
    skies.want([]);
    expect(gone).toBe(2);
  });
});
