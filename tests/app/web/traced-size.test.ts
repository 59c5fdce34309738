import { afterEach, describe, expect, it, vi } from 'vitest';
import { sceneOf, type WantedPicture } from '../../../app/web/picture/scene-of.ts';
import { pixelRatio } from '../../../app/web/render/darkroom.ts';
import { setup } from './sheet-samples.ts';

const size = { width: 1200, height: 800 };
const pictureOf = (index: number, changed = setup): WantedPicture => {
  const scheme = changed.schemes[index];
  if (!scheme) throw new Error('no such scheme');
  const look = 'picture' as const;
  return { setup: changed, scheme, isUnlit: false, screen: `${index}`, look, against: null, marksFull: false, size };
};
const options = { frame: null, samples: 1 };

describe('the size that pictures are traced at', () => {
  it('is that of one picture, however many tiles show the same light: forty of them cost what one does', () => {
    const forty = Array.from({ length: 40 }, (_, i) => ({
      // a setup of its own each time, as in the cells of a sweep
      ...pictureOf(0, { ...setup, schemes: structuredClone(setup.schemes) }),
      screen: `tile ${i}`,
    }));
    expect(sceneOf(forty, options).size).toEqual(size);
  });

  it('gets smaller with the number of lamps that differ, so that all of them fit (640 MB)', () => {
    const many = Array.from({ length: 60 }, (_, i) => {
      const picture = pictureOf(0);
      const frames = picture.scheme.frames.map((frame) => ({
        ...frame,
        passes: frame.passes.map((pass) => ({
          ...pass,
          waypoints: pass.waypoints.map((point) => ({
            ...point,
            position: [i / 10, -6, 1] as [number, number, number],
          })),
        })),
      }));
      return { ...picture, scheme: { ...picture.scheme, frames }, screen: `tile ${i}` };
    });
    const traced = sceneOf(many, options).size;
    expect(traced.width).toBeLessThan(size.width);
    expect(traced.width * traced.height * 16 * 60).toBeLessThanOrEqual(640e6);
  });

  it('is at most 1280 px wide on the page, and as wide as a sheet asks', () => {
    // under a plain sky: that of an hour has layers more, which do not fit at that size
    const plain = { ...setup, place: { ...setup.place, sky: null } };
    const wide = { ...pictureOf(0, plain), size: { width: 3000, height: 2000 } };
    expect(sceneOf([wide], options).size.width).toBe(1280);
    expect(sceneOf([wide], { ...options, widest: 3000 }).size).toEqual(wide.size);
    const hour = sceneOf([{ ...wide, setup }], { ...options, widest: 3000 }).size;
    expect(hour.width).toBeLessThanOrEqual(3000);
    expect(hour.width).toBeGreaterThan(0.9 * 3000);
  });
});

describe('the pixels of a screen that a picture has', () => {
  afterEach(() => void vi.unstubAllGlobals());

  it.each([
    [0.5, 0.5],
    [1, 1],
    [1.25, 1.25],
    [3, 1.5],
    [0, 1],
  ])('with %d to one of the page: %d', (ofScreen, ofPicture) => {
    vi.stubGlobal('window', { devicePixelRatio: ofScreen });
    expect(pixelRatio()).toBe(ofPicture);
  });
});
