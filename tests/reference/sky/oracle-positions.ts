import { Ecliptic, Equatorial } from 'astronomia/coord';
import vsop87Bearth from 'astronomia/data/vsop87Bearth';
import globe from 'astronomia/globe';
import julian from 'astronomia/julian';
import moonposition from 'astronomia/moonposition';
import nutation from 'astronomia/nutation';
import parallax from 'astronomia/parallax';
import { Planet } from 'astronomia/planetposition';
import precess from 'astronomia/precess';
import sidereal from 'astronomia/sidereal';
import solar from 'astronomia/solar';

/** Height and true bearing from north, radians, without refraction. */
export interface OracleSight {
  readonly altitudeRadians: number;
  readonly bearingRadians: number;
}

const kmPerAstronomicalUnit = 149_597_870.7;
/** For the other planets. */
export const oracleEarth = new Planet(vsop87Bearth);

const sightOf = (ra: number, dec: number, date: Date, latitude: number, longitude: number): OracleSight => {
  const place = new globe.Coord(latitude, -longitude);
  const { az, alt } = new Equatorial(ra, dec).toHorizontal(place, sidereal.apparent(julian.DateToJD(date)));
  return { altitudeRadians: alt, bearingRadians: (az + Math.PI + 2 * Math.PI) % (2 * Math.PI) };
};

export type OraclePlace = readonly [date: Date, latitude: number, longitude: number];
/** From as seen at the middle of the earth. Range in astronomical units. The earth's turn goes with universal time, so that is what parallax gets. */
export const oracleTopocentric = (
  ra: number,
  dec: number,
  range: number,
  [date, latitude, longitude]: OraclePlace,
): OracleSight => {
  const [rhoSin, rhoCos] = globe.Earth76.parallaxConstants(latitude, 0);
  const seen = parallax.topocentric({ ra, dec, range }, rhoSin, rhoCos, -longitude, julian.DateToJD(date));
  return sightOf(seen.ra, seen.dec, date, latitude, longitude);
};

/** The sun by VSOP87 as Meeus, chapters 25 and 32, has it. */
export const oracleSun = (...place: OraclePlace): OracleSight => {
  const { ra, dec, range } = solar.apparentEquatorialVSOP87(oracleEarth, julian.DateToJDE(place[0]));
  return oracleTopocentric(ra, dec, range, place);
};

/** The moon by Meeus, chapter 47, with nutation and parallax. */
export const oracleMoon = (...place: OraclePlace): OracleSight => {
  const jde = julian.DateToJDE(place[0]);
  const { lon, lat, range } = moonposition.position(jde);
  const [inLongitude, inObliquity] = nutation.nutation(jde);
  const { ra, dec } = new Ecliptic(lon + inLongitude, lat).toEquatorial(nutation.meanObliquity(jde) + inObliquity);
  return oracleTopocentric(ra, dec, range / kmPerAstronomicalUnit, place);
};

/** A star of J2000 coordinates by Meeus: precession (chapter 21) and the mean equinox; nutation, 17 seconds of arc at most, is left out. */
export const oracleStar = (ra: number, dec: number, ...[date, latitude, longitude]: OraclePlace): OracleSight => {
  const jd = julian.DateToJD(date);
  const epoch = 2000 + (jd - 2451545) / 365.25;
  const ofDate = precess.position(new Equatorial(ra, dec), 2000, epoch, 0, 0);
  const place = new globe.Coord(latitude, -longitude);
  const { az, alt } = new Equatorial(ofDate.ra, ofDate.dec).toHorizontal(place, sidereal.mean(jd));
  return { altitudeRadians: alt, bearingRadians: (az + 3 * Math.PI) % (2 * Math.PI) };
};
