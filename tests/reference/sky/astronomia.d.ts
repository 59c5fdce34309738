/** The few parts of the oracle library that the tests use. It comes without types. Angles in radians, longitude west positive. */
interface OracleCoord {
  readonly ra: number;
  readonly dec: number;
  readonly lon: number;
  readonly lat: number;
  readonly range: number;
}
declare module 'astronomia/julian' {
  const julian: { DateToJD(date: Date): number; DateToJDE(date: Date): number; JDEToDate(jde: number): Date };
  export default julian;
}
declare module 'astronomia/planetposition' {
  export class Planet {
    constructor(series: unknown);
    position2000(jde: number): OracleCoord;
  }
}
declare module 'astronomia/elliptic' {
  const elliptic: {
    position(
      planet: import('astronomia/planetposition').Planet,
      earth: import('astronomia/planetposition').Planet,
      jde: number,
    ): OracleCoord;
  };
  export default elliptic;
}
declare module 'astronomia/illum' {
  type Magnitude = (toSun: number, toEarth: number, phaseAngle: number) => number;
  const illum: {
    readonly mercury84: Magnitude;
    readonly venus84: Magnitude;
    readonly mars84: Magnitude;
    readonly jupiter84: Magnitude;
  };
  export default illum;
}
declare module 'astronomia/data/vsop87Bmercury' {
  const series: unknown;
  export default series;
}
declare module 'astronomia/data/vsop87Bvenus' {
  const series: unknown;
  export default series;
}
declare module 'astronomia/data/vsop87Bmars' {
  const series: unknown;
  export default series;
}
declare module 'astronomia/data/vsop87Bjupiter' {
  const series: unknown;
  export default series;
}
declare module 'astronomia/data/vsop87Bsaturn' {
  const series: unknown;
  export default series;
}
declare module 'astronomia/data/vsop87Bearth' {
  const series: unknown;
  export default series;
}
declare module 'astronomia/solar' {
  const solar: {
    apparentEquatorialVSOP87(earth: import('astronomia/planetposition').Planet, jde: number): OracleCoord;
  };
  export default solar;
}
declare module 'astronomia/moonposition' {
  const moonposition: { position(jde: number): OracleCoord };
  export default moonposition;
}
declare module 'astronomia/moonphase' {
  const moonphase: {
    newMoon(year: number): number;
    full(year: number): number;
    first(year: number): number;
    last(year: number): number;
  };
  export default moonphase;
}
declare module 'astronomia/nutation' {
  const nutation: { nutation(jde: number): readonly [number, number]; meanObliquity(jde: number): number };
  export default nutation;
}
declare module 'astronomia/coord' {
  export class Ecliptic {
    constructor(lon: number, lat: number);
    toEquatorial(obliquity: number): OracleCoord;
  }
  export class Equatorial {
    constructor(ra: number, dec: number);
    toHorizontal(place: unknown, siderealSeconds: number): { readonly az: number; readonly alt: number };
  }
}
declare module 'astronomia/sidereal' {
  const sidereal: { apparent(jd: number): number; mean(jd: number): number };
  export default sidereal;
}
declare module 'astronomia/globe' {
  const globe: {
    readonly Earth76: { parallaxConstants(lat: number, metres: number): readonly [number, number] };
    readonly Coord: new (lat: number, lonWest: number) => { readonly lat: number; readonly lon: number };
  };
  export default globe;
}
declare module 'astronomia/parallax' {
  const parallax: {
    topocentric(
      c: Pick<OracleCoord, 'ra' | 'dec' | 'range'>,
      rhoSin: number,
      rhoCos: number,
      lonWest: number,
      jd: number,
    ): OracleCoord;
  };
  export default parallax;
}
declare module 'astronomia/precess' {
  const precess: {
    position(from: unknown, epochFrom: number, epochTo: number, motionRa: number, motionDec: number): OracleCoord;
  };
  export default precess;
}
declare module 'astronomia/refraction' {
  const refraction: { saemundsson(trueAltitude: number): number; bennett(seenAltitude: number): number };
  export default refraction;
}
