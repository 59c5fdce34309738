import type { Setup } from '../../../../core/setup/schema/setup.ts';

/** Edits of place, hour and the light that is there without lamps: pure, each (setup, arguments) -> setup. */

type Place = Setup['place'];
export type PlaceSky = NonNullable<Place['sky']>;
export type Moonlight = NonNullable<Place['moonlight']>;

/** A full moon in clear air, left of the north of the scene. */
export const firstMoonlight: Moonlight = {
  bearingDegrees: 300,
  altitudeDegrees: 35,
  illuminanceLux: 0.2,
  temperatureKelvin: 4120,
};

/** Changes parts of the place. The same setup where nothing changes: an empty entry of history would cut off what can be redone. */
export const setPlace = (setup: Setup, part: Partial<Place>): Setup => {
  const place = { ...setup.place, ...part };
  return JSON.stringify(place) === JSON.stringify(setup.place) ? setup : { ...setup, place };
};

/** To a metre or so: five decimals. */
const rounded = (degrees: number): number => Number(degrees.toFixed(5)) + 0;

/** Moves the place. The clock stays as it is; the zone goes along where one is given. */
export const setCoordinates = (
  setup: Setup,
  latitudeDegrees: number,
  longitudeDegrees: number,
  timeZone = setup.place.timeZone,
): Setup =>
  setPlace(setup, {
    latitudeDegrees: rounded(latitudeDegrees),
    longitudeDegrees: rounded(longitudeDegrees),
    timeZone,
  });

/** Sets the clock at the place: "2026-10-09T22:30". */
export const setLocalTime = (setup: Setup, localTime: string): Setup => setPlace(setup, { localTime });

/** Changes the zone; what the clock shows stays. */
export const setTimeZone = (setup: Setup, timeZone: string): Setup => setPlace(setup, { timeZone });

/** Turns the scene to another true bearing; 360 is 0. */
export const setNorth = (setup: Setup, northDegrees: number): Setup =>
  setPlace(setup, { northDegrees: ((northDegrees % 360) + 360) % 360 });

/** Changes some of the sky of that hour; a plain sky stays plain. */
export const changeSky = (setup: Setup, part: Partial<PlaceSky>): Setup =>
  setup.place.sky ? setPlace(setup, { sky: { ...setup.place.sky, ...part } }) : setup;

/** Changes some of the plain moonlight; without any it begins as a full moon's. */
export const changeMoonlight = (setup: Setup, part: Partial<Moonlight>): Setup =>
  setPlace(setup, { moonlight: { ...(setup.place.moonlight ?? firstMoonlight), ...part } });

/** Changes some of the plain skylight. */
export const changeSkylight = (setup: Setup, part: Partial<Place['skylight']>): Setup =>
  setPlace(setup, { skylight: { ...setup.place.skylight, ...part } });
