import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { type CatalogueStar, packStars } from '../../core/sky/star-catalogue.ts';

/** What is read of the catalogue's GeoJSON. Some stars have no colour index. */
interface StarFeatures {
  readonly features: readonly {
    readonly properties: { readonly mag: number; readonly bv: string };
    readonly geometry: { readonly coordinates: readonly [number, number] };
  }[];
}

/** Of a star whose colour is not known: that of the sun's kind. */
const usualColourIndex = 0.65;

const starOf = ({ properties, geometry }: StarFeatures['features'][number]): CatalogueStar => {
  const colourIndex = Number.parseFloat(properties.bv);
  return {
    rightAscensionDegrees: geometry.coordinates[0],
    declinationDegrees: geometry.coordinates[1],
    magnitude: properties.mag,
    colourIndex: Number.isFinite(colourIndex) ? colourIndex : usualColourIndex,
  };
};

/**
 * The stars to V 8.0, packed. Places, magnitudes and colours are those of XHIP (Anderson and Francis 2012) after Hipparcos
 * (ESA 1997), J2000, as the data files of the package d3-celestial (BSD-3-Clause) carry them.
 */
export const packedStars = (): Uint8Array => {
  const file = createRequire(import.meta.url).resolve('d3-celestial/data/stars.8.json');
  const { features } = JSON.parse(readFileSync(file, 'utf8')) as StarFeatures;
  return packStars(features.map(starOf));
};
