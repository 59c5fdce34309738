import vsop87Bjupiter from 'astronomia/data/vsop87Bjupiter';
import vsop87Bmars from 'astronomia/data/vsop87Bmars';
import vsop87Bmercury from 'astronomia/data/vsop87Bmercury';
import vsop87Bsaturn from 'astronomia/data/vsop87Bsaturn';
import vsop87Bvenus from 'astronomia/data/vsop87Bvenus';
import elliptic from 'astronomia/elliptic';
import illum from 'astronomia/illum';
import julian from 'astronomia/julian';
import { Planet } from 'astronomia/planetposition';
import { type OraclePlace, type OracleSight, oracleEarth, oracleTopocentric } from './oracle-positions.ts';

/** Each planet, and its magnitude by the Astronomical Almanac since 1984 (Meeus, chapter 41) where that needs no rings. */
const planets = {
  Mercury: { body: new Planet(vsop87Bmercury), magnitude: illum.mercury84 },
  Venus: { body: new Planet(vsop87Bvenus), magnitude: illum.venus84 },
  Mars: { body: new Planet(vsop87Bmars), magnitude: illum.mars84 },
  Jupiter: { body: new Planet(vsop87Bjupiter), magnitude: illum.jupiter84 },
  Saturn: { body: new Planet(vsop87Bsaturn), magnitude: null },
};
export type OraclePlanetName = keyof typeof planets;
export const oraclePlanetNames = Object.keys(planets) as readonly OraclePlanetName[];

/** A planet by VSOP87 as Meeus, chapters 33 and 41, has it: where it stands, and how bright it is. */
export const oraclePlanet = (
  name: OraclePlanetName,
  ...place: OraclePlace
): OracleSight & { readonly magnitude: number | null; readonly phaseRadians: number } => {
  const jde = julian.DateToJDE(place[0]);
  const { body, magnitude } = planets[name];
  const { ra, dec } = elliptic.position(body, oracleEarth, jde);
  const [planet, earth] = [body.position2000(jde), oracleEarth.position2000(jde)];
  const [toPlanet, toEarth] = [planet, earth].map(({ lon, lat, range }) => [
    range * Math.cos(lat) * Math.cos(lon),
    range * Math.cos(lat) * Math.sin(lon),
    range * Math.sin(lat),
  ]);
  const apart = Math.hypot(...[0, 1, 2].map((i) => (toPlanet?.[i] ?? Number.NaN) - (toEarth?.[i] ?? Number.NaN)));
  const cosine = (planet.range ** 2 + apart ** 2 - earth.range ** 2) / (2 * planet.range * apart);
  const phaseRadians = Math.acos(Math.min(1, cosine));
  return {
    ...oracleTopocentric(ra, dec, apart, place),
    magnitude: magnitude?.(planet.range, apart, phaseRadians) ?? null,
    phaseRadians,
  };
};
