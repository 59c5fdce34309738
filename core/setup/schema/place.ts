import { z } from 'zod';
import { degrees, localTime, optionalName, quantity } from './fields.ts';

const kelvinOf = (description: string) => quantity('kelvin', 1667, 25000, description);

const moonlight = z
  .strictObject({
    bearingDegrees: degrees(0, 360, 'where the moon stands, clockwise from the scene’s north'),
    altitudeDegrees: degrees(0, 90, 'height of the moon above the horizon'),
    illuminanceLux: quantity('lux', 0, 1, 'light on a surface square to the moon; full moon about 0.2'),
    temperatureKelvin: kelvinOf('colour of moonlight').default(4120),
  })
  .describe('moonlight as a plain directional light');

const skylight = z
  .strictObject({
    illuminanceLux: quantity(
      'lux',
      0,
      1000,
      'light of the whole sky on level ground; a dark moonless site about 0.0007',
    ),
    temperatureKelvin: kelvinOf('colour of the sky').default(6000),
  })
  .describe('an even sky');

const glowDome = z
  .strictObject({
    name: optionalName,
    bearingDegrees: degrees(0, 360, 'true bearing of the middle of the glow'),
    widthDegrees: degrees(0, 180, 'width of the town along the horizon as seen from here').default(8),
    luminanceAt10DegreesCdM2: quantity('cd/m2', 0, 1, 'brightness that it adds ten degrees above the horizon'),
    temperatureKelvin: kelvinOf('colour of the town’s lamps').default(2700),
  })
  .describe('glow of a town over the horizon');

const sky = z
  .strictObject({
    zenithMagnitude: quantity(
      'mag/arcsec2',
      16,
      22.2,
      'darkness of the site: the zenith without moon, away from the Milky Way',
    ).default(21.7),
    extinctionMagnitudes: quantity(
      'mag',
      0.08,
      0.8,
      'light lost straight up, at 550 nm: 0.12 high and dry, 0.2 clear, 0.3 and more hazy',
    ).default(0.2),
    thinCloudDepth: quantity('', 0, 2, 'optical depth of thin high cloud; 0 = none').default(0),
  })
  .describe('the sky of that place and hour: moon, stars, Milky Way, twilight, glow of towns');

export const place = z
  .strictObject({
    latitudeDegrees: degrees(-90, 90, 'latitude, north positive').default(54),
    longitudeDegrees: degrees(-180, 180, 'longitude, east positive').default(-2),
    localTime: localTime.default('2026-10-09T22:30').describe('date and time at the place, without zone'),
    timeZone: z
      .string({ error: 'must be a zone name such as Etc/UTC' })
      .regex(/^[A-Za-z][A-Za-z0-9_+/-]{0,63}$/, 'must be a zone name such as Etc/UTC')
      .default('Etc/UTC')
      .describe('IANA time zone'),
    northDegrees: degrees(0, 360, 'true bearing of the scene’s north axis').default(0),
    sky: sky
      .nullable()
      .default(null)
      .describe('the sky as it is there and then; null = the plain moonlight and skylight stated here'),
    moonlight: moonlight.nullable().default(null).describe('moonlight as a plain directional light; null = no moon'),
    skylight: skylight.default({ illuminanceLux: 0.0007, temperatureKelvin: 6000 }),
    glowDomes: z.array(glowDome).max(12, 'must be at most 12').default([]),
    hazeVisibilityKm: quantity('km', 0.05, 300, 'visibility')
      .nullable()
      .default(null)
      .describe('how far one sees through the haze (km); null = clear'),
  })
  .describe('where and when, and the light that is there without lamps');
