import type { JsonField } from './json-field.ts';

/** A picture on a surface. */
export interface SurfacePicture {
  /** Number of the image in the file. */
  readonly image: number;
  /** Which set of places on it the corners use. */
  readonly set: number;
  /** How the picture goes on beyond its edges, across and down. */
  readonly wrap: readonly [Wrap, Wrap];
  /** Where a corner's place lies on the picture: two rows of three numbers. */
  readonly onPicture: readonly [number, number, number, number, number, number];
}
export type Wrap = 'repeat' | 'clamp' | 'mirror';

/** What a material does to colour. */
export interface Surface {
  /** Linear light that all colours are multiplied with. */
  readonly factor: readonly number[];
  readonly picture: SurfacePicture | null;
  /** Whether the file puts a picture on it, one that is read or not. */
  readonly namesPicture: boolean;
  readonly isSeeThrough: boolean;
}

export const plainSurface: Surface = { factor: [1, 1, 1, 1], picture: null, namesPicture: false, isSeeThrough: false };

const wraps: Readonly<Record<number, Wrap>> = { 10497: 'repeat', 33071: 'clamp', 33648: 'mirror' };

/** The image of a texture: plain, or one of the kinds that browsers decode; -1 = none that is read. */
const imageOf = (texture: JsonField): number => {
  const extensions = texture.get('extensions');
  const fields = [
    extensions.get('EXT_texture_webp').get('source'),
    extensions.get('EXT_texture_avif').get('source'),
    texture.get('source'),
  ];
  const found = fields.find((field) => field.isThere);
  return found ? found.whole() : -1;
};

/** Rows of KHR_texture_transform: scale first, then turn, then move. */
const transformOf = (transform: JsonField): SurfacePicture['onPicture'] => {
  const [moveX, moveY] = transform.get('offset').numbers(2, [0, 0]) as [number, number];
  const [scaleX, scaleY] = transform.get('scale').numbers(2, [1, 1]) as [number, number];
  const rotation = transform.get('rotation').value;
  const turn = typeof rotation === 'number' ? rotation : 0;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  return [cos * scaleX, sin * scaleY, moveX, -sin * scaleX, cos * scaleY, moveY];
};

const pictureOf = (json: JsonField, info: JsonField): SurfacePicture | null => {
  if (!info.isThere) return null;
  const texture = json.get('textures').entry(info.get('index').whole());
  const image = imageOf(texture);
  if (image < 0) return null;
  const transform = info.get('extensions').get('KHR_texture_transform');
  const sampler = texture.get('sampler').isThere
    ? json.get('samplers').entry(texture.get('sampler').whole())
    : texture.get('sampler');
  const wrap = (key: string) => wraps[sampler.get(key).whole(undefined, 10497)] ?? 'repeat';
  return {
    image,
    set: transform.get('texCoord').whole(undefined, info.get('texCoord').whole(undefined, 0)),
    wrap: [wrap('wrapS'), wrap('wrapT')],
    onPicture: transformOf(transform),
  };
};

/** Colour of a material: its base colour, or the diffuse one of the older way (glTF 2.0, section 3.9.2). */
export const surfaceOf = (json: JsonField, material: number): Surface => {
  if (material < 0) return plainSurface;
  const field = json.get('materials').entry(material);
  const older = field.get('extensions').get('KHR_materials_pbrSpecularGlossiness');
  const newer = field.get('pbrMetallicRoughness');
  const [factor, picture] = older.isThere
    ? [older.get('diffuseFactor'), older.get('diffuseTexture')]
    : [newer.get('baseColorFactor'), newer.get('baseColorTexture')];
  return {
    factor: factor.numbers(4, [1, 1, 1, 1]),
    picture: pictureOf(json, picture),
    namesPicture: picture.isThere,
    isSeeThrough: ['MASK', 'BLEND'].includes(field.get('alphaMode').text()),
  };
};
