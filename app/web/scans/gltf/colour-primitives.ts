import { keptPictureSide, maxPicturePixels } from '../limits.ts';
import { toByte } from '../mesh/corner-colours.ts';
import { ScanError } from '../scan-error.ts';
import type { Picture, ScanTools } from '../scan-tools.ts';
import type { GltfBytes } from './gltf-bytes.ts';
import type { JsonField } from './json-field.ts';
import { pictureSize } from './picture-size.ts';
import type { Primitive } from './primitives.ts';
import { samplePicture } from './sample-picture.ts';
import { plainSurface, type Surface, surfaceOf } from './surface.ts';

const unreadKind = 'A picture of a kind that is not read; its colours left out';

/** A picture of the file, or a sentence that says why there is none. */
const decode = async (image: JsonField, bytes: GltfBytes, tools: ScanTools): Promise<Picture | string> => {
  const uri = image.get('uri');
  const packed = uri.isThere ? bytes.dataUri(uri) : bytes.view(image.get('bufferView').whole());
  const size = pictureSize(packed);
  if (!size) return unreadKind;
  if (size.width * size.height > maxPicturePixels)
    return `A picture of ${size.width} × ${size.height} is too large; its colours left out`;
  try {
    return await tools.decodePicture(packed, size.type, keptPictureSide);
  } catch {
    return 'A picture could not be read; its colours left out';
  }
};

/** What an unread picture is taken for: the grey that a new finish starts with, not white. Common practice, no published source. */
const unreadGrey = 0.2;

/** Light of triangles without their picture: the surface's own, times the mean of the corners' where they have some. */
const plainLight = ({ light, indices }: Primitive, { factor }: Surface): Float32Array => {
  const all = new Float32Array(indices.length);
  for (let t = 0; t < indices.length; t += 3)
    for (let k = 0; k < 3; k++) {
      let mean = 1;
      if (light) {
        const at = (c: number) => light.values[(indices[t + c] as number) * light.width + k] as number;
        mean = (at(0) + at(1) + at(2)) / 3;
      }
      all[t + k] = mean * (factor[k] as number);
    }
  return all;
};

const hasTint = ({ factor }: Surface): boolean => factor.slice(0, 3).some((share) => share !== 1);

/**
 * Colours of the triangles of primitives, three sRGB bytes each; null where nothing that was read says what colour any of
 * them has. Each picture is decoded once and let go again.
 *
 * @param leftOut takes sentences about pictures that were not read
 */
export const colourPrimitives = async (
  json: JsonField,
  primitives: readonly Primitive[],
  bytes: GltfBytes,
  tools: ScanTools,
  leftOut: string[],
): Promise<Uint8Array[] | null> => {
  const surfaces = primitives.map(({ material }) => surfaceOf(json, material));
  if (surfaces.some(({ isSeeThrough }) => isSeeThrough)) leftOut.push('See-through surfaces are taken as solid');
  if (surfaces.some(({ namesPicture, picture }) => namesPicture && !picture)) leftOut.push(unreadKind);
  const isTinted = primitives.some(({ light }) => light !== null) || surfaces.some(hasTint);
  if (!isTinted && surfaces.every(({ picture }) => picture === null)) return null;
  const lights = primitives.map((primitive, i) => plainLight(primitive, surfaces[i] ?? plainSurface));
  const images = [...new Set(surfaces.flatMap(({ picture }) => (picture ? [picture.image] : [])))];
  const sampled = new Set<Primitive>();
  for (const [n, image] of images.entries()) {
    tools.onProgress?.(`Taking colours from picture ${n + 1} of ${images.length}`);
    const picture = await decode(json.get('images').entry(image), bytes, tools);
    if (typeof picture === 'string') {
      if (!leftOut.includes(picture)) leftOut.push(picture);
      continue;
    }
    primitives.forEach((primitive, i) => {
      const on = surfaces[i]?.picture;
      const places = on?.image === image ? primitive.onPicture(on.set) : null;
      const light = lights[i];
      if (!on || !places || !light) return;
      sampled.add(primitive);
      samplePicture(picture, on, places, primitive.indices, (triangle, red, green, blue) => {
        light[triangle * 3] = (light[triangle * 3] as number) * red;
        light[triangle * 3 + 1] = (light[triangle * 3 + 1] as number) * green;
        light[triangle * 3 + 2] = (light[triangle * 3 + 2] as number) * blue;
      });
    });
  }
  if (!isTinted && sampled.size === 0) return null;
  return lights.map((light, p) => {
    const share = surfaces[p]?.namesPicture && !sampled.has(primitives[p] as Primitive) ? unreadGrey : 1;
    const colours = new Uint8Array(light.length);
    for (let i = 0; i < light.length; i++) colours[i] = toByte((light[i] as number) * share);
    return colours;
  });
};

/** Fails where a file has more pictures than a scan can have. */
export const checkPictures = (json: JsonField): void => {
  if (json.get('images').items().length > 2000) throw new ScanError('It has more than 2,000 pictures');
};
