import type { Matrix3 } from '../../../core/colour/matrix.ts';
import { cross, normalize, scale, type Vec3 } from '../../../core/geometry/vec.ts';
import type { SkyInput } from '../../../core/sky/sky-input.ts';
import type { SkyBody, SkyState } from '../../../core/sky/sky-state.ts';
import { radiansFromDegrees } from '../../../core/units/angle.ts';

/** Unit direction at a height and a true bearing, degrees; the scene's north is true north. */
export const directionAt = (altitudeDegrees: number, bearingDegrees: number): Vec3 => {
  const [a, b] = [radiansFromDegrees(altitudeDegrees), radiansFromDegrees(bearingDegrees)];
  return [Math.cos(a) * Math.sin(b), Math.sin(a), -Math.cos(a) * Math.cos(b)];
};

const bodyAt = (altitudeDegrees: number, bearingDegrees: number): SkyBody => {
  const toward = directionAt(altitudeDegrees, bearingDegrees);
  return {
    toward,
    towardSeen: toward,
    altitudeRadians: radiansFromDegrees(altitudeDegrees),
    bearingRadians: radiansFromDegrees(bearingDegrees),
  };
};

/** Rows of a matrix that takes a frame to the scene, from where its x and z axes point in the scene. */
const worldFrom = (x: Vec3, zNear: Vec3): Matrix3 => {
  const y = normalize(cross(zNear, x));
  const z = cross(x, y);
  return [
    [x[0], y[0], z[0]],
    [x[1], y[1], z[1]],
    [x[2], y[2], z[2]],
  ];
};

export interface FakeSky {
  readonly input?: Partial<SkyInput>;
  /** [altitude, bearing], degrees. */
  readonly sun?: readonly [number, number];
  readonly moon?: readonly [number, number];
  readonly phaseDegrees?: number;
  readonly distanceKm?: number;
  /** Where galactic l = b = 0 and the north galactic pole stand. */
  readonly galacticCentre?: readonly [number, number];
  readonly galacticPole?: readonly [number, number];
}

/**
 * A sky put together by hand, for tests: no ephemeris. As it comes it is a dark one: sun and moon far down, the galactic
 * and the ecliptic pole straight up, so that both bands lie along the horizon.
 */
export const fakeSky = ({
  input = {},
  sun = [-50, 200],
  moon = [-40, 90],
  phaseDegrees = 0,
  distanceKm = 384_400,
  galacticCentre = [0, 180],
  galacticPole = [90, 0],
}: FakeSky = {}): SkyState => {
  const body = bodyAt(...moon);
  const phase = radiansFromDegrees(phaseDegrees);
  // the sun stands behind the watcher at full, and turns level from there
  const { first } = { first: normalize(cross(body.toward, Math.abs(body.toward[1]) > 0.99 ? [1, 0, 0] : [0, 1, 0])) };
  const back = scale(body.toward, -Math.cos(phase));
  const aside = scale(first, Math.sin(phase));
  const galactic = worldFrom(directionAt(...galacticCentre), directionAt(...galacticPole));
  const ecliptic = worldFrom(directionAt(0, 90), [0, 1, 0]);
  return {
    input: {
      latitudeRadians: radiansFromDegrees(-33),
      longitudeRadians: radiansFromDegrees(149),
      utcMilliseconds: 0,
      northRadians: 0,
      zenithMagnitude: 21.8,
      extinctionMagnitudes: 0.172,
      thinCloudDepth: 0,
      ...input,
    },
    worldFromJ2000: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
    worldFromGalactic: galactic,
    worldFromEcliptic: ecliptic,
    siderealRadians: 0,
    sun: bodyAt(...sun),
    moon: {
      ...body,
      phaseRadians: phase,
      litShare: (1 + Math.cos(phase)) / 2,
      distanceKm,
      radiusRadians: Math.asin(1737.4 / distanceKm),
      towardSun: [back[0] + aside[0], back[1] + aside[1], back[2] + aside[2]],
    },
    planets: [],
  };
};
