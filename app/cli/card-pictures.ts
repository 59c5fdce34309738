import type { Scheme, Setup } from '../../core/setup/schema/setup.ts';
import { unpackStars } from '../../core/sky/star-catalogue.ts';
import { traceBlend } from '../../core/trace/blend.ts';
import { developPicture } from '../../core/trace/picture.ts';
import { buildWorld, type World } from '../../core/world/world.ts';
import { packedStars } from '../build/packed-stars.ts';
import { type ColourPixels, greyPictures } from '../card/grey-pictures.ts';
import type { PicturePngs } from '../card/pdf-of-pages.ts';

/** Of a preview: 120 pixels to the inch at 55 mm. */
const width = 260;
const samples = 4;

const withoutLamps = (world: World): World => ({
  ...world,
  frames: world.frames.map((frame) => ({
    ...frame,
    lights: frame.lights.filter(({ source }) => source.kind !== 'lamp'),
  })),
});

/** The blend of a scheme, lit and without its lamps, traced small by the reference. */
export const cardPictures = (setup: Setup, scheme: Scheme): Required<PicturePngs> => {
  const world = buildWorld(setup, scheme);
  const height = Math.max(Math.round(width / world.aspect), 1);
  const size = { width, height, samples, stars: unpackStars(packedStars()) };
  const camera = scheme.camera ?? setup.camera;
  const trace = (seen: World): ColourPixels => ({
    width,
    height,
    data: developPicture(traceBlend(seen, scheme, camera.sensor.pixelsWide, size), camera.drawn.response),
  });
  return greyPictures(trace(world), trace(withoutLamps(world)));
};
