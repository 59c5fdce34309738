import { type AstroTime, type Observer, Rotation_EQJ_HOR, SiderealTime } from 'astronomy-engine';
import { type Matrix3, multiply } from '../colour/matrix.ts';
import { radiansFromDegrees } from '../units/angle.ts';
import { j2000FromGalactic } from './galactic.ts';
import type { SkyInput } from './sky-input.ts';
import type { SkyState } from './sky-state.ts';

/** Tilt of the ecliptic at J2000, degrees: 84381.406 seconds of arc (IAU 2006). */
const obliquityRadians = radiansFromDegrees(84381.406 / 3600);

const j2000FromEcliptic: Matrix3 = [
  [1, 0, 0],
  [0, Math.cos(obliquityRadians), -Math.sin(obliquityRadians)],
  [0, Math.sin(obliquityRadians), Math.cos(obliquityRadians)],
];

/**
 * Scene's axes from the library's horizon axes (x north, y west, z up).
 *
 * @param northRadians true bearing of the scene's north (-z): 0 leaves x toward true east
 */
const worldFromHorizon = (northRadians: number): Matrix3 => {
  const [c, s] = [Math.cos(northRadians), Math.sin(northRadians)];
  return [
    [-s, -c, 0],
    [0, 0, 1],
    [-c, s, 0],
  ];
};

/** The library keeps its matrices column by column. */
const worldFromJ2000 = (time: AstroTime, observer: Observer, northRadians: number): Matrix3 => {
  const { rot } = Rotation_EQJ_HOR(time, observer);
  const at = (row: number, column: number) => (rot[column] as number[])[row] as number;
  return multiply(worldFromHorizon(northRadians), [
    [at(0, 0), at(0, 1), at(0, 2)],
    [at(1, 0), at(1, 1), at(1, 2)],
    [at(2, 0), at(2, 1), at(2, 2)],
  ]);
};

/**
 * How the sky's axes stand in the scene's at one instant: precession, nutation, turn of the earth, and the scene's north.
 * Aberration of the stars (up to 20 seconds of arc) and their proper motion are left out: under a pixel.
 */
export const skyFrames = (
  input: SkyInput,
  time: AstroTime,
  observer: Observer,
): Pick<SkyState, 'worldFromJ2000' | 'worldFromGalactic' | 'worldFromEcliptic' | 'siderealRadians'> => {
  const fromJ2000 = worldFromJ2000(time, observer, input.northRadians);
  const turn = (SiderealTime(time) * Math.PI) / 12 + input.longitudeRadians;
  return {
    worldFromJ2000: fromJ2000,
    worldFromGalactic: multiply(fromJ2000, j2000FromGalactic),
    worldFromEcliptic: multiply(fromJ2000, j2000FromEcliptic),
    siderealRadians: turn - 2 * Math.PI * Math.floor(turn / (2 * Math.PI)),
  };
};
