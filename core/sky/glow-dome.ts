/** Glow of a town over the horizon. */
export interface GlowDome {
  /** True bearing of its middle. */
  readonly bearingRadians: number;
  /** Half the width of the town along the horizon. */
  readonly halfWidthRadians: number;
  /** What it adds ten degrees above the horizon at its bearing. */
  readonly luminanceAt10DegreesCdM2: number;
  /** Of the town's lamps. */
  readonly temperatureKelvin: number;
}

/** From the first height up turns count for less and less, up to none straight up, where all bearings meet. */
const turnsFade = { fromDegrees: 60, toDegrees: 90 } as const;

/** The closed form is fitted from 2 degrees up: below 4 it flattens toward its value there. */
const lowestDegrees = 2;

/**
 * Glow of a town at a height and a turn from its bearing, over that at 10 degrees at its bearing. Closed form fitted to
 * Garstang's single scattering for towns 15 to 100 km away (sky.md 4.7; rms 0.15 to 0.41 mag): wider the higher one
 * looks, and by the town's own half width.
 */
export const glowShape = (altitudeDegrees: number, turnDegrees: number, halfWidthDegrees: number): number => {
  const height = Math.max(altitudeDegrees, 0);
  const altitude = height < 2 * lowestDegrees ? lowestDegrees + height ** 2 / (4 * lowestDegrees) : height;
  const share = Math.min(
    Math.max((turnsFade.toDegrees - altitude) / (turnsFade.toDegrees - turnsFade.fromDegrees), 0),
    1,
  );
  const turn = turnDegrees * share * share * (3 - 2 * share);
  const spread = 4.3 + 0.89 * altitude;
  const squareWidth = spread * spread + halfWidthDegrees * halfWidthDegrees;
  return ((altitude + 6) / 16) ** -2.9 / (1 + (turn * turn) / squareWidth);
};
