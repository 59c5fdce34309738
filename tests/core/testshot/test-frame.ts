import jpeg from 'jpeg-js';
import type { Setup } from '../../../core/setup/schema/setup.ts';
import type { PixelPatch } from '../../../core/testshot/spot-level.ts';
import { tracePicture } from '../../../core/trace/picture.ts';
import { buildWorld, type World, type WorldFrame } from '../../../core/world/world.ts';
import { onePassSetup } from '../support/scenes.ts';

/** A wall of a fifth, lit by a torch from the side, under a little even sky light. Invented. */
export const wallSetup = (correctionStops = 0, frame: object = {}, place: object = {}): Setup =>
  onePassSetup({
    camera: { position: [0, 0, 1.6], aim: [0, 9, 1.8], focalLengthMm: 35, drawn: { response: 'plain', holder: false } },
    lamp: { output: { from: 'lumens', lumens: 600 }, beam: { shape: 'lobe', degrees: 60 }, correctionStops },
    frame: { aperture: 8, iso: 400, seconds: 10, ...frame },
    place,
    subjects: [
      {
        id: 'wall',
        name: 'Wall',
        parts: [{ kind: 'box', position: [0, 9, 0], widthMetres: 14, depthMetres: 0.4, heightMetres: 6 }],
      },
    ],
    pass: { off: 2, waypoints: [{ position: [-5, 3, 1.2], aim: [0, 9, 1.8] }] },
  });

/** World and only frame of a setup. */
export const onlyFrame = (setup: Setup): { readonly world: World; readonly frame: WorldFrame } => {
  const world = buildWorld(setup, setup.schemes[0] as Setup['schemes'][number]);
  return { world, frame: world.frames[0] as WorldFrame };
};

export const [width, height] = [96, 64];

/** The frame's linear picture by the reference estimator, three numbers a pixel, mid-grey = 1. */
export const linearOf = (setup: Setup): Float64Array => {
  const { world, frame } = onlyFrame(setup);
  return tracePicture(world, frame, { width, height, samples: 4 });
};

/** Eight-bit picture through a JPEG of an independent encoder and back. */
export const throughJpeg = (bytes: Uint8Array, quality = 92): PixelPatch => {
  const data = Buffer.alloc(width * height * 4, 255);
  for (let p = 0; p < width * height; p++) data.set(bytes.subarray(3 * p, 3 * p + 3), 4 * p);
  return jpeg.decode(jpeg.encode({ data, width, height }, quality).data, { useTArray: true });
};

/** The square round a place of a picture, as the page cuts it out. */
export const cutOut = (picture: PixelPatch, [x, y]: readonly [number, number], radius: number): PixelPatch => {
  const half = Math.max(Math.round(radius * picture.width), 1);
  const [left, top] = [Math.round(x * picture.width) - half, Math.round(y * picture.height) - half];
  const data = new Uint8ClampedArray(16 * half * half);
  for (let row = 0; row < 2 * half; row++) {
    const from = 4 * ((top + row) * picture.width + left);
    data.set(picture.data.subarray(from, from + 8 * half), row * 8 * half);
  }
  return { data, width: 2 * half, height: 2 * half };
};
