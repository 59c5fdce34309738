// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { act } from 'react';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import type { PrintOrder } from '../../../../app/web/render/print-scene.ts';
import { useApp } from '../../../../app/web/state/app-store.ts';
import { duplicateScheme, setFrameNumber } from '../../../../app/web/state/edits/frame-edits.ts';
import { changeCamera, giveOwnCamera } from '../../../../app/web/state/edits/place-edits.ts';
import { judgeShot } from '../../../../app/web/testshot/judge-shot.ts';
import { TestShotDialog } from '../../../../app/web/testshot/TestShotDialog.tsx';
import { parseSetup } from '../../../../core/setup/parse-setup.ts';
import type { Frame, Scheme, Setup } from '../../../../core/setup/schema/setup.ts';
import { mounted } from '../nightrun/mounted.tsx';
import { exposureTags, jpegOf } from './test-photo.ts';

/** Pictures that the dialog has ordered, in order; each is given when a test says so. */
const orders: { readonly order: PrintOrder; readonly give: () => Promise<void> }[] = [];
const print = (order: PrintOrder) =>
  new Promise<Map<string, HTMLCanvasElement>>((resolve) => {
    const give = () => act(async () => resolve(new Map([['shot', document.createElement('canvas')]])));
    orders.push({ order, give });
  });
vi.mock('../../../../app/web/render/the-darkroom.ts', () => ({ theDarkroom: () => ({ print }) }));
vi.mock('../../../../app/web/testshot/judge-shot.ts', async (load) => {
  const judge = await load<typeof import('../../../../app/web/testshot/judge-shot.ts')>();
  return { ...judge, judgeShot: vi.fn(judge.judgeShot) };
});

const text = readFileSync('assets/setups/three-stones.json', 'utf8');
const stones = parseSetup(text);
const scheme = stones.schemes[0] as Scheme;
const painted = scheme.frames[1] as Frame;
const place = { schemeId: scheme.id, frameId: painted.id };
const stillDrawn = 'rehearsal is still being drawn: the spot is measured as soon as it stands.';
const tags = exposureTags(painted.seconds, painted.aperture, painted.iso);
const bytes = jpegOf(new Uint8Array(48 * 32 * 3).fill(118), 48, 32, { Exif: tags });
const photo = new File([new Uint8Array(bytes)], 'night.jpg', { type: 'image/jpeg' });

/** Of a canvas, which the document of a test lacks: mid-grey wherever it is read. */
const pen = {
  drawImage: () => undefined,
  getImageData: (_x: number, _y: number, width: number, height: number) => ({
    data: new Uint8ClampedArray(4 * width * height).fill(118),
    width,
    height,
  }),
};

describe('a test shot whose rehearsal is still being drawn', () => {
  let page: ReturnType<typeof mounted> | null = null;
  const open = () => {
    page = mounted(<TestShotDialog wish={{ file: photo, lampId: null, frameId: painted.id }} />);
    return wait();
  };
  const leave = () => {
    page?.leave();
    page = null;
  };
  /** Longer than the photo takes to be read, and than crosses must stand still before a spot is judged (120 ms). */
  const wait = () => act(() => new Promise((resolve) => setTimeout(resolve, 400)));
  const edit = (change: (setup: Setup) => Setup) => {
    act(() => useApp.getState().edit(change));
    return wait();
  };
  const says = () => document.querySelector('[role="status"]')?.textContent ?? '';
  const corrections = () => document.querySelectorAll('.shot-verdict button').length;
  const [inPhoto, inRehearsal] = [0, 1];
  const picture = (which: number) => document.querySelectorAll<HTMLButtonElement>('.shot-picture')[which];
  const pressSpot = (which: number) => {
    const press = new MouseEvent('click', { detail: 1, clientX: 300, clientY: 220, bubbles: true });
    act(() => void picture(which)?.dispatchEvent(press));
    return wait();
  };

  beforeAll(() => {
    vi.stubGlobal('createImageBitmap', async () => ({ width: 48, height: 32, close: () => undefined }));
    vi.spyOn(HTMLCanvasElement.prototype, 'getContext').mockReturnValue(pen as never);
    vi.spyOn(HTMLElement.prototype, 'getBoundingClientRect').mockReturnValue(new DOMRect(0, 0, 600, 400));
  });
  afterAll(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
  });
  beforeEach(() => {
    orders.length = 0;
    vi.mocked(judgeShot).mockClear();
    // pictures are kept by the document's own objects: each test has its own
    useApp.getState().startOn(parseSetup(text));
  });
  afterEach(leave);

  it('waits for it: no cross on the rehearsal, no verdict and no correction until the picture stands', async () => {
    await open();
    expect(says()).toBe(`Press a lit spot in the photo. The ${stillDrawn}`);
    await pressSpot(inPhoto);
    await pressSpot(inRehearsal);
    expect([says(), corrections()]).toEqual([`The ${stillDrawn}`, 0]);
    expect(picture(inPhoto)?.querySelector('svg')).not.toBeNull();
    expect([picture(inRehearsal)?.disabled, picture(inRehearsal)?.querySelector('svg')]).toEqual([true, null]);
    expect(judgeShot).not.toHaveBeenCalled();
    await orders[0]?.give();
    await wait();
    expect(judgeShot).toHaveBeenCalledOnce();
    expect(says()).toMatch(/^The photo is .* than predicted .* of what its box says\.$/);
    expect(corrections()).toBeGreaterThan(0);
    expect(picture(inRehearsal)?.disabled).toBe(false);
    expect(picture(inRehearsal)?.getAttribute('data-place')).toBe('0.500 0.550');
  });

  it('goes on from the same camera while the frame is drawn anew', async () => {
    await open();
    await orders[0]?.give();
    await pressSpot(inPhoto);
    const before = says();
    await edit((setup) => setFrameNumber(setup, place, 'iso', 800));
    expect(orders).toHaveLength(2);
    expect(document.body.textContent).toContain('Drawing it…');
    expect(says()).toBe(before);
    expect(corrections()).toBeGreaterThan(0);
  });

  it('waits again with another camera; taken back, the picture of before is there at once', async () => {
    await open();
    await orders[0]?.give();
    await pressSpot(inPhoto);
    const before = says();
    await edit((setup) => changeCamera(setup, place.schemeId, (camera) => ({ ...camera, focalLengthMm: 35 })));
    expect([orders.length, says(), corrections()]).toEqual([2, `The ${stillDrawn}`, 0]);
    act(() => useApp.getState().undo());
    await wait();
    expect([orders.length, says()]).toEqual([2, before]);
  });

  it('keeps no picture of one camera for another: two schemes that share their frames, each with its own', async () => {
    const copied = duplicateScheme(stones, place.schemeId);
    const two = changeCamera(giveOwnCamera(copied.setup, copied.schemeId), copied.schemeId, (camera) => ({
      ...camera,
      focalLengthMm: 35,
    }));
    const framesOf = (id: string) => two.schemes.find((scheme) => scheme.id === id)?.frames;
    expect(framesOf(copied.schemeId)).toBe(framesOf(place.schemeId));
    useApp.getState().startOn(two);
    await open();
    await orders[0]?.give();
    leave();
    useApp.getState().chooseScheme(copied.schemeId);
    await open();
    expect(orders).toHaveLength(2);
    expect(says()).toContain(stillDrawn);
    await orders[1]?.give();
    expect(says()).not.toContain(stillDrawn);
  });
});
