import { DataTexture, FloatType, NearestFilter, RGBAFormat } from 'three';
import { skyPicture } from '../../../core/trace/sky-picture.ts';
import { withFourth } from '../../../core/trace/with-fourth.ts';
import type { Size } from './layer-store.ts';
import type { SkyView } from './sky-drawer.ts';

/** A sky that was drawn. The values go once they are on the card: they may take as much memory as a layer. */
export const skyTexture = (values: Float32Array<ArrayBuffer>, { width, height }: Size): DataTexture => {
  const texture = new DataTexture(values, width, height, RGBAFormat, FloatType);
  texture.minFilter = NearestFilter;
  texture.magFilter = NearestFilter;
  texture.needsUpdate = true;
  texture.onUpdate = () => {
    texture.image.data = null as never;
  };
  return texture;
};

/** Width of the small sky that is shown at once where there is none yet, as while a camera is moved. */
const quickWidth = 96;

const quickSize = ({ width, height }: Size): Size =>
  width <= quickWidth ? { width, height } : { width: quickWidth, height: Math.ceil((height * quickWidth) / width) };

/** A sky that is drawn small, without stars, and at once. */
export const quickSkyTexture = ({ view, sky, size }: SkyView): DataTexture => {
  const small = quickSize(size);
  return skyTexture(withFourth(skyPicture({ view, ...small }, sky, null)), small);
};
